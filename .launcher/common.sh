# Builds the project on first use and after each change of its sources, then starts a main class of it.
# Sourced by ./ridgeproof, ./corpus/generate and ./inspector/calibration/calibrate, which set: program (its name) and home (the project).

state=$home/.ridgeproof
jar=$home/inspector/cli/target/cli-0.1.0-SNAPSHOT.jar
archive=$state/classes.jsa
. "$home/.launcher/java.sh"
spark_jar=$home/inspector/archive/target/archive-0.1.0-SNAPSHOT-spark.jar
spark_path=$home/inspector/archive/target/spark.classpath
spark_classes=$state/spark.jsa

fail() {
  echo "$program: $1" >&2
  exit 70
}

is_stale() {
  [ ! -f "$state/built" ] || [ ! -f "$jar" ] ||
    [ -n "$(find "$home/pom.xml" "$home"/*/pom.xml "$home"/*/*/pom.xml \
      "$home"/*/src/main "$home"/*/*/src/main -newer "$state/built" -print 2>/dev/null | head -n 1)" ]
}

build() {
  command -v mvn >/dev/null 2>&1 || fail "Maven is needed to build: install it, then try again"
  echo "$program: building, this happens once and after each change of the sources" >&2
  touch "$state/building"
  # Maven refuses to start with a JAVA_HOME that is none.
  [ -x "${JAVA_HOME:-/none}/bin/javac" ] || unset JAVA_HOME
  if ! (cd "$home" && mvn -B -q -ntp -DskipTests -Dspotless.check.skip -Djacoco.skip -pl inspector/cli,inspector/calibration -am package) \
    >"$state/build.log" 2>&1; then
    tail -n 15 "$state/build.log" >&2
    fail "the build failed; the whole log is in $state/build.log"
  fi
  make_archive "$java" "$jar" "$archive" "$home/docs/examples" "$state" "$home/.launcher/binary-records.an2" || true
  mv "$state/building" "$state/built"
}

prepare() {
  java=$(first_java "${JAVA_HOME:+$JAVA_HOME/bin/java}" java)
  [ -n "$java" ] || fail "a JDK 17 or newer is needed: install one, or set JAVA_HOME to it"

  if is_stale; then
    mkdir -p "$state" 2>/dev/null || fail "cannot write to $home, where the build has to go"
    if command -v flock >/dev/null 2>&1; then
      exec 9>"$state/lock"
      flock 9
      ! is_stale || build
      exec 9>&-
    else
      build
    fi
  fi

  use_utf8
}

# Builds what examines archives, on the first use of it and after each change; call it after prepare.
prepare_spark() {
  [ ! -f "$spark_jar" ] || [ ! "$spark_jar" -ot "$state/built" ] || rm -f "$spark_jar"
  if [ ! -f "$spark_jar" ] || [ ! -f "$spark_path" ]; then
    command -v mvn >/dev/null 2>&1 || fail "Maven is needed to build: install it, then try again"
    echo "$program: building for archives; the first time Apache Spark is downloaded, about 270 MB" >&2
    if ! (cd "$home" && mvn -B -q -ntp -P archive -DskipTests -Dspotless.check.skip -pl inspector/archive -am package) \
      >"$state/build-archive.log" 2>&1; then
      tail -n 15 "$state/build-archive.log" >&2
      fail "the build failed; the whole log is in $state/build-archive.log"
    fi
    keep_spark_classes || rm -f "$spark_classes"
  fi
}

# Runs Java with what archives need: spark_java OPTION-OR-ARGUMENT...
spark_java() {
  "$java" @"$home/inspector/archive/src/main/jvm/options" -XX:-UsePerfData \
    -cp "$spark_jar:$(cat "$spark_path")" "$@"
}

# Keeps the classes of a real run ready: half of what a small archive costs is the loading of Spark's.
keep_spark_classes() {
  rm -rf "$spark_classes" "$state/spark-run"
  mkdir -p "$state/spark-run"
  spark_java -XX:DumpLoadedClassList="$state/spark-run/classes.list" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 \
    ridgeproof.archive.ArchiveProgram --depth images --input "$home/docs/examples" --output "$state/spark-run/archive" \
    >/dev/null 2>&1 || return 1
  spark_java -Xshare:dump -XX:SharedClassListFile="$state/spark-run/classes.list" -XX:SharedArchiveFile="$spark_classes" \
    -XX:+UseSerialGC >"$state/spark-classes.log" 2>&1 || return 1
  rm -rf "$state/spark-run"
}

# Replaces this process by the examination of archives: start_spark ARGUMENT...
start_spark() {
  # With two cores or fewer threads that collect garbage beside each other only cost memory.
  collector=-XX:+UseParallelGC
  [ "$(getconf _NPROCESSORS_ONLN 2>/dev/null || echo 4)" -gt 2 ] || collector=-XX:+UseSerialGC
  set -- ridgeproof.archive.ArchiveProgram "$@"
  [ ! -f "$spark_classes" ] || set -- -XX:SharedArchiveFile="$spark_classes" -Xshare:auto -Xlog:disable "$@"
  exec "$java" @"$home/inspector/archive/src/main/jvm/options" -XX:-UsePerfData "$collector" \
    -cp "$spark_jar:$(cat "$spark_path")" "$@"
}

# Builds the project on first use and after each change of its sources, then starts a main class of it.
# Sourced by ./ridgeproof, ./corpus/generate and ./inspector/calibration/calibrate, which set: program (its name) and home (the project).

state=$home/.ridgeproof
jar=$home/inspector/cli/target/cli-0.1.0-SNAPSHOT.jar
archive=$state/classes.jsa
spark_jar=$home/inspector/archive/target/archive-0.1.0-SNAPSHOT-spark.jar
spark_path=$home/inspector/archive/target/spark.classpath

fail() {
  echo "$program: $1" >&2
  exit 70
}

# Prints the feature version of a java command, or nothing. The file beside it tells without starting it, which would cost
# a tenth of the time of a short command.
feature() {
  command=$(command -v "$1")
  command=$(readlink -f -- "$command" 2>/dev/null || echo "$command")
  release=${command%/bin/java}/release
  if [ -r "$release" ]; then
    while IFS= read -r line; do
      case $line in
        JAVA_VERSION=*)
          line=${line#JAVA_VERSION=\"}
          echo "${line%%[!0-9]*}"
          return
          ;;
      esac
    done <"$release"
  fi
  "$1" -version 2>&1 | sed -n 's/.* version "\([0-9]*\).*/\1/p' | head -n 1
}

find_java() {
  for candidate in "${JAVA_HOME:+$JAVA_HOME/bin/java}" java; do
    if [ -n "$candidate" ] && command -v "$candidate" >/dev/null 2>&1; then
      version=$(feature "$candidate")
      if [ -n "$version" ] && [ "$version" -ge 17 ] 2>/dev/null; then
        echo "$candidate"
        return
      fi
    fi
  done
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
  rm -f "$archive"
  # Later starts are quicker with the classes of two real runs kept ready, of a sound page and of files with faults. Not
  # by -XX:ArchiveClassesAtExit: methods that wait for the compiler when that run ends would be kept as waiting, and then
  # stay interpreted for ever (seen in 17.0.15).
  "$java" -XX:DumpLoadedClassList="$state/classes.list" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -jar "$jar" \
    examine --format html "$home/docs/examples/clean-flats.an2" >/dev/null 2>&1 || true
  "$java" -XX:DumpLoadedClassList="$state/faults.list" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -jar "$jar" \
    examine --depth structure "$home/docs/examples/date-turned-round.an2" "$home/docs/examples/length-off-by-one.an2" \
    >/dev/null 2>&1 || true
  awk '!seen[$0]++' "$state/classes.list" "$state/faults.list" >"$state/all.list"
  "$java" -Xshare:dump -XX:SharedClassListFile="$state/all.list" -XX:SharedArchiveFile="$archive" -XX:+UseSerialGC \
    -cp "$jar" >/dev/null 2>&1 || rm -f "$archive"
  mv "$state/building" "$state/built"
}

prepare() {
  java=$(find_java)
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

  # A JVM in a plain C locale could not open a file whose name is not ASCII.
  case "${LC_ALL:-${LC_CTYPE:-${LANG:-}}}" in
    *[Uu][Tt][Ff]*) ;;
    *) LC_ALL=C.UTF-8 && export LC_ALL ;;
  esac
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
  fi
}

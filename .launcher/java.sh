# How Ridgeproof is started: which Java, and with which flags. Sourced by the launchers of the project and of what is installed;
# inspector/distribution/src/main/dist/bin/ridgeproof.cmd says the same for Windows.

MIN_JAVA=17

# Prints the version of a java command, such as 17.0.15, or nothing. The file beside it tells without starting it, which would
# cost a tenth of the time of a short command.
version_of() {
  command=$(command -v "$1")
  command=$(readlink -f -- "$command" 2>/dev/null || echo "$command")
  release=${command%/bin/java}/release
  if [ -r "$release" ]; then
    while IFS= read -r line; do
      case $line in
        JAVA_VERSION=*)
          line=${line#JAVA_VERSION=\"}
          echo "${line%%\"*}"
          return
          ;;
      esac
    done <"$release"
  fi
  "$1" -version 2>&1 | sed -n 's/.* version "\([^"]*\)".*/\1/p' | head -n 1
}

# Prints the first of these commands that is a Java of that version or newer, or nothing.
first_java() {
  for candidate in "$@"; do
    if [ -n "$candidate" ] && command -v "$candidate" >/dev/null 2>&1; then
      version=$(version_of "$candidate")
      version=${version%%[!0-9]*}
      if [ -n "$version" ] && [ "$version" -ge "$MIN_JAVA" ] 2>/dev/null; then
        echo "$candidate"
        return
      fi
    fi
  done
}

# A JVM in a plain C locale could not open a file whose name is not ASCII.
use_utf8() {
  case "${LC_ALL:-${LC_CTYPE:-${LANG:-}}}" in
    *[Uu][Tt][Ff]*) ;;
    *) LC_ALL=C.UTF-8 && export LC_ALL ;;
  esac
}

# Replaces this process by Ridgeproof: start JAVA JAR ARCHIVE ARGUMENT...
start() {
  java=$1
  jar=$2
  archive=$3
  shift 3
  # For one file or two the thorough compiler costs more time than it saves; a folder or a demonstration earns it back.
  files=0
  folders=0
  for operand in "$@"; do
    [ ! -f "$operand" ] || files=$((files + 1))
    [ ! -d "$operand" ] || folders=$((folders + 1))
  done
  if [ "$folders" -eq 0 ] && [ "$files" -ge 1 ] && [ "$files" -le 2 ]; then
    set -- -XX:TieredStopAtLevel=1 -jar "$jar" "$@"
  else
    set -- -jar "$jar" "$@"
  fi
  # The JVM passes over what was kept by another Java or for another place; it would say so among the lines of a report. Moving
  # all of it to a random place at each start, and compiling ahead what a longer run needed, costs a short command more than it saves.
  cache=${archive%.jsa}.aot
  if [ -f "$cache" ]; then
    set -- -XX:AOTCache="$cache" "$@"
  elif [ -f "$archive" ]; then
    set -- -XX:SharedArchiveFile="$archive" -Xshare:auto "$@"
  fi
  set -- -Xlog:disable -XX:+IgnoreUnrecognizedVMOptions -XX:+UnlockDiagnosticVMOptions -XX:ArchiveRelocationMode=0 \
    -XX:-AOTReplayTraining "$@"
  exec "$java" -XX:+UseSerialGC -XX:-UsePerfData "$@"
}

# Keeps the classes of real runs ready, of a sound page, of files with faults and of one in binary records, so that later starts
# are quicker: make_archive JAVA JAR ARCHIVE EXAMPLES FOLDER BINARY. From Java 25 on also linked, in a file beside ARCHIVE that ends
# in .aot. Fails where this Java cannot. Not by -XX:ArchiveClassesAtExit: methods that wait for the compiler when that run ends
# would be kept as waiting, and then stay interpreted for ever (seen in 17.0.15).
make_archive() {
  cache=${3%.jsa}.aot
  rm -f "$3" "$cache"
  version=$(version_of "$1")
  if [ "${version%%[!0-9]*}" -ge 25 ] 2>/dev/null; then
    "$1" -XX:AOTCacheOutput="$cache" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -jar "$2" \
      examine "$4/clean-flats.an2" "$4/date-turned-round.an2" "$4/length-off-by-one.an2" "$6" >"$5/archive.log" 2>&1 || true
    [ ! -f "$cache" ] || return 0
  fi
  "$1" -XX:DumpLoadedClassList="$5/classes.list" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -jar "$2" \
    examine --format html "$4/clean-flats.an2" >/dev/null 2>&1 || true
  "$1" -XX:DumpLoadedClassList="$5/faults.list" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -jar "$2" \
    examine --depth structure "$4/date-turned-round.an2" "$4/length-off-by-one.an2" >/dev/null 2>&1 || true
  "$1" -XX:DumpLoadedClassList="$5/binary.list" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -jar "$2" \
    examine --depth structure "$6" >/dev/null 2>&1 || true
  # Newer ones number the classes of each run. Lambdas that look alike stand as often as a run has them.
  awk '/ source: / { next } { sub(/ id: [0-9]+$/, "") } !seen[$0, ++times[FILENAME, $0]]++' \
    "$5/classes.list" "$5/faults.list" "$5/binary.list" >"$5/all.list" || return 1
  "$1" -Xshare:dump -XX:SharedClassListFile="$5/all.list" -XX:SharedArchiveFile="$3" -XX:+UseSerialGC \
    -cp "$2" >"$5/archive.log" 2>&1 && return 0
  rm -f "$3"
  return 1
}

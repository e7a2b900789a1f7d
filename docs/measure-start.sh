#!/usr/bin/env bash
# How long from `java -jar` to the first page answered: five starts, each from an empty database, and their median.
# Plain first; then with Java's own start-up aids of quick-start.options, for which the archive of classes is made here, beside the jar.
# Build first: mvn package -DskipTests.  Use: docs/measure-start.sh [port]
set -euo pipefail
cd "$(dirname "$0")/.."
port=${1:-8080}
page=http://localhost:$port/
jar=target/proofcut-runner.jar
archive=target/proofcut.jsa
[ -f "$jar" ] || { echo "No $jar: run mvn package -DskipTests first." >&2; exit 1; }
if curl -s -o /dev/null "$page"; then
  echo "Something already answers at $page: stop it, or name another port." >&2
  exit 1
fi

work=$(mktemp -d)
server=
stop() {
  if [ -n "$server" ]; then
    kill "$server" 2>/dev/null || true
    wait "$server" 2>/dev/null || true
    server=
  fi
}
trap 'stop; rm -rf "$work"' EXIT

# Starts on an empty database with these options of Java's, and waits for the first page.
start() {
  rm -rf "$work/kept"
  java "$@" "-Dquarkus.http.port=$port" "-Dproofcut.folder=$work/kept" -jar "$jar" >"$work/log" 2>&1 &
  server=$!
  # Waits at the port itself: asking with a program every few milliseconds would take a good part of a core.
  until (exec 3<>"/dev/tcp/127.0.0.1/$port") 2>/dev/null; do
    if ! kill -0 "$server" 2>/dev/null; then
      server=
      echo "It did not start:" >&2
      tail -20 "$work/log" >&2
      exit 1
    fi
    sleep 0.02
  done
  curl -sf -L -o /dev/null "$page"
}

measure() {
  echo "java $* -jar $jar"
  times=()
  for turn in 1 2 3 4 5; do
    began=$(date +%s%N)
    start "$@"
    milliseconds=$((($(date +%s%N) - began) / 1000000))
    echo "  start $turn: $milliseconds ms"
    times+=("$milliseconds")
    stop
  done
  echo "  median: $(printf '%s\n' "${times[@]}" | sort -n | sed -n 3p) ms"
}

measure
rm -f "$archive"
start @docs/quick-start.options "-XX:ArchiveClassesAtExit=$archive" -XX:SharedArchiveFile=
stop
measure @docs/quick-start.options

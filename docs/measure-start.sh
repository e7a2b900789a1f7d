#!/usr/bin/env bash
# How long from `java -jar` to the first page answered: five starts, each from an empty database, and their median.
# Build first: mvn package -DskipTests.  Use: docs/measure-start.sh [port] [path of the page]
set -euo pipefail
cd "$(dirname "$0")/.."
port=${1:-8080}
page=http://localhost:$port${2:-/}
jar=target/quarkus-app/quarkus-run.jar
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

times=()
for start in 1 2 3 4 5; do
  began=$(date +%s%N)
  java "-Dquarkus.http.port=$port" "-Dquarkus.datasource.jdbc.url=jdbc:sqlite:$work/start-$start.db" -jar "$jar" >"$work/log" 2>&1 &
  server=$!
  until curl -sf -L -o /dev/null "$page"; do
    if ! kill -0 "$server" 2>/dev/null || [ $((($(date +%s%N) - began) / 1000000)) -gt 60000 ]; then
      echo "No page at $page after start $start:" >&2
      tail -20 "$work/log" >&2
      exit 1
    fi
    sleep 0.01
  done
  milliseconds=$((($(date +%s%N) - began) / 1000000))
  echo "start $start: $milliseconds ms"
  times+=("$milliseconds")
  stop
done
echo "median: $(printf '%s\n' "${times[@]}" | sort -n | sed -n 3p) ms"

#!/usr/bin/env bash
# Microseconds a set-up, by JMH, on one core. Arguments go to JMH: -l lists, a name runs one alone.
set -euo pipefail
cd "$(dirname "$0")/.."
mvn -B -q test-compile dependency:build-classpath -Dmdep.outputFile=target/test-classpath.txt
one_core=()
command -v taskset > /dev/null && one_core=(taskset -c 0)
"${one_core[@]}" java -cp "target/classes:target/test-classes:$(cat target/test-classpath.txt)" \
  org.openjdk.jmh.Main -f 1 -wi 3 -w 1 -i 5 -r 1 "$@"

#!/usr/bin/env bash
# How long the whole plan of the demo job takes, warm, on one core.
set -euo pipefail
cd "$(dirname "$0")/.."
mvn -B -q test-compile dependency:build-classpath -Dmdep.outputFile=target/test-classpath.txt
one_core=()
command -v taskset > /dev/null && one_core=(taskset -c 0)
"${one_core[@]}" java -cp "target/classes:target/test-classes:$(cat target/test-classpath.txt)" \
  org.proofcut.bench.PlanTiming

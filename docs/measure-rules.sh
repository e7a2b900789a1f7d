#!/usr/bin/env bash
# How long it takes to judge a job's operations by all rules, by JMH, on one core: a table of
# milliseconds a job and nanoseconds a rule and operation. 0 rules stands for ours, as many as
# there are. Arguments go to JMH.
set -euo pipefail
cd "$(dirname "$0")/.."
mvn -B -q test-compile dependency:build-classpath -Dmdep.outputFile=target/test-classpath.txt
one_core=()
command -v taskset > /dev/null && one_core=(taskset -c 0)
"${one_core[@]}" java -cp "target/classes:target/test-classes:$(cat target/test-classpath.txt)" \
  org.openjdk.jmh.Main RulesBenchmark -f 1 -wi 8 -w 1 -i 5 -r 1 -rf csv -rff target/rules.csv "$@"
ours=$(find content/safety -name '*.yaml' ! -name '*.cases.yaml' ! -path '*/limits/*' ! -path '*/none-here/*' | wc -l)
echo
echo "| rules | operations | ms | ± ms | ns a rule and operation |"
echo "| ---: | ---: | ---: | ---: | ---: |"
tr -d '"\r' < target/rules.csv | awk -F, -v ours="$ours" 'NR > 1 {
  rules = $9 == 0 ? ours : $9
  printf "| %d | %d | %.3f | %.3f | %.0f |\n", rules, $8, $5 / 1000, $6 / 1000, $5 * 1000 / rules / $8
}' | sort -t'|' -k2,2n -k3,3n

#!/usr/bin/env bash
# How long it takes to plan where gear lives, and how good the plan is, by JMH: thirty and sixty
# things in five shops each. Seconds by the clock and of processors, the cost, the least that was
# proven, the gap between them. The first plan of a program, with the solver's library unpacked, is
# told apart from the second. Arguments go to JMH.
set -euo pipefail
cd "$(dirname "$0")/.."
mvn -B -q test-compile dependency:build-classpath -Dmdep.outputFile=target/test-classpath.txt
uptime
java -cp "target/classes:target/test-classes:$(cat target/test-classpath.txt)" \
  org.openjdk.jmh.Main StorageBenchmark -f 1 -wi 0 -i 2 "$@" | tee target/storage.txt
uptime
echo
echo "| things | shop | plan | s | CPU s | left over | cost | proven least | gap |"
echo "| ---: | ---: | --- | ---: | ---: | ---: | ---: | ---: | ---: |"
awk '
  /^# Parameters:/ { match($0, /shop = [0-9]+/); shop = substr($0, RSTART + 7, RLENGTH - 7)
                     match($0, /things = [0-9]+/); things = substr($0, RSTART + 9, RLENGTH - 9) }
  /^Iteration/ { plan = $2 == "1:" ? "first" : "next"; seconds = $3 / 1000 }
  /^ +bound:/ { bound = $2 } /^ +cost:/ { cost = $2 } /^ +cpuMillis:/ { cpu = $2 / 1000 }
  /^ +without:/ {
    gap = bound > 0 ? sprintf("%.1f %%", 100 * (cost - bound) / cost) : "not known"
    printf "| %d | %d | %s | %.1f | %.1f | %d | %d | %d | %s |\n", things, shop, plan, seconds,
      cpu, $2, cost, bound, gap }' target/storage.txt

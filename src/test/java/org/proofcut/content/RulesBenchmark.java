package org.proofcut.content;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.infra.Blackhole;
import org.proofcut.core.safety.StepFacts;
import org.proofcut.rulebook.CelRulebook;
import org.proofcut.rulebook.Rule;

/**
 * Milliseconds to judge all operations of a job by all rules. Rules beyond ours are ours again, in
 * turn, so that there is of each kind what there is of it among ours. Run by {@code
 * docs/measure-rules.sh}.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class RulesBenchmark {

  /** 0 stands for ours, as many as there are. */
  @Param({"0", "133", "500", "1000", "2000"})
  int rules;

  @Param({"10", "20", "40"})
  int operations;

  private CelRulebook book;
  private List<StepFacts> steps;

  /** Steps of our cases, evenly out of all, as a job with every kind of cut would have them. */
  @Setup
  public void make() {
    var content = Content.bundled();
    var ours = content.rulebook().rules();
    var many = new ArrayList<Rule>();
    for (int n = 0; n < (rules == 0 ? ours.size() : rules); n++) {
      many.add(called(n, ours.get(n % ours.size())));
    }
    book = new CelRulebook(content.rulebook().vocabulary(), many);
    var all = StepsForTests.ofOurCases(content);
    steps = new ArrayList<>();
    for (int n = 0; n < operations; n++) {
      steps.add(all.get(n * all.size() / operations));
    }
  }

  private static Rule called(int number, Rule rule) {
    return new Rule(
        rule.id() + "-" + number,
        rule.was(),
        rule.operations(),
        rule.machines(),
        rule.regions(),
        rule.when(),
        rule.effect(),
        rule.harm(),
        rule.word(),
        rule.hazard(),
        rule.controls(),
        rule.gear(),
        rule.checks(),
        rule.at(),
        rule.grounds());
  }

  @Benchmark
  public void job(Blackhole judged) {
    for (var step : steps) {
      judged.consume(book.judge(step));
    }
  }
}

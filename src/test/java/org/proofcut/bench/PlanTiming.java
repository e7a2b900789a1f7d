package org.proofcut.bench;

import java.util.Arrays;
import java.util.Locale;
import org.proofcut.core.intake.Demo;
import org.proofcut.core.intake.JobForm;

/**
 * How long the whole plan of the demo job takes, warm. A program and not a test, because a time
 * says something about the machine that it was taken on: {@code docs/measure-plan.sh} runs it.
 */
public final class PlanTiming {

  private static final int WARM_UP = 400;
  private static final int RUNS = 200;

  private PlanTiming() {}

  public static void main(String[] arguments) {
    var planner = DemoJobTest.planner();
    var shop = DemoJobTest.shop();
    var typed = Demo.job();
    long sheets = 0;
    for (int i = 0; i < WARM_UP; i++) {
      sheets += planner.plan(JobForm.read(typed).value().orElseThrow(), shop).sheets().size();
    }
    var micros = new long[RUNS];
    for (int i = 0; i < RUNS; i++) {
      long start = System.nanoTime();
      sheets += planner.plan(JobForm.read(typed).value().orElseThrow(), shop).sheets().size();
      micros[i] = (System.nanoTime() - start) / 1000;
    }
    Arrays.sort(micros);
    System.out.printf(
        Locale.ROOT,
        "whole plan of the demo job, %d sheets, %d runs after %d to warm up:%n"
            + "median %.2f ms, 95th of 100 %.2f ms, slowest %.2f ms%n",
        sheets / (WARM_UP + RUNS),
        RUNS,
        WARM_UP,
        micros[RUNS / 2] / 1000.0,
        micros[RUNS * 95 / 100] / 1000.0,
        micros[RUNS - 1] / 1000.0);
  }
}

package org.proofcut.solver;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.proofcut.core.storage.Placer.Effort;
import org.proofcut.core.storage.ShopCabinets;
import org.proofcut.core.storage.StoragePlan;
import org.proofcut.core.storage.StoragePlanner;
import org.proofcut.core.storage.StorageTask;

/**
 * Seconds a plan of a shop's gear, and how good it is. Processor time is counted beside, for a busy
 * machine. Run by {@code docs/measure-storage.sh}.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class StorageBenchmark {

  /** What there is to be told of a plan besides its time. */
  @State(Scope.Thread)
  @AuxCounters(AuxCounters.Type.EVENTS)
  public static class Told {
    public long cpuMillis;
    public long without;
    public long cost;
    public long bound;
  }

  @Param({"30", "60"})
  int things;

  @Param({"1", "2", "3", "4", "5"})
  long shop;

  private final ProvingPlacer placer = new ProvingPlacer();
  private final OperatingSystemMXBean machine =
      (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
  private StorageTask task;
  private StoragePlan plan;
  private long before;

  @Setup(Level.Iteration)
  public void make() {
    task = things == 30 ? ShopCabinets.thirty(shop) : ShopCabinets.sixty(shop);
    before = machine.getProcessCpuTime();
  }

  @Benchmark
  public StoragePlan plan() {
    plan = StoragePlanner.plan(task, placer, things == 30 ? Effort.PLAN : Effort.LONG);
    return plan;
  }

  /** Counted after the time is taken. */
  @TearDown(Level.Iteration)
  public void tell(Told told) {
    told.cpuMillis = TimeUnit.NANOSECONDS.toMillis(machine.getProcessCpuTime() - before);
    told.without = plan.without().size();
    told.cost = plan.cost();
    told.bound = plan.bound();
  }
}

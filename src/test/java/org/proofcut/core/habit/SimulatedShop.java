package org.proofcut.core.habit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.proofcut.core.casework.CasesForTests;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.fit.SlotFit;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.readings.Readings;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.CutSimulation;
import org.proofcut.core.setup.Measure;
import org.proofcut.core.setup.RouterTableSetup;
import org.proofcut.core.setup.SawSetup;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.setup.ShopsForTests;
import org.proofcut.core.setup.Work;
import org.proofcut.core.shop.StraightCutter;

/**
 * A shop whose cutter and scales have a truth that nobody in it knows. It sets what a sheet says,
 * cuts, and reads a caliper; it knows nothing of how anyone learns from that. All figures are ours:
 * plausible, not measured in a shop.
 */
final class SimulatedShop {

  /**
   * A kind of shop, in millimetres. What is off is drawn once for each shop; what scatters, for
   * each set-up or reading.
   *
   * @param cutterUnder by how much its cutters are under their mark, on the average
   * @param cutterOff how that differs from shop to shop
   * @param scaleOff how fence and height scales are off, from shop to shop
   * @param scatter how a setting scatters each time it is made
   * @param bungled share of set-ups in which a chip lies at the fence, or the like
   */
  record Kind(
      String words,
      boolean saw,
      double cutterUnder,
      double cutterOff,
      double scaleOff,
      double scatter,
      double bungled) {}

  private static final double CALIPER = 0.015;
  private static final double STRIP = 0.01;
  private static final double WOOD = 0.01;
  private static final StraightCutter MARKED = ShopsForTests.SIXTEEN;

  private final Kind kind;
  private final Random chance;
  private final double cutterOff;
  private final double fenceOff;
  private final double heightOff;

  SimulatedShop(Kind kind, long seed) {
    this.kind = kind;
    this.chance = new Random(seed);
    this.cutterOff = normal(-kind.cutterUnder, kind.cutterOff);
    this.fenceOff = normal(0, kind.scaleOff);
    this.heightOff = normal(0, kind.scaleOff);
  }

  /** The set-up for the next job, for a cutter believed to cut so wide. */
  Setup next(Length cutWidth) {
    return kind.saw ? rip() : slot(cutWidth);
  }

  ProofCut proof(Setup setup) {
    return new ProofCut(setup);
  }

  private Setup slot(Length cutWidth) {
    double sheet = normal(17.7, 0.1);
    // Between the readings of one sheet; more than 0.2 mm, and no width would serve.
    var readings =
        Stream.generate(() -> length(sheet + 0.12 * (chance.nextDouble() - 0.5))).limit(4).toList();
    var fit = SlotFit.of(new Readings("sheet", readings), CasesForTests.FIT);
    var distance = CasesForTests.mm(40 + chance.nextInt(300));
    var asked =
        new CutAsked.Slot(
            fit.target(),
            fit.accepted().orElseThrow(),
            Worked.entered("depth", CasesForTests.mm(6)),
            Worked.entered("distance", distance),
            new Work(at(700), at(900), at(18)));
    var cutter =
        new StraightCutter(
            MARKED.id(),
            MARKED.name(),
            cutWidth,
            MARKED.cuttingLength(),
            MARKED.edges(),
            MARKED.shank(),
            MARKED.markedTopSpeed());
    var answer =
        RouterTableSetup.slot(asked, ShopsForTests.TABLE, cutter, ShopsForTests.CONDITIONS);
    // Now and then a sheet varies so much that no strip can be cut fine enough: another job, then.
    return answer instanceof Setup setup ? setup : slot(cutWidth);
  }

  private Setup rip() {
    var asked =
        new CutAsked.Parting(
            Worked.entered("size", CasesForTests.mm(150 + chance.nextInt(450))),
            true,
            true,
            new Work(at(900), at(700), at(18)));
    return (Setup)
        SawSetup.table(asked, ShopsForTests.SAW, ShopsForTests.RIP_BLADE, ShopsForTests.CONDITIONS);
  }

  /** A proof cut as it stands on the sheet, and what the caliper finds on it. */
  final class ProofCut {

    private final double bungle = bungle();
    private final double fence = normal(fenceOff, kind.scatter) + bungle;
    private final double height = normal(heightOff, kind.scatter);
    private final double strip = normal(0, STRIP);
    private final Setup setup;
    private final Optional<CutSimulation> wood;

    private ProofCut(Setup setup) {
      this.setup = setup;
      this.wood = kind.saw ? Optional.empty() : Optional.of(routed());
    }

    private CutSimulation routed() {
      var truth =
          new CutSimulation.Truth(
              Length.ofMicrometres(Math.round(1000 * (16 + cutterOff + strip))),
              Length.ofMicrometres(Math.round(1000 * fence)),
              Length.ofMicrometres(Math.round(1000 * height)));
      return CutSimulation.cut(setup, CasesForTests.mm(900), truth).wood();
    }

    List<Length> found(Measure measure) {
      double really = really(measure);
      var readings = new ArrayList<Length>();
      for (int i = 0; i < measure.readings(); i++) {
        readings.add(length(really + normal(0, WOOD) + normal(0, CALIPER)));
      }
      return readings;
    }

    /** Whether the maker finds a reason when asked about this. */
    boolean isBungled(boolean guide) {
      return guide && bungle != 0;
    }

    private double really(Measure measure) {
      return switch (measure.dimension()) {
        case WIDTH -> millimetres(wood.orElseThrow().width());
        case DEPTH -> millimetres(wood.orElseThrow().deepest());
        case DISTANCE -> millimetres(wood.orElseThrow().nearWall());
        case SIZE -> millimetres(setup.settings().get(0).set().value()) + fence;
        case DIAMETER, FROM_END -> throw new AssertionError("this shop bores nothing");
        case RUN_ACROSS, RUN_THROUGH, RUN_ALONG ->
            throw new AssertionError("no angle is simulated: " + measure.dimension());
      };
    }
  }

  private double bungle() {
    if (chance.nextDouble() >= kind.bungled) {
      return 0;
    }
    return (chance.nextBoolean() ? 1 : -1) * (0.5 + 1.5 * chance.nextDouble());
  }

  private double normal(double mean, double deviation) {
    return mean + deviation * chance.nextGaussian();
  }

  private static double millimetres(Length length) {
    return length.picometres() / 1e9;
  }

  /** As a caliper shows it: to 0.01 mm. */
  private static Length length(double millimetres) {
    return Length.ofMicrometres(Math.round(1000 * millimetres))
        .roundedTo(Length.ofMicrometres(10), Rounding.NEAREST);
  }

  private static Band at(long millimetres) {
    return new Band(CasesForTests.mm(millimetres), CasesForTests.mm(millimetres));
  }
}

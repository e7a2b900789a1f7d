package org.proofcut.content;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.content.yaml.Located;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.AirLimit;
import org.proofcut.core.exposure.DustBook;
import org.proofcut.core.exposure.ExtractionLimits;
import org.proofcut.core.exposure.MachineDust;
import org.proofcut.core.exposure.Mask;
import org.proofcut.core.exposure.PanelMark;
import org.proofcut.core.exposure.Wood;

/**
 * What {@code stock} and {@code exposure} say of dust, as the core takes it. Where a limit or a
 * mask holds is where its source does.
 */
record DustReader(
    Map<String, Wood> woods,
    Map<String, MachineDust> machines,
    Map<String, AirLimitEntry> limits,
    Map<String, MaskEntry> masks,
    Map<String, PanelMark> marks) {

  static final String AIR_LIMITS = "exposure/air-limits.yaml";

  /** A limit as it stands in a file. */
  record AirLimitEntry(
      String id,
      String name,
      AirLimit.Substance of,
      List<Located<String>> woods,
      Amount most,
      AirLimit.Span over,
      AirLimit.Fraction fraction,
      Optional<String> above,
      Because because) {

    /** Refuses what can be no limit while its place is known. */
    AirLimitEntry {
      limit(id, name, of, woods, most, over, fraction, above, because);
    }

    private AirLimit limit() {
      return limit(id, name, of, woods, most, over, fraction, above, because);
    }

    private static AirLimit limit(
        String id,
        String name,
        AirLimit.Substance of,
        List<Located<String>> woods,
        Amount most,
        AirLimit.Span over,
        AirLimit.Fraction fraction,
        Optional<String> above,
        Because because) {
      return new AirLimit(
          id,
          of,
          woods.stream().map(Located::value).toList(),
          Worked.given(name, most, because.citation()),
          over,
          fraction,
          above,
          because.regions());
    }
  }

  /** A mask as it stands in a file. */
  record MaskEntry(String id, String name, int factor, boolean seals, Because because) {

    /** Refuses what can be no mask while its place is known. */
    MaskEntry {
      mask(id, name, factor, seals, because);
    }

    private Mask mask() {
      return mask(id, name, factor, seals, because);
    }

    private static Mask mask(String id, String name, int factor, boolean seals, Because because) {
      return new Mask(
          id,
          name,
          Worked.given("protection factor of a " + name, factor, because.citation()),
          seals,
          because.regions());
    }
  }

  DustBook book(Optional<ExtractionLimits> figures) {
    return new DustBook(
        woods,
        machines,
        limits.values().stream().map(AirLimitEntry::limit).toList(),
        masks.values().stream().map(MaskEntry::mask).toList(),
        List.copyOf(marks.values()),
        figures);
  }
}

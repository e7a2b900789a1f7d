package org.proofcut.core.casework;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.part.Housing;

/**
 * A length that is measured or struck on the case while it is put together.
 *
 * @param from between which two things it is measured, in words
 */
public record CaseFigure(String name, String from, Worked<Length> value) {

  /** What the case measures over everything when every part sits on the floor of its housing. */
  public static List<CaseFigure> outside(Case made) {
    var side = made.part("left-side");
    return List.of(
        new CaseFigure("Width", "over both sides, at the front, above and below", width(made)),
        new CaseFigure("Height", "of each side, from end to end", side.length()),
        new CaseFigure("Depth", "of each side, from edge to edge", side.width()));
  }

  private static Worked<Length> width(Case made) {
    var bottom = made.part("bottom").length();
    var left = leftBehind(made, "left-side");
    var right = leftBehind(made, "right-side");
    return Worked.called("width over both sides")
        .by("length of the bottom + what its dados leave of both sides")
        .with("length of the bottom", bottom)
        .with("left side, behind the dado", left)
        .with("right side, behind the dado", right)
        .is(bottom.value().plus(left.value()).plus(right.value()));
  }

  private static Worked<Length> leftBehind(Case made, String side) {
    var part = made.part(side);
    var thickness = part.sheet().thickness().mean();
    var depth = made.housing(side + ":bottom").depth();
    return Worked.called("what the dado leaves of the " + part.name())
        .by("thickness − depth of the dado")
        .with("thickness", thickness)
        .with("depth of the dado", depth)
        .is(thickness.value().minus(depth.value()));
  }

  /**
   * Where the screws of housed parts go: over the middle of each housing, struck on the outside of
   * both sides. Common practice.
   */
  public static List<CaseFigure> screwLines(Case made) {
    var lines = new ArrayList<CaseFigure>();
    made.housingsIn("left-side").stream()
        .filter(housing -> housing.kind() != Housing.Kind.EDGE_RABBET)
        .sorted(
            Comparator.comparing((Housing housing) -> housing.kind())
                .thenComparing(d -> d.distance().value()))
        .forEach(housing -> lines.add(screwLine(made, housing)));
    return lines;
  }

  private static CaseFigure screwLine(Case made, Housing housing) {
    var into = made.part(housing.entering()).name();
    return new CaseFigure(
        "Screw line, " + into,
        "on the outside of both sides, from the " + housing.reference().words(),
        Worked.called("screw line for the " + into)
            .by("distance of the housing + half its width")
            .with("distance of the housing", housing.distance())
            .with("width of the housing", housing.width())
            .from(Citation.COMMON_PRACTICE)
            .is(housing.distance().value().plus(housing.width().value().half())));
  }
}

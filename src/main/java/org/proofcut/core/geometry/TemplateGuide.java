package org.proofcut.core.geometry;

import java.util.ArrayList;
import java.util.List;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.display.Scale;

/**
 * A guide bush that runs along a template while the cutter works inside it. Bush and cutter share
 * their axis, so the cut keeps {@code (bush − cutter) ÷ 2} away from the template everywhere.
 *
 * @param bush outside diameter of the bush's collar
 * @param bore inside diameter of the collar
 * @param cutter diameter of the cutter
 */
public record TemplateGuide(Worked<Length> bush, Worked<Length> bore, Worked<Length> cutter) {

  public TemplateGuide {
    for (var one : List.of(bush, bore, cutter)) {
      one.value().requirePositive(one.name());
    }
  }

  /** From the template's edge to the cut. */
  public Worked<Length> offset() {
    return Worked.called("offset from the template to the cut")
        .by("(bush − cutter) ÷ 2")
        .with("bush", bush)
        .with("cutter", cutter)
        .is(bothSides().half());
  }

  /** A template's opening for a recess or mortise of this size; the cut is smaller than it. */
  public Worked<Length> opening(Worked<Length> recess) {
    return Worked.called("opening of the template")
        .by("recess + bush − cutter")
        .with("recess", recess)
        .with("bush", bush)
        .with("cutter", cutter)
        .is(recess.value().plus(bothSides()));
  }

  /**
   * A template to cut round for a piece of this size; the piece comes out larger than it.
   *
   * @throws IllegalArgumentException if {@link #problemsOfPiece} stops it
   */
  public Worked<Length> outline(Worked<Length> piece) {
    return Worked.called("size of the template")
        .by("piece − (bush − cutter)")
        .with("piece", piece)
        .with("bush", bush)
        .with("cutter", cutter)
        .is(piece.value().minus(bothSides()).requirePositive("size of the template"));
  }

  /** Tightest inside corner that the cut can have: the cutter's own. */
  public Worked<Length> leastInsideRadius() {
    return Worked.called("least radius of an inside corner in the cut")
        .by("cutter ÷ 2")
        .with("cutter", cutter)
        .is(cutter.value().half());
  }

  /** An inside corner of the template that is tighter than this keeps the bush out of it. */
  public Worked<Length> leastTemplateRadius() {
    return Worked.called("least radius of an inside corner in the template")
        .by("bush ÷ 2")
        .with("bush", bush)
        .is(bush.value().half());
  }

  /**
   * A sharp outside corner of the template comes out round by this much: the bush rolls round it.
   */
  public Worked<Length> roundingOfSharpCorners() {
    return offset().as("radius that a sharp outside corner of the template leaves");
  }

  /** How far the cutter stands out of the router's base. */
  public Worked<Length> cutterOut(Worked<Length> template, Worked<Length> depth) {
    return Worked.called("cutter below the router's base")
        .by("template's thickness + depth of the cut")
        .with("template's thickness", template)
        .with("depth of the cut", depth)
        .is(template.value().plus(depth.value()));
  }

  /**
   * What is wrong with bush and cutter, or with the collar in the template; names {@code cutter} or
   * {@code template}.
   *
   * @param collar how far the bush stands out below the router's base
   * @param template thickness of the template
   */
  public List<Problem> problems(Length collar, Length template, LengthUnit unit) {
    var scale = Scale.caliper(unit);
    var problems = new ArrayList<Problem>();
    if (!bore.value().isLessThan(bush.value())) {
      problems.add(
          Problem.stops(
              "bore",
              "The bush is " + scale.show(bore.value()).text() + " inside",
              "less than it is outside, " + scale.show(bush.value()).text(),
              "Measure both with the caliper and enter them again"));
    }
    if (!cutter.value().isLessThan(bore.value())) {
      problems.add(
          Problem.stops(
              "cutter",
              "A cutter of "
                  + scale.show(cutter.value()).text()
                  + " does not turn free in a bush of "
                  + scale.show(bore.value()).text()
                  + " inside",
              "less than " + scale.show(bore.value()).text(),
              "Use a smaller cutter or a larger bush"));
    }
    if (!collar.isLessThan(template)) {
      problems.add(
          Problem.stops(
              "template",
              "The bush reaches " + scale.show(collar).text() + " down and would stand on the work",
              "a template thicker than " + scale.show(collar).text(),
              "Use a thicker template or a bush with a shorter collar"));
    }
    return problems;
  }

  /** What is wrong with a recess of this size; names {@code recess}. */
  public List<Problem> problemsOfRecess(Length recess, LengthUnit unit) {
    var least = cutter.value();
    if (recess.isAtLeast(least)) {
      return List.of();
    }
    var allowed = Scale.caliper(unit).show(least).text() + " or more";
    return List.of(tooSmall("recess", recess, allowed, "Use a smaller cutter", unit));
  }

  /** What is wrong with a piece of this size; names {@code piece}. */
  public List<Problem> problemsOfPiece(Length piece, LengthUnit unit) {
    if (piece.isGreaterThan(bothSides())) {
      return List.of();
    }
    var allowed = "more than " + Scale.caliper(unit).show(bothSides()).text();
    return List.of(
        tooSmall("piece", piece, allowed, "Use a bush nearer to the cutter's size", unit));
  }

  private static Problem tooSmall(
      String field, Length size, String allowed, String doThis, LengthUnit unit) {
    return Problem.stops(
        field,
        "A "
            + field
            + " of "
            + Scale.caliper(unit).show(size).text()
            + " is too small for this cutter and bush",
        allowed,
        doThis);
  }

  private Length bothSides() {
    return bush.value().minus(cutter.value());
  }
}

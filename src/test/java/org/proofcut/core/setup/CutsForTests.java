package org.proofcut.core.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.shop.StraightCutter;

/** Cuts in a side 400 × 900 of 17.7 mm, for a sheet that measures 17.66 to 17.78 mm. */
final class CutsForTests {

  static final Work SIDE = work("400 mm", "900 mm", "17.7 mm");

  private CutsForTests() {}

  static Work work(String along, String across, String thickness) {
    return new Work(at(along), at(across), at(thickness));
  }

  /** (17.66 + 17.78) ÷ 2 + 0.15 = 17.87 wide; 17.78 + 0.05 to 17.66 + 0.25 accepted. */
  static CutAsked.Slot slot(String depth, String distance, Work work) {
    return new CutAsked.Slot(
        entered("17.87 mm"), band("17.83 mm", "17.91 mm"), entered(depth), entered(distance), work);
  }

  /** A slot whose entering sheet varies by all that a fit allows: one width serves. */
  static CutAsked.Slot slotOfOneWidth(Work work) {
    return new CutAsked.Slot(
        entered("17.75 mm"),
        band("17.75 mm", "17.75 mm"),
        entered("6 mm"),
        entered("100 mm"),
        work);
  }

  /** (17.66 + 17.78 + 0.20) ÷ 2 = 17.82 wide; 17.78 to 17.66 + 0.20 accepted. */
  static CutAsked.Rabbet rabbet(Work work) {
    return new CutAsked.Rabbet(
        entered("17.82 mm"), band("17.78 mm", "17.86 mm"), entered("6 mm"), work);
  }

  static StraightCutter cutter(String diameter) {
    return ShopsForTests.straight("test", diameter);
  }

  static StraightCutter marked(StraightCutter cutter, int perMinute) {
    return new StraightCutter(
        cutter.id(),
        cutter.name(),
        cutter.diameter(),
        cutter.cuttingLength(),
        cutter.edges(),
        cutter.shank(),
        Optional.of(perMinute));
  }

  static Conditions withAids(String... aids) {
    var c = ShopsForTests.CONDITIONS;
    return new Conditions(c.limits(), List.of(aids), c.unit());
  }

  static Setup setup(Answer answer) {
    return assertInstanceOf(Setup.class, answer, answer::toString);
  }

  static void assertRefused(Refusal.Reason reason, Answer answer) {
    var refusal = assertInstanceOf(Refusal.class, answer, answer::toString);
    assertEquals(reason, refusal.reason(), refusal.what());
  }

  static void assertSet(String expected, Setting.Role role, Setup setup) {
    assertEquals(Length.of(expected), setup.setting(role).orElseThrow().set().value());
  }

  static void assertPass(
      Pass pass, boolean stripOn, String depth, String from, String to, Pass.Engages engages) {
    assertEquals(stripOn, pass.stripOn(), "strip");
    assertEquals(Length.of(depth), pass.depth().value(), "depth");
    assertEquals(band(from, to), pass.takes());
    assertEquals(engages, pass.engages());
  }

  static List<String> depths(Setup setup) {
    return setup.passes().stream()
        .map(pass -> (pass.stripOn() ? "on " : "off ") + pass.depth().value())
        .toList();
  }

  static Worked<Length> entered(String length) {
    return Worked.entered("as asked", Length.of(length));
  }

  static Band at(String length) {
    return band(length, length);
  }

  static Band band(String least, String most) {
    return new Band(Length.of(least), Length.of(most));
  }
}

package org.proofcut.web.dust;

import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.proofcut.bench.DustDraft;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.AirLimit;
import org.proofcut.core.exposure.DustAnswer;
import org.proofcut.core.exposure.DustBook;
import org.proofcut.core.exposure.DustEffect;
import org.proofcut.core.exposure.Hood;
import org.proofcut.core.exposure.Mask;
import org.proofcut.core.exposure.PanelMark;
import org.proofcut.core.exposure.Wood;
import org.proofcut.web.part.WorkingLine;

/**
 * What dust comes to, in words.
 *
 * @param verdict in one line
 * @param region where the shop stands
 * @param strength how much fine dust such a machine makes
 * @param hood where such a machine is drawn off
 * @param air the airflow that is needed and the one that is there
 * @param counted what the mix counts as, and why
 * @param here limits where the shop stands
 * @param elsewhere limits of other places
 * @param above what the sources of those here say of breathing more
 * @param heldTo the limit that masks are reckoned by
 * @param woods what each wood's dust does
 * @param todo what to do about that
 * @param mask the mask in words
 * @param vapour limits of formaldehyde; none where nothing is glued
 * @param marks that stand on panels
 */
record DustReads(
    String verdict,
    String region,
    String strength,
    String hood,
    Air air,
    String counted,
    List<Limit> here,
    List<Limit> elsewhere,
    List<String> above,
    String heldTo,
    List<Of> woods,
    List<String> todo,
    Worn mask,
    List<Limit> vapour,
    List<PanelMark> marks) {

  /** One limit in words. */
  record Limit(String name, String value, String source) {}

  /** What one wood's dust does. */
  record Of(String name, String counts, List<Does> does) {}

  /** One thing that it does. */
  record Does(String what, String source) {}

  /**
   * The extraction in words.
   *
   * @param needed the airflow
   * @param opening what it is needed through, and how fast
   * @param there what is there, with how fast that is
   * @param word for the stamp; empty where nothing is known to judge
   * @param means what that comes to
   * @param keeps what so much air does and does not do
   */
  record Air(
      String needed,
      String opening,
      List<WorkingLine> working,
      String there,
      List<WorkingLine> thereWorking,
      boolean enough,
      String word,
      String means,
      String keeps,
      String doThis) {}

  /** The mask in words. */
  record Worn(String name, String why, boolean seals, List<WorkingLine> working) {}

  static DustReads of(DustAnswer answer, DustDraft draft, DustBook book) {
    var region = draft.region();
    var machine = book.machines().get(draft.typed().get("machine"));
    var mask = mask(answer, draft);
    var air = air(answer, draft);
    return new DustReads(
        "Airflow " + air.needed() + " · " + mask.name(),
        region.name(),
        "A %s makes %s fine dust in this."
            .formatted(machine.name(), answer.strength().value().words()),
        machine.hood(),
        air,
        counted(answer),
        answer.here().stream().map(one -> limit(one, book)).toList(),
        answer.elsewhere().stream().map(one -> limit(one, book)).toList(),
        answer.here().stream()
            .filter(one -> isReached(one, draft, answer))
            .flatMap(one -> one.above().stream())
            .toList(),
        answer.heldTo().map(one -> heldTo(one, answer)).orElse(""),
        answer.woods().stream().map(wood -> of(wood, book)).toList(),
        todo(answer),
        mask,
        answer.hasPanel()
            ? book.formaldehydeLimits(region.id()).stream()
                .map(one -> vapour(one, region.id()))
                .toList()
            : List.of(),
        book.marks());
  }

  static String names(Collection<Wood> woods) {
    return woods.stream().map(Wood::name).collect(Collectors.joining("; "));
  }

  /** Where nothing was measured nobody knows that it is not. */
  private static boolean isReached(AirLimit limit, DustDraft draft, DustAnswer answer) {
    return answer
        .mask()
        .filter(Mask.Need.ByStrength.class::isInstance)
        .map(none -> true)
        .orElseGet(() -> answer.isOver(limit));
  }

  private static String counted(DustAnswer answer) {
    return switch (answer.counted()) {
      case SOFTWOOD_DUST -> "All of it is softwood, and counts as that.";
      case HARDWOOD_DUST, WOOD_DUST, ANY_DUST, FORMALDEHYDE ->
          "It counts as hardwood dust: any hardwood in a mixture makes it so, and a panel of unknown"
              + " make-up counts as hardwood.";
    };
  }

  private static Limit limit(AirLimit limit, DustBook book) {
    var only =
        limit.woods().isEmpty()
            ? ""
            : limit.woods().stream()
                .map(id -> book.woods().get(id).name())
                .collect(Collectors.joining(", ", " (", ")"));
    return new Limit(
        limit.of().words() + only,
        limit.most().value().text() + " " + limit.fraction().words() + ", " + limit.over().words(),
        limit.most().source().text());
  }

  private static Limit vapour(AirLimit limit, String region) {
    return new Limit(
        limit.isOf(region) ? "formaldehyde, here" : "formaldehyde, elsewhere",
        limit.most().value().text() + ", " + limit.over().words(),
        limit.above().map(words -> words + " ").orElse("") + limit.most().source().text());
  }

  private static String heldTo(AirLimit limit, DustAnswer answer) {
    return by(limit, answer) + limit.most().value().text() + ".";
  }

  private static String by(AirLimit limit, DustAnswer answer) {
    if (answer.here().contains(limit)) {
      return "Masks are reckoned by the lowest that holds here, law or advice: ";
    }
    return limit.woods().isEmpty()
        ? "No limit for such dust is known to us here. Masks are reckoned by the lowest printed"
            + " anywhere: "
        : "Masks are reckoned by what is printed for this very wood, though elsewhere: ";
  }

  private static Of of(Wood wood, DustBook book) {
    var does =
        wood.effects().stream()
            .map(
                effect ->
                    new Does(
                        "Its dust "
                            + effect.does().words()
                            + (effect.on().isEmpty()
                                ? ""
                                : effect.on().stream()
                                    .map(Wood.Site::words)
                                    .collect(Collectors.joining(", ", ": ", "")))
                            + ". "
                            + effect.does().means(),
                        effect.because().text()))
            .toList();
    return new Of(
        wood.name(),
        "counts as "
            + wood.countsAs().words()
            + wood.gravity()
                .map(one -> "; " + one.name() + " " + one.value().toPlainString())
                .orElse(""),
        does);
  }

  private static List<String> todo(DustAnswer answer) {
    return Stream.concat(
            Stream.of("Any wood dust stings and harms the lungs, whatever stands here."),
            answer.effects().stream().map(DustReads::todo))
        .toList();
  }

  private static String todo(DustEffect effect) {
    return switch (effect) {
      case IRRITANT -> "Irritant: cover the arms, wash before you rub your eyes.";
      case SENSITISER ->
          "Sensitiser: stop at the first wheeze or rash, and see a doctor before you cut it again.";
      case CARCINOGEN ->
          "Hardwood dust can cause cancer of the nose: keep as far below the limit as you can.";
      case TOXIC -> "Poisonous: no food or drink in the shop, and nothing of it that holds food.";
    };
  }

  private static Air air(DustAnswer answer, DustDraft draft) {
    var air = answer.air();
    var opening =
        air.usual() ? "through the port that such a machine usually has" : "through your opening";
    var there =
        air.there()
            .map(flow -> flow.value().text() + ": " + air.reached().orElseThrow().value().text())
            .orElse(air.drawnOff() ? "not known" : "nothing");
    return new Air(
        air.needed().value().text(),
        opening + ", at " + air.velocity().value().text(),
        DustPage.working(air.needed(), draft),
        there,
        air.reached().map(reached -> DustPage.working(reached, draft)).orElse(List.of()),
        air.enough(),
        air.there().isPresent() ? (air.enough() ? "Enough" : "Too little") : "",
        means(air),
        air.hood() instanceof Hood.Round
            ? "So much keeps chips and dust moving in the duct. What flies past its mouth it does"
                + " not catch."
            : "So much catches what is thrown at the mouth of the hood. What flies past it stays in"
                + " the room.",
        "What is marked on an extractor was measured with clean filter and no hose. Measure at the"
            + " opening, and believe that.");
  }

  private static String means(DustAnswer.Air air) {
    if (air.there().isEmpty()) {
      return air.drawnOff()
          ? "Nobody knows whether it is enough."
          : "All the dust stays in the room.";
    }
    if (!air.enough()) {
      return "Dust and chips are left lying at this opening.";
    }
    return "The air is fast enough"
        + (air.usual()
            ? ", where the port is of the usual size: measure yours."
            : " at this opening.");
  }

  private static Worn mask(DustAnswer answer, DustDraft draft) {
    var need = answer.mask().orElse(null);
    if (need instanceof Mask.Need.None none) {
      return new Worn(
          "no stronger mask than the machine asks for",
          "What was measured is no more than the limit. The mask asked for at the machine stays on"
              + " all the same: a measurement is of one day.",
          false,
          DustPage.working(none.factor(), draft));
    }
    if (need instanceof Mask.Need.Least least) {
      return new Worn(
          least.mask().words(),
          "The weakest that is enough: of "
              + least.mask().factor().value()
              + " parts of dust it lets one through.",
          least.mask().seals(),
          Stream.of(least.factor(), (Worked<?>) least.mostAround())
              .flatMap(worked -> DustPage.working(worked, draft).stream())
              .distinct()
              .toList());
    }
    if (need instanceof Mask.Need.BeyondAll beyond) {
      return new Worn(
          "no filter mask is enough",
          "There is too much in the air for any mask that cleans it. Stop, and draw the dust off.",
          false,
          DustPage.working(beyond.factor(), draft));
    }
    if (need instanceof Mask.Need.ByStrength strength) {
      return new Worn(
          strength.mask().words(),
          "Nothing was measured, so no figure says this: by our own choice a mask that takes out at"
              + " least %d times goes with %s fine dust."
                  .formatted(strength.factor().value(), strength.strength().value().words()),
          strength.mask().seals(),
          DustPage.working(strength.mask().factor(), draft));
    }
    return new Worn("no mask is known to us", "Ask whoever sells them.", false, List.of());
  }
}

package org.proofcut.web.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.proofcut.core.checklist.Wording;
import org.proofcut.core.drawing.CutSection;
import org.proofcut.core.drawing.MachinePlan;
import org.proofcut.core.drawing.Picture;
import org.proofcut.core.drawing.Sign;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.display.Degrees;
import org.proofcut.core.measure.display.Scale;
import org.proofcut.core.measure.display.Shown;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.plan.OperationSheet;
import org.proofcut.core.safety.Control;
import org.proofcut.core.safety.Finding;
import org.proofcut.core.safety.SignalWord;
import org.proofcut.core.setup.AngleSetting;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Feed;
import org.proofcut.core.setup.KnifeMarks;
import org.proofcut.core.setup.Pass;
import org.proofcut.core.setup.Setting;
import org.proofcut.core.setup.Setup;
import org.proofcut.web.part.WorkingLine;

/**
 * All that is read off a sheet, as plain values.
 *
 * @param stops what forbids the operation as planned
 * @param figures to set, the one that decides most first
 * @param angles to set besides
 * @param learned what proof cuts have taught that the figures use
 * @param positions of the holes, each from the one reference end; empty where there is one only
 * @param passes in the order run; empty where there is one only
 * @param plan the machine from above; null where none is drawn
 * @param section the cut in section; null where none is drawn
 * @param feed which way it moves; null where nothing does
 * @param refused ways tried first, and why not
 * @param cautions all of them, the gravest first
 */
public record SheetReads(
    List<Caution> stops,
    List<Figure> figures,
    List<Angled> angles,
    List<Fact> facts,
    List<String> learned,
    List<String> positions,
    List<String> passes,
    Drawn plan,
    Drawn section,
    String feed,
    String feedWhy,
    List<String> hold,
    List<String> cutterChange,
    List<String> refused,
    List<String> proofPieces,
    List<Caution> cautions) {

  /** Cautions that stand in full on a sheet; the rest is one tap away. */
  private static final int IN_FULL = 3;

  private static final int WIDE = 600;
  private static final int NARROW = 350;

  /** A figure to set, or to measure. */
  public record Figure(
      String name,
      String instruction,
      Shown figure,
      Picture rule,
      String note,
      List<WorkingLine> working) {}

  /** An angle to set. */
  public record Angled(
      String name, String instruction, String figure, String note, List<WorkingLine> working) {}

  /** A lesser figure, or a name. */
  public record Fact(String name, String value, String more) {}

  /** One drawing in the two widths of the tag {@code drawing}. */
  public record Drawn(Picture wide, Picture narrow) {}

  /** What can hurt, and what to do about it. */
  public record Caution(
      SignalWord word, String hazard, List<String> actions, String source, String why, Sign sign) {}

  /**
   * What is read off a sheet.
   *
   * @param setup the set-up as it stands now: as planned, or as a proof cut has corrected it
   */
  public static SheetReads of(
      OperationSheet sheet, Optional<Setup> setup, Wording wording, Shows shows) {
    var operation = sheet.operation();
    var machine = setup.map(one -> one.machine().kind()).orElse("none");
    return new SheetReads(
        cautions(sheet, Finding.Effect.STOP, shows),
        setup.map(one -> figures(operation, one, shows)).orElse(List.of()),
        setup.map(one -> angles(one, shows)).orElse(List.of()),
        setup.map(one -> facts(one, shows)).orElse(List.of()),
        setup.map(Setup::taught).orElse(List.of()),
        setup.map(one -> positions(one, shows)).orElse(List.of()),
        setup.map(one -> passes(one, shows)).orElse(List.of()),
        setup.map(one -> plan(operation, one, shows)).orElse(null),
        setup.map(one -> section(operation, one, shows)).orElse(null),
        setup.map(one -> one.feed().words()).orElse(null),
        setup.map(one -> one.feed().why()).orElse(null),
        wording.operations().get(operation.kind().id()).holdOn(machine),
        Optional.ofNullable(wording.cutterChanges().get(machine))
            .map(change -> change.steps())
            .orElse(List.of()),
        refused(operation),
        proofPieces(sheet, shows),
        cautions(sheet, Finding.Effect.CAUTION, shows));
  }

  /** The gravest cautions, which stand in full. */
  public List<Caution> first() {
    return cautions.subList(0, Math.min(IN_FULL, cautions.size()));
  }

  /** The others. */
  public List<Caution> more() {
    return cautions.subList(Math.min(IN_FULL, cautions.size()), cautions.size());
  }

  /** The same sheet with what is read on the case, where no machine is set or drawn. */
  public SheetReads onTheCase(List<Figure> caseFigures, Drawn elevation) {
    return new SheetReads(
        stops,
        caseFigures,
        angles,
        facts,
        learned,
        positions,
        passes,
        elevation,
        section,
        feed,
        feedWhy,
        hold,
        cutterChange,
        refused,
        proofPieces,
        cautions);
  }

  // ---- what is set ---------------------------------------------------------------------------

  private static List<Figure> figures(Operation operation, Setup setup, Shows shows) {
    return setup.settings().stream().map(setting -> figure(operation, setting, shows)).toList();
  }

  private static Figure figure(Operation operation, Setting setting, Shows shows) {
    var shown = shows.figure(setting);
    return new Figure(
        setting.role().words(),
        setting.from(),
        shown,
        shows.rule(setting),
        note(operation, setting, shown, shows),
        WorkingLine.of(setting.read(), shows.caliper()));
  }

  private static String note(Operation operation, Setting setting, Shown shown, Shows shows) {
    var planned = operation.setup().flatMap(setup -> setup.setting(setting.role())).orElseThrow();
    var moved = setting.set().value().minus(planned.set().value());
    return moved.isZero()
        ? shows.leftover(shown)
        : "Planned "
            + shows.figure(planned)
            + "; the proof cut made it "
            + shows.fine(moved.abs())
            + (moved.isPositive() ? " more." : " less.");
  }

  private static List<Angled> angles(Setup setup, Shows shows) {
    return setup.anglesSet().stream()
        .map(
            angle ->
                new Angled(
                    angle.role().words(),
                    angle.from(),
                    angle.shown(),
                    leftOver(angle),
                    WorkingLine.of(angle.set(), shows.caliper())))
        .toList();
  }

  private static String leftOver(AngleSetting angle) {
    var left = angle.leftOver();
    return left.isZero()
        ? null
        : Degrees.text(left.abs(), 3)
            + (left.isPositive() ? " more" : " less")
            + " is wanted than the scale can be set to";
  }

  private static List<Fact> facts(Setup setup, Shows shows) {
    var speed = setup.speed();
    var facts = new ArrayList<Fact>();
    facts.add(new Fact("machine", setup.machine().name(), null));
    facts.add(new Fact("cutter", setup.cutter().name(), null));
    facts.add(
        new Fact(
            "speed step",
            speed.step().mark(),
            String.format(
                Locale.ROOT, "%,d/min, rim %s", speed.step().perMinute(), speed.rim().value())));
    speed.feed().ifPresent(feed -> facts.add(new Fact("feed by hand", feed.text(), null)));
    facts.add(new Fact("passes", Integer.toString(setup.passes().size()), null));
    facts.add(new Fact("guided by", setup.guide().words(), null));
    setup.knifeMarks().ifPresent(marks -> facts.add(knifeMarks(marks, setup.feed(), shows)));
    return facts;
  }

  private static List<String> positions(Setup setup, Shows shows) {
    return setup.asked() instanceof CutAsked.Bored bored && bored.row().along().size() > 1
        ? bored.row().along().stream().map(hole -> position(hole.value(), shows)).toList()
        : List.of();
  }

  private static String position(Length from, Shows shows) {
    var shown = Scale.rule(shows.unit()).show(from);
    var leftover = shows.leftover(shown);
    return shown.text() + (leftover == null ? "" : " (" + leftover + ")");
  }

  private static Fact knifeMarks(KnifeMarks marks, Feed feed, Shows shows) {
    return new Fact(
        "knife marks",
        shows.fine(marks.apart().value()) + " apart",
        "%s at %s a minute; a finished face wants %d or more%s"
            .formatted(
                marks.perInch().value().text(),
                shows.text(marks.feed().value()),
                marks.wanted().value(),
                feed == Feed.OVER_THE_KNIVES
                    ? ": push no faster"
                    : marks.areFine() ? "" : ": scrape or sand it after"));
  }

  private static List<String> passes(Setup setup, Shows shows) {
    return setup.passes().size() == 1
        ? List.of()
        : setup.passes().stream().map(pass -> pass(pass, setup, shows)).toList();
  }

  private static String pass(Pass pass, Setup setup, Shows shows) {
    if (pass.planed().isPresent()) {
      return planed(pass, setup, shows);
    }
    if (setup.asked() instanceof CutAsked.EdgeTrim trim) {
      var each = setup.setting(Setting.Role.SHIM).orElseThrow().set().value();
      return "takes %s off the edge: %s left"
          .formatted(shows.fine(each), shows.fine(trim.after(pass.number(), each)));
    }
    var turned = pass.lies().map(lies -> lies.words() + ", ").orElse("");
    var strip = setup.usesStrip() ? pass.strips("in", "out") + ", " : "";
    var meets =
        switch (pass.engages()) {
          case BOTH_SIDES -> "full width, held to the guide";
          case AWAY_FROM_GUIDE -> "new wood only on the side away from the fence";
          case TOWARD_GUIDE -> "new wood only on the side of the straightedge";
          case ALL_ROUND -> "then lift the bit out of its chips";
          case AT_THE_TEMPLATE -> "plunge in the middle, new wood only outside each round";
          case AT_THE_BEARING -> "new wood only on the side of the bearing";
          case WHOLE_FACE -> "the whole face, against the feed";
        };
    var depth = pass.depth().value();
    var read = setup.read(pass);
    var fence = pass.guideAt().map(at -> "fence at " + shows.fine(at.value()) + ", ").orElse("");
    return fence
        + turned
        + strip
        + shows.text(depth)
        + " deep"
        + (read.equals(depth) ? "" : ", which your scale reads as " + shows.text(read))
        + ": "
        + meets;
  }

  private static String planed(Pass pass, Setup setup, Shows shows) {
    var planed = pass.planed().orElseThrow();
    var read = setup.read(pass);
    return setup.feed() == Feed.UNDER_THE_KNIVES
        ? "set to %s, %s: takes %s at the thickest place"
            .formatted(shows.fine(read), planed.where(), shows.fine(planed.takes()))
        : "%s, takes %s: %s left at the most"
            .formatted(planed.where(), shows.fine(planed.takes()), shows.fine(planed.leaves()));
  }

  private static Drawn plan(Operation operation, Setup setup, Shows shows) {
    return new Drawn(
        MachinePlan.of(operation, setup, shows.unit(), WIDE),
        MachinePlan.of(operation, setup, shows.unit(), NARROW));
  }

  private static Drawn section(Operation operation, Setup setup, Shows shows) {
    return new Drawn(
        CutSection.of(operation, setup, shows.unit(), WIDE),
        CutSection.of(operation, setup, shows.unit(), NARROW));
  }

  private static List<String> refused(Operation operation) {
    return operation.choice().stream()
        .flatMap(choice -> choice.refused().stream())
        .map(
            one ->
                one.machine()
                    + ", "
                    + one.cutter()
                    + ": "
                    + one.why().what()
                    + ". "
                    + one.why().instead()
                    + ".")
        .toList();
  }

  private static List<String> proofPieces(OperationSheet sheet, Shows shows) {
    return sheet.proofPieces().stream()
        .map(
            piece ->
                piece.sheet()
                    + ", at least "
                    + shows.text(piece.alongGuide())
                    + " along the guide and "
                    + shows.text(piece.acrossGuide())
                    + " out from it: "
                    + piece.purpose())
        .toList();
  }

  // ---- what can hurt -------------------------------------------------------------------------

  private static List<Caution> cautions(OperationSheet sheet, Finding.Effect effect, Shows shows) {
    return sheet.findings().stream()
        .filter(finding -> finding.effect() == effect)
        .map(finding -> caution(finding, shows))
        .toList();
  }

  private static Caution caution(Finding finding, Shows shows) {
    boolean gearAlone =
        finding.controls().stream().allMatch(control -> control.kind() == Control.Kind.GEAR);
    var actions = finding.controls().stream().map(Control::action).toList();
    var seen =
        finding.seen().stream()
            .map(
                one ->
                    one.name().replace('_', ' ')
                        + " "
                        + seen(one.value(), shows)
                        + one.own().map(own -> " (" + own + ")").orElse(""))
            .toList();
    return new Caution(
        finding.word(),
        finding.hazard() + (gearAlone ? " Only gear stands between it and you." : ""),
        actions,
        finding.sourceSays().isEmpty()
            ? finding.because().text()
            : finding.sourceSays() + " (" + finding.because().text() + ")",
        "Rule " + finding.rule() + (seen.isEmpty() ? "" : ": " + String.join(", ", seen)),
        Sign.GENERAL_WARNING);
  }

  private static String seen(Object value, Shows shows) {
    return value instanceof Length length ? shows.text(length) : String.valueOf(value);
  }
}

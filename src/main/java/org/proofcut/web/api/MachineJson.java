package org.proofcut.web.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.proofcut.core.checklist.CutterChange;
import org.proofcut.core.checklist.Wording;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.setup.AngleSetting;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.KnifeMarks;
import org.proofcut.core.setup.Measure;
import org.proofcut.core.setup.Pass;
import org.proofcut.core.setup.Setting;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.setup.Speed;

/** What a machine is set to, and what it is set with. */
final class MachineJson {

  private MachineJson() {}

  /** One state of one machine. */
  @Schema(name = "SetUp")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record SetUp(
      Machine machine,
      Cutter cutter,
      @Schema(description = "the steps of changing the cutter, power off")
          Optional<Change> cutterChange,
      String guide,
      List<Figure> figures,
      @Schema(
              description =
                  "centres of holes, all from the one reference end; empty for other cuts")
          List<LengthJson.Figure> holes,
      @Schema(description = "none where the machine has no angle to set") List<Angled> angles,
      List<OnePass> passes,
      Turning speed,
      Direction feed,
      List<Measured> measures,
      @Schema(description = "what proof cuts have taught that the figures use, in words")
          List<String> learned,
      @Schema(description = "left out where no knives turn") Optional<LeftByKnives> knifeMarks) {}

  /** The machine of a set-up. */
  @Schema(name = "Machine")
  record Machine(String id, String kind, String name) {}

  /** The cutter of a set-up. */
  @Schema(name = "Cutter")
  record Cutter(String id, String name, LengthJson.Plain diameter, int edges) {}

  /** How a cutter is changed. */
  @Schema(name = "CutterChange")
  record Change(List<String> steps, LengthJson.Cited because) {}

  /** A figure to set. */
  @Schema(name = "Setting")
  record Figure(
      String role,
      String words,
      @Schema(description = "between which two things it is measured") String from,
      LengthJson.Figure set,
      @Schema(description = "smallest change that can be set") LengthJson.Plain step) {}

  /** An angle to set. */
  @Schema(name = "AngleSetting")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Angled(
      String role,
      String words,
      @Schema(description = "left or right, as seen at the machine; left out where it is square")
          Optional<String> toward,
      @Schema(description = "where it is measured from") String from,
      @Schema(description = "the angle aimed at") String exact,
      @Schema(description = "on the machine's own steps") String set,
      @Schema(description = "the angle aimed at less the angle as set") String leftOver,
      @Schema(description = "smallest change that can be set") String step,
      List<LengthJson.Line> working) {}

  /** One run of the batch past the cutter. */
  @Schema(name = "Pass")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record OnePass(
      int number,
      boolean stripOn,
      @Schema(description = "how many strips of a pack are in; left out where there is one or none")
          Optional<Integer> strips,
      @Schema(description = "how the work is turned; left out where it lies the same way in all")
          Optional<String> lies,
      LengthJson.Figure depth,
      @Schema(description = "what the cutter covers, from the reference edge")
          LengthJson.Range takes,
      @Schema(description = "the side of the cutter that meets new wood") String engages,
      @Schema(description = "what knives take off; left out for every other cutter")
          Optional<Planed> planed,
      @Schema(description = "where the fence stands; left out where it never moves")
          Optional<LengthJson.Figure> guideAt) {}

  /** What knives take off a whole face or edge. */
  @Schema(name = "PlanedOff")
  record Planed(String where, LengthJson.Plain takes, LengthJson.Plain leaves) {}

  /** What turning knives leave on the face that goes past them. */
  @Schema(name = "KnifeMarks")
  record LeftByKnives(
      @Schema(description = "length of wood that goes by in a minute") LengthJson.Figure feed,
      LengthJson.Figure apart,
      AmountJson.Number perInch,
      @Schema(description = "marks to the inch that a finished face has at least")
          AmountJson.Number wanted,
      @Schema(description = "whether the face can be left as it comes") boolean fine) {}

  /** How fast the cutter turns. */
  @Schema(name = "Speed")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Turning(
      @Schema(description = "on the dial") String mark,
      String turnsPerMinute,
      AmountJson.Number limit,
      AmountJson.Number rim,
      @Schema(description = "left out where it is not told")
          Optional<AmountJson.Number> slowestFeed,
      @Schema(description = "left out where it is not told")
          Optional<AmountJson.Number> fastestFeed) {}

  /** Which way the work or the machine moves. */
  @Schema(name = "Feed")
  record Direction(String direction, String words, String why) {}

  /** What is measured on a proof cut. */
  @Schema(name = "Measure")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Measured(
      String dimension,
      String what,
      LengthJson.Figure target,
      @Schema(description = "readings that prove it") LengthJson.Range accepted,
      @Schema(description = "how many readings are taken") int readings,
      @Schema(description = "left out where no setting moves it") Optional<String> correctedBy,
      @Schema(description = "the angle that shows in it; left out where none does")
          Optional<String> shows,
      @Schema(description = "how many times over a move of that setting shows; left out for once")
          Optional<Integer> timesMoved) {}

  static SetUp setup(Setup setup, LengthUnit unit, Wording wording) {
    return new SetUp(
        new Machine(setup.machine().id(), setup.machine().kind(), setup.machine().name()),
        new Cutter(
            setup.cutter().id(),
            setup.cutter().name(),
            LengthJson.plain(setup.cutter().diameter(), unit),
            setup.cutter().edges()),
        Optional.ofNullable(wording.cutterChanges().get(setup.machine().kind()))
            .map(MachineJson::change),
        setup.guide().id(),
        figures(setup, unit),
        holes(setup, unit),
        setup.anglesSet().stream().map(angle -> angled(angle, unit)).toList(),
        setup.passes().stream().map(pass -> pass(pass, unit)).toList(),
        turning(setup.speed(), unit),
        new Direction(ShopJson.word(setup.feed()), setup.feed().words(), setup.feed().why()),
        setup.measures().stream().map(measure -> measured(measure, unit)).toList(),
        setup.taught(),
        setup.knifeMarks().map(marks -> marks(marks, unit)));
  }

  private static LeftByKnives marks(KnifeMarks marks, LengthUnit unit) {
    return new LeftByKnives(
        LengthJson.figure(marks.feed(), unit),
        LengthJson.figure(marks.apart(), unit),
        AmountJson.number(marks.perInch(), unit),
        AmountJson.number(marks.wanted(), marks.perInch().value().unit(), unit),
        marks.areFine());
  }

  private static List<LengthJson.Figure> holes(Setup setup, LengthUnit unit) {
    return setup.asked() instanceof CutAsked.Bored bored
        ? bored.row().along().stream().map(hole -> LengthJson.figure(hole, unit)).toList()
        : List.of();
  }

  private static Change change(CutterChange change) {
    return new Change(change.steps(), LengthJson.cited(change.because()));
  }

  static List<Figure> figures(Setup setup, LengthUnit unit) {
    return setup.settings().stream().map(setting -> figure(setting, unit)).toList();
  }

  private static Figure figure(Setting setting, LengthUnit unit) {
    return new Figure(
        ShopJson.word(setting.role()),
        setting.role().words(),
        setting.from(),
        LengthJson.figure(setting.read(), unit),
        LengthJson.plain(setting.step(), unit));
  }

  private static Angled angled(AngleSetting angle, LengthUnit unit) {
    return new Angled(
        ShopJson.word(angle.role()),
        angle.role().words(),
        angle.toward().map(ShopJson::word),
        angle.from(),
        angle.exact().value().toString(),
        angle.set().value().toString(),
        angle.leftOver().toString(),
        angle.step().toString(),
        LengthJson.working(angle.set(), unit));
  }

  private static OnePass pass(Pass pass, LengthUnit unit) {
    return new OnePass(
        pass.number(),
        pass.stripOn(),
        pass.strips(),
        pass.lies().map(Pass.Lies::words),
        LengthJson.figure(pass.depth(), unit),
        LengthJson.range(pass.takes(), unit),
        ShopJson.word(pass.engages()),
        pass.planed()
            .map(
                off ->
                    new Planed(
                        off.where(),
                        LengthJson.plain(off.takes(), unit),
                        LengthJson.plain(off.leaves(), unit))),
        pass.guideAt().map(at -> LengthJson.figure(at, unit)));
  }

  private static Turning turning(Speed speed, LengthUnit unit) {
    return new Turning(
        speed.step().mark(),
        Integer.toString(speed.step().perMinute()),
        AmountJson.number(speed.limit(), "turns a minute", unit),
        AmountJson.number(speed.rim(), unit),
        speed.feed().map(feed -> AmountJson.number(feed.least(), unit)),
        speed.feed().map(feed -> AmountJson.number(feed.most(), unit)));
  }

  static Measured measured(Measure measure, LengthUnit unit) {
    return new Measured(
        ShopJson.word(measure.dimension()),
        measure.what(),
        LengthJson.figure(measure.target(), unit),
        LengthJson.range(measure.accepted(), unit),
        measure.readings(),
        measure.correctedBy().map(ShopJson::word),
        measure.angle().map(angle -> ShopJson.word(angle.role())),
        measure.timesMoved());
  }
}

package org.proofcut.core.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.display.Scale;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Pass;
import org.proofcut.core.setup.Setting;
import org.proofcut.core.setup.Setup;

/** What a plan says in words, the same beside the drawing and for who can't see it. */
final class PlanWords {

  private final Operation operation;
  private final Setup setup;
  private final LengthUnit unit;

  PlanWords(Operation operation, Setup setup, LengthUnit unit) {
    this.operation = operation;
    this.setup = setup;
    this.unit = unit;
  }

  LengthUnit unit() {
    return unit;
  }

  /** A setting's figure without its unit. */
  String figure(Setting setting) {
    return setting.scale(unit).show(setting.read().value()).number();
  }

  String rule(Length length) {
    return Scale.rule(unit).show(length).text();
  }

  /** The same without its unit. */
  String ruleNumber(Length length) {
    return Scale.rule(unit).show(length).number();
  }

  private String fine(Length length) {
    return Scale.caliper(unit).show(length).text();
  }

  /** Which edge leads on which parts, and what is done about the edge that trails. */
  List<String> handlings() {
    var byHandling = new LinkedHashMap<String, List<String>>();
    for (var part : operation.parts()) {
      part.handling()
          .ifPresent(
              handling ->
                  byHandling
                      .computeIfAbsent(
                          handling.first()
                              + "."
                              + handling.breakout().map(what -> " " + what + ".").orElse(""),
                          key -> new ArrayList<>())
                      .add(part.name()));
    }
    return byHandling.entrySet().stream()
        .map(entry -> String.join(", ", entry.getValue()) + ": " + entry.getKey())
        .toList();
  }

  /** What is done where the cutter comes out, each thing once. */
  List<String> breakouts() {
    return operation.parts().stream()
        .flatMap(part -> part.handling().stream())
        .flatMap(handling -> handling.breakout().stream())
        .distinct()
        .map(what -> what + ".")
        .toList();
  }

  /** The passes, where there are several. */
  List<String> passes() {
    if (setup.passes().size() == 1) {
      return List.of();
    }
    var turned = setup.passes().stream().flatMap(pass -> pass.lies().stream()).distinct().toList();
    if (!turned.isEmpty()) {
      var depths =
          setup.passes().stream().map(pass -> rule(pass.depth().value())).distinct().toList();
      return List.of(
          "At each height, all pieces "
              + turned.stream().map(Pass.Lies::words).collect(Collectors.joining(", then "))
              + ": "
              + String.join(", ", depths)
              + " deep.");
    }
    if (setup.asked() instanceof CutAsked.EdgeTrim trim) {
      var each = setup.setting(Setting.Role.SHIM).orElseThrow().set().value();
      return setup.passes().stream()
          .map(
              pass ->
                  "Pass %d: %s left."
                      .formatted(pass.number(), fine(trim.after(pass.number(), each))))
          .toList();
    }
    return setup.passes().stream()
        .map(
            pass ->
                "Pass "
                    + pass.number()
                    + ": "
                    + pass.planed().map(planed -> planed.where() + ", ").orElse("")
                    + (setup.usesStrip() ? pass.strips("on", "off") + ", " : "")
                    + pass.guideAt()
                        .map(fence -> "fence at " + fine(fence.value()) + ", ")
                        .orElse("")
                    + (pass.planed().isPresent()
                        ? fine(pass.planed().get().leaves()) + " left."
                        : rule(pass.depth().value()) + " deep."))
        .toList();
  }

  /** The sizes of pieces that the first figure does not hold for. */
  List<String> otherSizes() {
    var first = setup.settings().get(0).set().value();
    return operation.parts().stream()
        .filter(
            part -> part.size().isPresent() && !rule(part.size().get().value()).equals(rule(first)))
        .map(part -> "Then " + part.name() + ": " + rule(part.size().get().value()) + ".")
        .toList();
  }

  /** Which edge rides the guide, the same for every part of a set-up or said for each. */
  String rides() {
    var edges =
        operation.parts().stream()
            .flatMap(part -> part.handling().stream())
            .map(handling -> handling.rides().words())
            .distinct()
            .toList();
    return String.join(" or ", edges);
  }

  String face() {
    var faces =
        operation.parts().stream()
            .flatMap(part -> part.handling().stream())
            .map(handling -> handling.face())
            .distinct()
            .toList();
    return String.join(" or ", faces);
  }

  /** Whether any part's trailing edge is backed up with scrap. */
  boolean backed() {
    return operation.parts().stream()
        .flatMap(part -> part.handling().stream())
        .anyMatch(handling -> handling.breakout().isPresent());
  }

  /** The whole drawing in words. */
  String all(String layout, List<String> notes) {
    var words = new ArrayList<String>();
    words.add(operation.title() + ", on the " + setup.machine().name() + ".");
    words.add("From above; you stand at the bottom edge of the drawing.");
    words.add(layout);
    words.add("Cutter: " + setup.cutter().name() + ".");
    for (var setting : setup.settings()) {
      words.add(
          setting.role().words()
              + ": "
              + setting.scale(unit).show(setting.read().value())
              + " "
              + setting.from()
              + ".");
    }
    for (var angle : setup.anglesSet()) {
      words.add(angle.role().words() + ": " + angle.shown() + " " + angle.from() + ".");
    }
    words.addAll(notes);
    return String.join(" ", words);
  }

  /** The sentences below a plan, the feed first. */
  List<String> notes() {
    var notes = new ArrayList<String>();
    notes.add(setup.feed().words() + ".");
    notes.addAll(handlings());
    notes.addAll(passes());
    notes.addAll(otherSizes());
    return notes;
  }
}

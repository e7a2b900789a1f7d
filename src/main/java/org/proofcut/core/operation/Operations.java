package org.proofcut.core.operation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.proofcut.core.casework.Case;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.fit.FitLimits;
import org.proofcut.core.fit.FlushFit;
import org.proofcut.core.fit.SlotFit;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.method.Choice;
import org.proofcut.core.method.Methods;
import org.proofcut.core.part.Housing;
import org.proofcut.core.part.Part;
import org.proofcut.core.part.PartRole;
import org.proofcut.core.readings.Readings;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.setup.Work;
import org.proofcut.core.stock.Sheet;

/**
 * The operations of a case, in order: rough strips, rip, crosscut, rabbets, dados, rabbet for the
 * back, final length of housed parts, dry fit, fasten. Parts that share a set-up share an
 * operation.
 */
public final class Operations {

  private final Case designed;
  private final Case proven;
  private final FitLimits fit;
  private final OperationLimits limits;
  private final Function<String, Methods> methods;
  private final List<Operation> operations = new ArrayList<>();

  private Operations(
      Case designed,
      Case proven,
      FitLimits fit,
      OperationLimits limits,
      Function<String, Methods> methods) {
    this.designed = designed;
    this.proven = proven;
    this.fit = fit;
    this.limits = limits;
    this.methods = methods;
  }

  /**
   * The operations of a sound case.
   *
   * @param designed the case as designed: rough sizes come from it
   * @param proven the case with the depths that proof cuts have found: final lengths come from it
   * @param methods by the id of the operation: what was learned between two of them may differ
   * @throws IllegalArgumentException if a part varies too much for any fit; the design says so
   *     before
   */
  public static List<Operation> of(
      Case designed,
      Case proven,
      FitLimits fit,
      OperationLimits limits,
      Function<String, Methods> methods) {
    var all = new Operations(designed, proven, fit, limits, methods);
    all.roughStrips();
    all.rips();
    all.crosscuts();
    all.rabbets();
    all.dados();
    all.backRabbet();
    all.finalLengths();
    all.byHand(OperationKind.DRY_FIT, "Dry fit: the whole case without glue");
    all.byHand(OperationKind.FASTEN, "Glue and fasten");
    return List.copyOf(all.operations);
  }

  // ---- breaking down -------------------------------------------------------------------------

  /** Parts of one sheet and one width are cut from one strip. */
  private record Strip(Sheet sheet, Length width, List<Part> parts) {

    String id() {
      return "strip:" + sheet.id() + ":" + parts.get(0).id();
    }

    String name() {
      return "strip for " + names(parts);
    }

    /** As long as its parts end to end, but no longer than the sheet. */
    Length length() {
      var sum = Length.ZERO;
      for (var part : parts) {
        sum = sum.plus(part.length().value());
      }
      return sum.min(sheet.length());
    }
  }

  private List<Strip> strips() {
    record Key(String sheet, Length width) {}
    var groups =
        grouped(designed.parts(), part -> new Key(part.sheet().id(), part.width().value()));
    return groups.values().stream()
        .map(parts -> new Strip(parts.get(0).sheet(), parts.get(0).width().value(), parts))
        .sorted(Comparator.comparing(Strip::width).reversed())
        .toList();
  }

  private void roughStrips() {
    for (var strips : grouped(strips(), Strip::sheet).values()) {
      var sheet = strips.get(0).sheet();
      var pieces = new ArrayList<PartCut>();
      var widest = roughWidth(strips.get(0));
      var asked =
          new CutAsked.Parting(
              widest,
              false,
              true,
              new Work(at(sheet.length()), at(sheet.width()), sheet.thickness().ends()));
      var id = "rough-strips:" + sheet.id();
      var choice = methods.apply(id).choose(asked);
      for (var strip : strips) {
        var role = strip.parts().get(0).role();
        pieces.add(
            new PartCut(
                strip.id(),
                strip.name(),
                Optional.of(roughWidth(strip)),
                Handlings.reference(role),
                choice.setup().map(setup -> Handlings.ripped(role, setup))));
      }
      add(
          id,
          OperationKind.ROUGH_STRIPS,
          "Rough strips from " + sheet.name(),
          asked,
          choice,
          pieces,
          List.of(sheet));
    }
  }

  private Worked<Length> roughWidth(Strip strip) {
    var width = strip.parts().get(0).width();
    return Worked.called("width of the rough " + strip.name())
        .by("finished width + what is left over")
        .with("finished width", width)
        .with("what is left over", limits.stripOver())
        .from(limits.stripOver().source())
        .is(width.value().plus(limits.stripOver().value()));
  }

  private void rips() {
    for (var strips : grouped(strips(), Strip::width).values()) {
      var first = strips.get(0).parts().get(0);
      var lengths = strips.stream().map(Strip::length).toList();
      var asked =
          new CutAsked.Parting(
              first.width(),
              true,
              true,
              new Work(
                  band(lengths),
                  at(first.width().value()),
                  thickness(strips.stream().map(Strip::sheet).toList())));
      var id = "rip:" + first.id();
      var choice = methods.apply(id).choose(asked);
      var pieces =
          strips.stream()
              .map(
                  strip ->
                      new PartCut(
                          strip.id(),
                          strip.name(),
                          Optional.empty(),
                          Handlings.reference(strip.parts().get(0).role()),
                          choice
                              .setup()
                              .map(setup -> Handlings.ripped(strip.parts().get(0).role(), setup))))
              .toList();
      var parts = strips.stream().flatMap(strip -> strip.parts().stream()).toList();
      add(
          id,
          OperationKind.RIP,
          "Rip to width: " + names(parts),
          asked,
          choice,
          pieces,
          strips.stream().map(Strip::sheet).toList());
    }
  }

  private void crosscuts() {
    var toSize = designed.parts().stream().filter(part -> !isHoused(part.role())).toList();
    for (var parts : grouped(toSize, part -> part.length().value()).values()) {
      crosscut(
          OperationKind.CROSSCUT,
          "crosscut:",
          "Crosscut to length: ",
          parts,
          parts.get(0).length(),
          true,
          List.of());
    }
    var housed = designed.parts().stream().filter(part -> isHoused(part.role())).toList();
    for (var parts : grouped(housed, part -> part.length().value()).values()) {
      var length = parts.get(0).length();
      var over =
          Worked.called("rough length of the " + names(parts))
              .by("designed length + what is left over")
              .with("designed length", length)
              .with("what is left over", limits.lengthOver())
              .from(limits.lengthOver().source())
              .is(length.value().plus(limits.lengthOver().value()));
      crosscut(
          OperationKind.CROSSCUT,
          "crosscut-over:",
          "Crosscut over length: ",
          parts,
          over,
          false,
          List.of());
    }
  }

  /** Housed parts get their last length only when the depth of their housings is proven. */
  private void finalLengths() {
    var housed = proven.parts().stream().filter(part -> isHoused(part.role())).toList();
    for (var parts : grouped(housed, part -> part.length().value()).values()) {
      var waits =
          parts.stream()
              .map(part -> part.role() == PartRole.TOP ? "rabbet:top" : "dado:" + part.id())
              .toList();
      crosscut(
          OperationKind.FINAL_LENGTH,
          "final-length:",
          "Final length: ",
          parts,
          parts.get(0).length(),
          true,
          waits);
    }
  }

  private void crosscut(
      OperationKind kind,
      String idStem,
      String titleStem,
      List<Part> parts,
      Worked<Length> length,
      boolean toSize,
      List<String> waitsFor) {
    var asked =
        new CutAsked.Parting(
            length,
            toSize,
            false,
            new Work(
                at(length.value()),
                band(parts.stream().map(part -> part.width().value()).toList()),
                thickness(parts.stream().map(Part::sheet).toList())));
    var id = idStem + parts.get(0).id();
    var choice = methods.apply(id).choose(asked);
    var pieces =
        parts.stream()
            .map(
                part ->
                    new PartCut(
                        part.id(),
                        part.name(),
                        Optional.empty(),
                        Handlings.reference(part.role()),
                        choice.setup().map(Handlings::crosscut)))
            .toList();
    operations.add(
        new Operation(
            id,
            kind,
            titleStem + names(parts),
            Optional.of(asked),
            Optional.of(choice),
            pieces,
            distinct(parts.stream().map(Part::sheet).toList()),
            List.of(),
            Optional.empty(),
            waitsFor));
  }

  // ---- housings ------------------------------------------------------------------------------

  private void rabbets() {
    var sheet = designed.design().sheets().top();
    var flush = FlushFit.of(sheet.thickness(), Worked.entered("set-in", Length.ZERO), fit);
    var housings = housings(Housing.Kind.END_RABBET, "top");
    rabbet(
        "rabbet:top",
        OperationKind.RABBET,
        "Rabbets for the top, both sides",
        housings,
        flush,
        sheet);
  }

  private void backRabbet() {
    var sheet = designed.design().sheets().back();
    var setIn = Worked.entered("set-in of the back", designed.design().joinery().backSetIn());
    var flush = FlushFit.of(sheet.thickness(), setIn, fit);
    rabbet(
        "back-rabbet",
        OperationKind.BACK_RABBET,
        "Rabbet for the back, sides and top",
        housings(Housing.Kind.EDGE_RABBET, "back"),
        flush,
        sheet);
  }

  private void rabbet(
      String id,
      OperationKind kind,
      String title,
      List<Housing> housings,
      FlushFit flush,
      Sheet covering) {
    var asked =
        new CutAsked.Rabbet(
            flush.target(),
            flush.accepted().orElseThrow(() -> uneven(covering)),
            housings.get(0).depth(),
            workFor(housings));
    house(id, kind, title, asked, housings, covering);
  }

  private void dados() {
    var dados =
        designed.housings().stream()
            .filter(
                housing -> housing.kind() == Housing.Kind.DADO && housing.cut().equals("left-side"))
            .sorted(Comparator.comparing(housing -> housing.distance().value()))
            .toList();
    for (var dado : dados) {
      var entering = designed.part(dado.entering());
      var slot = SlotFit.of(entering.sheet().thickness(), fit);
      var housings = housings(Housing.Kind.DADO, entering.id());
      var asked =
          new CutAsked.Slot(
              slot.target(),
              slot.accepted().orElseThrow(() -> uneven(entering.sheet())),
              dado.depth(),
              dado.distance(),
              workFor(housings));
      house(
          "dado:" + entering.id(),
          OperationKind.DADO,
          "Dados for " + article(entering.name()) + ", both sides",
          asked,
          housings,
          entering.sheet());
    }
  }

  private void house(
      String id,
      OperationKind kind,
      String title,
      CutAsked asked,
      List<Housing> housings,
      Sheet entering) {
    var choice = methods.apply(id).choose(asked);
    var pieces = new ArrayList<PartCut>();
    for (var housing : housings) {
      var part = designed.part(housing.cut());
      pieces.add(
          new PartCut(
              part.id(),
              part.name(),
              Optional.empty(),
              housing.reference(),
              choice.setup().map(setup -> handling(part, housing, setup))));
    }
    operations.add(
        new Operation(
            id,
            kind,
            title,
            Optional.of(asked),
            Optional.of(choice),
            pieces,
            distinct(
                housings.stream().map(housing -> designed.part(housing.cut()).sheet()).toList()),
            List.of(entering),
            Optional.of(entering.thickness().ends()),
            List.of()));
  }

  private Handling handling(Part part, Housing housing, Setup setup) {
    var backRabbet =
        designed.housingsIn(part.id()).stream()
            .filter(one -> one.kind() == Housing.Kind.EDGE_RABBET && one != housing)
            .findFirst();
    return Handlings.housed(part, housing, backRabbet, setup);
  }

  private List<Housing> housings(Housing.Kind kind, String entering) {
    return designed.housings().stream()
        .filter(housing -> housing.kind() == kind && housing.entering().equals(entering))
        .toList();
  }

  /** What rides the guide is the reference edge; what reaches out is the other size. */
  private Work workFor(List<Housing> housings) {
    var along = new ArrayList<Length>();
    var across = new ArrayList<Length>();
    for (var housing : housings) {
      var part = designed.part(housing.cut());
      boolean onLongEdge = housing.kind() == Housing.Kind.EDGE_RABBET;
      along.add((onLongEdge ? part.length() : part.width()).value());
      across.add((onLongEdge ? part.width() : part.length()).value());
    }
    return new Work(
        band(along),
        band(across),
        thickness(housings.stream().map(housing -> designed.part(housing.cut()).sheet()).toList()));
  }

  private static IllegalArgumentException uneven(Sheet sheet) {
    return new IllegalArgumentException(sheet.name() + " varies too much for any fit");
  }

  // ---- by hand -------------------------------------------------------------------------------

  private void byHand(OperationKind kind, String title) {
    var pieces =
        designed.parts().stream()
            .map(
                part ->
                    new PartCut(
                        part.id(),
                        part.name(),
                        Optional.empty(),
                        Handlings.reference(part.role()),
                        Optional.empty()))
            .toList();
    operations.add(
        new Operation(
            kind.id(),
            kind,
            title,
            Optional.empty(),
            Optional.empty(),
            pieces,
            distinct(designed.parts().stream().map(Part::sheet).toList()),
            List.of(),
            Optional.empty(),
            List.of()));
  }

  // ---- small things --------------------------------------------------------------------------

  private void add(
      String id,
      OperationKind kind,
      String title,
      CutAsked asked,
      Choice choice,
      List<PartCut> pieces,
      List<Sheet> sheets) {
    operations.add(
        new Operation(
            id,
            kind,
            title,
            Optional.of(asked),
            Optional.of(choice),
            pieces,
            distinct(sheets),
            List.of(),
            Optional.empty(),
            List.of()));
  }

  private static boolean isHoused(PartRole role) {
    return switch (role) {
      case TOP, BOTTOM, SHELF -> true;
      case LEFT_SIDE, RIGHT_SIDE, BACK, PLINTH -> false;
    };
  }

  private static <T, K> Map<K, List<T>> grouped(List<T> all, Function<T, K> by) {
    var groups = new LinkedHashMap<K, List<T>>();
    for (var one : all) {
      groups.computeIfAbsent(by.apply(one), key -> new ArrayList<>()).add(one);
    }
    return groups;
  }

  private static <T> List<T> distinct(List<T> all) {
    return List.copyOf(new LinkedHashSet<>(all));
  }

  private static Band at(Length length) {
    return new Band(length, length);
  }

  private static Band band(List<Length> lengths) {
    return new Band(
        lengths.stream().min(Length::compareTo).orElseThrow(),
        lengths.stream().max(Length::compareTo).orElseThrow());
  }

  private static Band thickness(List<Sheet> sheets) {
    return Readings.pooled("stock of one set-up", sheets.stream().map(Sheet::thickness).toList())
        .ends();
  }

  private static String article(String name) {
    return name.startsWith("shelf") ? name : "the " + name;
  }

  /** "both sides and top", "bottom and shelf 1". */
  private static String names(List<Part> parts) {
    var names = new ArrayList<String>();
    for (var part : parts) {
      names.add(part.name());
    }
    if (names.contains("left side") && names.contains("right side")) {
      names.remove("right side");
      names.set(names.indexOf("left side"), "both sides");
    }
    int last = names.size() - 1;
    return last == 0
        ? names.get(0)
        : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
  }
}

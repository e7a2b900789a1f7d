package org.proofcut.core.intake;

import static org.proofcut.core.intake.CutFields.MATERIAL;
import static org.proofcut.core.intake.CutFields.SIZES;
import static org.proofcut.core.intake.CutFields.THICKNESSES;
import static org.proofcut.core.intake.Field.choice;
import static org.proofcut.core.intake.Field.length;
import static org.proofcut.core.intake.Field.yesNo;

import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.WeightUnit;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.operation.HandTask;
import org.proofcut.core.operation.HandTask.CleanUp;
import org.proofcut.core.operation.HandTask.Finish;
import org.proofcut.core.shop.Liquid;
import org.proofcut.core.shop.LiquidKind;
import org.proofcut.core.shop.LiquidKind.Use;
import org.proofcut.core.shop.Shop;
import org.proofcut.core.stock.Material;
import org.proofcut.core.weight.Densities;
import org.proofcut.core.weight.Weight;

/** All forms of tasks without a cutter. */
public final class HandForms {

  private static final String NONE = "none";

  /** Before the id of a kind that is not on the shelf. */
  private static final String ANY_OF = "kind:";

  private static final Field WHAT_IS_CARRIED =
      choice(
          "load",
          "What is carried",
          List.of(
              new Field.Choice("sheet", "a whole sheet"),
              new Field.Choice("part", "a part or a board")));

  private static final Field LENGTH = length("length", "Length", "its longest side");
  private static final Field WIDTH = length("width", "Width", "");
  private static final Field THICKNESS = length("thickness", "Thickness", "by caliper");

  private static final Field PEOPLE =
      choice(
          "people",
          "Who carries it",
          List.of(new Field.Choice("one", "one alone"), new Field.Choice("two", "two together")));

  private static final Field STAIRS = yesNo("stairs", "Are there steps or stairs on the way?");

  private static final Field SCREWS = yesNo("screws", "Are screws driven?");
  private static final Field NAILS = yesNo("nails", "Are nails or pins driven?");

  private static final Field SANDED =
      choice(
          "by",
          "Sanded by",
          List.of(
              new Field.Choice("hand", "hand, with a block"),
              new Field.Choice("sander", "a sander held in the hands")));

  private static final Field EXTRACTED =
      yesNo("extracted", "Is an extractor or a vacuum connected to the sander?").mayStayEmpty();

  private static final Field APPLIED =
      choice(
          "applied",
          "Put on by",
          Arrays.stream(Finish.Applied.values())
              .map(one -> new Field.Choice(lower(one), how(one)))
              .toList());

  private static final Field WHERE =
      choice(
          "where",
          "Where",
          List.of(new Field.Choice("inside", "inside"), new Field.Choice("outdoors", "outdoors")));

  private static final Field WET_ROOM =
      yesNo("wet-room", "Will the piece stand in a bathroom or another wet room?");

  private static final Field CLEANED =
      choice(
          "what",
          "What is done",
          Arrays.stream(CleanUp.What.values())
              .map(one -> new Field.Choice(one.id(), what(one)))
              .toList());

  private HandForms() {}

  /** One form for each kind of task. */
  public static List<HandForm> all(Map<String, LiquidKind> kinds, Densities densities) {
    return List.of(
        carry(densities),
        dryFit(),
        fasten(kinds.values()),
        sand(),
        finish(kinds.values()),
        cleanUp(kinds.values()));
  }

  private static HandForm carry(Densities densities) {
    var fields =
        List.of(WHAT_IS_CARRIED, LENGTH, WIDTH, THICKNESS, MATERIAL, PEOPLE, STAIRS, JobForm.UNIT);
    return new HandForm(
        "carry",
        "Carry a sheet or a part",
        "What it weighs, and how it gets there without hurting anybody.",
        shop -> fields,
        shop ->
            form -> {
              boolean wholeSheet = form.choice(WHAT_IS_CARRIED).equals("sheet");
              var length = Worked.entered("length", form.length(LENGTH, SIZES));
              var width = Worked.entered("width", form.length(WIDTH, SIZES));
              var thickness = Worked.measured("thickness", form.length(THICKNESS, THICKNESSES));
              var material = material(form);
              boolean alone = form.choice(PEOPLE).equals("one");
              boolean stairs = form.yes(STAIRS);
              return form.result(
                  () ->
                      new HandTask.Carry(
                          material,
                          inTenths(
                              Weight.of(material, length, width, thickness, densities),
                              form.unit()),
                          length.value().max(width.value()),
                          wholeSheet,
                          alone,
                          stairs));
            });
  }

  /** As heavy as it may be: whoever lifts it is hurt by what is heavier than told. */
  private static Worked<Amount> inTenths(Weight weight, LengthUnit unit) {
    return Worked.called("weight at the most, rounded up to a tenth")
        .by("most weight")
        .with(weight.most())
        .is(WeightUnit.beside(unit).amount(weight.most().value(), 1, RoundingMode.CEILING));
  }

  private static HandForm dryFit() {
    return new HandForm(
        "dry-fit",
        "Dry fit",
        "Parts put together without glue, and knocked apart again.",
        shop -> List.of(MATERIAL),
        shop ->
            form -> {
              var material = material(form);
              return form.result(() -> new HandTask.DryFit(material));
            });
  }

  private static HandForm fasten(Collection<LiquidKind> kinds) {
    return new HandForm(
        "fasten",
        "Glue, screw, nail",
        "Parts joined for good, with clamps and drivers.",
        shop -> List.of(MATERIAL, glue(kinds, shop), SCREWS, NAILS),
        shop ->
            form -> {
              var material = material(form);
              var glue = liquid(form, glue(kinds, shop), kinds, shop);
              boolean screws = form.yes(SCREWS);
              boolean nails = form.yes(NAILS);
              return form.result(() -> new HandTask.Fasten(material, glue, screws, nails));
            });
  }

  private static HandForm sand() {
    return new HandForm(
        "sand",
        "Sand",
        "By hand, or with a sander held in the hands.",
        shop -> List.of(SANDED, MATERIAL, EXTRACTED),
        shop ->
            form -> {
              boolean byMachine = form.choice(SANDED).equals("sander");
              var material = material(form);
              boolean extracted = form.yes(EXTRACTED);
              return form.result(
                  () -> new HandTask.Sand(material, byMachine, byMachine && extracted));
            });
  }

  private static HandForm finish(Collection<LiquidKind> kinds) {
    return new HandForm(
        "finish",
        "Put a finish on",
        "Oil, wax, varnish, shellac or lacquer, wiped, brushed or sprayed.",
        shop -> List.of(finishes(kinds, shop), APPLIED, WHERE, WET_ROOM),
        shop ->
            form -> {
              var with = liquid(form, finishes(kinds, shop), kinds, shop);
              var applied = form.choice(APPLIED);
              boolean outdoors = form.choice(WHERE).equals("outdoors");
              boolean wetRoom = form.yes(WET_ROOM);
              return form.result(
                  () ->
                      new Finish(
                          with.orElseThrow(),
                          Finish.Applied.valueOf(applied.toUpperCase(Locale.ROOT)),
                          outdoors,
                          wetRoom));
            });
  }

  private static HandForm cleanUp(Collection<LiquidKind> kinds) {
    return new HandForm(
        "clean-up",
        "Clean up",
        "Dust, rags, brushes: what is left when the work is finished.",
        shop -> List.of(CLEANED, onRags(kinds, shop)),
        shop ->
            form -> {
              var what = form.choice(CLEANED);
              var field = onRags(kinds, shop);
              var with = liquid(form, field, kinds, shop);
              boolean wet = List.of("rags", "solvent").contains(what);
              if (wet && with.isEmpty() && form.isSound(field)) {
                form.problem(
                    field, "Rags and solvents are wet with something", "a liquid of the list");
              }
              return form.result(
                  () ->
                      new CleanUp(
                          CleanUp.What.valueOf(what.toUpperCase(Locale.ROOT).replace('-', '_')),
                          with.filter(liquid -> wet)));
            });
  }

  // ---- liquids -------------------------------------------------------------------------------

  private static Field glue(Collection<LiquidKind> kinds, Shop shop) {
    return choice("glue", "Glue", withNone("no glue", liquids(kinds, shop, List.of(Use.GLUE))));
  }

  private static Field finishes(Collection<LiquidKind> kinds, Shop shop) {
    return choice("finish", "Finish", liquids(kinds, shop, List.of(Use.FINISH)).toList());
  }

  private static Field onRags(Collection<LiquidKind> kinds, Shop shop) {
    return choice(
        "liquid",
        "What is on the rags, or cleans the brush",
        withNone("nothing", liquids(kinds, shop, List.of(Use.values()))));
  }

  private static List<Field.Choice> withNone(String words, Stream<Field.Choice> choices) {
    return Stream.concat(Stream.of(new Field.Choice(NONE, words)), choices).toList();
  }

  /** What is on the shelf first; then any of each kind, for a tin that is not entered. */
  private static Stream<Field.Choice> liquids(
      Collection<LiquidKind> kinds, Shop shop, List<Use> uses) {
    return Stream.concat(
        shop.liquids().stream()
            .filter(one -> uses.contains(one.kind().use()))
            .map(one -> new Field.Choice(one.id(), one.name())),
        kinds.stream()
            .filter(kind -> uses.contains(kind.use()))
            .map(kind -> new Field.Choice(ANY_OF + kind.id(), "any " + kind.name())));
  }

  private static Optional<Liquid> liquid(
      FormReader form, Field field, Collection<LiquidKind> kinds, Shop shop) {
    var chosen = form.choice(field);
    return Stream.concat(
            shop.liquids().stream().filter(one -> one.id().equals(chosen)),
            kinds.stream().filter(kind -> chosen.equals(ANY_OF + kind.id())).map(Liquid::any))
        .findFirst();
  }

  private static Material material(FormReader form) {
    var chosen = form.choice(MATERIAL);
    return Arrays.stream(Material.values())
        .filter(one -> one.id().equals(chosen))
        .findFirst()
        .orElse(Material.PLYWOOD);
  }

  private static String how(Finish.Applied applied) {
    return switch (applied) {
      case WIPED -> "wiping";
      case BRUSHED -> "brush or roller";
      case SPRAYED -> "spraying";
    };
  }

  private static String what(CleanUp.What what) {
    return switch (what) {
      case DUST -> "dust and chips are picked up";
      case COMPRESSED_AIR -> "something is blown off with compressed air";
      case RAGS -> "rags are put away";
      case SOLVENT -> "brushes or tools are cleaned with a solvent";
    };
  }

  private static String lower(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }
}

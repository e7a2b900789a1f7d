package org.proofcut.core.intake;

import static org.proofcut.core.intake.Field.choice;
import static org.proofcut.core.intake.Field.length;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.readings.Readings;
import org.proofcut.core.setup.Work;
import org.proofcut.core.shop.Cutter;
import org.proofcut.core.shop.SawBlade;
import org.proofcut.core.shop.StraightCutter;
import org.proofcut.core.stock.Material;
import org.proofcut.core.stock.Sheet;

/** Fields that several kinds of cut ask for, and how they are read. */
final class CutFields {

  static final Band SIZES = band("1 mm", "4000 mm");

  static final Band DISTANCES = band("0 mm", "4000 mm");

  static final Band THICKNESSES = band("2 mm", "120 mm");

  static final Band DEPTHS = band("0.5 mm", "100 mm");

  static final List<Class<? extends Cutter>> STRAIGHT = List.of(StraightCutter.class);

  static final List<Class<? extends Cutter>> BLADES = List.of(SawBlade.class);

  static final Field MATERIAL =
      choice(
          "material",
          "Made of",
          Arrays.stream(Material.values())
              .map(one -> new Field.Choice(one.id(), one.words()))
              .toList());

  static final Field THINNEST =
      length("thinnest", "Thinnest reading", "by caliper, where it is cut");

  static final Field THICKEST =
      length("thickest", "Thickest reading", "by caliper, where it is cut");

  static final Field ALONG =
      length("along", "Reference edge", "how long it is: it rides fence or straightedge");

  static final Field ACROSS =
      length("across", "Reach", "how far the piece goes out from that edge");

  private CutFields() {}

  static CutForm.Group piece(Field... sizes) {
    var fields = new ArrayList<>(List.of(THINNEST, THICKEST));
    fields.addAll(List.of(sizes));
    fields.add(MATERIAL);
    return new CutForm.Group("The piece that is cut", fields);
  }

  static Sheet stock(FormReader form) {
    var thickness = readings(form, "the piece", THINNEST, THICKEST);
    var chosen = form.choice(MATERIAL);
    var material =
        Arrays.stream(Material.values())
            .filter(one -> one.id().equals(chosen))
            .findFirst()
            .orElse(Material.PLYWOOD);
    return sheet("stock", "the piece", material, thickness);
  }

  static Work work(FormReader form, Sheet stock) {
    return new Work(
        at(form.length(ALONG, SIZES)), at(form.length(ACROSS, SIZES)), stock.thickness().ends());
  }

  /** Two readings: those between them would change no figure here. */
  static Readings readings(FormReader form, String of, Field least, Field most) {
    var thinnest = form.length(least, THICKNESSES);
    var thickest = form.length(most, THICKNESSES);
    if (form.isSound(least, most) && thinnest.isGreaterThan(thickest)) {
      form.problem(
          most, "That is thinner than the thinnest reading", form.shown(thinnest) + " or more");
    }
    return new Readings(of, List.of(thinnest, thickest));
  }

  static Sheet sheet(String id, String name, Material material, Readings thickness) {
    // How large the sheet was matters to no single cut.
    return new Sheet(id, name, material, Length.ZERO, Length.ZERO, thickness);
  }

  static Band at(Length length) {
    return new Band(length, length);
  }

  static Band band(String least, String most) {
    return new Band(Length.of(least), Length.of(most));
  }
}

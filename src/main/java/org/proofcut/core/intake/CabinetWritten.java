package org.proofcut.core.intake;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.storage.Cabinet;
import org.proofcut.core.storage.Fitting;
import org.proofcut.core.storage.Size;

/** A cabinet as it would be typed; read again, it is the same. */
final class CabinetWritten {

  private CabinetWritten() {}

  /**
   * What would be typed for a cabinet that was measured.
   *
   * @param unit of bare numbers; all that is written has its unit with it
   */
  static Map<String, String> measured(Cabinet cabinet, LengthUnit unit) {
    var typed = begin(cabinet, unit);
    typed.put(CabinetFields.WIDE.name(), LengthTyped.of(cabinet.inside().wide(), unit));
    typed.put(CabinetFields.HIGH.name(), LengthTyped.of(cabinet.inside().high(), unit));
    typed.put(CabinetFields.DEEP.name(), LengthTyped.of(cabinet.inside().deep(), unit));
    typed.put(CabinetFields.RAISED.name(), LengthTyped.of(cabinet.raised(), unit));
    typed.put(CabinetFields.BACK.name(), LengthTyped.of(cabinet.back(), unit));
    typed.put(CabinetFields.SIDE.name(), LengthTyped.of(cabinet.side(), unit));
    typed.put(CabinetFields.BAYS.name(), Integer.toString(cabinet.bays().size()));
    typed.put(CabinetFields.UPRIGHT_DEPTH.name(), LengthTyped.of(cabinet.uprightDeep(), unit));
    if (cabinet.bays().size() > 1) {
      var gap = cabinet.bays().get(1).across().least().minus(cabinet.bays().get(0).across().most());
      typed.put(CabinetFields.UPRIGHT.name(), LengthTyped.of(gap, unit));
      cabinet
          .bays()
          .forEach(
              bay ->
                  typed.put(
                      CabinetFields.bay(bay.number()).name(), LengthTyped.of(bay.width(), unit)));
    }
    putFittings(cabinet.fittings(), unit, typed);
    return typed;
  }

  /**
   * What would be typed for a cabinet that is the case of a job, beyond what follows from its
   * design.
   *
   * @param made the case before doors and hooks
   * @param shelfGrams what each of its shelves carries
   */
  static Map<String, String> ofJob(
      Cabinet cabinet, LengthUnit unit, String job, Cabinet made, int shelfGrams) {
    var typed = begin(cabinet, unit);
    typed.put(CabinetForm.JOB, job);
    typed.put(
        CabinetFields.HUNG.name(), LengthTyped.of(cabinet.raised().minus(made.raised()), unit));
    typed.put(CabinetFields.SHELF_LOAD.name(), grams(shelfGrams));
    var ofCase = made.fittings().stream().map(Fitting::id).toList();
    putFittings(
        cabinet.fittings().stream().filter(one -> !ofCase.contains(one.id())).toList(),
        unit,
        typed);
    return typed;
  }

  private static Map<String, String> begin(Cabinet cabinet, LengthUnit unit) {
    var typed = new LinkedHashMap<String, String>();
    typed.put(CabinetFields.NAME.name(), cabinet.name());
    typed.put(JobForm.UNIT.name(), unit == LengthUnit.INCH ? "in" : "mm");
    typed.put(CabinetFields.BEFORE.name(), LengthTyped.of(cabinet.before(), unit));
    typed.put(CabinetFields.DRY.name(), cabinet.dry() ? "yes" : "no");
    var doors = cabinet.doors();
    typed.put(
        CabinetFields.DOORS.name(),
        switch (doors.size()) {
          case 0 -> "none";
          case 1 -> doors.get(0).hingedLeft() ? "left" : "right";
          default -> "two";
        });
    if (!doors.isEmpty()) {
      typed.put(CabinetFields.DOOR.name(), LengthTyped.of(doors.get(0).thickness(), unit));
    }
    if (doors.size() > 1) {
      typed.put(CabinetFields.LEFT_DOOR.name(), LengthTyped.of(doors.get(0).across().most(), unit));
    }
    return typed;
  }

  /**
   * A fitting that has no number yet gets the first that is free.
   *
   * @throws java.util.NoSuchElementException if there are more than {@link
   *     CabinetForm#MOST_FITTINGS}
   */
  private static void putFittings(
      List<Fitting> fittings, LengthUnit unit, Map<String, String> typed) {
    var ids = fittings.stream().map(Fitting::id).toList();
    var free =
        IntStream.rangeClosed(1, CabinetForm.MOST_FITTINGS)
            .filter(number -> !ids.contains(FittingFields.id(number)))
            .iterator();
    for (var fitting : fittings) {
      int number =
          IntStream.rangeClosed(1, CabinetForm.MOST_FITTINGS)
              .filter(one -> FittingFields.id(one).equals(fitting.id()))
              .findFirst()
              .orElseGet(() -> free.next());
      putFitting(new FittingFields(number, List.of()), fitting, unit, typed);
    }
  }

  /** The id of a shelf that a box stands on is typed as it is here. */
  private static void putFitting(
      FittingFields fields, Fitting fitting, LengthUnit unit, Map<String, String> typed) {
    var kind = FittingFields.Kind.of(fitting);
    typed.put(fields.kind().name(), kind.word());
    var values = values(fitting);
    var asked = fields.of(kind);
    for (int i = 0; i < asked.size(); i++) {
      var value = values.get(i);
      typed.put(
          asked.get(i).name(),
          value instanceof Length length ? LengthTyped.of(length, unit) : value.toString());
    }
  }

  /** In the order of the fields. */
  private static List<Object> values(Fitting fitting) {
    var values = new ArrayList<Object>();
    values.add(fitting.name());
    if (fitting instanceof Fitting.Shelf one) {
      values.addAll(List.of(one.bay(), one.top(), one.thickness(), one.deep()));
      values.add(grams(one.mostGrams()));
    } else if (fitting instanceof Fitting.Rail one) {
      values.addAll(List.of(one.bay(), one.at()));
      values.addAll(List.of(grams(one.mostGrams()), grams(one.eachGrams())));
    } else if (fitting instanceof Fitting.Drawer one) {
      values.addAll(List.of(one.bay(), one.bottom(), one.high()));
      values.addAll(sizes(one.inner()));
      values.add(grams(one.mostGrams()));
    } else if (fitting instanceof Fitting.LidBox one) {
      values.addAll(List.of(one.bay(), one.on().isEmpty() ? FittingFields.BOTTOM : one.on()));
      values.addAll(sizes(one.outer()));
      values.addAll(sizes(one.inner()));
      values.add(grams(one.mostGrams()));
    } else if (fitting instanceof Fitting.DoorRail one) {
      values.addAll(List.of(one.door(), one.at(), one.deepest()));
      values.addAll(List.of(grams(one.mostGrams()), grams(one.eachGrams())));
    } else if (fitting instanceof Fitting.Wall one) {
      values.addAll(List.of(one.at(), one.wide(), one.drop(), one.deep()));
      values.addAll(List.of(grams(one.mostGrams()), grams(one.eachGrams())));
    }
    return values;
  }

  private static List<Length> sizes(Size size) {
    return List.of(size.wide(), size.high(), size.deep());
  }

  private static String grams(int grams) {
    return BigDecimal.valueOf(grams).movePointLeft(3).stripTrailingZeros().toPlainString() + " kg";
  }
}

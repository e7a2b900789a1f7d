package org.proofcut.core.intake;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.regex.Pattern;
import org.proofcut.core.measure.Band;
import org.proofcut.core.shop.SpeedStep;
import org.proofcut.core.shop.StackedCutter.Layer;

/** Fields that several entries stand in, one after the other. */
final class SeveralIn {

  /** In revolutions a minute. */
  private static final int FASTEST = 40_000;

  private static final int MOST_LAYERS = 6;
  private static final int MOST_OF_A_LAYER = 6;
  private static final Pattern LAYER =
      Pattern.compile("(?<thickness>.+?)[x×*]\\s*(?<count>[0-9]{1,3})\\s*(?:[,;]\\s*|$)");

  private SeveralIn() {}

  /** {@code 1: 8000, 2: 12000}; a number alone is a machine with one speed. */
  static List<SpeedStep> speeds(FormReader form, Field field) {
    var allowed = "like 1: 8000, 2: 12000, or one number for a single speed; slowest first";
    var steps = new ArrayList<SpeedStep>();
    var marks = new LinkedHashSet<String>();
    var text = form.raw(field.name()).strip();
    if (text.isEmpty()) {
      form.wrong(field, "Nothing was entered", allowed, ToType.speeds());
      return List.of();
    }
    int before = 0;
    for (var part : text.split(",", -1)) {
      var both = part.split(":", -1);
      var mark = both.length == 2 ? both[0].strip() : "fixed";
      var speed = both[both.length - 1].strip();
      boolean wrong =
          both.length > 2
              || mark.isEmpty()
              || mark.length() > 12
              || !marks.add(mark)
              || !speed.matches("[0-9]{1,5}");
      int perMinute = wrong ? 0 : Integer.parseInt(speed);
      if (wrong || perMinute <= before || perMinute > FASTEST) {
        form.wrong(
            field,
            "\"" + FormReader.shortened(part.strip()) + "\" is no step of a dial",
            allowed,
            ToType.speeds());
        return List.of();
      }
      before = perMinute;
      steps.add(new SpeedStep(mark, perMinute));
    }
    return steps;
  }

  /**
   * {@code 3.2 mm x 3, 1.6 mm x 1}: thicknesses, each with how many there are. The count ends an
   * entry, so that a comma may stand in a number, too.
   */
  static List<Layer> layers(FormReader form, Field field, Band allowed) {
    var text = form.text(field);
    if (text.isEmpty() || !form.isSound(field)) {
      return List.of();
    }
    var layers = new ArrayList<Layer>();
    int read = 0;
    var entry = LAYER.matcher(text);
    while (entry.lookingAt()) {
      var thickness = form.length(field, entry.group("thickness").strip(), allowed);
      int count = Integer.parseInt(entry.group("count"));
      if (count < 1 || count > MOST_OF_A_LAYER) {
        form.wrong(
            field,
            "\"" + FormReader.shortened(entry.group().strip()) + "\": " + count + " of them",
            "1 to " + MOST_OF_A_LAYER + " of a thickness",
            ToType.layers(form.unit()));
      } else {
        thickness.ifPresent(one -> layers.add(new Layer(one, count)));
      }
      read = entry.end();
      entry.region(read, text.length());
    }
    if (read < text.length()) {
      form.wrong(
          field,
          "\""
              + FormReader.shortened(text.substring(read).strip())
              + "\" does not say how many there are",
          "a thickness, x, and how many; a comma before the next",
          ToType.layers(form.unit()));
    } else if (layers.size() > MOST_LAYERS) {
      form.wrong(
          field,
          "That is " + layers.size() + " thicknesses",
          "at most " + MOST_LAYERS,
          "Leave out what is never used");
    }
    return layers;
  }
}

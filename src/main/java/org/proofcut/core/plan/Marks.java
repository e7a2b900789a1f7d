package org.proofcut.core.plan;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.shop.StraightCutter;
import org.proofcut.core.stock.Sheet;

/**
 * What a set-up stands on, each by name, exactly: machine, cutter, every figure, every sheet. Two
 * set-ups with the same marks are the same set-up, and a proof of one is a proof of the other.
 */
public record Marks(List<Mark> all) {

  /**
   * One thing that a set-up stands on.
   *
   * @param what such as "fence" or "cutter"
   * @param value exact, such as {@code 101.9 mm}
   */
  public record Mark(String what, String value) {}

  /** Something that differs between two set-ups of the same operation. */
  public record Difference(String what, String was, String is) {}

  public Marks {
    all = List.copyOf(all);
  }

  private static final String ACCEPTED = "accepted ";

  /** The marks of an operation. */
  public static Marks of(Operation operation) {
    var marks = new ArrayList<Mark>();
    operation.setup().ifPresent(setup -> addSetup(marks, setup));
    for (var sheet : operation.cutSheets()) {
      marks.add(new Mark("sheet that is cut (" + sheet.name() + ")", readings(sheet)));
    }
    for (var sheet : operation.enteringSheets()) {
      marks.add(new Mark("sheet that goes in (" + sheet.name() + ")", readings(sheet)));
    }
    return new Marks(marks);
  }

  private static void addSetup(List<Mark> marks, Setup setup) {
    marks.add(new Mark("machine", setup.machine().name()));
    marks.add(new Mark("cutter", setup.cutter().name() + ", " + setup.cutter().diameter()));
    // Where no strip makes up for it, the width of a slot stands on what a blade or a stack cuts.
    if (setup.asked() instanceof CutAsked.Slot && !(setup.cutter() instanceof StraightCutter)) {
      marks.add(new Mark("width of the cut", setup.cutter().cutWidth().toString()));
    }
    for (var setting : setup.settings()) {
      marks.add(
          new Mark(
              setting.role().words().toLowerCase(Locale.ROOT), setting.read().value().toString()));
    }
    if (setup.asked() instanceof CutAsked.Bored bored) {
      for (var hole : bored.row().along()) {
        marks.add(new Mark(hole.name(), hole.value().toString()));
      }
    }
    for (var angle : setup.anglesSet()) {
      marks.add(
          new Mark(
              angle.role().words().toLowerCase(Locale.ROOT) + " angle",
              angle.set().value().toString()));
    }
    marks.add(new Mark("passes", Integer.toString(setup.passes().size())));
    for (var measure : setup.measures()) {
      marks.add(
          new Mark(
              ACCEPTED + measure.dimension().words().toLowerCase(Locale.ROOT),
              measure.accepted().least() + " to " + measure.accepted().most()));
    }
  }

  private static String readings(Sheet sheet) {
    return sheet.thickness().ends().least() + " to " + sheet.thickness().ends().most();
  }

  /** A short name for exactly these marks: the first 16 hexadecimal digits of their SHA-256. */
  public String fingerprint() {
    try {
      var digest = MessageDigest.getInstance("SHA-256");
      for (var mark : all) {
        digest.update((mark.what() + "\n" + mark.value() + "\n").getBytes(StandardCharsets.UTF_8));
      }
      return HexFormat.of().formatHex(digest.digest(), 0, 8);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  /** What differs from earlier marks, in this order. */
  public List<Difference> since(Marks earlier) {
    var differences = new ArrayList<Difference>();
    for (var mark : all) {
      var was = earlier.value(mark.what());
      if (!mark.value().equals(was)) {
        differences.add(new Difference(mark.what(), was, mark.value()));
      }
    }
    for (var gone : earlier.all) {
      if (value(gone.what()).isEmpty()) {
        differences.add(new Difference(gone.what(), gone.value(), ""));
      }
    }
    return differences;
  }

  /**
   * Whether parts cut under earlier marks are as good as cut under these: what is accepted of the
   * cut is the same, however it was set. Without anything accepted, every mark counts.
   */
  public boolean comesToTheSameAs(Marks earlier) {
    var differences = since(earlier);
    boolean measured = all.stream().anyMatch(mark -> mark.what().startsWith(ACCEPTED));
    return measured
        ? differences.stream().noneMatch(one -> one.what().startsWith(ACCEPTED))
        : differences.isEmpty();
  }

  private String value(String what) {
    return all.stream()
        .filter(mark -> mark.what().equals(what))
        .map(Mark::value)
        .findFirst()
        .orElse("");
  }
}

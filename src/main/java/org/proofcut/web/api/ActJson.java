package org.proofcut.web.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthFormatException;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.run.Act;
import org.proofcut.core.run.Entry;
import org.proofcut.core.setup.Measure.Dimension;

/** Acts at the bench, as they are sent and as the record gives them out. */
final class ActJson {

  private static final int LONGEST_ID = 80;

  /** As long as the bench takes a reason; longer is told there in its own words. */
  private static final int LONGEST_WORDS = 4_000;

  private static final Set<String> DIMENSIONS =
      Arrays.stream(Dimension.values()).map(ShopJson::word).collect(Collectors.toUnmodifiableSet());

  private static final Set<String> TYPES =
      Arrays.stream(Type.values()).map(ShopJson::word).collect(Collectors.toUnmodifiableSet());

  private ActJson() {}

  /** The types of act, as they are written. */
  private enum Type {
    CONFIRMED,
    WENT_WITHOUT,
    READING_TAKEN,
    READINGS_DROPPED,
    CORRECTED,
    OVERRIDDEN,
    READ_AGAIN,
    DISTURBED,
    PART_CUT,
    PART_NOT_CUT,
    HELD,
    SIGNED_OFF
  }

  /** What is sent to record an act. */
  @Schema(
      name = "ActSent",
      requiredProperties = {"entryId", "device", "operation", "fingerprint", "act"})
  record Sent(
      @Schema(description = "made where the act happened; sent twice, it is done once")
          String entryId,
      @Schema(description = "which tablet, as it names itself") String device,
      @Schema(description = "id of the sheet") String operation,
      @Schema(description = "of the sheet as the person saw it") String fingerprint,
      Done act) {}

  /** An act; which fields it has depends on its type. */
  @Schema(name = "Act", requiredProperties = "type")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Done(
      @Schema(
              description =
                  "confirmed (item, answer), went-without (item, reason), reading-taken (attempt,"
                      + " dimension, found), readings-dropped (attempt, dimension), corrected"
                      + " (nothing: it is as the verdicts say), overridden (reason), read-again"
                      + " (found), disturbed (what), part-cut (part), part-not-cut (part), held,"
                      + " signed-off",
              enumeration = {
                "confirmed",
                "went-without",
                "reading-taken",
                "readings-dropped",
                "corrected",
                "overridden",
                "read-again",
                "disturbed",
                "part-cut",
                "part-not-cut",
                "held",
                "signed-off"
              })
          String type,
      Optional<String> item,
      @Schema(description = "of a figure: what was read, with its unit") Optional<String> answer,
      Optional<String> reason,
      @Schema(description = "which proof cut, from 1") Optional<Integer> attempt,
      @Schema(description = "width, depth, distance or size") Optional<String> dimension,
      @Schema(description = "as typed; in the unit of the job where none is written")
          Optional<String> found,
      Optional<String> what,
      Optional<String> part,
      @Schema(description = "given out only: what was moved, and by how much")
          Optional<List<Moved>> corrections) {}

  /** A setting that is moved by a correction. */
  @Schema(name = "Correction")
  record Moved(
      String role, @Schema(description = "positive makes the figure larger") LengthJson.Plain by) {}

  /** A line of the record. */
  @Schema(name = "Entry")
  record Line(
      String id, String at, String device, String operation, String fingerprint, Done act) {}

  static Line line(Entry entry, LengthUnit unit) {
    return new Line(
        entry.id(),
        entry.at().toString(),
        entry.device(),
        entry.operation(),
        entry.fingerprint(),
        filled(entry.act(), unit).done());
  }

  /** An act while its fields are filled in. */
  private static final class Filled {

    private final Type type;
    private Optional<String> item = Optional.empty();
    private Optional<String> answer = Optional.empty();
    private Optional<String> reason = Optional.empty();
    private Optional<Integer> attempt = Optional.empty();
    private Optional<String> dimension = Optional.empty();
    private Optional<String> found = Optional.empty();
    private Optional<String> what = Optional.empty();
    private Optional<String> part = Optional.empty();
    private Optional<List<Moved>> corrections = Optional.empty();

    Filled(Type type) {
      this.type = type;
    }

    Filled item(String id) {
      item = Optional.of(id);
      return this;
    }

    Filled answer(String words) {
      answer = Optional.of(words);
      return this;
    }

    Filled reason(String words) {
      reason = Optional.of(words);
      return this;
    }

    Filled measure(int proofCut, Dimension measured) {
      attempt = Optional.of(proofCut);
      dimension = Optional.of(ShopJson.word(measured));
      return this;
    }

    Filled found(Length length) {
      found = Optional.of(length.toString());
      return this;
    }

    Filled what(String words) {
      what = Optional.of(words);
      return this;
    }

    Filled part(String id) {
      part = Optional.of(id);
      return this;
    }

    Filled corrections(List<Moved> moved) {
      corrections = Optional.of(moved);
      return this;
    }

    Done done() {
      return new Done(
          ShopJson.word(type),
          item,
          answer,
          reason,
          attempt,
          dimension,
          found,
          what,
          part,
          corrections);
    }
  }

  private static Filled filled(Act act, LengthUnit unit) {
    if (act instanceof Act.Confirmed one) {
      return new Filled(Type.CONFIRMED).item(one.item()).answer(one.answer());
    }
    if (act instanceof Act.WentWithout one) {
      return new Filled(Type.WENT_WITHOUT).item(one.item()).reason(one.reason());
    }
    if (act instanceof Act.ReadingTaken one) {
      return new Filled(Type.READING_TAKEN)
          .measure(one.attempt(), one.dimension())
          .found(one.found());
    }
    if (act instanceof Act.ReadingsDropped one) {
      return new Filled(Type.READINGS_DROPPED).measure(one.attempt(), one.dimension());
    }
    if (act instanceof Act.Corrected one) {
      return new Filled(Type.CORRECTED).corrections(ProgressJson.moved(one.corrections(), unit));
    }
    if (act instanceof Act.Overridden one) {
      return new Filled(Type.OVERRIDDEN).reason(one.reason());
    }
    if (act instanceof Act.ReadAgain one) {
      return new Filled(Type.READ_AGAIN).found(one.found());
    }
    if (act instanceof Act.Disturbed one) {
      return new Filled(Type.DISTURBED).what(one.what());
    }
    if (act instanceof Act.PartCut one) {
      return new Filled(Type.PART_CUT).part(one.part());
    }
    if (act instanceof Act.PartNotCut one) {
      return new Filled(Type.PART_NOT_CUT).part(one.part());
    }
    return new Filled(act instanceof Act.Held ? Type.HELD : Type.SIGNED_OFF);
  }

  /**
   * The act in a body.
   *
   * @param corrections what the verdicts ask for, where that is the act
   */
  static Act read(Body body, LengthUnit unit, Act.Corrected corrections) {
    var word = body.word("type", TYPES);
    if (word.isEmpty()) {
      return new Act.Held();
    }
    return switch (Type.valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'))) {
      case CONFIRMED -> {
        body.only("type", "item", "answer");
        yield new Act.Confirmed(body.text("item", LONGEST_ID), words(body, "answer"));
      }
      case WENT_WITHOUT -> {
        body.only("type", "item", "reason");
        yield new Act.WentWithout(body.text("item", LONGEST_ID), words(body, "reason"));
      }
      case READING_TAKEN -> {
        body.only("type", "attempt", "dimension", "found");
        yield new Act.ReadingTaken(body.count("attempt"), dimension(body), found(body, unit));
      }
      case READINGS_DROPPED -> {
        body.only("type", "attempt", "dimension");
        yield new Act.ReadingsDropped(body.count("attempt"), dimension(body));
      }
      case CORRECTED -> {
        body.only("type");
        yield corrections;
      }
      case OVERRIDDEN -> {
        body.only("type", "reason");
        yield new Act.Overridden(words(body, "reason"));
      }
      case READ_AGAIN -> {
        body.only("type", "found");
        yield new Act.ReadAgain(found(body, unit));
      }
      case DISTURBED -> {
        body.only("type", "what");
        yield new Act.Disturbed(words(body, "what"));
      }
      case PART_CUT -> {
        body.only("type", "part");
        yield new Act.PartCut(body.text("part", LONGEST_ID));
      }
      case PART_NOT_CUT -> {
        body.only("type", "part");
        yield new Act.PartNotCut(body.text("part", LONGEST_ID));
      }
      case HELD -> {
        body.only("type");
        yield new Act.Held();
      }
      case SIGNED_OFF -> {
        body.only("type");
        yield new Act.SignedOff();
      }
    };
  }

  private static String words(Body body, String field) {
    return body.text(field, LONGEST_WORDS);
  }

  private static Dimension dimension(Body body) {
    var word = body.word("dimension", DIMENSIONS);
    return word.isEmpty() ? Dimension.WIDTH : Dimension.valueOf(word.toUpperCase(Locale.ROOT));
  }

  private static Length found(Body body, LengthUnit unit) {
    var text = body.text("found", LONGEST_WORDS);
    if (text.isEmpty()) {
      return Length.ZERO;
    }
    try {
      var length = Length.parse(text, unit);
      if (length.isPositive()) {
        return length;
      }
      body.wrong(
          body.at("found"),
          "A reading is greater than zero",
          LengthFormatException.EXAMPLES,
          "Enter what the caliper says");
    } catch (LengthFormatException e) {
      body.wrong(
          body.at("found"),
          "\"" + e.text() + "\": " + e.reason(),
          LengthFormatException.EXAMPLES,
          "Enter what the caliper says");
    }
    return Length.ZERO;
  }
}

package org.proofcut.web.job;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.intake.Field;
import org.proofcut.core.intake.Field.Choice;
import org.proofcut.core.intake.JobForm;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.part.PartRole;
import org.proofcut.web.part.Asked;

/**
 * The job form as it stands on the page.
 *
 * @param name name and unit
 * @param from which sheet each part comes from
 */
record JobSections(
    List<Asked> name,
    List<Asked> outside,
    List<SheetGroup> sheets,
    List<Asked> from,
    List<Asked> joinery,
    List<Asked> plinth,
    List<Asked> shelves) {

  /** The fields of one sheet. */
  record SheetGroup(int number, List<Asked> about, List<Asked> readings) {}

  private static final Pattern GROUP = Pattern.compile("(sheet|shelf)-([0-9])(-.*)?");

  static JobSections of(Map<String, String> typed, List<Problem> problems) {
    return new Reader(typed, problems, JobForm.unit(typed)).sections();
  }

  /** What was typed, with one more empty sheet or shelf where there is room for one. */
  static Map<String, String> withOneMore(String group, Map<String, String> typed) {
    var more = new LinkedHashMap<>(typed);
    switch (group) {
      case "sheet" -> {
        int number = highest("sheet", JobForm.MOST_SHEETS, typed) + 1;
        if (number <= JobForm.MOST_SHEETS) {
          more.putIfAbsent("sheet-" + number + "-name", "");
        }
      }
      case "shelf" -> {
        int number = highest("shelf", JobForm.MOST_SHELVES, typed) + 1;
        if (number <= JobForm.MOST_SHELVES) {
          more.putIfAbsent("shelf-" + number, "");
        }
      }
      default -> {
        // Only the two buttons of the form send a group that there is.
      }
    }
    return more;
  }

  /** The highest number whose fields were sent, filled in or not; at least one group is shown. */
  private static int highest(String group, int most, Map<String, String> typed) {
    return typed.keySet().stream()
        .map(GROUP::matcher)
        .filter(name -> name.matches() && name.group(1).equals(group))
        .mapToInt(name -> Integer.parseInt(name.group(2)))
        .filter(number -> number >= 1 && number <= most)
        .max()
        .orElse(1);
  }

  /** Every field on the page. */
  Stream<Asked> all() {
    return Stream.of(
            Stream.of(name, outside, from, joinery, plinth, shelves),
            sheets.stream().flatMap(sheet -> Stream.of(sheet.about, sheet.readings)))
        .flatMap(lists -> lists)
        .flatMap(List::stream);
  }

  public boolean hasRoomForASheet() {
    return sheets.size() < JobForm.MOST_SHEETS;
  }

  public boolean hasRoomForAShelf() {
    return shelves.size() < JobForm.MOST_SHELVES;
  }

  public int nextSheet() {
    return sheets.size() + 1;
  }

  public int nextShelf() {
    return shelves.size() + 1;
  }

  private record Reader(Map<String, String> typed, List<Problem> problems, LengthUnit unit) {

    JobSections sections() {
      int sheets = highest("sheet", JobForm.MOST_SHEETS, typed);
      return new JobSections(
          asked(JobForm.NAME, JobForm.UNIT),
          asked(JobForm.WIDTH, JobForm.HEIGHT, JobForm.DEPTH),
          IntStream.rangeClosed(1, sheets).mapToObj(this::sheet).toList(),
          Arrays.stream(PartRole.values()).map(role -> ask(from(role, sheets))).toList(),
          asked(
              JobForm.TOP_RABBET,
              JobForm.BOTTOM_DADO,
              JobForm.SHELF_DADO,
              JobForm.BACK_RABBET,
              JobForm.BACK_SET_IN),
          asked(JobForm.PLINTH_HEIGHT, JobForm.PLINTH_SET_BACK),
          IntStream.rangeClosed(1, highest("shelf", JobForm.MOST_SHELVES, typed))
              .mapToObj(number -> ask(JobForm.shelf(number)))
              .toList());
    }

    private SheetGroup sheet(int number) {
      return new SheetGroup(
          number,
          JobForm.sheet(number).stream().map(this::ask).toList(),
          IntStream.rangeClosed(1, JobForm.MOST_READINGS)
              .mapToObj(i -> ask(JobForm.reading(number, i)).withoutHint())
              .toList());
    }

    /** Sheets can be chosen as soon as they stand on the page, before they have a name. */
    private Field from(PartRole role, int sheets) {
      var field = JobForm.sheetOf(role, typed);
      var choices = new ArrayList<Choice>();
      for (int number = 1; number <= sheets; number++) {
        var value = Integer.toString(number);
        choices.add(
            field.choices().stream()
                .filter(choice -> choice.value().equals(value))
                .findFirst()
                .orElseGet(() -> new Choice(value, "Sheet " + value)));
      }
      return new Field(
          field.name(), field.label(), field.hint(), field.entry(), field.optional(), choices);
    }

    private List<Asked> asked(Field... fields) {
      return Stream.of(fields).map(this::ask).toList();
    }

    private Asked ask(Field field) {
      return Asked.of(field, typed, problems, unit);
    }
  }
}

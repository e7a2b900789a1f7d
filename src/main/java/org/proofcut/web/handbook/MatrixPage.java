package org.proofcut.web.handbook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import org.proofcut.content.Content;
import org.proofcut.content.HarmMatrix;
import org.proofcut.core.safety.Harm;

/**
 * How many rules speak of each harm, cut by cut.
 *
 * @param harms the columns, each with what it means
 * @param tables one for each machine
 */
record MatrixPage(List<Column> harms, List<Table> tables) {

  /** One harm. */
  record Column(String id, String words) {}

  /**
   * One machine.
   *
   * @param reasons why there are no rules where there are none
   */
  record Table(String id, String title, List<Line> lines, List<Reason> reasons) {}

  /** One cut at the machine. */
  record Line(String operation, String title, List<Cell> cells) {}

  /**
   * One harm of one cut.
   *
   * @param count how many rules speak of it
   * @param reason number of the reason why none does; 0 where rules do
   */
  record Cell(String harm, int count, int reason) {}

  /**
   * Why no rule speaks there.
   *
   * @param where the cuts and the harm that it stands for
   */
  record Reason(int number, String where, String why) {}

  static MatrixPage of(Content content) {
    var byMachine =
        content.matrix().rows().stream()
            .collect(
                Collectors.groupingBy(
                    row -> row.way().machine(), LinkedHashMap::new, Collectors.toList()));
    return new MatrixPage(
        Arrays.stream(Harm.values())
            .map(harm -> new Column(Sought.id(harm), harm.words()))
            .toList(),
        byMachine.entrySet().stream()
            .map(machine -> table(machine.getKey(), machine.getValue(), content))
            .toList());
  }

  private static Table table(String machine, List<HarmMatrix.Row> rows, Content content) {
    record Key(Harm harm, String why) {}
    var places = new LinkedHashMap<Key, List<String>>();
    for (var row : rows) {
      for (var harm : Harm.values()) {
        row.cell(harm)
            .why()
            .ifPresent(
                why ->
                    places
                        .computeIfAbsent(new Key(harm, why), any -> new ArrayList<>())
                        .add(Handbook.operation(row.way().kind().id(), content)));
      }
    }
    var keys = List.copyOf(places.keySet());
    var reasons = new ArrayList<Reason>();
    for (var key : keys) {
      reasons.add(
          new Reason(
              reasons.size() + 1,
              Sought.id(key.harm()) + ": " + String.join(", ", places.get(key)),
              key.why()));
    }
    var lines =
        rows.stream()
            .map(
                row ->
                    new Line(
                        row.way().kind().id(),
                        Handbook.operation(row.way().kind().id(), content),
                        Arrays.stream(Harm.values())
                            .map(
                                harm ->
                                    new Cell(
                                        Sought.id(harm),
                                        row.cell(harm).rules().size(),
                                        row.cell(harm)
                                            .why()
                                            .map(why -> keys.indexOf(new Key(harm, why)) + 1)
                                            .orElse(0)))
                            .toList()))
            .toList();
    return new Table(machine, Handbook.title(machine), lines, reasons);
  }
}

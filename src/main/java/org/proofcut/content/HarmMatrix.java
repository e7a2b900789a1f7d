package org.proofcut.content;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.operation.Way;
import org.proofcut.core.safety.Harm;

/**
 * Which rules speak of which harm, for each way in which a cut can be made. Computed from the
 * rules; no list of rules stands anywhere beside them.
 *
 * @param rows one for each way, in the order of the ways
 */
public record HarmMatrix(List<Row> rows) {

  /**
   * One way of cutting.
   *
   * @param cells one for each harm
   */
  public record Row(Way way, Map<Harm, Cell> cells) {

    public Row {
      cells = Collections.unmodifiableMap(new EnumMap<>(cells));
    }

    public Cell cell(Harm harm) {
      return cells.get(harm);
    }
  }

  /**
   * What is said of one harm in one way of cutting.
   *
   * @param rules ids of the rules that can speak there
   * @param why why there are none; empty where there are rules
   */
  public record Cell(List<String> rules, Optional<String> why) {

    public Cell {
      rules = List.copyOf(rules);
    }
  }

  public HarmMatrix {
    rows = List.copyOf(rows);
  }

  /** The row of an operation on a kind of machine, if it is made there. */
  public Optional<Row> row(String operation, String machine) {
    return rows.stream()
        .filter(
            row -> row.way().kind().id().equals(operation) && row.way().machine().equals(machine))
        .findFirst();
  }
}

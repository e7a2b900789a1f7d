package org.proofcut.logbook;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import io.quarkus.panache.common.Sort;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.List;
import org.hibernate.annotations.Immutable;
import org.proofcut.core.habit.Observation;

@Entity
@Immutable
@Table(name = "observation")
class ObservationRow extends PanacheEntityBase {

  private static final Written<Observation> WRITTEN = new Written<>(Observation.class);

  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  public Long number;

  public String content;

  static List<Observation> all() {
    return ObservationRow.<ObservationRow>listAll(Sort.by("number")).stream()
        .map(ObservationRow::asObservation)
        .toList();
  }

  static ObservationRow of(Observation observation) {
    var row = new ObservationRow();
    row.content = WRITTEN.write(observation);
    return row;
  }

  private Observation asObservation() {
    return WRITTEN.read(content, "observation " + number);
  }
}

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
import org.proofcut.core.habit.Ruling;

@Entity
@Immutable
@Table(name = "ruling")
class RulingRow extends PanacheEntityBase {

  private static final Written<Ruling> WRITTEN = new Written<>(Ruling.class);

  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  public Long number;

  public String content;

  static List<Ruling> all() {
    return RulingRow.<RulingRow>listAll(Sort.by("number")).stream()
        .map(RulingRow::asRuling)
        .toList();
  }

  static RulingRow of(Ruling ruling) {
    var row = new RulingRow();
    row.content = WRITTEN.write(ruling);
    return row;
  }

  private Ruling asRuling() {
    return WRITTEN.read(content, "ruling " + number);
  }
}

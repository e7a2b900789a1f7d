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
import org.proofcut.core.plan.Marks;

@Entity
@Immutable
@Table(name = "set_up_marks")
class SetUpMarksRow extends PanacheEntityBase {

  private static final Written<Marks> WRITTEN = new Written<>(Marks.class);

  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  public Long number;

  public String job;
  public String fingerprint;
  public String content;

  static List<SetUpMarksRow> of(String job) {
    return list("job", Sort.by("number"), job);
  }

  static SetUpMarksRow of(String job, Marks marks) {
    var row = new SetUpMarksRow();
    row.job = job;
    row.fingerprint = marks.fingerprint();
    row.content = WRITTEN.write(marks);
    return row;
  }

  Marks asMarks() {
    return WRITTEN.read(content, "job " + job + ", marks of set-up " + fingerprint);
  }
}

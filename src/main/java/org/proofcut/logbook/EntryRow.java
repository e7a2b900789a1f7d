package org.proofcut.logbook;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import io.quarkus.panache.common.Sort;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.List;
import org.hibernate.annotations.Immutable;
import org.proofcut.core.run.Act;
import org.proofcut.core.run.Entry;

@Entity
@Immutable
@Table(name = "entry")
class EntryRow extends PanacheEntityBase {

  private static final Written<Act> WRITTEN = new Written<>(Act.class);

  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  public Long number;

  public String job;

  /** Made where the act happened; once in the record of a job. */
  @Column(name = "id")
  public String entryId;

  public String happened;
  public String device;
  public String operation;
  public String fingerprint;
  public String act;

  static boolean has(String job, String entryId) {
    return count("job = ?1 and entryId = ?2", job, entryId) > 0;
  }

  static List<EntryRow> of(String job) {
    return list("job", Sort.by("number"), job);
  }

  static EntryRow of(String job, Entry entry) {
    var row = new EntryRow();
    row.job = job;
    row.entryId = entry.id();
    row.happened = KeptTime.write(entry.at());
    row.device = entry.device();
    row.operation = entry.operation();
    row.fingerprint = entry.fingerprint();
    row.act = WRITTEN.write(entry.act());
    return row;
  }

  Entry asEntry() {
    var done = WRITTEN.read(act, "job " + job + ", entry " + entryId);
    return new Entry(entryId, KeptTime.read(happened), device, operation, fingerprint, done);
  }
}

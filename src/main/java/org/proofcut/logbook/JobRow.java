package org.proofcut.logbook;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.NoSuchElementException;

@Entity
@Table(name = "job")
class JobRow extends PanacheEntityBase {

  @Id public String id;
  public String typed;
  public String created;
  public String changed;
  public boolean demo;

  static JobRow withId(String id) {
    return findById(id);
  }

  static void require(String id) {
    if (withId(id) == null) {
      throw new NoSuchElementException("there is no job " + id + "; it may have been discarded");
    }
  }

  void take(JobRecord job) {
    id = job.id();
    typed = Typed.write(job.typed());
    created = KeptTime.write(job.created());
    changed = KeptTime.write(job.changed());
    demo = job.demo();
  }

  JobRecord asJob() {
    return new JobRecord(
        id, Typed.read(typed, "job " + id), KeptTime.read(created), KeptTime.read(changed), demo);
  }
}

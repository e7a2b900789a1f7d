package org.proofcut.logbook;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import io.quarkus.panache.common.Sort;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Optional;
import org.hibernate.annotations.Immutable;
import org.proofcut.core.plan.Plan;

@Entity
@Immutable
@Table(name = "begun_plan")
class BegunPlanRow extends PanacheEntityBase {

  private static final Written<Plan> WRITTEN = new Written<>(Plan.class);

  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  public Long number;

  public String job;
  public int revision;
  public String begun;
  public String content;

  static Optional<BegunPlanRow> latest(String job) {
    return find("job", Sort.descending("revision"), job).firstResultOptional();
  }

  /** When work on a job began. */
  static Optional<Instant> begun(String job) {
    return find("job", Sort.ascending("revision"), job)
        .<BegunPlanRow>firstResultOptional()
        .map(row -> KeptTime.read(row.begun));
  }

  static BegunPlanRow of(String job, PlanRecord plan) {
    var row = new BegunPlanRow();
    row.job = job;
    row.revision = plan.revision();
    row.begun = KeptTime.write(plan.at());
    row.content = WRITTEN.write(plan.plan());
    return row;
  }

  PlanRecord asPlan() {
    var plan = WRITTEN.read(content, "job " + job + ", plan " + revision);
    return new PlanRecord(revision, KeptTime.read(begun), plan);
  }
}

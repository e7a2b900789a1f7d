package org.proofcut.logbook;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import io.quarkus.panache.common.Sort;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
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

  /** When each plan of a job was made; without the plans, which are large. */
  static List<Instant> planned(String job) {
    return find("select begun from BegunPlanRow where job = ?1 order by revision", job)
        .project(String.class)
        .stream()
        .map(KeptTime::read)
        .toList();
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

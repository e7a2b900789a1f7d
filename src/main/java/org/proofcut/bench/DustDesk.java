package org.proofcut.bench;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.casework.CaseDesign;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.exposure.DustAnswer;
import org.proofcut.core.exposure.DustBook;
import org.proofcut.core.exposure.Hood;
import org.proofcut.core.exposure.Wood;
import org.proofcut.core.intake.DustForm;
import org.proofcut.core.intake.JobForm;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.part.PartRole;
import org.proofcut.logbook.JobRecord;
import org.proofcut.logbook.Logbook;

/** What the dust of some work does, and what keeps it out; nothing of it is kept. */
@ApplicationScoped
public class DustDesk {

  /** Names the job whose sheets are cut. */
  public static final String JOB = "job";

  /** Chosen where no job is meant. */
  public static final String NO_JOB = "none";

  private final Logbook logbook;
  private final ShopFloor floor;
  private final House house;

  DustDesk(Logbook logbook, ShopFloor floor, House house) {
    this.logbook = logbook;
    this.floor = floor;
    this.house = house;
  }

  /** All that the house knows of dust. */
  public DustBook book() {
    return house.content().dust();
  }

  /** The jobs whose sheets can be asked for, the newest change first. */
  public List<JobRecord> jobs() {
    return logbook.jobs();
  }

  /** What typed fields come to where the shop stands. */
  public DustDraft draft(Map<String, String> typed) {
    var region = house.content().regions().get(floor.shop().region());
    var unit = floor.unit();
    var asked = Optional.ofNullable(typed.get(JOB)).filter(DustDesk::namesAJob);
    var job = asked.flatMap(logbook::job);
    var woods = job.flatMap(one -> JobForm.read(one.typed()).value()).map(this::woods);
    var read = DustForm.read(typed, book(), woods.orElse(List.of()), unit);
    var problems = new ArrayList<>(read.problems());
    if (asked.isPresent() && woods.isEmpty()) {
      problems.add(
          Problem.stops(
              JOB,
              "There is no such job, or its sheets can't be read",
              "a job that is kept",
              "Open the job and save it, or choose the woods here"));
    }
    return new DustDraft(
        DustForm.groups(book(), woods.isPresent()),
        typed,
        unit,
        region,
        woods.isPresent() ? job.map(one -> one.typed().getOrDefault("name", "")) : Optional.empty(),
        woods.orElse(List.of()),
        problems.isEmpty()
            ? read.value().map(one -> DustAnswer.of(one, book(), region.id(), airflow(unit)))
            : Optional.empty(),
        problems);
  }

  private static boolean namesAJob(String typed) {
    return !typed.isBlank() && !typed.equals(NO_JOB);
  }

  /** The wood of each sheet that a part comes from; what nobody named by its material alone. */
  private List<Wood> woods(CaseDesign design) {
    return Arrays.stream(PartRole.values())
        .map(role -> design.sheets().of(role))
        .distinct()
        .flatMap(sheet -> book().wood(sheet.wood(), sheet.material().id()).stream())
        .distinct()
        .toList();
  }

  private static String airflow(LengthUnit unit) {
    return unit == LengthUnit.INCH ? Hood.INCH : Hood.METRIC;
  }
}

package org.proofcut.bench;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.intake.HandForm;
import org.proofcut.core.intake.HandForms;
import org.proofcut.core.intake.JobForm;
import org.proofcut.core.weight.Densities;

/** Tasks without a cutter that belong to no job: what they come to while they are typed. */
@ApplicationScoped
public class HandDesk {

  private final ShopFloor floor;
  private final House house;

  HandDesk(ShopFloor floor, House house) {
    this.floor = floor;
    this.house = house;
  }

  /** One form for each kind of task. */
  public List<HandForm> forms() {
    var content = house.content();
    return HandForms.all(content.liquids(), content.limits(Densities.class));
  }

  /** The form of a kind of task, if there is such a kind. */
  public Optional<HandForm> form(String kind) {
    return forms().stream().filter(form -> form.kind().equals(kind)).findFirst();
  }

  /** What typed fields of a task come to; nothing is kept. */
  public HandDraft draft(HandForm form, Map<String, String> typed) {
    var shop = floor.shop();
    var filledIn = JobForm.withUnit(typed, floor.unit());
    var read = form.read(filledIn, shop);
    return new HandDraft(
        form.fields(shop),
        filledIn,
        JobForm.unit(filledIn),
        read.value(),
        read.value().map(task -> house.planner().plan(task, shop)),
        read.problems());
  }
}

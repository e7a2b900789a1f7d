package org.proofcut.bench;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.fit.FitLimits;
import org.proofcut.core.intake.CutForm;
import org.proofcut.core.intake.CutForms;
import org.proofcut.core.intake.JobForm;

/** Cuts that belong to no job, and what they come to while they are typed. Nothing is kept. */
@ApplicationScoped
public class SetUpDesk {

  private final ShopFloor floor;
  private final House house;
  private final List<CutForm> forms;

  SetUpDesk(ShopFloor floor, House house) {
    this.floor = floor;
    this.house = house;
    this.forms = CutForms.all(house.content().limits(FitLimits.class));
  }

  /** One form for each kind of cut. */
  public List<CutForm> forms() {
    return forms;
  }

  /** The form of a kind of cut, if there is such a kind. */
  public Optional<CutForm> form(String kind) {
    return forms.stream().filter(form -> form.kind().equals(kind)).findFirst();
  }

  /** What typed fields of a cut come to. */
  public CutDraft draft(CutForm form, Map<String, String> typed) {
    var shop = floor.shop();
    var filledIn = CutForm.filledIn(typed, floor.unit());
    var read = form.read(filledIn, shop);
    return new CutDraft(
        form.groups(shop),
        filledIn,
        JobForm.unit(filledIn),
        read.value()
            .map(wanted -> house.planner().plan(wanted.cut(), wanted.shop(), wanted.unit())),
        read.value().map(CutForm.Wanted::found).orElse(Map.of()),
        read.problems());
  }
}

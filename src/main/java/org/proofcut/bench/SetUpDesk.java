package org.proofcut.bench;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.content.Content;
import org.proofcut.core.boring.BoringLimits;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.fit.FitLimits;
import org.proofcut.core.intake.CutForm;
import org.proofcut.core.intake.CutForms;
import org.proofcut.core.intake.JobForm;

/**
 * Cuts that belong to no job: what they come to while they are typed, and what their proofs teach.
 */
@ApplicationScoped
public class SetUpDesk {

  private final ShopFloor floor;
  private final House house;
  private final HabitDesk habits;
  private volatile Forms made = new Forms(null, List.of());

  SetUpDesk(ShopFloor floor, House house, HabitDesk habits) {
    this.floor = floor;
    this.house = house;
    this.habits = habits;
  }

  /** The forms as some content has them. */
  private record Forms(Content of, List<CutForms.Family> families) {}

  /** One form for each kind of cut, by family. */
  public List<CutForms.Family> families() {
    var content = house.content();
    var now = made;
    if (now.of != content) {
      now =
          new Forms(
              content,
              CutForms.families(
                  content.limits(FitLimits.class), content.limits(BoringLimits.class)));
      made = now;
    }
    return now.families;
  }

  /** One form for each kind of cut. */
  public List<CutForm> forms() {
    return families().stream().flatMap(family -> family.forms().stream()).toList();
  }

  /** The form of a kind of cut, if there is such a kind. */
  public Optional<CutForm> form(String kind) {
    return forms().stream().filter(form -> form.kind().equals(kind)).findFirst();
  }

  /** What typed fields of a cut come to, with what proof cuts have taught; nothing is kept. */
  public CutDraft draft(CutForm form, Map<String, String> typed) {
    var shop = floor.shop();
    var filledIn = CutForm.filledIn(typed, floor.unit());
    var read = form.read(filledIn, shop);
    return new CutDraft(
        form.groups(shop),
        filledIn,
        JobForm.unit(filledIn),
        read.value()
            .map(
                wanted ->
                    house
                        .planner()
                        .plan(
                            wanted.cut(),
                            wanted.shop(),
                            wanted.unit(),
                            habits.taught(wanted.unit()))),
        read.value().map(CutForm.Wanted::found).orElse(Map.of()),
        read.problems());
  }

  /**
   * Keeps what a proof cut teaches, which was set as the cut was worked out and not corrected
   * since. In one transaction: there is one connection for all, so that a proof which is sent twice
   * at once is known when it comes the second time.
   *
   * @param proof id of the proof; the same one again changes nothing
   * @param fingerprint of the set-up that the person saw and set
   * @return why it can't be kept; empty when it was
   */
  @Transactional
  public Optional<Problem> learn(
      CutForm form, Map<String, String> typed, String proof, String fingerprint) {
    if (habits.knows(proof)) {
      return Optional.empty();
    }
    var draft = draft(form, typed);
    if (!draft.isMeasured()) {
      return Optional.of(
          Problem.stops(
              "",
              "The proof cut is not wholly measured",
              "a set-up that nothing stops, and every reading of its proof cut",
              "Enter what is missing"));
    }
    if (!draft.plan().orElseThrow().sheet().marks().fingerprint().equals(fingerprint)) {
      return Optional.of(
          Problem.stops(
              "",
              "The figures have changed since this proof was cut",
              "a proof of the figures as they stand",
              "Set the machine to the figures as they stand now, and prove it again"));
    }
    return habits.learn(proof, draft.setup().orElseThrow(), draft::readings)
        ? Optional.empty()
        : Optional.of(
            Problem.stops(
                "",
                "The readings of each measure lie too far apart to show anything",
                "readings of one measure that agree as far as it accepts",
                "Look for what moved, cut new scrap and measure again"));
  }
}

package org.proofcut.web.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.microsoft.playwright.Page;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.proofcut.bench.Hand;
import org.proofcut.bench.JobDesk;
import org.proofcut.bench.WorkBench;
import org.proofcut.core.measure.Length;
import org.proofcut.core.operation.OperationKind;
import org.proofcut.core.run.Act;
import org.proofcut.core.run.SheetProgress;
import org.proofcut.core.run.Stage;
import org.proofcut.web.Tablet;
import org.proofcut.web.Tablet.Script;
import org.proofcut.web.Tablet.Size;

/** The pages of one sheet at every stage, in every size the shop has. */
@QuarkusTest
class SheetLookTest {

  private static final String TABLET = "11111111-2222-3333-4444-555555555555";

  @TestHTTPResource("/")
  URI home;

  @Inject JobDesk desk;
  @Inject WorkBench bench;

  @Test
  void dadoSheet_atEveryStage_fitsEverySizeAndBreaksNoRuleOfAccess() {
    var job = desk.keepDemo().id();
    var hand = new Hand(bench, job, TABLET);
    var faults = new ArrayList<String>();
    try (var tablet = Tablet.of(Size.LANDSCAPE, Script.ON).known(home, SheetPages.TABLET, TABLET)) {
      look(tablet, "/jobs/" + job + "/sheets", "list", faults);
      var dado = hand.until(now -> now.sheet().operation().kind() == OperationKind.DADO);
      var address = "/jobs/" + job + "/sheets/" + dado.sheet().number();
      look(tablet, address, "set", faults);
      hand.until(now -> asksFigure(now));
      look(tablet, address, "read-back", faults);
      hand.until(now -> now.stage() == Stage.MACHINE);
      look(tablet, address, "machine", faults);
      hand.until(now -> now.stage() == Stage.BEFORE_POWER);
      look(tablet, address, "before-power", faults);
      var proof = hand.until(now -> now.stage() == Stage.PROOF);
      look(tablet, address, "proof", faults);
      readOff(hand, proof);
      look(tablet, address, "not-yet", faults);
      hand.act(proof, hand.sheet(proof.sheet().id()).corrections());
      look(tablet, address, "corrected", faults);
      hand.until(now -> now.stage() == Stage.CUT);
      look(tablet, address, "cut", faults);
      hand.until(now -> now.stage() == Stage.LEAVE_SAFE);
      look(tablet, address, "leave-safe", faults);
      hand.act(dado, new Act.Held());
      look(tablet, address + "/hold", "hold", faults);
      look(tablet, address, "come-back", faults);
      look(tablet, "/jobs/" + job + "/sheets/" + (dado.sheet().number() + 1), "locked", faults);
      look(tablet, "/jobs/" + job + "/sheets/99", "gone", faults);
      look(tablet, "/trouble?back=" + address, "trouble", faults);
    } finally {
      bench.discard(job);
    }
    assertEquals(List.of(), faults);
  }

  private static boolean asksFigure(SheetProgress now) {
    return Hand.next(now) instanceof Act.Confirmed confirmed
        && confirmed.item().startsWith("figure:");
  }

  /** The first measure 0.2 mm too large, all others right. */
  private static void readOff(Hand hand, SheetProgress proof) {
    var off = Length.ofMicrometres(200);
    for (var verdict : proof.verdicts()) {
      var measure = verdict.measure();
      var found =
          verdict == proof.verdicts().get(0)
              ? measure.target().value().plus(off)
              : measure.target().value();
      for (int i = 0; i < measure.readings(); i++) {
        hand.act(proof, new Act.ReadingTaken(1, measure.dimension(), found));
      }
    }
  }

  private void look(Tablet tablet, String address, String name, List<String> faults) {
    var page = tablet.open(home.resolve(address).toString());
    for (var size : Size.values()) {
      Tablet.resize(page, size);
      var full = "dado-" + name + "-" + size.name().toLowerCase(Locale.ROOT);
      Tablet.picture(page, full);
      Tablet.violations(page).forEach(fault -> faults.add(full + ": " + fault));
      Tablet.standingOut(page).forEach(fault -> faults.add(full + ": " + fault));
      if (size != Size.PHONE) {
        tooSmall(page).forEach(fault -> faults.add(full + ": " + fault));
      }
    }
  }

  /** Main targets of 112 px and others of 72, figures to set of 96 px. */
  private static List<String> tooSmall(Page page) {
    var faults = new ArrayList<String>();
    faults.addAll(
        Tablet.smallerThan(
            page,
            112,
            "button.gear, .check-now button, .part > form > button.check-answer, .key,"
                + " .button-main"));
    faults.addAll(Tablet.smallerThan(page, 72, "a.button, button, summary, .next-thing"));
    ((List<?>)
            page.evaluate(
                """
                () => [...document.querySelectorAll('.figure-value')]
                  .filter(e => getComputedStyle(e).fontSize !== '96px')
                  .map(e => `a figure of ${getComputedStyle(e).fontSize}: ${e.textContent}`)"""))
        .forEach(figure -> faults.add((String) figure));
    return faults;
  }
}

package org.proofcut.web.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.microsoft.playwright.Page;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URI;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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
    Map<Size, Tablet> tablets = new EnumMap<>(Size.class);
    for (var size : Size.values()) {
      tablets.put(size, Tablet.of(size, Script.ON).known(home, SheetPages.TABLET, TABLET));
    }
    try {
      look(tablets, "/jobs/" + job + "/sheets", "list", faults);
      var dado = hand.until(now -> now.sheet().operation().kind() == OperationKind.DADO);
      var address = "/jobs/" + job + "/sheets/" + dado.sheet().number();
      look(tablets, address, "set", faults);
      hand.until(now -> asksFigure(now));
      look(tablets, address, "read-back", faults);
      hand.until(now -> now.stage() == Stage.BEFORE_POWER);
      look(tablets, address, "before-power", faults);
      var proof = hand.until(now -> now.stage() == Stage.PROOF);
      look(tablets, address, "proof", faults);
      readOff(hand, proof);
      look(tablets, address, "not-yet", faults);
      hand.act(proof, hand.sheet(proof.sheet().id()).corrections());
      look(tablets, address, "corrected", faults);
      hand.until(now -> now.stage() == Stage.CUT);
      look(tablets, address, "cut", faults);
      hand.until(now -> now.stage() == Stage.LEAVE_SAFE);
      look(tablets, address, "leave-safe", faults);
      hand.act(dado, new Act.Held());
      look(tablets, address + "/hold", "hold", faults);
      look(tablets, address, "come-back", faults);
      look(tablets, "/jobs/" + job + "/sheets/" + (dado.sheet().number() + 1), "locked", faults);
      look(tablets, "/jobs/" + job + "/sheets/99", "gone", faults);
      look(tablets, "/trouble?back=" + address, "trouble", faults);
    } finally {
      tablets.values().forEach(Tablet::close);
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

  private void look(Map<Size, Tablet> tablets, String address, String name, List<String> faults) {
    tablets.forEach(
        (size, tablet) -> {
          var page = tablet.open(home.resolve(address).toString());
          var full = "dado-" + name + "-" + size.name().toLowerCase(Locale.ROOT);
          Tablet.picture(page, full);
          Tablet.violations(page).forEach(fault -> faults.add(full + ": " + fault));
          try {
            Tablet.assertNothingStandsOut(page);
          } catch (AssertionError fault) {
            faults.add(full + ": " + fault.getMessage());
          }
          if (size != Size.PHONE) {
            faults.addAll(tooSmall(page, full));
          }
          page.close();
        });
  }

  /** Main targets of 112 px and others of 72, figures to set of 96 px. */
  private static List<String> tooSmall(Page page, String name) {
    var faults = new ArrayList<String>();
    for (var target :
        page.querySelectorAll(
            "button.gear, .check-now button, .part > form > button.check-answer, .key,"
                + " .button-main")) {
      var box = target.boundingBox();
      if (box != null && (box.width < 112 || box.height < 112)) {
        faults.add(name + ": " + target.innerText() + " " + box.width + " × " + box.height);
      }
    }
    for (var target : page.querySelectorAll("a.button, button, summary, .next-thing")) {
      var box = target.boundingBox();
      if (box != null && (box.width < 72 || box.height < 72)) {
        faults.add(name + ": " + target.innerText() + " " + box.width + " × " + box.height);
      }
    }
    for (var figure : page.querySelectorAll(".figure-value")) {
      var size = figure.evaluate("it => getComputedStyle(it).fontSize");
      if (!"96px".equals(size)) {
        faults.add(name + ": a figure of " + size + ": " + figure.innerText());
      }
    }
    return faults;
  }
}

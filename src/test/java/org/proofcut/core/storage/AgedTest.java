package org.proofcut.core.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.shop.GearLife;

class AgedTest {

  private static final LocalDate TODAY = LocalDate.of(2030, 3, 4);
  private static final Ageing LOOK =
      new Ageing("look", "Look at it", Period.ofMonths(6), false, Citation.COMMON_PRACTICE);
  private static final Ageing OVER =
      new Ageing("over", "Replace it", Period.ofYears(1), true, Citation.COMMON_PRACTICE);

  private static List<String> due(Aged... pieces) {
    return Aged.due(List.of(pieces), TODAY).stream()
        .map(
            due ->
                "%s %s %s%s"
                    .formatted(
                        due.name(),
                        due.ageing(),
                        due.on().map(LocalDate::toString).orElse("never"),
                        due.overdue() ? " overdue" : ""))
        .toList();
  }

  private static Aged aged(String name, Optional<LocalDate> opened, GearAct... acts) {
    var entries = new ArrayList<GearEntry>();
    for (var act : acts) {
      entries.add(new GearEntry("e" + entries.size(), name, TODAY.minusMonths(1), act));
    }
    return new Aged(
        name,
        name,
        List.of(LOOK, OVER),
        opened,
        GearLife.UNDATED,
        false,
        GearState.of(entries).getOrDefault(name, GearState.NEW));
  }

  private static Optional<LocalDate> monthsAgo(int months) {
    return Optional.of(TODAY.minusMonths(months));
  }

  @Test
  void days_countFromWhenItWasOpened_theDayItselfIsNotYetOverdue() {
    assertEquals(List.of("a look 2030-03-04", "a over 2030-09-04"), due(aged("a", monthsAgo(6))));
    assertEquals(
        List.of("b look 2029-10-04 overdue", "b over 2030-04-04"), due(aged("b", monthsAgo(11))));
  }

  @Test
  void notKnownSinceWhen_comesAfterWhatIsOverdue_andBeforeTheRest() {
    assertEquals(
        List.of("b look 2029-10-04 overdue", "c look never", "c over never", "b over 2030-04-04"),
        due(aged("c", Optional.empty()), aged("b", monthsAgo(11))));
  }

  /** What ends is over whether it was looked at or not. */
  @Test
  void looking_putsOffTheNextLook_andNotTheEnd() {
    var looked = new GearAct.LookedAt("look", true, "", Optional.empty());
    assertEquals(
        List.of("a over 2030-04-04", "a look 2030-08-04"), due(aged("a", monthsAgo(11), looked)));
    assertEquals(
        List.of("a over never", "a look 2030-08-04"), due(aged("a", Optional.empty(), looked)));
  }

  @Test
  void replacing_beginsAnew_evenWhatHadFailed() {
    var failed = new GearAct.LookedAt("look", false, "", Optional.empty());
    var replaced = new GearAct.Replaced("", Optional.empty());
    assertEquals(List.of("a failed 2030-02-04 overdue"), due(aged("a", monthsAgo(11), failed)));
    assertEquals(
        List.of("a look 2030-08-04", "a over 2031-02-04"),
        due(aged("a", monthsAgo(1), failed, replaced)));
    assertEquals(
        List.of("a look 2030-08-04", "a over 2031-02-04"),
        due(aged("a", Optional.empty(), failed, replaced)));
    assertEquals(
        List.of("a look 2030-07-04", "a over 2031-01-04"),
        due(aged("a", monthsAgo(2), failed, replaced)),
        "entered anew: its pack was open a month before");
    assertEquals(
        List.of("a look 2029-10-04 overdue", "a over 2030-04-04"),
        due(aged("a", monthsAgo(11), failed, new GearAct.Mended(""))));
  }

  @Test
  void daysThatAreMarked_fallDue_outOfUse_nothingDoes() {
    var life = new GearLife(Optional.of(TODAY), Optional.of(TODAY.minusDays(1)));
    var piece = new Aged("a", "a", List.of(), Optional.empty(), life, false, GearState.NEW);
    assertEquals(List.of("a marked 2030-03-03 overdue", "a ends 2030-03-04"), due(piece));
    assertEquals(
        List.of(),
        due(new Aged("a", "a", List.of(LOOK), Optional.empty(), life, true, GearState.NEW)));
  }

  @Test
  void state_saysWhoHasIt() {
    var out = new GearAct.TakenOut("Ida");
    assertEquals(Optional.of("Ida"), aged("a", Optional.empty(), out).state().with());
    assertEquals(
        Optional.empty(), aged("a", Optional.empty(), out, new GearAct.PutBack("")).state().with());
    assertEquals(
        Optional.of("Ida"),
        aged("a", Optional.empty(), out, new GearAct.LookedAt("look", true, "", Optional.empty()))
            .state()
            .with());
  }
}

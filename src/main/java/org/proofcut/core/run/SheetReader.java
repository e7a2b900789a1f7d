package org.proofcut.core.run;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.proofcut.core.checklist.Item;
import org.proofcut.core.measure.Length;
import org.proofcut.core.plan.Marks;
import org.proofcut.core.plan.OperationSheet;
import org.proofcut.core.proof.Proof;
import org.proofcut.core.proof.Verdict;
import org.proofcut.core.safety.Check.Pause;
import org.proofcut.core.setup.Measure;
import org.proofcut.core.setup.Setup;

/** Reads the record of one sheet, act by act, and says where the work stands. */
final class SheetReader {

  private final OperationSheet sheet;
  private final Map<String, Marks> earlier;
  private final List<Entry> entries;
  private final BenchClock clock;
  private final MachineWork before;
  private final String fingerprint;

  private final Map<String, Entry> confirmedBy = new LinkedHashMap<>();
  private final Map<String, String> answers = new LinkedHashMap<>();
  private final Map<String, String> without = new LinkedHashMap<>();
  private final Set<String> askedAgain = new LinkedHashSet<>();
  private final Map<Measure.Dimension, List<Length>> found = new LinkedHashMap<>();
  private final Set<String> cut = new HashSet<>();
  private Optional<Setup> setup;
  private int attempt = 1;
  private Optional<Entry> provenBy = Optional.empty();
  private Optional<Entry> readAgain = Optional.empty();
  private Optional<String> overridden = Optional.empty();
  private Optional<String> lost = Optional.empty();
  private boolean held;
  private boolean signedOff;

  /**
   * @param before what was looked at on the machine of the sheet before this one
   */
  SheetReader(
      OperationSheet sheet,
      Map<String, Marks> earlier,
      List<Entry> entries,
      BenchClock clock,
      MachineWork before) {
    this.before = before;
    this.sheet = sheet;
    this.earlier = earlier;
    this.entries = entries;
    this.clock = clock;
    this.fingerprint = sheet.marks().fingerprint();
    this.setup = sheet.operation().setup();
  }

  SheetProgress read(String blockedBy) {
    for (var entry : entries) {
      if (entry.fingerprint().equals(fingerprint)) {
        take(entry);
      } else if (cameToTheSame(entry)) {
        takeOfEarlierPlan(entry.act());
      }
    }
    takeWhatWasLookedAt();
    forget();
    var verdicts = verdicts();
    var proof = proof();
    var locked = lockedBecause(blockedBy);
    return new SheetProgress(
        sheet,
        stage(locked, proof),
        locked,
        answers,
        askedAgain,
        setup,
        attempt,
        verdicts,
        proof,
        cut,
        held,
        entries.isEmpty() ? Optional.empty() : Optional.of(entries.get(entries.size() - 1).at()),
        without,
        clock.today());
  }

  /** What is known of the machine once this sheet is read, for the sheet after it. */
  MachineWork machineWork() {
    var looked = new LinkedHashMap<String, MachineWork.Looked>();
    for (var item : sheet.checklist().at(Pause.MACHINE)) {
      if (answers.containsKey(item.id())) {
        looked.put(
            item.id(), new MachineWork.Looked(answers.get(item.id()), confirmedBy.get(item.id())));
      }
    }
    return new MachineWork(setup.map(MachineWork.At::of), looked);
  }

  private void takeWhatWasLookedAt() {
    var held = before.holdsFor(setup);
    for (var item : sheet.checklist().at(Pause.MACHINE)) {
      var looked = held.get(item.id());
      if (looked != null && !answers.containsKey(item.id())) {
        answer(looked.by(), item.id(), looked.answer());
      }
    }
  }

  private boolean cameToTheSame(Entry entry) {
    var marks = earlier.get(entry.fingerprint());
    return marks != null && sheet.marks().comesToTheSameAs(marks);
  }

  /** What is cut stays cut where the plan changed only how it is set. */
  private void takeOfEarlierPlan(Act act) {
    if (act instanceof Act.PartCut part) {
      cut.add(part.part());
    } else if (act instanceof Act.PartNotCut part) {
      cut.remove(part.part());
    } else if (act instanceof Act.SignedOff) {
      signedOff = true;
    }
  }

  private void take(Entry entry) {
    var act = entry.act();
    held = act instanceof Act.Held;
    if (act instanceof Act.Confirmed confirmed) {
      answer(entry, confirmed.item(), confirmed.answer());
    } else if (act instanceof Act.WentWithout without) {
      answer(entry, without.item(), "not, because " + without.reason());
      this.without.put(without.item(), without.reason());
    } else if (act instanceof Act.ReadingTaken reading) {
      readingTaken(entry, reading);
    } else if (act instanceof Act.ReadingsDropped dropped) {
      found.remove(dropped.dimension());
    } else if (act instanceof Act.Corrected corrected) {
      corrected(corrected);
    } else if (act instanceof Act.Overridden override) {
      overridden = Optional.of(override.reason());
    } else if (act instanceof Act.ReadAgain again) {
      readAgain(entry, again);
    } else if (act instanceof Act.Disturbed disturbed) {
      lose(disturbed.what());
    } else if (act instanceof Act.PartCut part) {
      cut.add(part.part());
    } else if (act instanceof Act.PartNotCut part) {
      cut.remove(part.part());
    } else if (act instanceof Act.SignedOff) {
      signedOff = true;
    }
  }

  private void answer(Entry entry, String item, String words) {
    answers.put(item, words);
    without.remove(item);
    confirmedBy.put(item, entry);
    askedAgain.remove(item);
  }

  private void readingTaken(Entry entry, Act.ReadingTaken reading) {
    if (reading.attempt() != attempt) {
      return;
    }
    found.computeIfAbsent(reading.dimension(), dimension -> new ArrayList<>()).add(reading.found());
    if (!sheet.operation().setup().isEmpty() && verdicts().stream().allMatch(Verdict::isProven)) {
      provenBy = Optional.of(entry);
      readAgain = Optional.empty();
      lost = Optional.empty();
    }
  }

  /** Moved settings are set and confirmed anew; the readings of the last cut no longer count. */
  private void corrected(Act.Corrected corrected) {
    attempt++;
    found.clear();
    provenBy = Optional.empty();
    for (var correction : corrected.corrections()) {
      setup = setup.map(one -> one.movedBy(correction.role(), correction.by()));
      askAgain(new Item.Figure(correction.role()).id());
    }
  }

  private void readAgain(Entry entry, Act.ReadAgain again) {
    var first = setup.flatMap(one -> one.settings().stream().findFirst());
    if (first.isEmpty()) {
      return;
    }
    var off = again.found().minus(first.get().read().value()).abs();
    if (off.isAtMost(first.get().step())) {
      readAgain = Optional.of(entry);
    } else {
      lose(
          first.get().role().words().toLowerCase(Locale.ROOT)
              + " read "
              + again.found()
              + " and was proven at "
              + first.get().read().value());
    }
  }

  private void lose(String because) {
    boolean something = provenBy.isPresent() || !found.isEmpty();
    found.clear();
    provenBy = Optional.empty();
    readAgain = Optional.empty();
    overridden = Optional.empty();
    attempt++;
    if (something) {
      lost = Optional.of(because);
    }
    for (var item : sheet.checklist().at(Pause.SET)) {
      askAgain(item.id());
    }
  }

  private void askAgain(String item) {
    without.remove(item);
    if (answers.remove(item) != null) {
      askedAgain.add(item);
    }
  }

  /** Gear and what comes before power do not outlast an interruption, nor the machine a break. */
  private void forget() {
    for (var item : sheet.checklist().items()) {
      var by = confirmedBy.get(item.id());
      if (by != null && isForgotten(item, by)) {
        askAgain(item.id());
      }
    }
  }

  private boolean isForgotten(Item item, Entry by) {
    return switch (item.pause()) {
      case BEFORE_POWER -> clock.wasLeftSince(by) || !holds(item, by.act());
      case MACHINE -> clock.hadABreakSince(by);
      case SET, PROOF, LEAVE_SAFE -> false;
    };
  }

  /** Gear may be gone from the shop since it was confirmed, or the law may ask for it by now. */
  private boolean holds(Item item, Act act) {
    if (!(item instanceof Item.Gear gear) || !gear.on()) {
      return true;
    }
    return act instanceof Act.WentWithout ? gear.law().isEmpty() : gear.isAtHand(clock.today());
  }

  private List<Verdict> verdicts() {
    return setup
        .map(one -> Proof.judge(one, measure -> found.getOrDefault(measure.dimension(), List.of())))
        .orElse(List.of());
  }

  private ProofState proof() {
    if (!sheet.needsProof()) {
      return new ProofState.NotNeeded();
    }
    if (provenBy.isPresent()) {
      boolean today =
          clock.isToday(provenBy.get().at())
              || readAgain.map(entry -> clock.isToday(entry.at())).orElse(false);
      return today ? new ProofState.Proven() : new ProofState.ReadAgainFirst();
    }
    if (overridden.isPresent()) {
      return new ProofState.Overridden(overridden.get());
    }
    if (lost.isPresent()) {
      return new ProofState.Lost(lost.get(), List.of());
    }
    return changedPlan()
        .<ProofState>map(changed -> new ProofState.Lost("", changed))
        .orElseGet(ProofState.NotYet::new);
  }

  /** Whether readings were taken for this operation with another set-up, and what changed since. */
  private Optional<List<Marks.Difference>> changedPlan() {
    Optional<List<Marks.Difference>> changed = Optional.empty();
    for (var entry : entries) {
      if (!entry.fingerprint().equals(fingerprint)
          && entry.act() instanceof Act.ReadingTaken
          && earlier.containsKey(entry.fingerprint())) {
        changed = Optional.of(sheet.marks().since(earlier.get(entry.fingerprint())));
      }
    }
    return changed;
  }

  private String lockedBecause(String blockedBy) {
    if (signedOff) {
      return "";
    }
    if (sheet.isStopped()) {
      return "A rule stops this operation as planned";
    }
    return blockedBy;
  }

  private Stage stage(String locked, ProofState proof) {
    if (signedOff) {
      return Stage.DONE;
    }
    if (!locked.isEmpty()) {
      return Stage.LOCKED;
    }
    if (isOpenAt(Pause.SET)) {
      return Stage.SET;
    }
    boolean allCut = sheet.operation().parts().stream().allMatch(part -> cut.contains(part.id()));
    if (allCut) {
      return Stage.LEAVE_SAFE;
    }
    if (isOpenAt(Pause.MACHINE)) {
      return Stage.MACHINE;
    }
    if (isOpenAt(Pause.BEFORE_POWER)) {
      return Stage.BEFORE_POWER;
    }
    return proof.opensTheCut() && !isOpenAt(Pause.PROOF) ? Stage.CUT : Stage.PROOF;
  }

  private boolean isOpenAt(Pause pause) {
    return sheet.checklist().at(pause).stream().anyMatch(item -> !answers.containsKey(item.id()));
  }
}

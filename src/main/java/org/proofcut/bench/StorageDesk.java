package org.proofcut.bench;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.intake.CutForm;
import org.proofcut.core.intake.Read;
import org.proofcut.core.storage.Due;
import org.proofcut.core.storage.GearAct;
import org.proofcut.core.storage.GearEntry;
import org.proofcut.logbook.JobRecord;

/** Where gear lives: cabinets, people, plans, what is out, and what falls due. */
@ApplicationScoped
public class StorageDesk {

  private final Clock clock;

  StorageDesk(Clock clock) {
    this.clock = clock;
  }

  /** The day that everything is judged on. */
  public LocalDate today() {
    return LocalDate.now(clock);
  }

  /** All cabinets, in the order entered. */
  public List<GearCabinet> cabinets() {
    throw new UnsupportedOperationException();
  }

  public Optional<GearCabinet> cabinet(String id) {
    throw new UnsupportedOperationException();
  }

  /** What a page begins a new cabinet with. */
  public Map<String, String> newCabinet() {
    throw new UnsupportedOperationException();
  }

  /** What typed fields of a cabinet come to; nothing is kept. */
  public CabinetDraft draft(Map<String, String> typed) {
    throw new UnsupportedOperationException();
  }

  /**
   * Keeps a cabinet as typed, if all of it can be read. What lives in places that it has no longer
   * lives nowhere from then on.
   *
   * @param id of the cabinet to change; empty for a new one
   */
  public Read<GearCabinet> keep(Optional<String> id, Map<String, String> typed) {
    throw new UnsupportedOperationException();
  }

  /** Takes a cabinet out; what lived there lives nowhere from then on. */
  public void discard(String cabinet) {
    throw new UnsupportedOperationException();
  }

  /**
   * What a page begins a cabinet with that is the case of a job: to be completed with doors and
   * hooks, and kept like any other. Empty while its design is not sound.
   */
  public Optional<Map<String, String>> ofJob(JobRecord job) {
    throw new UnsupportedOperationException();
  }

  /** The shelf heights of a job's case that suit the gear best; empty for any other cabinet. */
  public Optional<ChosenHeights> shelfHeights(String cabinet) {
    throw new UnsupportedOperationException();
  }

  /** Takes those heights over into the job; what is wrong with that, or nothing. */
  public List<Problem> takeHeights(String cabinet) {
    throw new UnsupportedOperationException();
  }

  /** All who take things out, in the order entered. */
  public List<KeptPerson> people() {
    throw new UnsupportedOperationException();
  }

  /** The fields of a person. */
  public List<CutForm.Group> personFields() {
    throw new UnsupportedOperationException();
  }

  /**
   * Keeps a person as typed, if all of it can be read.
   *
   * @param id of the person to change; empty for a new one
   */
  public Read<KeptPerson> keepPerson(Optional<String> id, Map<String, String> typed) {
    throw new UnsupportedOperationException();
  }

  public void discardPerson(String id) {
    throw new UnsupportedOperationException();
  }

  /** Everything in the shop that has a kind of thing, in the order entered. */
  public List<StoredThing> things() {
    throw new UnsupportedOperationException();
  }

  public Optional<StoredThing> thing(String id) {
    throw new UnsupportedOperationException();
  }

  /** The plan of a cabinet; empty where there is none, or it can't be read. */
  public Optional<PlannedCabinet> plan(String cabinet) {
    throw new UnsupportedOperationException();
  }

  /** The plan of a cabinet as typed, at a glance; nothing is kept. */
  public Optional<PlannedCabinet> glance(Map<String, String> typed) {
    throw new UnsupportedOperationException();
  }

  /** The cabinet as typed with the smallest change in it, to be kept like any other. */
  public Optional<Map<String, String>> changed(String cabinet) {
    throw new UnsupportedOperationException();
  }

  /** Has a thing stay in a place of a cabinet; what is wrong with that, or nothing. */
  public Optional<Problem> pin(String thing, String cabinet, String place) {
    throw new UnsupportedOperationException();
  }

  public void unpin(String thing) {
    throw new UnsupportedOperationException();
  }

  /**
   * Has everything live by the plan of a cabinet from now on; jobs in work are planned anew.
   *
   * @param mark of the plan that was seen
   * @return why not; empty when it was taken
   */
  public Optional<Problem> take(String cabinet, String mark) {
    throw new UnsupportedOperationException();
  }

  /** Where a thing lives, as prompts say it: "Gear cabinet: bay 1, hooks". */
  public Optional<String> placeOf(String thing) {
    throw new UnsupportedOperationException();
  }

  /** What falls due, what is overdue first, then by day. */
  public List<Due> due() {
    throw new UnsupportedOperationException();
  }

  /** What is overdue, or falls due within {@link org.proofcut.core.shop.GearLife#SOON_IN_DAYS}. */
  public List<Due> dueSoon() {
    throw new UnsupportedOperationException();
  }

  /**
   * Records an act on a thing, if it can be taken now; the same one again does nothing.
   *
   * @param entryId made where the act happened
   * @return why it can't; empty when it was recorded, or had been before
   */
  public Optional<Problem> act(String entryId, String thing, GearAct act) {
    throw new UnsupportedOperationException();
  }

  /** The record of a thing, in the order recorded. */
  public List<GearEntry> record(String thing) {
    throw new UnsupportedOperationException();
  }
}

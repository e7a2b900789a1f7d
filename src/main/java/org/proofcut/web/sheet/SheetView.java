package org.proofcut.web.sheet;

import java.util.List;
import org.proofcut.bench.OutOfPlace;
import org.proofcut.core.drawing.Sign;
import org.proofcut.core.evidence.Problem;
import org.proofcut.web.part.Carried;
import org.proofcut.web.reading.SheetReads;
import org.proofcut.web.reading.Verdicts.VerdictView;

/**
 * All that one sheet shows, as plain values.
 *
 * @param nextThing where in the pause to go on; null where that stands at the top anyway
 * @param workFirst whether what is to be done stands before figures, drawings and cautions
 * @param gearFirst whether gear is what is to be done
 * @param cutting whether scrap or parts pass the cutter next
 * @param also what can be looked at besides at this pause and is not asked
 * @param together how the gear goes together, and what the law on it means
 * @param lacking whether gear is asked for that nothing in the shop meets
 * @param out what is out of its place, where the job is done and things go back; else none
 * @param openNumber the sheet that is open, where it is another one; else null
 */
record SheetView(
    String job,
    String jobName,
    int number,
    int total,
    String title,
    String purpose,
    List<PauseView> pauses,
    boolean open,
    String nextThing,
    boolean workFirst,
    boolean gearFirst,
    boolean cutting,
    Integer openNumber,
    String cameBack,
    SheetReads reads,
    List<GearView> gear,
    List<String> together,
    boolean lacking,
    List<OutOfPlace> out,
    List<PartView> parts,
    List<String> steps,
    Now now,
    List<String> also,
    List<Problem> problems,
    String action,
    List<Carried> carries) {

  record PauseView(String name, String state, String href) {}

  /**
   * One piece of gear.
   *
   * @param thing its page is that of the thing with this id; null where it has none
   */
  record GearView(
      Sign sign,
      String name,
      String place,
      String ask,
      String answer,
      Boolean forbidden,
      Boolean lacking,
      List<String> notes,
      String changed,
      String action,
      String thing,
      List<Carried> carries) {}

  record PartView(
      String name,
      String detail,
      String act,
      String done,
      String action,
      List<Carried> carries,
      String undo) {}

  /**
   * One item of the pause that is open.
   *
   * @param where the things are that it is about; where none will do, why
   */
  record ItemView(
      int number,
      String ask,
      String answer,
      List<String> where,
      Boolean done,
      Boolean now,
      String action,
      List<Carried> carries) {}

  /** A question with a length for its answer. */
  record Question(
      String heading,
      String label,
      String hint,
      String typed,
      String unit,
      Problem problem,
      String button,
      List<Carried> carries) {}

  /** A reason to write down. */
  record Reason(
      String id,
      String heading,
      String label,
      String typed,
      Problem problem,
      String button,
      List<Carried> carries) {}

  /**
   * What is to be done now.
   *
   * @param heading what this is, as the heading of the part
   * @param says a sentence or two; may be empty
   * @param button words of a button without a question; null where there is none
   * @param next address of the way on; null where the work is on this sheet
   */
  record Now(
      String heading,
      String says,
      List<ItemView> items,
      Question question,
      List<VerdictView> verdicts,
      String button,
      List<Carried> buttonCarries,
      List<Reason> reasons,
      String next) {

    /** Whether this field is on the page. */
    boolean asks(String field) {
      return question != null && field.equals("found")
          || reasons.stream().anyMatch(reason -> reason.id().equals(field));
    }
  }

  /** Whether some of the gear has a page of its own. */
  public boolean hasThings() {
    return gear.stream().anyMatch(one -> one.thing() != null);
  }
}

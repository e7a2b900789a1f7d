package org.proofcut.web.sheet;

import java.util.List;
import org.proofcut.bench.Work;
import org.proofcut.core.checklist.Item;
import org.proofcut.core.run.SheetProgress;
import org.proofcut.core.run.Stage;
import org.proofcut.core.safety.Check.Pause;

/** What state the machine should be in while the work is put down. */
record HoldView(
    String job,
    String jobName,
    int number,
    int total,
    String title,
    List<String> state,
    String where) {

  static HoldView of(Work work, SheetProgress progress) {
    var sheet = progress.sheet();
    return new HoldView(
        work.job().id(),
        work.plan().designed().design().name(),
        sheet.number(),
        work.plan().sheets().size(),
        sheet.operation().title(),
        sheet.operation().kind().cuts()
            ? List.of(
                "Switched off, and the cutter stands still",
                "Plug out, or battery out",
                "Guard back over the cutter",
                "Nothing left leaning, the floor clear")
            : List.of(
                "Clamps hold, or the parts lie flat",
                "Glue closed",
                "Nothing left leaning, the floor clear"),
        where(progress));
  }

  private static String where(SheetProgress progress) {
    var pause = pause(progress.stage());
    if (pause == null) {
      return "";
    }
    List<Item> items = progress.sheet().checklist().at(pause);
    long done = items.stream().filter(progress::isConfirmed).count();
    return items.isEmpty()
        ? ""
        : "You stopped at item " + Math.min(done + 1, items.size()) + " of " + items.size() + ".";
  }

  private static Pause pause(Stage stage) {
    return switch (stage) {
      case SET -> Pause.SET;
      case BEFORE_POWER -> Pause.BEFORE_POWER;
      case LEAVE_SAFE -> Pause.LEAVE_SAFE;
      case LOCKED, PROOF, CUT, DONE -> null;
    };
  }
}

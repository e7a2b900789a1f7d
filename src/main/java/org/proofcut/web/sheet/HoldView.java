package org.proofcut.web.sheet;

import java.util.List;
import org.proofcut.bench.Work;
import org.proofcut.core.run.SheetProgress;

/**
 * What state the machine should be in while the work is put down.
 *
 * @param place where the work will be taken up again; may be empty
 */
record HoldView(
    String job,
    String jobName,
    int number,
    int total,
    String title,
    List<String> state,
    String place) {

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
        Place.of(progress));
  }
}

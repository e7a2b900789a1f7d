package org.proofcut.web.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.proofcut.bench.Draft;
import org.proofcut.core.casework.Case;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.part.Housing;
import org.proofcut.core.part.Part;
import org.proofcut.core.stock.Sheet;
import org.proofcut.logbook.JobRecord;

/** Jobs as entered, and what they come to. */
final class JobJson {

  private JobJson() {}

  /** A job in the list. */
  @Schema(name = "JobListed")
  record Listed(String id, String name, String created, String changed, boolean demo) {}

  /** A job with all that it comes to. */
  @Schema(name = "Job")
  record Kept(
      String id,
      String created,
      String changed,
      @Schema(description = "whether it came with the program") boolean demo,
      @Schema(description = "whether work has begun") boolean begun,
      Map<String, String> typed,
      Answer draft) {}

  /** What is sent to keep a job, or to see what it comes to. */
  @Schema(name = "JobTyped", requiredProperties = "typed")
  record JobTyped(
      @Schema(description = "each field of the form by its name; a length as people write it")
          Map<String, String> typed) {}

  /** What typed fields come to. */
  @Schema(name = "Draft")
  record Answer(
      @Schema(description = "whether work could begin") boolean sound,
      List<Piece> parts,
      List<Slot> housings,
      List<ProblemDetail.One> problems) {}

  /** A part at its finished size. */
  @Schema(name = "Part")
  record Piece(
      String id,
      String name,
      String role,
      Stock sheet,
      LengthJson.Figure length,
      LengthJson.Figure width,
      LengthJson.Figure thickness) {}

  /** What a part is cut from. */
  @Schema(name = "Sheet")
  record Stock(
      String id,
      String name,
      String material,
      LengthJson.Plain length,
      LengthJson.Plain width,
      List<LengthJson.Plain> readings,
      LengthJson.Figure spread) {}

  /** A slot or step that another part goes into. */
  @Schema(name = "Housing")
  record Slot(
      String id,
      String kind,
      String cut,
      String entering,
      LengthJson.Figure width,
      LengthJson.Figure depth,
      String reference,
      LengthJson.Figure distance) {}

  /** What was asked of a job, where there may be something to mend. */
  @Schema(name = "Begun")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Begun(boolean begun, Optional<Integer> revision, List<ProblemDetail.One> problems) {}

  static Listed listed(JobRecord job) {
    return new Listed(
        job.id(),
        job.typed().getOrDefault("name", ""),
        job.created().toString(),
        job.changed().toString(),
        job.demo());
  }

  static Kept kept(JobRecord job, boolean begun, Draft draft) {
    return new Kept(
        job.id(),
        job.created().toString(),
        job.changed().toString(),
        job.demo(),
        begun,
        job.typed(),
        answer(draft));
  }

  static Answer answer(Draft draft) {
    var problems = ProblemDetail.One.all(draft.problems());
    if (draft.plan().isEmpty()) {
      return new Answer(false, List.of(), List.of(), problems);
    }
    Case finished = draft.plan().get().finished();
    var unit = finished.design().unit();
    return new Answer(draft.isSound(), parts(finished, unit), housings(finished, unit), problems);
  }

  static List<Piece> parts(Case made, LengthUnit unit) {
    return made.parts().stream().map(part -> piece(part, unit)).toList();
  }

  private static Piece piece(Part part, LengthUnit unit) {
    return new Piece(
        part.id(),
        part.name(),
        ShopJson.word(part.role()),
        stock(part.sheet(), unit),
        LengthJson.figure(part.length(), unit),
        LengthJson.figure(part.width(), unit),
        LengthJson.figure(part.sheet().thickness().mean(), unit));
  }

  static Stock stock(Sheet sheet, LengthUnit unit) {
    return new Stock(
        sheet.id(),
        sheet.name(),
        sheet.material().id(),
        LengthJson.plain(sheet.length(), unit),
        LengthJson.plain(sheet.width(), unit),
        sheet.thickness().all().stream().map(one -> LengthJson.plain(one, unit)).toList(),
        LengthJson.figure(sheet.thickness().spread(), unit));
  }

  private static List<Slot> housings(Case made, LengthUnit unit) {
    return made.housings().stream().map(housing -> slot(housing, unit)).toList();
  }

  private static Slot slot(Housing housing, LengthUnit unit) {
    return new Slot(
        housing.id(),
        ShopJson.word(housing.kind()),
        housing.cut(),
        housing.entering(),
        LengthJson.figure(housing.width(), unit),
        LengthJson.figure(housing.depth(), unit),
        housing.reference().words(),
        LengthJson.figure(housing.distance(), unit));
  }
}

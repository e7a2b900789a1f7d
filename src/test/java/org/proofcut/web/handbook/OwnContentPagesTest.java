package org.proofcut.web.handbook;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.proofcut.bench.Hand;
import org.proofcut.bench.JobDesk;
import org.proofcut.bench.WorkBench;
import org.proofcut.core.operation.OperationKind;
import org.proofcut.core.run.SheetProgress;

/** A shop edits its own content while the service runs, and sees what comes of it. */
@QuarkusTest
@TestProfile(OwnContentPagesTest.OwnFolder.class)
class OwnContentPagesTest {

  private static final Path FOLDER = folder();
  private static final String PASSES = "setup/limits/router/passes.yaml";
  private static final String SHALLOWER =
      """
      deepest-pass:
        name: deepest single pass of a router cutter
        value: 4 mm
        because: {source: own-choice}
      """;

  /** Starts with a faulty folder, and looks at it often. */
  public static class OwnFolder implements QuarkusTestProfile {

    @Override
    public Map<String, String> getConfigOverrides() {
      write("safety/limits/cutter.yaml", "small_cutter: {value: wide}\n");
      return Map.of("proofcut.content.folder", FOLDER.toString(), "proofcut.content.every", "0.1S");
    }
  }

  @Inject JobDesk desk;
  @Inject WorkBench bench;

  private String job;

  @BeforeEach
  void beginWithOurs() {
    empty();
    until(() -> changes().isEmpty() && faults().isEmpty());
    job = desk.keepDemo().id();
  }

  @AfterEach
  void discard() {
    bench.discard(job);
    empty();
    until(() -> changes().isEmpty() && faults().isEmpty());
  }

  @Test
  void edit_thenFaultyEdit_thenRepair_isSeenOnEveryPage() {
    assertTrue(page("/rules/own").contains("All rules, limits and words are ours."));
    assertFalse(page("/rules").contains("this shop:"));

    write(PASSES, SHALLOWER);
    until(() -> changes().size() == 1);
    assertTrue(page("/rules/own").contains("this shop: 4 mm instead of 6.5 mm"));
    assertTrue(page("/rules/own").contains(PASSES));
    assertTrue(
        page("/rules")
            .contains("deepest_pass = 4.00 mm, this shop: 4 mm instead of 6.5 mm; our own choice"));
    assertTrue(
        given().get("/api/rules").asString().contains("\"this shop: 4 mm instead of 6.5 mm\""));

    write(PASSES, SHALLOWER.replace("4 mm", "4 parsecs"));
    until(() -> !faults().isEmpty());
    assertEquals(List.of(PASSES + ":3:10"), faults());
    assertEquals(1, changes().size(), "the last good one stays");
    for (var address : List.of("/", "/rules", "/shop")) {
      assertTrue(
          page(address).contains("own rules are not used as they lie there: 1 fault."), address);
    }
    assertTrue(page("/rules/own").contains("is no unit of length"));
    assertTrue(page("/rules").contains("deepest_pass = 4.00 mm"));

    write(PASSES, SHALLOWER.replace("4 mm", "3 mm"));
    until(() -> faults().isEmpty());
    assertTrue(page("/rules").contains("deepest_pass = 3.00 mm, this shop: 3 mm instead of"));
    assertFalse(page("/").contains("own rules are not used"));

    empty();
    until(() -> changes().isEmpty());
    assertTrue(page("/rules").contains("deepest_pass = 6.50 mm, common practice"));
  }

  @Test
  void jobInWork_isPlannedAnew_andItsFiguresSayWhoseTheLimitIs() {
    var hand = new Hand(bench, job, "tablet by the saw");
    assertTrue(hand.current().isPresent());
    int before = dado().sheet().operation().setup().orElseThrow().passes().size();

    write(PASSES, SHALLOWER.replace("4 mm", "2 mm"));
    write(
        "fit/limits/housings.yaml",
        """
        target-room:
          name: room to aim at
          value: 0.12 mm
          because: {source: own-choice}
        """);
    until(() -> changes().size() == 2);
    until(() -> dado().sheet().operation().setup().orElseThrow().passes().size() > before);
    var sheet =
        given()
            .get("/jobs/" + job + "/sheets/" + dado().sheet().number())
            .then()
            .statusCode(200)
            .extract()
            .asString();
    assertTrue(sheet.contains("this shop: 0.12 mm instead of 0.15 mm; our own choice"), sheet);

    empty();
    until(() -> changes().isEmpty());
    until(() -> dado().sheet().operation().setup().orElseThrow().passes().size() == before);
  }

  @Test
  void stopOfTheShopsOwn_closesASheetInWork_andItsTakingAwayOpensIt() {
    var hand = new Hand(bench, job, "tablet by the saw");
    assertTrue(hand.current().isPresent());
    assertFalse(dado().sheet().isStopped());

    write(
        "safety/work/no-dadoes-here.yaml",
        """
        id: no-dadoes-here
        applies-to: {operations: [dado]}
        when: fact.parts >= limit.housing_parts_cut
        effect: stop
        harm: spoilt
        severity: things-only
        likelihood: could
        hazard: Nobody here cuts dadoes.
        do-this:
          - {kind: replace, action: Use dowels.}
        because: {source: own-choice}
        """);
    write(
        "safety/work/no-dadoes-here.cases.yaml",
        """
        cases:
          - {name: One part., given: {operation: dado, parts: 1}, then: fires}
          - {name: A rip., given: {operation: rip}, then: quiet}
        """);
    write(
        "safety/limits/work.yaml",
        """
        housing_parts_cut:
          name: how many of those parts a housing may take at most
          value: 1
          because: {source: own-choice}
        """);
    until(() -> dado().sheet().isStopped());
    assertTrue(page("/rules/own").contains("no-dadoes-here: this shop&#39;s own"));
    assertTrue(
        page("/jobs/" + job + "/sheets/" + dado().sheet().number())
            .contains("housing parts cut 1 (this shop: 1 instead of 2)"));

    empty();
    until(() -> !dado().sheet().isStopped());
  }

  @Test
  void stopByLaw_thatTheShopTriesToLoosen_staysAndSaysSo() {
    var path = "safety/table-saw/saw-without-guard.yaml";
    try {
      write(path, Files.readString(Path.of("content", path)).replace("stop", "caution"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    until(() -> !changes().isEmpty());
    assertTrue(
        page("/rules/own")
            .contains(
                "<b>saw-without-guard rests on law: ours stays in force beside this shop&#39;s</b>"));
    // Told twice: ours, which stops, and the shop's own.
    var page = page("/rules?words=saw-without-guard");
    assertTrue(page.contains("Rule saw-without-guard; it stops the step"), page);
    assertTrue(page.contains("this shop&#39;s own instead of ours"), page);
  }

  private SheetProgress dado() {
    return bench.work(job).orElseThrow().progress().sheets().stream()
        .filter(one -> one.sheet().operation().kind() == OperationKind.DADO)
        .findFirst()
        .orElseThrow();
  }

  private static String page(String address) {
    return given().get(address).then().statusCode(200).extract().asString();
  }

  private static List<String> changes() {
    return given().get("/api/content/own").jsonPath().getList("changes.words");
  }

  private static List<String> faults() {
    return given().get("/api/content/own").jsonPath().getList("faults.where");
  }

  /** What is written is seen a few looks later. */
  private static void until(BooleanSupplier seen) {
    for (int n = 0; n < 200; n++) {
      if (seen.getAsBoolean()) {
        return;
      }
      try {
        Thread.sleep(100);
      } catch (InterruptedException e) {
        throw new IllegalStateException(e);
      }
    }
    throw new AssertionError("not seen in twenty seconds: " + page("/rules/own"));
  }

  private static Path folder() {
    try {
      return Files.createTempDirectory("own-content");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void write(String path, String text) {
    try {
      var file = FOLDER.resolve(path);
      Files.createDirectories(file.getParent());
      Files.writeString(file, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void empty() {
    try (var files = Files.walk(FOLDER)) {
      for (var file : files.sorted(Comparator.reverseOrder()).toList()) {
        if (!file.equals(FOLDER)) {
          Files.delete(file);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

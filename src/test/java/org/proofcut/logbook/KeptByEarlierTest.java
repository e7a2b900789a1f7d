package org.proofcut.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.Test;
import org.proofcut.core.measure.Length;
import org.proofcut.core.plan.Marks;
import org.proofcut.core.plan.Plan;
import org.proofcut.core.run.Act;
import org.proofcut.core.setup.Setting.Role;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.shop.TableSaw;

/**
 * What a shop kept with an earlier build of this version is read by this build. The files are out
 * of the tables {@code begun_plan} and {@code entry} of such a build and are never written again: a
 * change of the core that they can't follow needs a new version in {@link Written} and a folder of
 * its own here.
 */
class KeptByEarlierTest {

  private static final Path FOLDER = Path.of("src/test/resources/kept/version-" + Written.VERSION);

  @Test
  void plan_keptByAnEarlierBuild_isReadWithItsFigures() throws IOException {
    try (var packed = new GZIPInputStream(Files.newInputStream(FOLDER.resolve("plan.json.gz")))) {
      var json = new String(packed.readAllBytes(), StandardCharsets.UTF_8);
      var plan = new Written<>(Plan.class).read(json, "the plan of an earlier build");
      assertTrue(plan.isSound(), plan.problems().toString());
      assertEquals(17, plan.sheets().size());
      var dado = plan.sheet("dado:bottom").orElseThrow();
      // 90 mm to the bottom and a strip of 1.88 mm, on steps of 0.1 mm.
      assertEquals(
          Length.of("91.9 mm"),
          dado.operation().setup().orElseThrow().setting(Role.FENCE).orElseThrow().set().value());
      assertEquals(dado.marks(), Marks.of(dado.operation()));
      // Kept before blind cuts were asked for: its saw allows none.
      var saws =
          plan.sheets().stream()
              .flatMap(sheet -> sheet.operation().setup().stream())
              .map(Setup::machine)
              .filter(TableSaw.class::isInstance)
              .map(TableSaw.class::cast)
              .toList();
      assertFalse(saws.isEmpty());
      for (var saw : saws) {
        assertTrue(saw.widestStack().isEmpty() && !saw.knifeStaysInBlindCuts());
      }
    }
  }

  @Test
  void acts_keptByAnEarlierBuild_areReadAsTheyWereDone() throws IOException {
    var acts = new Written<>(Act.class);
    assertEquals(
        WrittenTest.oneOfEach(),
        Files.readAllLines(FOLDER.resolve("acts.txt")).stream()
            .map(json -> acts.read(json, "an act of an earlier build"))
            .toList());
  }
}

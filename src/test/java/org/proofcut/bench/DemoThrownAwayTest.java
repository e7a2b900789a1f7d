package org.proofcut.bench;

import static io.restassured.RestAssured.get;
import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.runtime.StartupEvent;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.proofcut.core.intake.Demo;
import org.proofcut.logbook.JobRecord;

@QuarkusTest
class DemoThrownAwayTest {

  @Inject JobDesk desk;
  @Inject ShopFloor floor;
  @Inject WorkBench bench;

  private String own;

  @BeforeEach
  void keepAJobThatIsNoDemo() {
    own = desk.keep(Optional.empty(), Demo.job()).value().orElseThrow().id();
  }

  @AfterEach
  void putTheDemoBackForOtherTests() {
    bench.discard(own);
    if (!floor.hasDemo()) {
      floor.keepDemo();
    }
    if (demoJobs().isEmpty()) {
      desk.keepDemo();
    }
  }

  @Test
  void discard_demo_goesWholeAndNeverComesBackByItself() {
    assertTrue(get("/").asString().contains("This is a demo"));
    var things = floor.demoNames();

    var asked = get("/demo/discard").asString();
    assertTrue(asked.contains("Seed cupboard for the allotment hut"), asked);
    assertTrue(things.contains("sled") && things.contains("table saw"), things.toString());
    things.forEach(name -> assertTrue(asked.contains("<li>" + name + "</li>"), name));
    assertEquals(things, floor.demoNames(), "only asked");

    assertEquals(303, given().redirects().follow(false).post("/demo/discard").statusCode());
    assertGone();
    assertFalse(get("/").asString().contains("This is a demo"));

    // As at the next start of the program.
    desk.start(new StartupEvent());
    assertGone();
    assertEquals("The long shed", floor.about().get("name"));
  }

  private void assertGone() {
    assertEquals(List.of(), demoJobs());
    assertEquals(List.of(), floor.demoNames());
    assertTrue(desk.job(own).isPresent(), "the maker's own job stays");
  }

  private List<JobRecord> demoJobs() {
    return desk.jobs().stream().filter(JobRecord::demo).toList();
  }
}

package org.proofcut.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.proofcut.core.habit.Observation;
import org.proofcut.core.habit.Ruling;
import org.proofcut.core.habit.Ruling.About;
import org.proofcut.core.habit.Trait;
import org.proofcut.core.habit.Trait.Datum;
import org.proofcut.core.measure.Length;

/** Observations and rulings as text, of every kind. */
class WrittenHabitsTest {

  private static final Written<Observation> OBSERVATIONS = new Written<>(Observation.class);
  private static final Written<Ruling> RULINGS = new Written<>(Ruling.class);
  private static final Path KEPT = Path.of("src/test/resources/kept/version-" + Written.VERSION);

  private static final Instant MONDAY = Instant.parse("2030-03-04T08:15:00.123456789Z");
  private static final Trait WIDTH = new Trait.CutWidth("demo-5");
  private static final Trait BASE = new Trait.BaseToEdge("router", "demo-5");
  private static final Trait STOP = new Trait.ScaleOffset("saw", "blade", Datum.STOP);

  static List<Observation> observations() {
    return List.of(
        new Observation("j/rip/f/1", WIDTH, Length.of("5/8 in"), Length.of("15.87 mm"), MONDAY),
        new Observation("", BASE, Length.ZERO, new Length(-1), Instant.EPOCH),
        new Observation(
            "j/dado/f/1",
            new Trait.StackWider("stack"),
            Length.of("17.9 mm"),
            Length.of("17.95 mm"),
            MONDAY),
        new Observation("\"<b>\uD83E\uDE9A", STOP, Length.of("1 m"), Length.of("1 m"), MONDAY));
  }

  /** A stack has been taught of since. */
  private static List<Observation> keptByAnEarlierBuild() {
    return observations().stream()
        .filter(one -> !(one.trait() instanceof Trait.StackWider))
        .toList();
  }

  static List<Ruling> rulings() {
    return List.of(
        new Ruling.Accepted("p", WIDTH, MONDAY),
        new Ruling.LeftOut("p", BASE, "a chip at the fence", MONDAY),
        new Ruling.StartedAfresh(new About.Cutter("demo-5"), "sharpened", MONDAY),
        new Ruling.StartedAfresh(new About.Machine("saw"), "moved", MONDAY),
        new Ruling.StartedAfresh(new About.Scale("saw", Datum.STOP), "set anew", MONDAY),
        new Ruling.StartedAfresh(new About.Only(STOP), "\"Ø\"\\ <script>", MONDAY),
        new Ruling.SetAside(STOP, "the fence goes for repair", MONDAY),
        new Ruling.TakenUp(STOP, MONDAY));
  }

  @ParameterizedTest
  @MethodSource("observations")
  void read_observation_equalsWhatWasWritten(Observation observation) {
    assertEquals(observation, OBSERVATIONS.read(OBSERVATIONS.write(observation), "the test"));
  }

  @ParameterizedTest
  @MethodSource("rulings")
  void read_ruling_equalsWhatWasWritten(Ruling ruling) {
    assertEquals(ruling, RULINGS.read(RULINGS.write(ruling), "the test"));
  }

  @Test
  void tested_areAllKindsThereAre() {
    assertEquals(kinds(Trait.class), kindsOf(observations().stream().map(Observation::trait)));
    assertEquals(kinds(Ruling.class), kindsOf(rulings().stream()));
    assertEquals(
        kinds(About.class),
        kindsOf(
            rulings().stream()
                .filter(Ruling.StartedAfresh.class::isInstance)
                .map(ruling -> ((Ruling.StartedAfresh) ruling).about())));
  }

  private static Set<Class<?>> kinds(Class<?> sealed) {
    return Set.of(sealed.getPermittedSubclasses());
  }

  private static Set<Class<?>> kindsOf(Stream<?> values) {
    return values.map(Object::getClass).collect(Collectors.toSet());
  }

  /** The files are as this version was first written, and are never written again. */
  @Test
  void keptByAnEarlierBuild_isReadAsItWas() throws IOException {
    assertEquals(
        keptByAnEarlierBuild(),
        Files.readAllLines(KEPT.resolve("observations.txt")).stream()
            .map(json -> OBSERVATIONS.read(json, "an observation of an earlier build"))
            .toList());
    assertEquals(
        rulings(),
        Files.readAllLines(KEPT.resolve("rulings.txt")).stream()
            .map(json -> RULINGS.read(json, "a ruling of an earlier build"))
            .toList());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"version\":1,\"content\":{\"is\":\"TakenUp\",\"trait\":{\"is\":\"CutWidth\","
            + "\"cutter\":\"c\"},\"at\":\"yesterday\"}}",
        "{\"version\":1,\"content\":{\"is\":\"TakenUp\",\"trait\":{\"is\":\"CutWidth\","
            + "\"cutter\":\"c\"},\"at\":1}}",
        "{\"version\":1,\"content\":{\"is\":\"TakenUp\",\"trait\":{\"is\":\"Kerf\","
            + "\"cutter\":\"c\"},\"at\":\"2030-03-04T08:15:00Z\"}}",
        "{\"version\":1,\"content\":{\"is\":\"TakenUp\",\"at\":\"2030-03-04T08:15:00Z\"}}",
      })
  void read_damagedRuling_saysWhere(String json) {
    var e = assertThrows(UnreadableException.class, () -> RULINGS.read(json, "ruling 3"));
    assertEquals("ruling 3", e.problem().where());
  }
}

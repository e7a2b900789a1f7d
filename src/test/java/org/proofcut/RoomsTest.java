package org.proofcut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Holds the code to what each room says of itself. */
class RoomsTest {

  private static final Rooms ROOMS = Rooms.ofMain();

  @Test
  void scan_sawEveryRoom() throws IOException {
    assertNone(ROOMS.notScanned(Path.of("src/main/java")));
    assertTrue(ROOMS.names().contains("core.measure"), ROOMS.names().toString());
  }

  @Test
  void rooms_areAllLabelled() {
    assertNone(ROOMS.unlabelled());
  }

  @Test
  void rooms_mayImportOnlyRoomsBeforeThem() {
    assertNone(ROOMS.wrongDeclarations());
  }

  @Test
  void rooms_importOnlyWhatTheyDeclare() {
    assertNone(ROOMS.undeclaredImports());
  }

  @Test
  void rooms_haveNoCycles() {
    assertNone(ROOMS.cycles());
  }

  @Test
  void rooms_areNamedAfterIdeas() {
    assertNone(ROOMS.namedAfterNoIdea());
  }

  @Test
  void core_usesOnlyPureJava() {
    assertNone(ROOMS.coreBeyondPureJava());
  }

  @Test
  void core_hasNoFloatingPoint() {
    assertNone(ROOMS.coreInFloatingPoint());
  }

  @Test
  void persistence_staysInTheLogbook() {
    assertNone(ROOMS.persistenceOutsideLogbook());
    assertNone(ROOMS.entitiesHandedOut());
  }

  @Test
  void web_isImportedByNothing() {
    assertNone(ROOMS.importsOfWeb());
  }

  private static void assertNone(List<String> faults) {
    assertEquals("", String.join("\n", faults));
  }
}

package org.proofcut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Shows that each check of {@link RoomsTest} fails where it should, on rooms built wrong. */
class RoomsFaultsTest {

  private static final Rooms BROKEN = Rooms.of("org.proofcut.broken");

  @Test
  void unlabelled_roomWithoutLabel_isNamed() {
    assertOnly(BROKEN.unlabelled(), "core.unlabelled has no");
  }

  @Test
  void notScanned_folderThatNobodyCompiled_isNamed(@TempDir Path sources) throws IOException {
    for (var name : BROKEN.names()) {
      addSource(sources, name.replace('.', '/'));
    }
    assertEquals(List.of(), BROKEN.notScanned(sources));
    addSource(sources, "core/forgotten");
    assertOnly(BROKEN.notScanned(sources), "core.forgotten has sources");
  }

  @Test
  void notScanned_classesLeftBehind_areNamed(@TempDir Path sources) throws IOException {
    for (var name : BROKEN.names()) {
      if (!name.equals("helper")) {
        addSource(sources, name.replace('.', '/'));
      }
    }
    assertOnly(BROKEN.notScanned(sources), "helper was scanned but");
  }

  @Test
  void wrongDeclarations_laterAndUnknownRooms_areNamed() {
    assertOnly(
        BROKEN.wrongDeclarations(),
        "core.later may import core.later, which is not before",
        "shelf may import core.nowhere, which is no room");
  }

  @Test
  void undeclaredImports_arrowsNobodyDeclared_areNamed() {
    assertOnly(
        BROKEN.undeclaredImports(),
        "core.earlier must not import core.later",
        "shelf must not import web");
  }

  @Test
  void cycles_twoRoomsThatNeedEachOther_areNamed() {
    var cycles = BROKEN.cycles();
    assertEquals(1, cycles.size(), cycles.toString());
    assertTrue(cycles.get(0).contains("core.earlier") && cycles.get(0).contains("core.later"));
  }

  @Test
  void coreBeyondPureJava_filesAndClock_areNamed() {
    assertOnly(BROKEN.coreBeyondPureJava(), "java.nio.file.Path", "java.time.Instant.now");
  }

  @Test
  void coreInFloatingPoint_fieldLocalAndCall_areNamed() {
    var faults = BROKEN.coreInFloatingPoint();
    for (var trace : List.of("float ratio", "Math.sqrt", "dmul", "doubleValue")) {
      assertTrue(faults.stream().anyMatch(it -> it.contains(trace)), trace + " in " + faults);
    }
    assertTrue(faults.stream().allMatch(it -> it.startsWith("Rough.java")), faults.toString());
  }

  @Test
  void persistenceOutsideLogbook_inAnotherRoom_isNamed() {
    assertOnly(BROKEN.persistenceOutsideLogbook(), "jakarta.persistence.EntityManager");
  }

  @Test
  void entitiesHandedOut_inAListAndAsArgument_areNamed() {
    assertOnly(BROKEN.entitiesHandedOut(), "Log.all()", "Log.add(");
  }

  @Test
  void importsOfWeb_fromAnotherRoom_isNamed() {
    assertOnly(BROKEN.importsOfWeb(), "shelf must not import web");
  }

  @Test
  void namedAfterNoIdea_aHelper_isNamed() {
    assertOnly(BROKEN.namedAfterNoIdea(), "helper: name the room");
  }

  /** Each fault contains one of the texts, and each text is in a fault. */
  private static void assertOnly(List<String> faults, String... texts) {
    for (var text : texts) {
      assertTrue(faults.stream().anyMatch(it -> it.contains(text)), text + " in " + faults);
    }
    for (var fault : faults) {
      assertTrue(List.of(texts).stream().anyMatch(fault::contains), "not expected: " + fault);
    }
  }

  private static void addSource(Path sources, String folder) throws IOException {
    var room = Files.createDirectories(sources.resolve("org/proofcut/broken").resolve(folder));
    Files.createFile(room.resolve("Some.java"));
  }
}

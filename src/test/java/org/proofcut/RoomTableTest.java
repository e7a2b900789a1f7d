package org.proofcut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/**
 * Keeps the table of rooms in {@code docs/architecture.md} as the rooms are. To write it anew:
 * {@code mvn test -Dtest=RoomTableTest -Dproofcut.refresh=true}.
 */
class RoomTableTest {

  private static final Path DOCUMENT = Path.of("docs/architecture.md");
  private static final String BEGIN = "<!-- rooms: begin -->\n";
  private static final String END = "<!-- rooms: end -->\n";

  @Test
  void document_tableOfRooms_isAsTheRoomsSay() throws IOException {
    var document = Files.readString(DOCUMENT);
    int begin = document.indexOf(BEGIN);
    int end = document.indexOf(END);
    assertTrue(0 <= begin && begin < end, DOCUMENT + " has lost its markers " + BEGIN + END);
    var fresh = document.substring(0, begin) + BEGIN + table() + document.substring(end);
    if (Boolean.getBoolean("proofcut.refresh")) {
      Files.writeString(DOCUMENT, fresh);
    } else {
      assertEquals(fresh, document, "stale: run this test with -Dproofcut.refresh=true");
    }
  }

  private static String table() {
    var rooms = Rooms.ofMain();
    var table =
        new StringBuilder(
            """
            | room | question | gives | may import | not here |
            | --- | --- | --- | --- | --- |
            """);
    for (var name : rooms.inOrder()) {
      var room = rooms.label(name).orElseThrow();
      table.append(
          "| `%s` | %s | %s | %s | %s |\n"
              .formatted(
                  name,
                  room.question(),
                  room.gives(),
                  String.join(", ", room.mayImport()),
                  room.notHere()));
    }
    return table.toString();
  }
}

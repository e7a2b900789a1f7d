package org.proofcut.core.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class FormReaderTest {

  @Test
  void shortened_longText_isCutBehindAWholeCharacter() {
    var most = "x".repeat(23) + "\uD83D\uDE00";
    assertEquals(most, FormReader.shortened(most));
    assertEquals(most + "…", FormReader.shortened(most + "\uD83D\uDE00"));
  }
}

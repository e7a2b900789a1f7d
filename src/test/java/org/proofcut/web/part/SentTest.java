package org.proofcut.web.part;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SentTest {

  @ParameterizedTest
  @CsvSource({
    "width=620, 620",
    "width=24+1%2F2+in, 24 1/2 in",
    "width=a=b, a=b",
    "width=1&width=2, 1",
    "=9&width=1, 1",
    "width=%zz, %zz",
    "width=%, %",
    "width=%C3%A4, ä"
  })
  void typed_oneField_isAsItWasTyped(String body, String typed) {
    assertEquals(Map.of("width", typed), Sent.typed(body));
  }

  @Test
  void typed_nothing_isNothing() {
    assertEquals(Map.of(), Sent.typed(""));
    assertEquals(Map.of(), Sent.typed("&&=&"));
    assertEquals(Map.of("width", ""), Sent.typed("width"));
  }
}

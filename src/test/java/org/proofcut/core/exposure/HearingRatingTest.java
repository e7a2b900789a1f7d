package org.proofcut.core.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.proofcut.core.exposure.HearingRating.Kind;

class HearingRatingTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "NRR 25                        | NRR 25",
        "SNR 32                        | SNR 32",
        "snr32                         | SNR 32",
        "NRR: 25 dB                    | NRR 25",
        "SNR=30dB                      | SNR 30",
        "EN 352-1, SNR 31, H 34 M 29   | SNR 31",
        "SNR 31 dB (H35 M28 L20)       | SNR 31",
        "25 NRR                        | NRR 25",
        "32 dB SNR                     | SNR 32",
        "NRR 25, SNR 30                | NRR 25, SNR 30",
        "SNR 30/NRR 25                 | SNR 30, NRR 25",
        "NRR 1                         | NRR 1",
        "SNR 45                        | SNR 45",
      })
  void read_asMarked_givesKindAndDecibels(String text, String read) {
    assertEquals(read, words(HearingRating.read(text)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "   ",
        "30",
        "30 dB",
        "NRR",
        "SNR high",
        "NRR 25-30",
        "NRR 25 - 30",
        "NRR 25/30",
        "SNR 27.5",
        "SNR 27,5",
        "NRR 0",
        "NRR 46",
        "NRR 250",
        "NRR 99999999999999999999",
        "SNR: -5",
        "NRRsf 15",
        "NRR(SF) 15",
        "SNR 30, SNR 32",
        "SNR 30 and NRR",
        "NRR of this one is 25",
        "XNRR 25",
        "EN 352",
        "\u0000NRR\u0000"
      })
  void read_anythingElse_guessesNothing(String text) {
    assertEquals(List.of(), HearingRating.read(text));
  }

  @Test
  void new_beyondWhatAProtectorReaches_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> new HearingRating(Kind.NRR, 46));
    assertThrows(IllegalArgumentException.class, () -> new HearingRating(Kind.SNR, 0));
  }

  @Test
  void text_isReadBackAsItself() {
    for (var kind : Kind.values()) {
      HearingRating.all(kind)
          .forEach(rating -> assertEquals(List.of(rating), HearingRating.read(rating.text())));
    }
  }

  private static String words(List<HearingRating> ratings) {
    return ratings.stream().map(HearingRating::text).collect(Collectors.joining(", "));
  }
}

package org.proofcut.core.intake;

import java.util.List;
import java.util.stream.Stream;
import org.proofcut.core.fit.FitLimits;

/** All forms of single cuts. */
public final class CutForms {

  private CutForms() {}

  /** One form for each kind of cut, judged by these limits of fit. */
  public static List<CutForm> all(FitLimits fit) {
    return Stream.of(HousingForms.all(fit), PartingForms.all(), BoringForms.all())
        .flatMap(List::stream)
        .toList();
  }
}

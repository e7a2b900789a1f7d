package org.proofcut.core.intake;

import java.util.List;
import java.util.stream.Stream;
import org.proofcut.core.boring.BoringLimits;
import org.proofcut.core.fit.FitLimits;

/** All forms of single cuts. */
public final class CutForms {

  private CutForms() {}

  /** Forms of cuts that are alike, under one heading. */
  public record Family(String title, List<CutForm> forms) {}

  /** One form for each kind of cut, by family, judged by these limits. */
  public static List<Family> families(FitLimits fit, BoringLimits boring) {
    return List.of(
        new Family("Cut to size", PartingForms.all()),
        new Family(
            "Housings and tongues",
            Stream.concat(HousingForms.all(fit).stream(), TongueForms.all(fit).stream()).toList()),
        new Family("Rabbets and tongues in two cuts at the saw", StepForms.all(fit)),
        new Family("Boards flat, straight and of one thickness", KnifeForms.all()),
        new Family("Edges", EdgeForms.all(fit)),
        new Family("In a template", TemplateForms.all()),
        new Family("Holes", BoringForms.all(boring)),
        new Family(
            "Cuts at an angle",
            Stream.of(MitreForms.all(), BevelForms.all(), TaperForms.all())
                .flatMap(List::stream)
                .toList()));
  }

  /** The same without their headings. */
  public static List<CutForm> all(FitLimits fit, BoringLimits boring) {
    return families(fit, boring).stream().flatMap(family -> family.forms().stream()).toList();
  }
}

package org.proofcut.bench;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.intake.CutForm;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.storage.Cabinet;
import org.proofcut.core.storage.Place;

/**
 * A cabinet as typed so far.
 *
 * @param groups its fields: the frame, the bays, the doors, each fitting
 * @param unit of bare numbers
 * @param cabinet empty while something can't be read, or can't be
 * @param places of it, from left to right; none while there is no cabinet
 * @param problems what is wrong, by field
 */
public record CabinetDraft(
    List<CutForm.Group> groups,
    Map<String, String> typed,
    LengthUnit unit,
    Optional<Cabinet> cabinet,
    List<Place> places,
    List<Problem> problems) {

  public CabinetDraft {
    groups = List.copyOf(groups);
    typed = Map.copyOf(typed);
    places = List.copyOf(places);
    problems = List.copyOf(problems);
  }
}

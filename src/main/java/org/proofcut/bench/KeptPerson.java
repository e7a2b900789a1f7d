package org.proofcut.bench;

import java.util.List;
import java.util.Map;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.storage.Person;

/**
 * Somebody who takes things out, as kept.
 *
 * @param estimated those heights that follow from the height of the body, with where from
 */
public record KeptPerson(
    String id, Map<String, String> typed, Person person, List<Worked<Length>> estimated) {

  public KeptPerson {
    typed = Map.copyOf(typed);
    estimated = List.copyOf(estimated);
  }
}

package org.proofcut.content.yaml;

import java.util.List;

/**
 * One text or a list of texts, not yet understood: what it should be is known only from elsewhere.
 *
 * @param texts what is written; one for a single value
 * @param isList whether it is written as a list
 */
public record Written(Spot spot, List<String> texts, boolean isList) {

  public Written {
    texts = List.copyOf(texts);
  }

  @Override
  public String toString() {
    return isList ? texts.toString() : texts.get(0);
  }
}

package org.proofcut.core.safety;

import java.util.List;

/** The rules of the house, ready to be asked. Fails closed: what can't be judged is a stop. */
public interface Rulebook {

  /** What the rules say of a step, gravest first. */
  List<Finding> judge(StepFacts facts);
}

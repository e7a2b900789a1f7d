package org.proofcut.bench;

import org.proofcut.core.evidence.Problem;
import org.proofcut.core.storage.Place;
import org.proofcut.core.storage.Thing;

/** Why a pin is not put in, or a plan not taken. */
final class StorageRefusals {

  private StorageRefusals() {}

  static Problem noSuchCabinet() {
    return Problem.stops(
        "cabinet",
        "There is no such cabinet or place, or the cabinet can't be read",
        "a cabinet and a place that are shown",
        "Look at the cabinet again");
  }

  static Problem notKeptThere() {
    return Problem.stops(
        "thing",
        "That thing is not kept in this cabinet",
        "a thing that is to be kept here",
        "Choose the cabinet at the thing itself first");
  }

  static Problem unfit(Thing thing, Place place, String why) {
    return Problem.stops(
        "place",
        thing.name() + " can't be kept there: " + why,
        "a place that keeps to every rule",
        "Choose another place than " + place.name());
  }

  static Problem otherPlan() {
    return Problem.stops(
        "mark",
        "The plan is another one by now",
        "the plan as it is shown",
        "Look at the plan again and take that");
  }

  static Problem brokenPlan(PlannedCabinet planned) {
    var fault = planned.faults().get(0);
    return Problem.stops(
        "plan",
        fault.thing() + ": " + fault.words(),
        "a plan that keeps to every rule",
        "Change the cabinet or its pins");
  }
}

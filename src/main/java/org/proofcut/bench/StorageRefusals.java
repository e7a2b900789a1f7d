package org.proofcut.bench;

import org.proofcut.core.evidence.Problem;
import org.proofcut.core.storage.Place;
import org.proofcut.core.storage.Thing;

/** Why a change of where gear lives is not made. */
final class StorageRefusals {

  private StorageRefusals() {}

  static Problem noSuchCabinet() {
    return Problem.stops(
        "cabinet",
        "There is no such cabinet, or something in it is to be mended first",
        "a cabinet that is listed, with nothing to mend",
        "Look at the list of cabinets");
  }

  static Problem noSuchPlace() {
    return Problem.stops(
        "place",
        "The cabinet has no such place",
        "a place that the plan shows",
        "Look at the plan again and choose one of its places");
  }

  static Problem noCase() {
    return Problem.stops(
        "cabinet",
        "This cabinet is not the case of a job",
        "a cabinet whose shelves follow a design",
        "Move its shelves in its own fields");
  }

  static Problem otherDesign() {
    return Problem.stops(
        "job",
        "The job was changed meanwhile",
        "the design as it was when the heights were found",
        "Look at the heights again and take those");
  }

  static Problem otherAct() {
    return Problem.stops(
        "id",
        "Something else was recorded by this id already",
        "an id of its own for each act",
        "Look at the thing again, and record it there");
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

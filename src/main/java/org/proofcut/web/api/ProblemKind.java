package org.proofcut.web.api;

import java.util.Arrays;
import java.util.Optional;

/** The kinds of problem that an answer can be, each with an address where it is explained. */
enum ProblemKind {
  NOT_JSON("not-json", 400, "Not JSON", "The body can't be read as one JSON object."),
  ELSEWHERE(
      "elsewhere",
      403,
      "From another page",
      "The request comes from a page of another origin, or by a name that is not this computer's."),
  NOT_THERE("not-there", 404, "Not there", "Nothing is kept at this address."),
  NO_SUCH_METHOD(
      "no-such-method", 405, "Not done so", "The address is right, the method is not one it has."),
  NOT_ACCEPTABLE("not-acceptable", 406, "Only JSON here", "Answers are given as JSON only."),
  CHANGED(
      "changed",
      409,
      "Changed since",
      "The sheet is no longer the one that the act was meant for: look at it again."),
  NOT_NOW("not-now", 409, "Not now", "It can't be done where the work stands."),
  TOO_LARGE("too-large", 413, "Too large", "The body is larger than any that is needed."),
  NOT_AS_JSON(
      "not-as-json", 415, "Send JSON", "A body is sent with Content-Type: application/json."),
  FIELDS("fields", 422, "There is a problem", "Some of what was sent can't be taken as it is."),
  UNREADABLE(
      "unreadable",
      500,
      "Can't be read back",
      "Something that was kept is damaged, or from another version of this program."),
  FAULT("fault", 500, "A fault of this program", "The log has the details under the reference.");

  private static final String PLACE = "/api/problems/";

  private final String id;
  private final int status;
  private final String title;
  private final String meaning;

  ProblemKind(String id, int status, String title, String meaning) {
    this.id = id;
    this.status = status;
    this.title = title;
    this.meaning = meaning;
  }

  String id() {
    return id;
  }

  int status() {
    return status;
  }

  String title() {
    return title;
  }

  String meaning() {
    return meaning;
  }

  /** Where it is explained: the type of a problem detail. */
  String type() {
    return PLACE + id;
  }

  static Optional<ProblemKind> withId(String id) {
    return Arrays.stream(values()).filter(kind -> kind.id.equals(id)).findFirst();
  }

  /** The kind that an answer of this status without a body is. */
  static Optional<ProblemKind> withStatus(int status) {
    return Arrays.stream(values()).filter(kind -> kind.status == status).findFirst();
  }
}

/**
 * The same shop, jobs and sheets as the pages show, as JSON below {@code /api}, described by
 * OpenAPI at {@code /q/openapi}.
 *
 * <p>A length goes in as text as a person writes it ({@code "18.25 mm"}, {@code "23/32 in"}) and
 * comes out exact, as text: no number here is ever a binary fraction. What is shown of it is
 * written on the scale of a caliper in the unit of the job.
 *
 * <p>Every answer is a record of this package, made by hand from the records of the core; what is
 * wrong is told as a problem detail (RFC 9457) with the {@link org.proofcut.core.evidence.Problem}s
 * in it.
 *
 * <p><b>Pages of others.</b> There is no sign-in, and any page that the maker has open in the same
 * browser can send a request to 127.0.0.1. {@link org.proofcut.web.api.OwnPagesOnly} stands before
 * everything, pages and API alike. It asks two things, and both are needed:
 *
 * <ul>
 *   <li>what changes something must not carry the {@code Origin} of another page. Browsers send it
 *       with every such request and no script can forge it, so this stops foreign forms as well as
 *       foreign scripts, needs no token in forms, and lets programs without an origin through;
 *   <li>the {@code Host} must be a name that nobody outside can own: a plain address, localhost, a
 *       name without a dot or below {@code .local}. Else a foreign name that is made to point at
 *       this computer would pass as the same origin, and could read as well.
 * </ul>
 *
 * <p>A {@code SameSite} cookie would not do: there is no session to put in one, and every port of
 * localhost is the same site. That bodies have to be {@code application/json} comes on top.
 */
@Room(
    step = 310,
    question = "What does a program get instead of a page?",
    gives = "/api and its description; OwnPagesOnly",
    notHere = "what may be done and what it comes to (bench)",
    mayImport = {
      "core.measure",
      "core.measure.display",
      "core.evidence",
      "core.exposure",
      "core.noise",
      "core.stock",
      "core.readings",
      "core.shop",
      "core.part",
      "core.casework",
      "core.weight",
      "core.setup",
      "core.habit",
      "core.method",
      "core.operation",
      "core.proof",
      "core.safety",
      "core.checklist",
      "core.storage",
      "calendar",
      "core.intake",
      "core.plan",
      "core.run",
      "rulebook",
      "content",
      "logbook",
      "bench",
      "web.part"
    })
package org.proofcut.web.api;

import org.proofcut.Room;

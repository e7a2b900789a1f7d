/**
 * The noise of a day's work: how long each machine of a plan runs and how loud it is, what that
 * comes to by the published rules, and what a hearing protector leaves of it. Of a plan it changes
 * only which ear protectors are offered.
 */
@Room(
    step = 155,
    question = "How much noise does a day's work bring, and what keeps it out?",
    gives =
        "NoiseDay: its stays, doses, what a law makes of them, and each protector; a Plan that offers those that are enough",
    notHere = "the rules themselves (exposure), levels and laws (content)",
    mayImport = {
      "core.measure",
      "core.evidence",
      "core.exposure",
      "core.shop",
      "core.setup",
      "core.operation",
      "core.checklist",
      "core.plan"
    })
package org.proofcut.core.noise;

import org.proofcut.Room;

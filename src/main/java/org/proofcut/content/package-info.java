/**
 * What people who write no Java can change: rules, limits, sources, wording, kinds of gear.
 *
 * <p>Takes the folder {@code content}, from disk or from the jar; gives one {@link
 * org.proofcut.content.Content}, or everything that is wrong with it at once. {@code
 * content/README.md} says how to add one more of each.
 */
@Room(
    step = 210,
    question = "What do the rules, limits and words say?",
    gives =
        "Content: rulebook, limits, sources, woods, gear and how it is kept, aids, wording; or Faulty",
    notHere = "reading of YAML (content.yaml), the language of conditions (rulebook)",
    mayImport = {
      "core.measure",
      "core.evidence",
      "core.exposure",
      "core.stock",
      "core.shop",
      "core.exposure",
      "core.fit",
      "core.casework",
      "core.weight",
      "core.boring",
      "core.setup",
      "core.habit",
      "core.storage",
      "core.operation",
      "core.safety",
      "core.checklist",
      "rulebook",
      "content.yaml"
    })
package org.proofcut.content;

import org.proofcut.Room;

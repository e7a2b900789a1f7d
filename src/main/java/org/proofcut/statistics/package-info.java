/**
 * Quantiles that the core asks for, from Apache Commons Statistics. Floating point stays in here: a
 * probability comes in and a quantile goes out as a decimal, rounded at a step that is named.
 */
@Room(
    step = 190,
    question = "How far out does chance alone reach?",
    gives = "CommonsStudentT, a core.habit.StudentT",
    notHere = "what a quantile is used for (core.habit)",
    mayImport = {"core.habit"})
package org.proofcut.statistics;

import org.proofcut.Room;

package org.proofcut.core.setup;

/** What a calculator answers: a set-up, or why there is none. */
public sealed interface Answer permits Setup, Refusal {}

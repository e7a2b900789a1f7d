package org.proofcut.content.yaml;

/** A value that still knows where it was written, for what can only be judged later. */
public record Located<T>(T value, Spot spot) {}

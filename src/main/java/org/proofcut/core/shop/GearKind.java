package org.proofcut.core.shop;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.proofcut.core.evidence.AtLeastOne;

/**
 * A kind of protective gear.
 *
 * @param plural whether one speaks of it as "they"
 * @param order in which it is put on, counted from 1: straps and arms break the seal of what comes
 *     after them
 * @param sign number of the ISO 7010 sign to compare with: ours is drawn anew
 * @param offSign the sign where it is forbidden
 * @param rating what is usually marked on it; empty if nothing is
 * @param on what is asked, and the answer, where it is required
 * @param off the same where it is forbidden
 * @param classes the weakest first
 * @param judged how a piece is held against what is needed; by class, if it does not say
 */
public record GearKind(
    String id,
    String name,
    boolean plural,
    int order,
    String sign,
    Optional<String> offSign,
    Optional<String> rating,
    Prompt on,
    Prompt off,
    @AtLeastOne List<GearClass> classes,
    Optional<Judged> judged) {

  /** A question at the machine and the one answer that lets the work go on. */
  public record Prompt(String ask, String answer) {}

  /** How a piece is held against what is needed. */
  public enum Judged {
    /** Each class also does what those before it do. */
    BY_CLASS,
    /** Each class is for a use of its own, and stands in for no other. */
    BY_USE,
    /** A figure in decibels is marked on it; whoever has one has the one class. */
    BY_FIGURE
  }

  public GearKind {
    classes = List.copyOf(classes);
  }

  /** A kind without classes. */
  public GearKind(
      String id,
      String name,
      boolean plural,
      int order,
      String sign,
      Optional<String> offSign,
      Optional<String> rating,
      Prompt on,
      Prompt off) {
    this(id, name, plural, order, sign, offSign, rating, on, off, List.of(), Optional.empty());
  }

  /** How a piece is held against what is needed. */
  public Judged judgedBy() {
    return judged.orElse(Judged.BY_CLASS);
  }

  /** The class with this id, if the kind has it. */
  public Optional<GearClass> classOf(String classId) {
    return classes.stream().filter(one -> one.id().equals(classId)).findFirst();
  }

  /** The class of a piece, as far as it is known. */
  public Optional<GearClass> classOf(OwnedGear piece) {
    return judgedBy() == Judged.BY_FIGURE
        ? piece.rated().flatMap(rated -> classes.stream().findFirst())
        : piece.marked().flatMap(this::classOf);
  }

  /** Its place from the weakest, from 0; of a class that the kind does not have, -1. */
  int rank(String classId) {
    return IntStream.range(0, classes.size())
        .filter(i -> classes.get(i).id().equals(classId))
        .findFirst()
        .orElse(-1);
  }
}

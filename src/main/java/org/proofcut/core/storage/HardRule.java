package org.proofcut.core.storage;

/** What every plan keeps to. */
public enum HardRule {
  ONCE("a thing has one place"),
  IN_PLACE("it fits in its place"),
  HAND_ROOM("a hand gets to it"),
  NOT_THROUGH("it takes up no room that something else has"),
  DOOR_SHUTS("the door shuts over it"),
  LOAD("its place carries it"),
  POSTURE("it is kept as it should be"),
  SEALED("it is sealed"),
  DRY("it is dry"),
  UNDEFORMED("nothing presses on it"),
  OPEN("it is in sight"),
  AT_ONCE("nothing is in its way"),
  ELSEWHERE("it is not kept here"),
  APART("clean things are kept from dirty ones"),
  REACH("everyone who uses it reaches it"),
  MOUNTING("it hangs no higher and no lower than it may"),
  PINNED("it stays where it was pinned");

  private final String words;

  HardRule(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}

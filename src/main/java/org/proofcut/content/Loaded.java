package org.proofcut.content;

/** What came of loading a content folder: all of it, or what is wrong with it. */
public sealed interface Loaded permits Content, Faulty {

  /**
   * The content.
   *
   * @throws IllegalStateException if it is faulty; the message lists every fault
   */
  default Content orThrow() {
    if (this instanceof Faulty faulty) {
      throw new IllegalStateException(faulty.printed());
    }
    return (Content) this;
  }
}

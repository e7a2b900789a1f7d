package org.proofcut.core.exposure;

import java.util.Locale;

/** What the dust of a wood does beside what any dust does. */
public enum DustEffect {
  IRRITANT("irritates", "Stings or itches while it is there, and passes when it is washed off."),
  SENSITISER(
      "can make you allergic",
      "Nothing at first; once the body has learned it, a little brings rash or asthma, for good."),
  CARCINOGEN("can cause cancer of the nose", "Slowly, over years; nothing is felt."),
  TOXIC("is poisonous", "What is breathed or swallowed acts on the whole body.");

  private final String words;
  private final String means;

  DustEffect(String words, String means) {
    this.words = words;
    this.means = means;
  }

  /** Behind "its dust": {@code can make you allergic}. */
  public String words() {
    return words;
  }

  /** What that is like, in a sentence. */
  public String means() {
    return means;
  }

  /** As content and conditions write it. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }
}

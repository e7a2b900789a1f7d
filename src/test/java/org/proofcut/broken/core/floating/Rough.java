package org.proofcut.broken.core.floating;

import java.math.BigDecimal;

final class Rough {

  private float ratio;

  long hidden(long length) {
    var root = Math.sqrt(length);
    return (long) (root * root);
  }

  boolean isSmall(BigDecimal number) {
    return number.doubleValue() < ratio;
  }
}

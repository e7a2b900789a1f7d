package org.proofcut.broken.core.earlier;

import org.proofcut.broken.core.later.Late;

public record Early(Late late) {}

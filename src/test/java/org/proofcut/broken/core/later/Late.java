package org.proofcut.broken.core.later;

import java.util.List;
import org.proofcut.broken.core.earlier.Early;

public record Late(List<Early> early) {}

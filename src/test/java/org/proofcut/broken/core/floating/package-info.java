/** Counts in floating point. */
@Room(step = 40, question = "What is wrong?", gives = "a fault to find")
package org.proofcut.broken.core.floating;

import org.proofcut.Room;

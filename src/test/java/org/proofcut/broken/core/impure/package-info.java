/** Reads files and the clock. */
@Room(step = 30, question = "What is wrong?", gives = "a fault to find")
package org.proofcut.broken.core.impure;

import org.proofcut.Room;

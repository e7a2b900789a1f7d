/** Hands out what it stores. */
@Room(step = 70, question = "What is wrong?", gives = "a fault to find")
package org.proofcut.broken.logbook;

import org.proofcut.Room;

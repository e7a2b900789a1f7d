/** Imports a later room that it does not list. */
@Room(step = 10, question = "What is wrong?", gives = "a fault to find")
package org.proofcut.broken.core.earlier;

import org.proofcut.Room;

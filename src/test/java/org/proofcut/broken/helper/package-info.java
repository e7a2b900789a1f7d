/** Named after no idea. */
@Room(step = 50, question = "What is wrong?", gives = "a fault to find")
package org.proofcut.broken.helper;

import org.proofcut.Room;

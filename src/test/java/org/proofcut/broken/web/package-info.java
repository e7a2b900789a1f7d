/** A page. */
@Room(step = 80, question = "What is wrong?", gives = "a fault to find")
package org.proofcut.broken.web;

import org.proofcut.Room;

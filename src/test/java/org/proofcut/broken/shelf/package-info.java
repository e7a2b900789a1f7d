/** Lists a room that is not there, knows a page and a database. */
@Room(step = 60, question = "What is wrong?", gives = "a fault to find", mayImport = "core.nowhere")
package org.proofcut.broken.shelf;

import org.proofcut.Room;

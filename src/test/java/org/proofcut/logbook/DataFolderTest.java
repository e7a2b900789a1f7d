package org.proofcut.logbook;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.runtime.PreventFurtherStepsException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DataFolderTest {

  @Test
  void make_missingFolder_makesItWithItsParents(@TempDir Path folder) {
    var missing = folder.resolve("a/b");
    new DataFolder(missing).make();
    assertTrue(Files.isDirectory(missing));
    new DataFolder(missing).make();
  }

  @Test
  void make_belowAFile_saysWhichFolderAndWhatToDo(@TempDir Path folder) throws Exception {
    var file = Files.writeString(folder.resolve("file"), "");
    var impossible = new DataFolder(file.resolve("below"));
    var e = assertThrows(PreventFurtherStepsException.class, impossible::make);
    assertTrue(e.getMessage().contains(file.resolve("below").toString()), e.getMessage());
    assertTrue(e.getMessage().contains("PROOFCUT_FOLDER"), e.getMessage());
  }
}

package org.proofcut.solver;

import com.google.ortools.Loader;
import org.jboss.logging.Logger;

/** The library that proves, which is native code of the system that the service was built on. */
final class Native {

  private static final Logger LOG = Logger.getLogger(Native.class);

  private Native() {}

  /** Whether it is there. Looked for once, at the first question; says so if it is not. */
  static boolean isThere() {
    return Once.THERE;
  }

  private static final class Once {

    static final boolean THERE = isLoaded(Loader::loadNativeLibraries);
  }

  /** Runs what loads a library; whatever is wrong with it, plans go on without proof. */
  static boolean isLoaded(Runnable load) {
    try {
      load.run();
      return true;
    } catch (LinkageError | RuntimeException missing) {
      LOG.warnf(
          "No OR-Tools for this system (%s on %s): plans of storage are found, and not proven to be"
              + " the best. Build the service on the system that it runs on. (%s)",
          System.getProperty("os.name"), System.getProperty("os.arch"), missing);
      return false;
    }
  }
}

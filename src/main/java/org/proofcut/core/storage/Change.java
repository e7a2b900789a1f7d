package org.proofcut.core.storage;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.proofcut.core.measure.Length;
import org.proofcut.core.storage.Fitting.DoorRail;
import org.proofcut.core.storage.Fitting.Rail;
import org.proofcut.core.storage.Fitting.Shelf;

/** A change of a task that may make room for what found none. */
public sealed interface Change {

  /** The task after it. */
  StorageTask in(StorageTask task);

  /** What to do, as a sentence without its stop. */
  String words();

  /** How much is changed: millimetres, or what counts as so many (our own choice). */
  long much();

  /** A thing that was pinned goes wherever is best. */
  record Unpin(String thing, String name) implements Change {
    @Override
    public StorageTask in(StorageTask task) {
      return task.unpinned(thing);
    }

    @Override
    public String words() {
      return "Take the pin out of " + name;
    }

    @Override
    public long much() {
      return 1;
    }
  }

  /** A shelf goes higher or lower. */
  record MoveShelf(Shelf shelf, Length to, String said) implements Change {
    @Override
    public StorageTask in(StorageTask task) {
      return task.in(task.cabinet().with(fittings -> moved(fittings)));
    }

    /** Hooks that hang from the back stay where they are. */
    private List<Fitting> moved(List<Fitting> fittings) {
      var there = new ArrayList<Fitting>(fittings);
      there.replaceAll(
          one ->
              one.equals(shelf)
                  ? new Shelf(
                      shelf.id(),
                      shelf.name(),
                      shelf.bay(),
                      to,
                      shelf.thickness(),
                      shelf.deep(),
                      shelf.mostGrams())
                  : one);
      return there;
    }

    @Override
    public String words() {
      return "Move "
          + said
          + ": its top goes from "
          + mm(shelf.top())
          + " to "
          + mm(to)
          + " above the bottom";
    }

    @Override
    public long much() {
      return millimetres(to.minus(shelf.top()).abs());
    }
  }

  /** A row of hooks comes in. */
  record AddRail(Rail rail, String said) implements Change {
    private static final int AS_MUCH_AS = 150;

    @Override
    public StorageTask in(StorageTask task) {
      return task.in(task.cabinet().with(fittings -> plus(fittings, rail)));
    }

    @Override
    public String words() {
      return "Add a row of hooks in " + said + ", " + mm(rail.at()) + " above the bottom";
    }

    @Override
    public long much() {
      return AS_MUCH_AS;
    }
  }

  /** A row of hooks comes on a door. */
  record AddDoorRail(DoorRail rail, String said) implements Change {
    private static final int AS_MUCH_AS = 200;

    @Override
    public StorageTask in(StorageTask task) {
      return task.in(task.cabinet().with(fittings -> plus(fittings, rail)));
    }

    @Override
    public String words() {
      return "Add a row of hooks on " + said + ", " + mm(rail.at()) + " above the bottom";
    }

    @Override
    public long much() {
      return AS_MUCH_AS;
    }
  }

  /** The last bay, and its door, become wider. */
  record Wider(Length by) implements Change {
    private static final int AT_LEAST_AS_MUCH_AS = 500;

    @Override
    public StorageTask in(StorageTask task) {
      return task.in(task.cabinet().widerBy(by));
    }

    @Override
    public String words() {
      return "Build it wider by " + mm(by) + ", all of it in the bay on the right";
    }

    @Override
    public long much() {
      return AT_LEAST_AS_MUCH_AS + millimetres(by);
    }
  }

  private static List<Fitting> plus(List<Fitting> fittings, Fitting one) {
    return Stream.concat(fittings.stream(), Stream.of(one)).toList();
  }

  private static long millimetres(Length length) {
    return length.inMillimetres().setScale(0, RoundingMode.CEILING).longValueExact();
  }

  private static String mm(Length length) {
    return length.inMillimetres().stripTrailingZeros().toPlainString() + " mm";
  }
}

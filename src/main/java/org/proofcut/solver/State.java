package org.proofcut.solver;

import org.proofcut.core.storage.Placing.Together;

/** Some items in their slots, with all counted that adding or taking out another one changes. */
final class State {

  private final Table table;
  private final int[] taken;
  private final long[] room;
  private final long[] mass;
  private final int[] ones;
  private final int[] others;
  private final int[][] inGroup;
  private final int[] places;
  private long cost;

  /** Nothing is anywhere. */
  State(Table table) {
    this.table = table;
    int slots = table.placing.slots().size();
    taken = table.nothing();
    room = new long[slots];
    mass = new long[slots];
    ones = new int[table.conflicts.size()];
    others = new int[table.conflicts.size()];
    inGroup = new int[table.placing.together().size()][slots];
    places = new int[inGroup.length];
    cost = table.placing.unplaced() * table.items();
  }

  long cost() {
    return cost;
  }

  /** Option that an item has taken, or none. */
  int taken(int item) {
    return taken[item];
  }

  int[] all() {
    return taken.clone();
  }

  /** Whether an option can be taken beside all that is there. */
  boolean takes(int option) {
    return hasRoom(option) && conflict(option) == Table.NONE;
  }

  boolean hasRoom(int option) {
    int s = table.slotOf[option];
    var slot = table.placing.slots().get(s);
    return room[s] + table.room[option] <= slot.room() && mass[s] + mass(option) <= slot.mass();
  }

  private long mass(int option) {
    return table.placing.items().get(table.itemOf[option]).mass();
  }

  /** A conflict that keeps an option out, or none. */
  int conflict(int option) {
    for (int conflict : table.asOne[option]) {
      if (others[conflict] > 0) {
        return conflict;
      }
    }
    for (int conflict : table.asOther[option]) {
      if (ones[conflict] > 0) {
        return conflict;
      }
    }
    return Table.NONE;
  }

  /** What taking an option adds to the cost, once its item is nowhere. */
  long more(int option) {
    int item = table.itemOf[option];
    int s = table.slotOf[option];
    var slot = table.placing.slots().get(s);
    return table.cost[option]
        - table.placing.unplaced()
        + slot.crowded(room[s] + table.room[option])
        - slot.crowded(room[s])
        + spread(item, s)
        + outOfOrder(item, table.column(option));
  }

  private long spread(int item, int slot) {
    long more = 0;
    for (int group : table.groupsOf[item]) {
      if (inGroup[group][slot] == 0 && places[group] > 0) {
        more += together(group).cost();
      }
    }
    return more;
  }

  private Together together(int group) {
    return table.placing.together().get(group);
  }

  private long outOfOrder(int item, int column) {
    long more = 0;
    for (var turn : table.turns.get(item)) {
      int other = turn.other() == item ? Table.NONE : taken[turn.other()];
      if (other != Table.NONE) {
        int beside = table.column(other);
        more += (turn.isBefore() ? column > beside : beside > column) ? turn.cost() : 0;
      }
    }
    return more;
  }

  /** Takes an option whose item is nowhere. */
  void add(int option) {
    cost += more(option);
    taken[table.itemOf[option]] = option;
    count(option, 1);
  }

  /** Takes an item out of its slot. */
  void drop(int item) {
    int option = taken[item];
    taken[item] = Table.NONE;
    count(option, -1);
    cost -= more(option);
  }

  private void count(int option, int by) {
    int slot = table.slotOf[option];
    room[slot] += by * table.room[option];
    mass[slot] += by * mass(option);
    for (int conflict : table.asOne[option]) {
      ones[conflict] += by;
    }
    for (int conflict : table.asOther[option]) {
      others[conflict] += by;
    }
    for (int group : table.groupsOf[table.itemOf[option]]) {
      boolean was = inGroup[group][slot] > 0;
      inGroup[group][slot] += by;
      boolean is = inGroup[group][slot] > 0;
      places[group] += was == is ? 0 : by;
    }
  }
}

package org.proofcut.solver;

/**
 * Finds prices that prove much. The {@link Master} mixes the fills that are known and tells what
 * they go by; what pays best at those prices is known from then on. A bound by whole fills is
 * stronger than one by linear forms of options, which fill slots up with parts of items.
 */
final class Pricing {

  /** Sixty things take about fifty. */
  private static final int MOST_ROUNDS = 300;

  /** So much of the best prices so far stays: new ones leap from side to side. */
  private static final double KEPT = 0.7;

  /** Costs are whole. */
  private static final double CLOSE = 0.5;

  private final Table table;
  private final int least;
  private final int most;
  private Priced best;

  private Pricing(Table table, int least, int most) {
    this.table = table;
    this.least = least;
    this.most = most;
    this.best = priced(Prices.ofCheapest(table));
  }

  /**
   * The best prices that are found.
   *
   * @param known cost of a placing; what is proven holds for all that cost less
   * @param out proven to be nowhere at least, of the items that have options
   */
  static Priced best(Table table, long known, int out) {
    var pricing = new Pricing(table, out, Math.max(out, most(table, known)));
    pricing.find();
    return pricing.best;
  }

  /** Items with options that are nowhere at most, if all cost less than is known. */
  private static int most(Table table, long known) {
    long items = table.items() - table.homeless();
    long unplaced = table.placing.unplaced();
    return (int)
        (unplaced == 0
            ? items
            : Math.max(0, Math.min(items, (known - 1) / unplaced - table.homeless())));
  }

  private Priced priced(Prices prices) {
    return Priced.of(table, prices, least, most);
  }

  private void find() {
    try (var master = new Master(table, least, most)) {
      var priced = best;
      double kept = KEPT;
      for (int round = 0; round < MOST_ROUNDS; round++) {
        boolean isNew = master.add(priced.fills());
        if (!master.solve() || (!isNew && kept == 0) || isClose(master)) {
          return;
        }
        kept = isNew ? KEPT : 0;
        priced = priced(best.prices().towards(master.prices(), 1 - kept));
        best = priced.parts() > best.parts() ? priced : best;
      }
    }
  }

  private boolean isClose(Master master) {
    return master.cost() + Priced.fixed(table) - (double) best.parts() / Prices.PARTS < CLOSE;
  }
}

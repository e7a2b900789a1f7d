package org.proofcut.bench;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jboss.logging.Logger;
import org.proofcut.core.checklist.Checklist;
import org.proofcut.core.checklist.OperationWording;
import org.proofcut.core.run.SheetProgress;
import org.proofcut.core.safety.GearNeed;
import org.proofcut.core.shop.GearOffer;
import org.proofcut.core.shop.OwnedGear;
import org.proofcut.core.shop.Shop;
import org.proofcut.core.shop.ToGet;
import org.proofcut.core.shop.ToGet.Wanted;
import org.proofcut.logbook.JobRecord;
import org.proofcut.logbook.Logbook;
import org.proofcut.logbook.UnreadableException;
import org.proofcut.rulebook.Rule;

/** Protective gear that the shop has, and gear that is to be got. */
@ApplicationScoped
public class GearDesk {

  private static final Logger LOG = Logger.getLogger(GearDesk.class);

  private final Logbook logbook;
  private final ShopFloor floor;
  private final WorkBench bench;
  private final House house;
  private final Clock clock;

  GearDesk(Logbook logbook, ShopFloor floor, WorkBench bench, House house, Clock clock) {
    this.logbook = logbook;
    this.floor = floor;
    this.bench = bench;
    this.house = house;
    this.clock = clock;
  }

  /** The day that gear is judged on. */
  public LocalDate today() {
    return LocalDate.now(clock);
  }

  /** Every piece in the shop. */
  public List<OwnedGear> owned() {
    return floor.shop().gear();
  }

  /**
   * What is missing, out of date or soon to be: for the sheets of jobs in work that are not signed
   * off, and for what the rules ask at every cut of a machine in the shop.
   */
  public List<ToGet> toGet() {
    var shop = floor.shop();
    var wanted = new ArrayList<Wanted>();
    for (var job : logbook.jobs()) {
      wanted.addAll(forSheets(job, shop));
    }
    wanted.addAll(forMachines(shop));
    return ToGet.of(wanted, today());
  }

  private List<Wanted> forSheets(JobRecord job, Shop shop) {
    try {
      return bench.progress(job.id()).stream()
          .flatMap(progress -> progress.sheets().stream())
          .filter(progress -> !progress.isDone())
          .flatMap(progress -> forSheet(job, progress, shop))
          .toList();
    } catch (UnreadableException unreadable) {
      // One plan that can't be read must not hide what the others ask for.
      LOG.warn(unreadable.getMessage());
      return List.of();
    }
  }

  private Stream<Wanted> forSheet(JobRecord job, SheetProgress progress, Shop shop) {
    var sheet = progress.sheet();
    var what =
        job.typed().getOrDefault("name", "")
            + ", sheet "
            + sheet.number()
            + ": "
            + sheet.operation().title();
    return Checklist.wanted(sheet.findings(), shop, house.content().wording()).stream()
        .map(offer -> new Wanted(what, offer));
  }

  /** Rules that ask for gear at every cut of a machine, whatever its sizes. */
  private List<Wanted> forMachines(Shop shop) {
    var wanted = new ArrayList<Wanted>();
    for (var rule : house.content().rulebook().rules()) {
      if (rule.when().isPresent() || !holdsIn(rule, shop)) {
        continue;
      }
      for (var need : rule.gear()) {
        if (need.state() == GearNeed.State.REQUIRED) {
          var offer = offer(need, shop);
          forWhat(rule, shop).map(what -> new Wanted(what, offer)).forEach(wanted::add);
        }
      }
    }
    return wanted;
  }

  private static boolean holdsIn(Rule rule, Shop shop) {
    return rule.regions().isEmpty() || rule.regions().contains(shop.region());
  }

  private GearOffer offer(GearNeed need, Shop shop) {
    return GearOffer.of(
        house.content().wording().gear().get(need.kind()),
        need.least().stream().toList(),
        shop.gear(),
        shop.beard());
  }

  /** The machines in the shop that a rule is for; the work, where it names no machine. */
  private Stream<String> forWhat(Rule rule, Shop shop) {
    Map<String, OperationWording> words = house.content().wording().operations();
    return rule.machines().isEmpty()
        ? rule.operations().stream().map(words::get).map(OperationWording::title)
        : shop.machines().stream()
            .filter(machine -> rule.machines().contains(machine.kind()))
            .map(machine -> "any cut at: " + machine.name());
  }
}

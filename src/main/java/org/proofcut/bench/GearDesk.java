package org.proofcut.bench;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jboss.logging.Logger;
import org.proofcut.core.checklist.OperationWording;
import org.proofcut.core.run.Progress;
import org.proofcut.core.safety.GearNeed;
import org.proofcut.core.shop.GearOffer;
import org.proofcut.core.shop.Machine;
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

  /**
   * What is missing, out of date or soon to be: for the sheets of jobs in work that are not signed
   * off, and for what the rules ask at every cut of a machine in the shop.
   */
  public List<ToGet> toGet() {
    var shop = floor.shop();
    var wanted = new ArrayList<Wanted>();
    for (var job : logbook.jobs()) {
      wanted.addAll(forSheets(job));
    }
    wanted.addAll(forMachines(shop));
    return ToGet.of(wanted, today());
  }

  private List<Wanted> forSheets(JobRecord job) {
    var sheets = new LinkedHashMap<GearOffer, List<Integer>>();
    try {
      for (var progress : bench.progress(job.id()).map(Progress::sheets).orElse(List.of())) {
        if (!progress.isDone()) {
          progress
              .sheet()
              .checklist()
              .wanted()
              .forEach(
                  offer ->
                      sheets
                          .computeIfAbsent(offer, any -> new ArrayList<>())
                          .add(progress.sheet().number()));
        }
      }
    } catch (UnreadableException unreadable) {
      // One plan that can't be read must not hide what the others ask for.
      LOG.warn(unreadable.getMessage());
    }
    var name = job.typed().getOrDefault("name", "");
    return sheets.entrySet().stream()
        .map(each -> new Wanted(name + ", " + sheets(each.getValue()), each.getKey()))
        .toList();
  }

  /** {@code sheet 3}, or {@code sheets 1 to 4, 7}. */
  static String sheets(List<Integer> numbers) {
    var runs = new ArrayList<String>();
    for (int from = 0, to; from < numbers.size(); from = to + 1) {
      to = from;
      while (to + 1 < numbers.size() && numbers.get(to + 1) == numbers.get(to) + 1) {
        to++;
      }
      runs.add(numbers.get(from) + (to == from ? "" : " to " + numbers.get(to)));
    }
    return (numbers.size() == 1 ? "sheet " : "sheets ") + String.join(", ", runs);
  }

  /** Rules that ask for gear at every cut of a machine, whatever its sizes. */
  private List<Wanted> forMachines(Shop shop) {
    var machines = new LinkedHashMap<GearOffer, Set<String>>();
    for (var rule : house.content().rulebook().rules()) {
      if (rule.when().isPresent() || !holdsIn(rule, shop)) {
        continue;
      }
      for (var need : rule.gear()) {
        var names = forWhat(rule, shop);
        if (need.state() == GearNeed.State.REQUIRED && !names.isEmpty()) {
          machines.computeIfAbsent(offer(need, shop), any -> new LinkedHashSet<>()).addAll(names);
        }
      }
    }
    return machines.entrySet().stream()
        .map(each -> new Wanted("Any job: " + String.join(", ", each.getValue()), each.getKey()))
        .toList();
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
  private List<String> forWhat(Rule rule, Shop shop) {
    Map<String, OperationWording> words = house.content().wording().operations();
    return rule.machines().isEmpty()
        ? rule.operations().stream().map(words::get).map(OperationWording::title).toList()
        : shop.machines().stream()
            .filter(machine -> rule.machines().contains(machine.kind()))
            .map(Machine::name)
            .toList();
  }
}

package org.proofcut.core.checklist;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.safety.Check;
import org.proofcut.core.safety.Check.Pause;
import org.proofcut.core.safety.Finding;
import org.proofcut.core.safety.GearNeed;
import org.proofcut.core.setup.Setting;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.shop.GearKind;
import org.proofcut.core.shop.GearOffer;
import org.proofcut.core.shop.Shop;

/**
 * The items of one operation, in the order they are asked.
 *
 * @param items what is asked, at most {@link #MOST} at a pause
 * @param unasked looks of less grave rules for which there was no room: they can be read
 */
public record Checklist(List<Item> items, Optional<List<Item.Look>> unasked) {

  /**
   * As many as a person takes in at one pause, less one, so that the gravest caution stands beside
   * them: nine things in all. Lists that surgeons and pilots use hold as few.
   */
  public static final int MOST = 8;

  public Checklist {
    items = List.copyOf(items);
    unasked = unasked.map(List::copyOf);
  }

  /** The checklist with its items as they are judged later; none is added or left out. */
  public Checklist with(UnaryOperator<Item> judged) {
    return new Checklist(items.stream().map(judged).toList(), unasked);
  }

  /** What can be read at a pause and is not asked. */
  public List<Item.Look> unaskedAt(Pause pause) {
    return unasked.orElse(List.of()).stream().filter(look -> look.pause() == pause).toList();
  }

  /** The items of one pause. */
  public List<Item> at(Pause pause) {
    return items.stream().filter(item -> item.pause() == pause).toList();
  }

  /** The item with this id, if the operation has it. */
  public Optional<Item> item(String id) {
    return items.stream().filter(item -> item.id().equals(id)).findFirst();
  }

  /**
   * The checklist of an operation: at the set pause what was already there to look at, then the
   * figures; then the machine itself; before power the gear in the order it is put on, then the
   * checks; safe leaving last.
   */
  public static Checklist of(
      Operation operation, List<Finding> findings, Shop shop, Wording wording) {
    var asked = new ArrayList<Item>();
    var unasked = new ArrayList<Item.Look>();
    var looks = looks(operation, findings, shop, wording);
    for (var pause : Pause.values()) {
      // What is set and what is worn is always asked; looks, gravest first, as there is room.
      var figures = pause == Pause.SET ? figures(operation) : List.<Item>of();
      var gear = pause == Pause.BEFORE_POWER ? gear(findings, shop, wording) : List.<Item>of();
      var own = looks.stream().filter(look -> look.pause() == pause).toList();
      int room = Math.min(own.size(), Math.max(0, MOST - figures.size() - gear.size()));
      asked.addAll(gear);
      asked.addAll(own.subList(0, room));
      asked.addAll(figures);
      unasked.addAll(own.subList(room, own.size()));
    }
    return new Checklist(asked, unasked.isEmpty() ? Optional.empty() : Optional.of(unasked));
  }

  private static List<Item> figures(Operation operation) {
    return operation.setup().stream()
        .flatMap(
            setup ->
                Stream.concat(
                    setup.settings().stream().map(Setting::role).<Item>map(Item.Figure::new),
                    angles(setup).stream()))
        .toList();
  }

  private static List<Item> angles(Setup setup) {
    return setup.anglesSet().stream()
        .<Item>map(
            angle ->
                new Item.Look(
                    "angle:" + angle.role().words().toLowerCase(Locale.ROOT),
                    Pause.SET,
                    "What does the "
                        + angle.role().words().toLowerCase(Locale.ROOT)
                        + " scale read?",
                    angle
                        .toward()
                        .map(side -> angle.shown() + " to the " + side.words())
                        .orElse(angle.shown())))
        .toList();
  }

  private static List<Item.Look> looks(
      Operation operation, List<Finding> findings, Shop shop, Wording wording) {
    // The same look asked for by two rules is asked once.
    var byAsk = new LinkedHashMap<String, Item.Look>();
    var kind = operation.kind().id();
    int number = 1;
    for (var check : wording.operations().get(kind).checks()) {
      put(byAsk, look("look:" + kind + ":" + number++, check, shop, wording));
    }
    for (var finding : findings) {
      number = 1;
      for (var check : finding.checks()) {
        put(byAsk, look("look:" + finding.rule() + ":" + number++, check, shop, wording));
      }
    }
    return List.copyOf(byAsk.values());
  }

  private static void put(LinkedHashMap<String, Item.Look> byAsk, Item.Look look) {
    byAsk.putIfAbsent(look.pause() + look.ask(), look);
  }

  private static Item.Look look(String id, Check check, Shop shop, Wording wording) {
    return new Item.Look(
        id,
        check.pause(),
        check.ask(),
        check.answer(),
        check
            .aids()
            .map(
                aids ->
                    aids.stream()
                        .map(aid -> GearOffer.of(wording.aids().get(aid), shop))
                        .toList()));
  }

  /** Forbidden gear comes off even where another rule wants it on: at a cutter it maims. */
  private static List<Item> gear(List<Finding> findings, Shop shop, Wording wording) {
    return wording.gear().values().stream()
        .sorted(Comparator.comparingInt(GearKind::order))
        .flatMap(kind -> gear(kind, findings, shop).stream())
        .toList();
  }

  private static Optional<Item> gear(GearKind kind, List<Finding> findings, Shop shop) {
    var off = says(findings, kind, GearNeed.State.FORBIDDEN);
    var on = says(findings, kind, GearNeed.State.REQUIRED);
    if (!off.isEmpty()) {
      return Optional.of(toTakeOff(kind, off, on));
    }
    return on.isEmpty() ? Optional.empty() : Optional.of(toPutOn(kind, on, shop));
  }

  /** All gear that is to be put on, held against what the shop owns. */
  public List<GearOffer> wanted() {
    return items.stream()
        .filter(Item.Gear.class::isInstance)
        .map(Item.Gear.class::cast)
        .flatMap(gear -> gear.offer().stream())
        .toList();
  }

  /** What one finding says of one kind of gear. */
  private record Said(Finding finding, GearNeed need) {

    String why() {
      return need.why().orElse(finding.hazard());
    }
  }

  private static List<Said> says(List<Finding> findings, GearKind kind, GearNeed.State state) {
    return findings.stream()
        .flatMap(finding -> finding.gear().stream().map(need -> new Said(finding, need)))
        .filter(said -> said.need.kind().equals(kind.id()) && said.need.state() == state)
        .toList();
  }

  private static Item toPutOn(GearKind kind, List<Said> wanted, Shop shop) {
    var leasts = wanted.stream().flatMap(said -> said.need.least().stream()).toList();
    var offer = GearOffer.of(kind, leasts, shop.gear(), shop.beard());
    return Item.Gear.toPutOn(
        kind,
        offer,
        wanted.stream().flatMap(said -> said.finding().gearLaw().stream()).findFirst());
  }

  private static Item toTakeOff(GearKind kind, List<Said> forbidden, List<Said> wanted) {
    var why =
        wanted.stream()
            .findFirst()
            .map(
                on ->
                    "Wanted: "
                        + withoutStop(on.why())
                        + ". Forbidden, and that wins: "
                        + withoutStop(forbidden.get(0).why())
                        + ".");
    return new Item.Gear(
        kind.id(),
        false,
        kind.name(),
        "",
        true,
        kind.off().ask(),
        kind.off().answer(),
        Optional.empty(),
        Optional.empty(),
        why);
  }

  private static String withoutStop(String words) {
    return words.endsWith(".") ? words.substring(0, words.length() - 1) : words;
  }
}

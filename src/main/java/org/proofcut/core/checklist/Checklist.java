package org.proofcut.core.checklist;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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
 * @param items at most nine at a pause: a test over the demo jobs holds the content to it
 */
public record Checklist(List<Item> items) {

  public Checklist {
    items = List.copyOf(items);
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
   * figures; before power the gear in the order it is put on, then the checks; safe leaving last.
   */
  public static Checklist of(
      Operation operation, List<Finding> findings, Shop shop, Wording wording) {
    var items = new ArrayList<Item>();
    var looks = looks(operation, findings, wording);
    items.addAll(at(looks, Pause.SET));
    operation
        .setup()
        .ifPresent(
            setup ->
                setup.settings().stream()
                    .map(Setting::role)
                    .map(Item.Figure::new)
                    .forEach(items::add));
    operation.setup().ifPresent(setup -> items.addAll(angles(setup)));
    items.addAll(gear(findings, shop, wording));
    items.addAll(at(looks, Pause.BEFORE_POWER));
    items.addAll(at(looks, Pause.PROOF));
    items.addAll(at(looks, Pause.LEAVE_SAFE));
    return new Checklist(items);
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

  private static List<Item> looks(Operation operation, List<Finding> findings, Wording wording) {
    // The same look asked for by two rules is asked once.
    var byAsk = new LinkedHashMap<String, Item>();
    var kind = operation.kind().id();
    int number = 1;
    for (var check : wording.operations().get(kind).checks()) {
      put(byAsk, check, "look:" + kind + ":" + number++);
    }
    for (var finding : findings) {
      number = 1;
      for (var check : finding.checks()) {
        put(byAsk, check, "look:" + finding.rule() + ":" + number++);
      }
    }
    return List.copyOf(byAsk.values());
  }

  private static void put(LinkedHashMap<String, Item> byAsk, Check check, String id) {
    byAsk.putIfAbsent(
        check.pause() + check.ask(), new Item.Look(id, check.pause(), check.ask(), check.answer()));
  }

  private static List<Item> at(List<Item> items, Pause pause) {
    return items.stream().filter(item -> item.pause() == pause).toList();
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

  /** All gear that findings ask for and none of them forbids, held against what the shop owns. */
  public static List<GearOffer> wanted(List<Finding> findings, Shop shop, Wording wording) {
    return gear(findings, shop, wording).stream()
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
    var fit = offer.pieces().stream().filter(piece -> piece.unfit().isEmpty()).findFirst();
    return new Item.Gear(
        kind.id(),
        true,
        fit.map(GearOffer.Piece::name).orElse(kind.name()),
        fit.map(GearOffer.Piece::place).orElse(""),
        fit.isPresent(),
        kind.on().ask(),
        kind.on().answer(),
        Optional.of(offer),
        wanted.stream()
            .map(Said::finding)
            .filter(Finding::restsOnLaw)
            .map(Finding::because)
            .findFirst(),
        Optional.empty());
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

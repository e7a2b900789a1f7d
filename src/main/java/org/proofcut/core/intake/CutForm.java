package org.proofcut.core.intake;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.operation.SingleCut;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.core.shop.Cutter;
import org.proofcut.core.shop.Machine;
import org.proofcut.core.shop.Shop;

/**
 * The form of one kind of cut, for when there is no job at all. A new kind of cut is one more of
 * these in {@link CutForms}.
 *
 * @param kind as it stands in addresses, such as {@code dado}
 * @param title what the page calls it
 * @param says in a line what it makes
 * @param groups the fields, in the order they are asked
 * @param machines kinds of machine that it is made on
 * @param cutters kinds of cutter that make it; empty where they are part of the machine
 * @param proof what is measured on its proof cut, each with how many readings; empty where nothing
 *     is cut to a size
 * @param maker reads the fields into the cut
 */
public record CutForm(
    String kind,
    String title,
    String says,
    List<Group> groups,
    List<Class<? extends Machine>> machines,
    List<Class<? extends Cutter>> cutters,
    Map<Dimension, Integer> proof,
    Function<FormReader, Read<SingleCut>> maker) {

  /** Which machine it is for, by its id; or {@link #ANY}. */
  public static final String MACHINE = "machine";

  /** Which cutter it is for, by its id; or {@link #ANY}. */
  public static final String CUTTER = "cutter";

  /** The first machine, or cutter, that serves. */
  public static final String ANY = "any";

  private static final Band READINGS = new Band(Length.ZERO, Length.ofMillimetres(4000));

  /** What the fields of the proof cut begin with. */
  public static final String FOUND = "found-";

  /** Fields under one heading. */
  public record Group(String title, List<Field> fields) {}

  /**
   * What was asked for.
   *
   * @param shop the shop, with only the machine and the cutter that were chosen
   * @param unit that figures are shown in
   * @param found what the caliper says of the proof cut, as far as it was entered
   */
  public record Wanted(
      SingleCut cut, Shop shop, LengthUnit unit, Map<Dimension, List<Length>> found) {}

  public CutForm {
    groups = List.copyOf(groups);
    machines = List.copyOf(machines);
    cutters = List.copyOf(cutters);
    var measured = new EnumMap<Dimension, Integer>(Dimension.class);
    measured.putAll(proof);
    proof = Collections.unmodifiableMap(measured);
  }

  /** The groups of fields in this shop: those of the cut, and what to make it with. */
  public List<Group> groups(Shop shop) {
    var all = new ArrayList<>(groups);
    var with = cutters.isEmpty() ? List.of(machine(shop)) : List.of(machine(shop), cutter(shop));
    all.add(new Group("Made with", Stream.concat(with.stream(), Stream.of(JobForm.UNIT)).toList()));
    if (!proof.isEmpty()) {
      all.add(new Group("The proof cut, by caliper", readings()));
    }
    return all;
  }

  /** All fields in this shop. */
  public List<Field> fields(Shop shop) {
    return groups(shop).stream().flatMap(group -> group.fields().stream()).toList();
  }

  /** What was typed, with the usual where nothing was: any machine, any cutter, this unit. */
  public static Map<String, String> filledIn(Map<String, String> typed, LengthUnit unit) {
    var filledIn = JobForm.withUnit(typed, unit);
    filledIn.putIfAbsent(MACHINE, ANY);
    filledIn.putIfAbsent(CUTTER, ANY);
    return filledIn;
  }

  /** What was typed, as the cut that it asks for, or what is wrong with it. */
  public Read<Wanted> read(Map<String, String> typed, Shop shop) {
    var unit = JobForm.unit(typed);
    var reader = new FormReader(typed, unit);
    reader.choice(JobForm.UNIT);
    var machine = reader.choice(machine(shop));
    var cutter = cutters.isEmpty() ? ANY : reader.choice(cutter(shop));
    var found = found(reader);
    var read = maker.apply(reader);
    return new Read<>(
        read.value()
            .map(cut -> new Wanted(cut, shop.with(chosen(machine), chosen(cutter)), unit, found)),
        read.problems());
  }

  /** The fields of the proof cut, each of which may stay empty. */
  private List<Field> readings() {
    return proof.keySet().stream().flatMap(this::readings).toList();
  }

  private Stream<Field> readings(Dimension dimension) {
    var name = dimension.name().toLowerCase(Locale.ROOT);
    return IntStream.rangeClosed(1, proof.get(dimension))
        .mapToObj(
            i ->
                Field.length(FOUND + name + "-" + i, dimension.words() + ", reading " + i, "")
                    .mayStayEmpty());
  }

  private Map<Dimension, List<Length>> found(FormReader reader) {
    var found = new EnumMap<Dimension, List<Length>>(Dimension.class);
    for (var dimension : proof.keySet()) {
      found.put(
          dimension,
          readings(dimension)
              .flatMap(field -> reader.optionalLength(field, READINGS).stream())
              .toList());
    }
    return found;
  }

  private static Optional<String> chosen(String id) {
    return Optional.of(id).filter(one -> !one.equals(ANY));
  }

  private Field machine(Shop shop) {
    return any(
        MACHINE,
        "Machine",
        shop.machines().stream()
            .filter(one -> machines.stream().anyMatch(kind -> kind.isInstance(one)))
            .map(one -> new Field.Choice(one.id(), one.name())));
  }

  private Field cutter(Shop shop) {
    return any(
        CUTTER,
        "Cutter",
        shop.cutters().stream()
            .filter(one -> cutters.stream().anyMatch(kind -> kind.isInstance(one)))
            .map(one -> new Field.Choice(one.id(), one.name())));
  }

  private static Field any(String name, String label, Stream<Field.Choice> choices) {
    return Field.choice(
        name,
        label,
        Stream.concat(Stream.of(new Field.Choice(ANY, "any that serves")), choices).toList());
  }
}

package org.proofcut.content;

import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.proofcut.content.yaml.Binder;
import org.proofcut.content.yaml.Faults;
import org.proofcut.content.yaml.Located;
import org.proofcut.content.yaml.Spot;
import org.proofcut.content.yaml.YamlFile;
import org.proofcut.rulebook.Limit;

/** Reads the limits of rooms, and holds a shop's own to what can be worked with. */
final class LimitReader {

  /** How many times ours a figure of the shop's own may be, or how small a part of it. */
  private static final int FARTHEST = 10;

  private final Binder binder;
  private final Faults faults;

  LimitReader(Binder binder, Faults faults) {
    this.binder = binder;
    this.faults = faults;
  }

  /**
   * The records of these folders that can be made.
   *
   * @param under the files of a folder
   */
  Map<Class<?>, Record> records(List<LimitFolder> folders, Function<String, List<YamlFile>> under) {
    var records = new HashMap<Class<?>, Record>();
    for (var folder : folders) {
      binder
          .spread(folder.path(), under.apply(folder.path() + "/"), folder.type())
          .ifPresent(record -> records.put(folder.type(), record));
    }
    return records;
  }

  /**
   * A set-up that is reckoned with a figure a hundred times too small would have a hundred times
   * the passes: a shop may go from a tenth of ours to ten times it.
   *
   * @param files among which they stand
   */
  void refuseFarOff(
      List<LimitFolder> folders,
      Map<Class<?>, Record> records,
      Content ours,
      Collection<YamlFile> files) {
    for (var folder : folders) {
      if (records.containsKey(folder.type())) {
        var before = LimitFolder.figures(ours.limits(folder.type()));
        LimitFolder.figures(records.get(folder.type()))
            .forEach((id, figure) -> refuseFarOff(folder, id, figure, before.get(id), files));
      }
    }
  }

  private void refuseFarOff(
      LimitFolder folder,
      String id,
      LimitFolder.Figure figure,
      LimitFolder.Figure before,
      Collection<YamlFile> files) {
    if (figure.limit().source().own().isPresent() && !figure.isNear(before, FARTHEST)) {
      faults.add(
          valueOf(folder, id.replace('_', '-'), files),
          "\"%s\" is too far from ours to be set up by".formatted(figure.limit().name()),
          "from a tenth of ours to ten times it; ours is " + before.limit().value(),
          "Write a value nearer to ours.");
    }
  }

  private static Spot valueOf(LimitFolder folder, String id, Collection<YamlFile> files) {
    return files.stream()
        .filter(file -> file.path().startsWith(folder.path() + "/"))
        .flatMap(file -> file.spot(id, "value").stream())
        .findFirst()
        .orElse(Spot.of(folder.path()));
  }

  /** All that a condition can compare with, by the names that it uses. */
  Map<String, Limit> all(Map<String, Located<Limit>> ofRules, Collection<Record> ofRooms) {
    var all = new LinkedHashMap<String, Limit>();
    ofRules.forEach((id, limit) -> all.put(id, limit.value()));
    for (var record : ofRooms) {
      LimitFolder.single(record)
          .forEach(
              (id, limit) -> {
                if (all.putIfAbsent(id, limit) != null) {
                  refuseSecond(id, record, ofRules);
                }
              });
    }
    return all;
  }

  private void refuseSecond(String id, Record record, Map<String, Located<Limit>> ofRules) {
    faults.add(
        ofRules.containsKey(id) ? ofRules.get(id).spot() : Spot.of("safety/limits"),
        "\"%s\" is already a limit of %s".formatted(id, record.getClass().getSimpleName()),
        "each limit once",
        "Take it out; conditions can use the other one.");
  }
}

package org.proofcut.core.intake;

import static org.proofcut.core.intake.CutFields.DEPTHS;
import static org.proofcut.core.intake.CutFields.SIZES;
import static org.proofcut.core.intake.CutFields.at;
import static org.proofcut.core.intake.CutFields.piece;
import static org.proofcut.core.intake.CutFields.stock;
import static org.proofcut.core.intake.CutFields.work;
import static org.proofcut.core.intake.Field.choice;
import static org.proofcut.core.intake.Field.length;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.fit.FitLimits;
import org.proofcut.core.fit.SlotFit;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.operation.OperationKind;
import org.proofcut.core.operation.SingleCut;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.CutAsked.EdgeKind;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.core.setup.Work;
import org.proofcut.core.shop.BearingCutter;
import org.proofcut.core.shop.BearingCutter.Profile;
import org.proofcut.core.shop.Cutter;
import org.proofcut.core.shop.HandRouter;
import org.proofcut.core.shop.Machine;
import org.proofcut.core.shop.RouterTable;
import org.proofcut.core.shop.SawBlade;
import org.proofcut.core.shop.StraightCutter;
import org.proofcut.core.shop.TableSaw;

/** Cuts along an edge: a groove in its middle, a profile, what stands out over it. */
final class EdgeForms {

  private static final List<Class<? extends Machine>> ROUTERS =
      List.of(RouterTable.class, HandRouter.class);

  private static final List<Class<? extends Cutter>> WITH_BEARING = List.of(BearingCutter.class);

  private static final Band OVERHANGS = CutFields.band("0.1 mm", "50 mm");

  private static final Field DEPTH = length("depth", "Depth", "into the edge");

  private static final Field EDGE_LENGTH =
      length("along", "Length of the edge", "that stands on the table");

  private static final Field STANDING =
      length("standing", "Height on edge", "how high the piece stands on that edge");

  private static final Field PROFILE =
      choice(
          "profile",
          "Profile",
          Arrays.stream(Profile.values())
              .filter(one -> one != Profile.FLUSH_TRIM)
              .map(one -> new Field.Choice(one.id(), one.words()))
              .toList());

  private static final Field REACH =
      length("width", "Over the face", "from the edge to where the profile ends");

  private static final Field DOWN =
      length("height", "Down the edge", "from the face to where the profile ends");

  private static final Field EDGE =
      choice(
          "edge",
          "Which edge",
          Arrays.stream(EdgeKind.values())
              .map(one -> new Field.Choice(id(one), one.words()))
              .toList());

  private static final Field OVERHANG =
      length("overhang", "Stands out", "how far, at most, beyond the edge below it");

  private static final Field LAYER =
      length("layer", "Thickness of what stands out", "the router's base rides on it");

  private static final Field OUTER_LENGTH =
      length("along", "Length", "of the piece, along its longest edge");

  private static final Field OUTER_WIDTH = length("across", "Width", "of the piece");

  private static final Field NOW =
      length("now", "Size now", "from the edge to be trimmed to the one opposite, by caliper");

  private static final Field WANTED = length("size", "Size wanted", "between the same edges");

  /** A saw takes off more than that in one cut. */
  private static final Length MOST_TO_TRIM = Length.ofMillimetres(10);

  private EdgeForms() {}

  static List<CutForm> all(FitLimits fit) {
    return List.of(centredGroove(fit), edgeProfile(), flushTrim(), edgeTrim());
  }

  private static CutForm centredGroove(FitLimits fit) {
    return new CutForm(
        "centred-groove",
        "Groove in the middle of an edge",
        "Cut with one face against the fence and then the other, so that it lies in the middle.",
        List.of(
            HousingForms.ENTERING,
            new CutForm.Group("The groove", List.of(DEPTH)),
            piece(EDGE_LENGTH, STANDING)),
        List.of(RouterTable.class, TableSaw.class),
        List.of(StraightCutter.class, SawBlade.class),
        Map.of(Dimension.WIDTH, 3, Dimension.DISTANCE, 4, Dimension.DEPTH, 3),
        form -> {
          var entering = HousingForms.entering(form);
          var depth = Worked.entered("depth of the groove", form.length(DEPTH, DEPTHS));
          var stock = stock(form);
          var along = form.length(EDGE_LENGTH, SIZES);
          var standing = form.length(STANDING, SIZES);
          var slot = SlotFit.of(entering, fit);
          HousingForms.evenEnough(form, entering, SlotFit.mostSpread(fit));
          if (form.isSound(DEPTH, STANDING) && depth.value().isAtLeast(standing)) {
            form.problem(DEPTH, "That goes through the piece", "less than " + form.shown(standing));
          }
          var thickness = stock.thickness().ends();
          return form.result(
              () ->
                  new SingleCut(
                      OperationKind.CENTRED_GROOVE,
                      "Groove in the middle of an edge",
                      new CutAsked.CentredGroove(
                          slot.target(),
                          slot.accepted().orElseThrow(),
                          depth,
                          at(standing),
                          new Work(at(along), thickness, thickness)),
                      stock,
                      Optional.of(HousingForms.goesIn(stock, entering))));
        });
  }

  private static CutForm edgeProfile() {
    return new CutForm(
        "edge-profile",
        "Profile on an edge",
        "A rounded, hollow, slanted or stepped edge, by a cutter with a bearing.",
        List.of(
            new CutForm.Group("The profile", List.of(PROFILE, REACH, DOWN, EDGE)),
            piece(OUTER_LENGTH, OUTER_WIDTH)),
        ROUTERS,
        WITH_BEARING,
        Map.of(Dimension.WIDTH, 3, Dimension.DEPTH, 3),
        form -> {
          var profile = RouterForms.profile(form.choice(PROFILE));
          var width = Worked.entered("width of the profile", form.length(REACH, DEPTHS));
          var height = Worked.entered("height of the profile", form.length(DOWN, DEPTHS));
          var edge = edge(form.choice(EDGE));
          var stock = stock(form);
          var work = work(form, stock);
          var thinnest = stock.thickness().ends().least();
          if (form.isSound(DOWN, CutFields.THINNEST) && height.value().isAtLeast(thinnest)) {
            form.problem(DOWN, "That goes through the piece", "less than " + form.shown(thinnest));
          }
          return form.result(
              () ->
                  new SingleCut(
                      OperationKind.EDGE_PROFILE,
                      "Profile on an edge",
                      new CutAsked.EdgeProfile(profile, width, height, edge, work),
                      stock,
                      Optional.empty()));
        });
  }

  private static CutForm flushTrim() {
    return new CutForm(
        "flush-trim",
        "Trim flush",
        "What stands out over an edge is taken off level with it.",
        List.of(
            new CutForm.Group("What stands out", List.of(OVERHANG, LAYER, EDGE)),
            piece(OUTER_LENGTH, OUTER_WIDTH)),
        List.of(HandRouter.class),
        WITH_BEARING,
        Map.of(),
        form -> {
          var overhang = Worked.entered("what stands out", form.length(OVERHANG, OVERHANGS));
          var layer = Worked.entered("thickness of the layer", form.length(LAYER, DEPTHS));
          var edge = edge(form.choice(EDGE));
          var stock = stock(form);
          var work = work(form, stock);
          var under = Worked.measured("the edge below the layer", stock.thickness().ends().least());
          return form.result(
              () ->
                  new SingleCut(
                      OperationKind.FLUSH_TRIM,
                      "Trim flush",
                      new CutAsked.FlushTrim(overhang, layer, under, edge, work),
                      stock,
                      Optional.empty()));
        });
  }

  private static CutForm edgeTrim() {
    return new CutForm(
        "edge-trim",
        "Trim an edge straight",
        "An edge made straight on the router table, so that the piece comes to its size.",
        List.of(new CutForm.Group("The size", List.of(NOW, WANTED)), piece(OUTER_LENGTH)),
        List.of(RouterTable.class),
        CutFields.STRAIGHT,
        Map.of(Dimension.WIDTH, 3),
        form -> {
          var now = Worked.measured("size now", form.length(NOW, SIZES));
          var size = Worked.entered("size wanted", form.length(WANTED, SIZES));
          var stock = stock(form);
          var along = form.length(OUTER_LENGTH, SIZES);
          var work = new Work(at(along), at(now.value()), stock.thickness().ends());
          boolean sizes = form.isSound(NOW, WANTED);
          if (sizes && size.value().isAtLeast(now.value())) {
            form.problem(WANTED, "Nothing would come off", "less than " + form.shown(now.value()));
          } else if (sizes && now.value().minus(size.value()).isGreaterThan(MOST_TO_TRIM)) {
            form.problem(
                WANTED,
                "That is too much to trim: rip it nearer to size first",
                form.shown(now.value().minus(MOST_TO_TRIM)) + " or more");
          }
          return form.result(
              () ->
                  new SingleCut(
                      OperationKind.EDGE_TRIM,
                      "Trim an edge straight",
                      new CutAsked.EdgeTrim(now, size, work),
                      stock,
                      Optional.empty()));
        });
  }

  private static String id(EdgeKind edge) {
    return edge.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static EdgeKind edge(String id) {
    return Arrays.stream(EdgeKind.values())
        .filter(one -> id(one).equals(id))
        .findFirst()
        .orElse(EdgeKind.OUTSIDE_STRAIGHT);
  }
}

package org.proofcut.core.operation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.casework.CasesForTests.CASE;
import static org.proofcut.core.casework.CasesForTests.FIT;
import static org.proofcut.core.casework.CasesForTests.cupboard;
import static org.proofcut.core.casework.CasesForTests.mm;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.proofcut.core.casework.CaseDesign;
import org.proofcut.core.casework.CaseDesign.Joinery;
import org.proofcut.core.casework.CaseDesign.Outside;
import org.proofcut.core.casework.CasesForTests;
import org.proofcut.core.casework.Casework;
import org.proofcut.core.casework.ProvenDepths;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.method.Methods;
import org.proofcut.core.part.Edge;
import org.proofcut.core.setup.Conditions;
import org.proofcut.core.setup.CutAsked.Parting;
import org.proofcut.core.setup.CutAsked.Rabbet;
import org.proofcut.core.setup.CutAsked.Slot;
import org.proofcut.core.setup.Guide;
import org.proofcut.core.setup.ShopsForTests;
import org.proofcut.core.shop.Shop;
import org.proofcut.core.shop.StackedCutter;
import org.proofcut.core.shop.StackedCutter.Layer;
import org.proofcut.core.shop.TableSaw.BlindCuts;
import org.proofcut.core.stock.Sheet;

/** The glaze cupboard, 600 × 900 × 400, whose sizes are worked out in {@code CaseworkTest}. */
class OperationsTest {

  private static final OperationLimits LIMITS =
      new OperationLimits(
          Worked.entered("left on a strip", mm(6)),
          Worked.entered("left on a housed part", mm(5)),
          Worked.entered("length of a proof piece", mm(300)),
          Worked.entered("proof piece beyond its cut", mm(50)));

  private static final List<Operation> CUPBOARD = operations(cupboard(), ProvenDepths.NONE);

  @Test
  void operations_followTheOrderThatACaseTakes() {
    assertEquals(
        List.of(
            "rough-strips:thin",
            "rough-strips:birch",
            "rip:back",
            "rip:left-side",
            "rip:bottom",
            "rip:plinth",
            "crosscut:left-side",
            "crosscut:back",
            "crosscut:plinth",
            "crosscut-over:top",
            "rabbet:top",
            "dado:bottom",
            "dado:shelf-1",
            "back-rabbet",
            "final-length:top",
            "dry-fit",
            "fasten"),
        ids(CUPBOARD));
    for (int i = 1; i < CUPBOARD.size(); i++) {
      assertTrue(CUPBOARD.get(i - 1).kind().compareTo(CUPBOARD.get(i).kind()) <= 0);
    }
  }

  @Test
  void ids_stayWhenSizesChange() {
    var d = cupboard();
    var wider =
        new CaseDesign(
            d.name(),
            d.unit(),
            new Outside(mm(620), mm(880), mm(400)),
            d.sheets(),
            d.joinery(),
            d.plinth(),
            d.shelves());
    assertEquals(ids(CUPBOARD), ids(operations(wider, ProvenDepths.NONE)));
  }

  @Test
  void everyCut_hasASetup_andHandworkHasNone() {
    for (var operation : CUPBOARD) {
      assertEquals(operation.kind().cuts(), operation.setup().isPresent(), operation.id());
    }
  }

  @Nested
  class Breakdown {

    @Test
    void strips_areWiderByWhatIsLeftOver_widestFirst() {
      var strips = operation("rough-strips:birch");
      assertEquals(
          List.of("strip:birch:left-side", "strip:birch:bottom", "strip:birch:plinth"),
          parts(strips));
      // 400 + 6, 394.34 + 6, 100 + 6
      assertEquals(
          List.of(Length.of("406 mm"), Length.of("400.34 mm"), Length.of("106 mm")),
          strips.parts().stream().map(part -> part.size().orElseThrow().value()).toList());
      assertEquals(List.of(), strips.setup().orElseThrow().measures());
    }

    @Test
    void partsOfOneWidth_areRippedTogether() {
      assertParting("rip:left-side", "400 mm", true, "strip:birch:left-side");
      assertParting("rip:bottom", "394.34 mm", true, "strip:birch:bottom");
    }

    @Test
    void sides_areCrosscutTogether_toSize() {
      assertParting("crosscut:left-side", "900 mm", true, "left-side", "right-side");
    }

    @Test
    void housedParts_stayOverLength_withoutAProof() {
      // 576.56 + 5
      assertParting("crosscut-over:top", "581.56 mm", false, "top", "bottom", "shelf-1");
      assertEquals(List.of(), operation("crosscut-over:top").setup().orElseThrow().measures());
    }
  }

  @Nested
  class Housings {

    @Test
    void bothSides_areCutAtOneSetting() {
      for (var id : List.of("rabbet:top", "dado:bottom", "dado:shelf-1")) {
        assertEquals(List.of("left-side", "right-side"), parts(operation(id)), id);
      }
      assertEquals(List.of("left-side", "right-side", "top"), parts(operation("back-rabbet")));
    }

    @Test
    void dado_isAskedFromWhatEnters_atItsHeight() {
      var asked = (Slot) operation("dado:bottom").asked().orElseThrow();
      assertEquals(Length.of("17.87 mm"), asked.width().value());
      assertEquals(band("17.83 mm", "17.91 mm"), asked.accepted());
      assertEquals(mm(6), asked.depth().value());
      assertEquals(mm(100), asked.distance().value());
      // The end rides the guide, the side reaches out.
      assertEquals(band("400 mm", "400 mm"), asked.work().alongGuide());
      assertEquals(band("900 mm", "900 mm"), asked.work().acrossGuide());
      assertEquals(band("17.66 mm", "17.78 mm"), asked.work().thickness());
    }

    @Test
    void rabbetForTheBack_followsTheBacksSheet() {
      var operation = operation("back-rabbet");
      var asked = (Rabbet) operation.asked().orElseThrow();
      assertEquals(band("5.66 mm", "5.80 mm"), asked.accepted());
      // From the designed length of the top to the height of the sides.
      assertEquals(band("576.56 mm", "900 mm"), asked.work().alongGuide());
      assertEquals(List.of(CasesForTests.BIRCH), operation.cutSheets());
      assertEquals(List.of(CasesForTests.THIN), operation.enteringSheets());
      assertEquals(Optional.of(band("5.60 mm", "5.66 mm")), operation.entering());
    }

    @Test
    void sheetThatNoFitServes_isAProgrammersError() {
      var d = cupboard();
      var s = d.sheets();
      Sheet uneven = CasesForTests.sheet("uneven", "17.5 mm", "17.71 mm");
      var design =
          new CaseDesign(
              d.name(),
              d.unit(),
              d.outside(),
              new CaseDesign.Sheets(
                  s.leftSide(), s.rightSide(), s.top(), s.bottom(), uneven, s.back(), s.plinth()),
              d.joinery(),
              d.plinth(),
              d.shelves());
      assertThrows(IllegalArgumentException.class, () -> operations(design, ProvenDepths.NONE));
    }
  }

  @Nested
  class FinalLengths {

    @Test
    void finalLength_waitsForEveryHousingThatItStandsOn() {
      assertParting("final-length:top", "576.56 mm", true, "top", "bottom", "shelf-1");
      assertEquals(
          List.of("rabbet:top", "dado:bottom", "dado:shelf-1"),
          operation("final-length:top").waitsFor());
    }

    @Test
    void whatIsWaitedFor_comesBefore() {
      for (int i = 0; i < CUPBOARD.size(); i++) {
        var before = ids(CUPBOARD.subList(0, i));
        assertTrue(before.containsAll(CUPBOARD.get(i).waitsFor()), CUPBOARD.get(i).id());
      }
    }

    @Test
    void provenDepth_movesTheFinalLength_butNotTheRoughOne() {
      var deeper = Worked.measured("depth found", Length.of("6.1 mm"));
      var proven =
          new ProvenDepths(Map.of("left-side:bottom", deeper, "right-side:bottom", deeper));
      var again = operations(cupboard(), proven);
      assertParting(again, "crosscut-over:top", "581.56 mm", false, "top", "bottom", "shelf-1");
      assertParting(again, "final-length:top", "576.56 mm", true, "top", "shelf-1");
      // 576.56 + 2 × 0.1
      assertParting(again, "final-length:bottom", "576.76 mm", true, "bottom");
      assertEquals(List.of("dado:bottom"), operation(again, "final-length:bottom").waitsFor());
      // A dado already proven is not asked anew.
      assertEquals(operation("dado:bottom").asked(), operation(again, "dado:bottom").asked());
    }
  }

  /** Of a mirror pair, one has its front edge trailing. */
  @Nested
  class Handling {

    @Test
    void dadoAtTheTable_lowerEndOnTheFence() {
      assertHandled(
          "dado:bottom", 0, "inside face down", Edge.LOWER_END, Edge.FRONT, Edge.REAR, false);
      assertHandled(
          "dado:bottom", 1, "inside face down", Edge.LOWER_END, Edge.REAR, Edge.FRONT, true);
    }

    @Test
    void topRabbetAtTheTable_topEndOnTheFence() {
      assertHandled("rabbet:top", 0, "inside face down", Edge.TOP_END, Edge.REAR, Edge.FRONT, true);
      assertHandled(
          "rabbet:top", 1, "inside face down", Edge.TOP_END, Edge.FRONT, Edge.REAR, false);
    }

    @Test
    void backRabbet_rearEdgeOnTheFence() {
      assertHandled(
          "back-rabbet", 0, "inside face down", Edge.REAR, Edge.LOWER_END, Edge.TOP_END, true);
      assertHandled(
          "back-rabbet", 1, "inside face down", Edge.REAR, Edge.TOP_END, Edge.LOWER_END, true);
      assertHandled(
          "back-rabbet", 2, "inside face down", Edge.REAR, Edge.LEFT_END, Edge.RIGHT_END, true);
    }

    @Test
    void dadoByHand_insideFaceUp_lowerEndOnTheLeft() {
      assertEquals(Guide.STRAIGHTEDGE, operation("dado:shelf-1").setup().orElseThrow().guide());
      assertHandled(
          "dado:shelf-1", 0, "inside face up", Edge.LOWER_END, Edge.REAR, Edge.FRONT, true);
      assertHandled(
          "dado:shelf-1", 1, "inside face up", Edge.LOWER_END, Edge.FRONT, Edge.REAR, false);
    }

    /**
     * The fence stands on the right: a quarter turn from the router table's, the same way round.
     */
    @Test
    void dadoAtTheSawsFence_liesAsAtTheRouterTable() {
      var dado = sawn(mm(400));
      assertEquals(Guide.FENCE, dado.setup().orElseThrow().guide());
      assertHandled(dado, 0, "inside face down", Edge.LOWER_END, Edge.FRONT, Edge.REAR, false);
      assertHandled(dado, 1, "inside face down", Edge.LOWER_END, Edge.REAR, Edge.FRONT, true);
    }

    /**
     * The lower end lies against the stop on the left, the trailing edge against the sled's fence.
     */
    @Test
    void dadoOnTheSled_liesTheOtherWayRound() {
      var dado = sawn(mm(290));
      assertEquals(Guide.SLED, dado.setup().orElseThrow().guide());
      assertHandled(dado, 0, "inside face down", Edge.FRONT, Edge.REAR, Edge.FRONT, true);
      assertHandled(dado, 1, "inside face down", Edge.REAR, Edge.FRONT, Edge.REAR, false);
    }

    /** The dado of the bottom, with a stack at the saw and no router in the shop. */
    private Operation sawn(Length depthOfTheCase) {
      var d = cupboard();
      var outside = new Outside(d.outside().width(), d.outside().height(), depthOfTheCase);
      var design =
          new CaseDesign(
              d.name(), d.unit(), outside, d.sheets(), d.joinery(), d.plinth(), d.shelves());
      var stack =
          new StackedCutter(
              "stack",
              "stack",
              mm(200),
              24,
              Length.of("3.2 mm"),
              List.of(new Layer(Length.of("3.2 mm"), 3), new Layer(Length.of("1.9 mm"), 1)),
              List.of(),
              Optional.of(6_000));
      var shop =
          new Shop(
              "saw alone",
              List.of(ShopsForTests.sawWith(new BlindCuts(false, Optional.of(mm(20))))),
              List.of(stack, ShopsForTests.RIP_BLADE),
              List.of(),
              List.of("featherboard"));
      var conditions = new Conditions(ShopsForTests.LIMITS, shop.aids(), d.unit());
      var derived = Casework.derive(design, CASE, FIT);
      return operation(
          Operations.of(derived, derived, FIT, LIMITS, operation -> new Methods(shop, conditions)),
          "dado:bottom");
    }

    @Test
    void dadoDeeperThanTheBackRabbet_breaksOutAtTheRearForGood() {
      var d = cupboard();
      var joinery = new Joinery(mm(6), mm(7), mm(6), mm(6), Length.ZERO);
      var deeper =
          new CaseDesign(
              d.name(), d.unit(), d.outside(), d.sheets(), joinery, d.plinth(), d.shelves());
      var left = operation(operations(deeper, ProvenDepths.NONE), "dado:bottom").parts().get(0);
      assertEquals(Edge.REAR, left.handling().orElseThrow().trails());
      assertTrue(left.handling().orElseThrow().breakout().orElseThrow().contains("rear edge"));
    }

    private void assertHandled(
        String id, int part, String face, Edge rides, Edge leads, Edge trails, boolean backUp) {
      assertHandled(operation(id), part, face, rides, leads, trails, backUp);
    }

    private void assertHandled(
        Operation operation,
        int part,
        String face,
        Edge rides,
        Edge leads,
        Edge trails,
        boolean backUp) {
      var handling = operation.parts().get(part).handling().orElseThrow();
      assertEquals(face, handling.face());
      assertEquals(rides, handling.rides());
      assertEquals(leads, handling.leads());
      assertEquals(trails, handling.trails());
      assertEquals(backUp, handling.breakout().isPresent(), handling.toString());
      if (backUp) {
        assertTrue(handling.breakout().orElseThrow().contains(trails.words()));
      }
    }
  }

  private static void assertParting(String id, String size, boolean toSize, String... parts) {
    assertParting(CUPBOARD, id, size, toSize, parts);
  }

  private static void assertParting(
      List<Operation> operations, String id, String size, boolean toSize, String... parts) {
    var operation = operation(operations, id);
    var asked = (Parting) operation.asked().orElseThrow();
    assertEquals(Length.of(size), asked.size().value(), id);
    assertEquals(toSize, asked.toSize(), id);
    assertEquals(List.of(parts), parts(operation), id);
  }

  private static Operation operation(String id) {
    return operation(CUPBOARD, id);
  }

  private static Operation operation(List<Operation> operations, String id) {
    return operations.stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
  }

  private static List<String> ids(List<Operation> operations) {
    return operations.stream().map(Operation::id).toList();
  }

  private static List<String> parts(Operation operation) {
    return operation.parts().stream().map(PartCut::id).toList();
  }

  private static List<Operation> operations(CaseDesign design, ProvenDepths proven) {
    return Operations.of(
        Casework.derive(design, CASE, FIT),
        Casework.derive(design, CASE, FIT, proven),
        FIT,
        LIMITS,
        operation -> new Methods(ShopsForTests.shop(), ShopsForTests.CONDITIONS));
  }

  private static Band band(String least, String most) {
    return new Band(Length.of(least), Length.of(most));
  }
}

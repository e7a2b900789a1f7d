package org.proofcut.core.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.proofcut.core.shop.GearForTests.GLOVES;
import static org.proofcut.core.shop.GearForTests.MASK;
import static org.proofcut.core.shop.GearForTests.MUFFS;
import static org.proofcut.core.shop.GearForTests.TODAY;
import static org.proofcut.core.shop.GearForTests.muffs;
import static org.proofcut.core.shop.GearForTests.piece;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.proofcut.core.shop.OwnedGear.Rated;

class GearOfferTest {

  @Test
  void of_twoNeeds_takesTheStrongest() {
    var offer =
        GearOffer.of(
            MASK,
            List.of("three", "one"),
            List.of(piece(MASK, "weak", "two", null), piece(MASK, "strong", "three", null)),
            false);
    assertEquals(Optional.of("mark three"), offer.needed());
    assertEquals("strong", best(offer));
    assertEquals(List.of("weak: mark two; needed: mark three"), offer.refused(TODAY));
  }

  @Test
  void of_severalThatMeet_takesTheLeastExcess() {
    var owned = List.of(piece(MASK, "more", "three", null), piece(MASK, "enough", "two", null));
    assertEquals("enough", best(GearOffer.of(MASK, List.of("two"), owned, false)));
  }

  @Test
  void of_sameClass_takesTheOneWithAPlace_thenTheOneThatEndsFirst() {
    var owned =
        List.of(
            piece(MASK, "undated", "two", null),
            piece(MASK, "late", "two", TODAY.plusDays(9)),
            GearForTests.piece(
                MASK,
                "nowhere",
                "two",
                "",
                new GearLife(GearForTests.day(TODAY), Optional.empty()),
                false),
            piece(MASK, "early", "two", TODAY.plusDays(3)));
    var offer = GearOffer.of(MASK, List.of("two"), owned, false);
    assertEquals(
        List.of("early", "late", "undated", "nowhere"),
        offer.pieces().stream().map(GearOffer.Piece::id).toList());
  }

  @Test
  void best_onTheLastDay_isStillOffered_theDayAfterTheNextOneIs() {
    var owned = List.of(piece(MASK, "ends", "two", TODAY), piece(MASK, "spare", "three", null));
    var offer = GearOffer.of(MASK, List.of("two"), owned, false);
    assertEquals("ends", offer.best(TODAY).orElseThrow().id());
    assertEquals("spare", offer.best(TODAY.plusDays(1)).orElseThrow().id());
    assertEquals(List.of("ends: was good until 10 May 2026"), offer.refused(TODAY.plusDays(1)));
  }

  @Test
  void best_whatSomebodyHas_isOfferedOnlyWhereNothingElseIsThere() {
    var owned = List.of(piece(MASK, "taken", "two", TODAY), piece(MASK, "spare", "three", null));
    var offer = GearOffer.of(MASK, List.of("two"), owned, false);
    assertEquals("taken", offer.best(TODAY, Set.of()).orElseThrow().id());
    assertEquals("spare", offer.best(TODAY, Set.of("taken")).orElseThrow().id());
    assertEquals("taken", offer.best(TODAY, Set.of("taken", "spare")).orElseThrow().id());
    assertEquals(
        "spare", offer.best(TODAY.plusDays(1), Set.of("spare")).orElseThrow().id(), "it is over");
  }

  @Test
  void of_workAid_offersWhatHasAPlaceFirst_thenWhatWasOnlyTicked_thenWhatWontDo() {
    var aid = new WorkAid("push-stick", "push stick", false, "Where is it?", "Here");
    var shop =
        shop(
            List.of("sled", "push-stick"),
            aid("short", "hook 1", "270 mm long"),
            aid("nowhere", "", null),
            aid("there", "hook 2", null),
            new OwnedAid("block", "push-block", "block", "", Optional.empty(), GearLife.UNDATED));
    var offer = GearOffer.of(aid, shop);
    assertEquals(
        List.of("there", "nowhere", "", "short"),
        offer.pieces().stream().map(GearOffer.Piece::id).toList());
    assertEquals("push stick", offer.pieces().get(2).name());
    assertEquals(List.of("short: 270 mm long"), offer.refused(TODAY));
    assertEquals(List.of("sled", "push-stick", "push-block"), shop.aidsAtHand());
    assertEquals(List.of(), GearOffer.of(aid, shop(List.of("sled"))).pieces());
  }

  @Test
  void aidsAtHand_whatWontDo_isNone() {
    var shop = shop(List.of(), aid("short", "hook 1", "270 mm long"));
    assertEquals(List.of(), shop.aidsAtHand());
    assertFalse(shop.hasAid("push-stick"));
  }

  private static OwnedAid aid(String id, String place, String unfit) {
    return new OwnedAid(id, "push-stick", id, place, Optional.ofNullable(unfit), GearLife.UNDATED);
  }

  private static Shop shop(List<String> ticked, OwnedAid... owned) {
    return new Shop(
        "shop",
        Shop.ELSEWHERE,
        List.of(),
        List.of(),
        List.of(),
        ticked,
        false,
        List.of(),
        List.of(owned));
  }

  @Test
  void of_failedPiece_isNeverOffered() {
    var failed = GearForTests.piece(MASK, "failed", "three", "hook", GearLife.UNDATED, true);
    var offer = GearOffer.of(MASK, List.of(), List.of(failed), false);
    assertEquals("", best(offer));
    assertEquals(List.of("failed: out of use"), offer.refused(TODAY));
  }

  @Test
  void of_unknownMarks_meetNoNeed_butWillDoWhereAnyWill() {
    var owned = List.of(new OwnedGear("old", "mask", "old mask", "FFP2", "hook"));
    assertEquals("old", best(GearOffer.of(MASK, List.of(), owned, false)));
    var offer = GearOffer.of(MASK, List.of("one"), owned, false);
    assertEquals("", best(offer));
    assertEquals(
        List.of("old mask: its marks are not entered; needed: mark one"), offer.refused(TODAY));
  }

  @Test
  void of_beard_leavesWhatNeedsNoSeal() {
    var owned =
        List.of(
            piece(MASK, "tight", "three", null),
            piece(MASK, "unmarked", null, null),
            piece(MASK, "loose", "hood", null));
    var offer = GearOffer.of(MASK, List.of(), owned, true);
    assertEquals("loose", best(offer));
    assertEquals(
        List.of("tight: does not seal over a beard", "unmarked: does not seal over a beard"),
        offer.refused(TODAY));
  }

  @Test
  void of_gloves_oneUseStandsInForNoOther() {
    var owned = List.of(piece(GLOVES, "nitrile", "chemical", null));
    var offer = GearOffer.of(GLOVES, List.of("handling"), owned, false);
    assertEquals("", best(offer));
    assertEquals(List.of("nitrile: mark chemical; needed: mark handling"), offer.refused(TODAY));
    assertEquals("nitrile", best(GearOffer.of(GLOVES, List.of("chemical"), owned, false)));
    var both = GearOffer.of(GLOVES, List.of("handling", "chemical"), owned, false);
    assertEquals(Optional.of("mark handling and mark chemical"), both.needed());
    assertEquals("", best(both));
  }

  @Test
  void of_muffs_withAFigureMeet_withoutDoNot() {
    var rated = muffs("rated", new Rated(Rated.Scale.SNR, 30));
    var offer = GearOffer.of(MUFFS, List.of("rated"), List.of(muffs("plain", null), rated), false);
    assertEquals("rated", best(offer));
    assertEquals("SNR 30 dB", offer.best(TODAY).orElseThrow().marked());
    assertEquals(1, offer.refused(TODAY).size());
  }

  private static String best(GearOffer offer) {
    return offer.best(TODAY).map(GearOffer.Piece::id).orElse("");
  }
}

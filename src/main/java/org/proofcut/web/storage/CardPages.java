package org.proofcut.web.storage;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.proofcut.bench.House;
import org.proofcut.bench.StorageDesk;
import org.proofcut.core.shop.GearLife;
import org.proofcut.core.storage.Keeping;
import org.proofcut.core.storage.Need;
import org.proofcut.core.storage.ThingKind;

/** The card for the door of a cabinet: what lives where, and what never does. */
@Path("/storage/cabinets/{id}/card")
@Produces(MediaType.TEXT_HTML)
public class CardPages {

  private final StorageDesk desk;
  private final House house;

  CardPages(StorageDesk desk, House house) {
    this.desk = desk;
    this.house = house;
  }

  /** What is never kept in a cabinet for gear. */
  record Never(String what, String why, String source) {}

  /** Everything on the card. */
  record CardView(
      String id,
      String cabinet,
      String standing,
      String day,
      PlanView.Drawn drawn,
      List<PlanView.PlaceRow> places,
      List<Never> never) {}

  @CheckedTemplate(basePath = "storage")
  static class Templates {
    private Templates() {}

    static native TemplateInstance card(CardView page);
  }

  @GET
  public TemplateInstance page(@PathParam("id") String id) {
    var planned = LabelPages.planned(desk, id);
    return Templates.card(
        new CardView(
            id,
            Says.capital(planned.cabinet().name()),
            PlanView.standing(planned),
            GearLife.inWords(desk.today()),
            PlanView.drawn(planned),
            PlanView.rows(planned).stream().filter(place -> !place.things().isEmpty()).toList(),
            house.content().storage().values().stream()
                .flatMap(
                    kind ->
                        kind.keeping().stream()
                            .filter(CardPages::isNever)
                            .map(keeping -> never(kind, keeping)))
                .toList()));
  }

  private static boolean isNever(Keeping keeping) {
    return keeping.need() == Need.ELSEWHERE;
  }

  private static Never never(ThingKind kind, Keeping keeping) {
    return new Never(Says.capital(kind.name()), keeping.why(), keeping.because().text());
  }
}

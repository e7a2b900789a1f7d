package org.proofcut.web.shop;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.proofcut.bench.GearDesk;
import org.proofcut.bench.House;
import org.proofcut.core.shop.GearClass;
import org.proofcut.core.shop.GearLife;
import org.proofcut.core.shop.ToGet;

/** What to take along to where gear is sold. */
@Path("/shop/to-get")
@Produces(MediaType.TEXT_HTML)
public class ToGetPages {

  private final GearDesk desk;
  private final House house;

  ToGetPages(GearDesk desk, House house) {
    this.desk = desk;
    this.house = house;
  }

  /**
   * One thing to get.
   *
   * @param id for links
   * @param goodFor what its class holds up against; empty where any piece of the kind will do
   * @param state whether it is missing, or until when what is owned serves
   */
  record Line(
      String id,
      String wanted,
      String goodFor,
      String state,
      String shape,
      List<String> why,
      List<String> forWhat) {}

  @CheckedTemplate(basePath = "shop")
  static class Templates {
    private Templates() {}

    static native TemplateInstance toGet(String day, List<Line> lines);
  }

  @GET
  public TemplateInstance toGet() {
    return Templates.toGet(
        GearLife.inWords(desk.today()), desk.toGet().stream().map(this::line).toList());
  }

  private Line line(ToGet one) {
    var kind = house.content().wording().gear().get(one.kind());
    var goodFor =
        kind.classes().stream()
            .filter(each -> one.needed().filter(each.name()::equals).isPresent())
            .map(GearClass::goodFor)
            .findFirst()
            .orElse("");
    var state =
        one.until()
            .map(last -> "Serves until " + GearLife.inWords(last))
            .orElse(one.why().isEmpty() ? "None in the shop" : "None in the shop that will do");
    return new Line(
        kind.id() + "-" + Integer.toHexString(one.wanted().hashCode()),
        ShopPages.capital(one.wanted()),
        goodFor,
        state,
        one.isMissing() ? "shape-stop" : "shape-now",
        one.why(),
        one.forWhat());
  }
}

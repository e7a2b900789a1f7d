package org.proofcut.web.handbook;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import org.proofcut.bench.House;

/** All rules, by machine, with what they are for and where they are written. */
@Path("/rules")
@Produces(MediaType.TEXT_HTML)
public class HandbookPages {

  /** What is sought stands in the address: nobody types more than this to find a rule. */
  private static final int LONGEST = 200;

  private final House house;

  HandbookPages(House house) {
    this.house = house;
  }

  @CheckedTemplate(basePath = "handbook")
  static class Templates {
    private Templates() {}

    static native TemplateInstance rules(
        Handbook handbook, String sought, Address address, int ownFaults);

    static native TemplateInstance matrix(MatrixPage page);

    static native TemplateInstance own(OwnPage own);
  }

  /** What the address asks for beside words; kept when other words are looked for. */
  record Address(String machine, String operation, String harm) {}

  @GET
  public TemplateInstance rules(
      @QueryParam("words") @DefaultValue("") String words,
      @QueryParam("machine") @DefaultValue("") String machine,
      @QueryParam("operation") @DefaultValue("") String operation,
      @QueryParam("harm") @DefaultValue("") String harm) {
    var sought = words.length() > LONGEST ? words.substring(0, LONGEST) : words;
    return Templates.rules(
        Handbook.of(house.content(), Sought.of(sought, machine, operation, harm)),
        sought,
        new Address(machine, operation, harm),
        house.own().faults());
  }

  /** Machine by machine, cut by cut, harm by harm: how many rules, or why none. */
  @GET
  @Path("/by-harm")
  public TemplateInstance matrix() {
    return Templates.matrix(MatrixPage.of(house.content()));
  }

  /** What of it is the shop's own, and what is wrong with that. */
  @GET
  @Path("own")
  public TemplateInstance own() {
    return Templates.own(OwnPage.of(house.own()));
  }
}

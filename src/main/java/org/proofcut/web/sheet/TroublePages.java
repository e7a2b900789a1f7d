package org.proofcut.web.sheet;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.proofcut.bench.House;
import org.proofcut.content.Trouble;
import org.proofcut.web.part.Back;

/** What to do when something has gone wrong, one tap from every sheet. */
@Path("/trouble")
@Produces(MediaType.TEXT_HTML)
public class TroublePages {

  @CheckedTemplate(basePath = "sheet")
  static class Templates {
    static native TemplateInstance trouble(List<Trouble> troubles, String back);
  }

  private final House house;

  TroublePages(House house) {
    this.house = house;
  }

  /** Leads back only to a sheet of this service, whatever the address says. */
  @GET
  public TemplateInstance trouble(@QueryParam(Back.FIELD) String back) {
    return Templates.trouble(
        List.copyOf(house.content().trouble().values()), Back.to(back).orElse("/"));
  }
}

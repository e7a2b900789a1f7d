package org.proofcut.web.storage;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.proofcut.bench.StorageDesk;

/** Where gear lives, what is out, what falls due. */
@Path("/storage")
@Produces(MediaType.TEXT_HTML)
public class StoragePages {

  private final StorageDesk desk;

  StoragePages(StorageDesk desk) {
    this.desk = desk;
  }

  @CheckedTemplate(basePath = "storage")
  static class Templates {
    private Templates() {}

    static native TemplateInstance storage(StorageView page);

    static native TemplateInstance homeless(List<StorageView.ThingRow> rows);
  }

  @GET
  public TemplateInstance page() {
    return Templates.storage(StorageView.of(desk));
  }

  /** What has no place, and why: a page of its own, as plans may take a while to make. */
  @GET
  @Path("no-place")
  public TemplateInstance homeless() {
    return Templates.homeless(StorageView.whyNowhere(desk));
  }
}

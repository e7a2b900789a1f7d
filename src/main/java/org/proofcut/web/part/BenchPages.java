package org.proofcut.web.part;

import jakarta.ws.rs.FormParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.NewCookie;
import jakarta.ws.rs.core.NewCookie.SameSite;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.Set;

/** Keeps the maker's choice of ground and hand on this tablet. */
@Path("/bench")
public class BenchPages {

  private static final int ONE_YEAR_IN_SECONDS = 31_536_000;

  @POST
  public Response choose(
      @FormParam("ground") String ground,
      @FormParam("hand") String hand,
      @FormParam("back") String back) {
    var answer = Response.seeOther(pageHere(back));
    keep(answer, "ground", ground, Set.of("light", "dark"));
    keep(answer, "hand", hand, Set.of("right", "left"));
    return answer.build();
  }

  private static void keep(
      Response.ResponseBuilder answer, String name, String choice, Set<String> choices) {
    if (choice != null && choices.contains(choice)) {
      answer.cookie(
          new NewCookie.Builder(name)
              .value(choice)
              .path("/")
              .maxAge(ONE_YEAR_IN_SECONDS)
              .httpOnly(true)
              .sameSite(SameSite.LAX)
              .build());
    }
  }

  /** Only a page of this service: a form made elsewhere can't send the maker away from it. */
  private static URI pageHere(String back) {
    if (back == null || !back.matches("/(?![/\\\\])[^\\s\\\\]*")) {
      return URI.create("/");
    }
    try {
      return URI.create(back);
    } catch (IllegalArgumentException noAddress) {
      return URI.create("/");
    }
  }
}

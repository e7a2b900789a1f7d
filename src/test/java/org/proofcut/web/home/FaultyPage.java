package org.proofcut.web.home;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;

/** Fails as a fault of the program would; served only in tests. */
@Path("/fault-for-tests")
public class FaultyPage {

  static final String SECRET = "what only the log may say";

  @GET
  public String fail() {
    throw new IllegalStateException(SECRET);
  }
}

package org.proofcut.web.part;

import io.vertx.core.http.Cookie;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;

/** What the maker chose for this tablet: light or dark ground, right or left hand. */
@RequestScoped
@Named("benchChoices")
public class BenchChoices {

  private final RoutingContext request;

  @Inject
  BenchChoices(RoutingContext request) {
    this.request = request;
  }

  /** Never the text of the cookie itself: it goes into the page. */
  private boolean chose(String cookieName, String choice) {
    Cookie cookie = request.request().getCookie(cookieName);
    return cookie != null && choice.equals(cookie.getValue());
  }

  public boolean isDark() {
    return chose("ground", "dark");
  }

  public boolean isLeftHanded() {
    return chose("hand", "left");
  }

  public String getGround() {
    return isDark() ? "dark" : "light";
  }

  public String getOtherGround() {
    return isDark() ? "light" : "dark";
  }

  public String getHand() {
    return isLeftHanded() ? "left" : "right";
  }

  public String getOtherHand() {
    return isLeftHanded() ? "right" : "left";
  }

  /** The page asked for, to come back to; the first page when it was sent by a form. */
  public String getHere() {
    return request.request().method() == io.vertx.core.http.HttpMethod.GET
        ? request.request().uri()
        : "/";
  }
}

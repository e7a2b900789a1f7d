package org.proofcut.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.storage.Due;

class DueCalendarTest {

  private static final Instant NOON = Instant.parse("2030-03-04T12:00:00Z");
  private static final LocalDate DAY = LocalDate.of(2030, 5, 6);

  private static final String HARD = "muffs; \"red\", a\\b: ä€𝄞 ";

  private static Due due(String thing, String name, Optional<LocalDate> on) {
    return new Due(
        thing, name, "cushions", "Look at the cushions", on, false, false, Citation.OWN_CHOICE);
  }

  private static String text(List<Due> due, Instant made) {
    return DueCalendar.text(
        "Gear, long shed", due, made, any -> Optional.of("Cabinet: bay 1, hooks"));
  }

  private static Calendar read(String text) throws IOException, ParserException {
    return new CalendarBuilder().build(new StringReader(text));
  }

  private static String value(Component event, String property) {
    return event.getProperty(property).map(Property::getValue).orElse("");
  }

  @Test
  void everyEvent_isReadBack_withWhatItMustHave() throws Exception {
    var text =
        text(List.of(due("a", HARD, Optional.of(DAY)), due("b", "mask", Optional.of(DAY))), NOON);
    var calendar = read(text);
    assertFalse(calendar.validate().hasErrors(), () -> calendar.validate().toString());
    assertEquals("2.0", calendar.getProperty(Property.VERSION).orElseThrow().getValue());
    assertEquals(
        "-//Proofcut//Gear storage//EN",
        calendar.getProperty(Property.PRODID).orElseThrow().getValue());
    assertEquals("Gear, long shed", calendar.getProperty("NAME").orElseThrow().getValue());
    List<VEvent> events = calendar.getComponents(Component.VEVENT);
    assertEquals(2, events.size());
    var uids = new HashSet<String>();
    for (var event : events) {
      assertTrue(uids.add(value(event, Property.UID)));
      assertEquals("20300304T120000Z", value(event, Property.DTSTAMP));
      assertEquals("20300506", value(event, Property.DTSTART));
      assertEquals("TRANSPARENT", value(event, Property.TRANSP));
      assertEquals("Cabinet: bay 1, hooks", value(event, Property.LOCATION));
      assertEquals(List.of(), event.getAlarms());
    }
    assertEquals(HARD + ": Look at the cushions", value(events.get(0), Property.SUMMARY));
    assertTrue(text.contains("DTSTART;VALUE=DATE:20300506\r\n"), text);
  }

  @Test
  void noLine_isLongerThan75Octets_andEachEndsAsItMust() throws Exception {
    for (var name :
        List.of("ä".repeat(80), "€".repeat(80), "𝄞".repeat(40), "x".repeat(200), HARD)) {
      var text = text(List.of(due("a", name, Optional.of(DAY))), NOON);
      assertTrue(text.endsWith("END:VCALENDAR\r\n"));
      assertFalse(text.replace("\r\n", "").matches("(?s).*[\r\n].*"), "bare line ends");
      for (var line : text.split("\r\n")) {
        assertTrue(line.getBytes(StandardCharsets.UTF_8).length <= 75, line);
      }
      VEvent event = read(text).<VEvent>getComponents(Component.VEVENT).get(0);
      assertEquals(name + ": Look at the cushions", value(event, Property.SUMMARY));
    }
  }

  @Test
  void commasSemicolonsAndBackslashes_areEscaped() {
    var text = text(List.of(due("a", "a,b;c\\d", Optional.of(DAY))), NOON);
    assertTrue(text.contains("SUMMARY:a\\,b\\;c\\\\d: Look at the cushions\r\n"), text);
  }

  @Test
  void whatHasNoDay_isLeftOut_andAnEmptyCalendarIsRead() throws Exception {
    var text = text(List.of(due("a", "muffs", Optional.empty())), NOON);
    var calendar = read(text);
    assertEquals(List.of(), calendar.getComponents(Component.VEVENT));
    assertEquals(1, calendar.getComponents().size());
    assertFalse(calendar.validate().hasErrors(), () -> calendar.validate().toString());
    assertTrue(
        text.contains(
            "BEGIN:VTIMEZONE\r\nTZID:Etc/UTC\r\nBEGIN:STANDARD\r\nDTSTART:19700101T000000\r\n"
                + "TZOFFSETFROM:+0000\r\nTZOFFSETTO:+0000\r\nEND:STANDARD\r\nEND:VTIMEZONE\r\n"),
        text);
  }

  @Test
  void equalInput_givesEqualBytes_butForTheStamp() {
    var all = List.of(due("a", HARD, Optional.of(DAY)), due("b", "mask", Optional.of(DAY)));
    assertEquals(text(all, NOON), text(all, NOON));
    var later = text(all, NOON.plusSeconds(60));
    assertNotEquals(text(all, NOON), later);
    assertEquals(unstamped(text(all, NOON)), unstamped(later));
    assertFalse(unstamped(later).contains("DTSTAMP"));
  }

  private static String unstamped(String text) {
    return text.replaceAll("DTSTAMP:[0-9TZ]+\r\n", "");
  }

  /** A day that moves is the same event on another day. */
  @Test
  void uid_staysWhenTheDayMoves_orTheNameChanges() throws Exception {
    var one = text(List.of(due("a", "muffs", Optional.of(DAY))), NOON);
    var other = text(List.of(due("a", "red muffs", Optional.of(DAY.plusDays(9)))), NOON);
    assertEquals(uid(one), uid(other));
  }

  private static String uid(String text) throws IOException, ParserException {
    return value(read(text).getComponents(Component.VEVENT).get(0), Property.UID);
  }
}

package org.proofcut.calendar;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import net.fortuna.ical4j.data.CalendarOutputter;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.ComponentList;
import net.fortuna.ical4j.model.ParameterList;
import net.fortuna.ical4j.model.PropertyList;
import net.fortuna.ical4j.model.component.Standard;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.component.VTimeZone;
import net.fortuna.ical4j.model.parameter.Value;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.Location;
import net.fortuna.ical4j.model.property.Name;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.Summary;
import net.fortuna.ical4j.model.property.TzId;
import net.fortuna.ical4j.model.property.TzOffsetFrom;
import net.fortuna.ical4j.model.property.TzOffsetTo;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.immutable.ImmutableCalScale;
import net.fortuna.ical4j.model.property.immutable.ImmutableTransp;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;
import org.proofcut.core.storage.Due;

/**
 * What falls due as a calendar: one event for all of a day for each, that takes up no time and
 * rings no bell. What has no day is left out.
 *
 * <p>RFC 5545, 3.6: a calendar without any component is none; where nothing falls due, the
 * component is a time zone that nobody refers to.
 */
public final class DueCalendar {

  /** Longer than any line, so that the library folds none: it counts characters, not octets. */
  private static final int UNFOLDED = 100_000;

  private static final VTimeZone NOTHING =
      new VTimeZone(
          new PropertyList(List.of(new TzId("Etc/UTC"))),
          new ComponentList<>(
              List.of(
                  new Standard(
                      new PropertyList(
                          List.of(
                              new DtStart<>(LocalDateTime.of(1970, 1, 1, 0, 0)),
                              new TzOffsetFrom(ZoneOffset.UTC),
                              new TzOffsetTo(ZoneOffset.UTC)))))));

  private DueCalendar() {}

  /**
   * The calendar as text, with lines that end and are folded as RFC 5545, 3.1 asks.
   *
   * @param name of the calendar, as programs show it
   * @param made when this was written; all that changes where what is due is the same
   * @param placeOf where a thing lives, by its id; empty where it lives nowhere
   */
  public static String text(
      String name, List<Due> due, Instant made, Function<String, Optional<String>> placeOf) {
    var calendar = new Calendar();
    calendar.add(new ProdId("-//Proofcut//Gear storage//EN"));
    calendar.add(ImmutableVersion.VERSION_2_0);
    calendar.add(ImmutableCalScale.GREGORIAN);
    calendar.add(new Name(name));
    for (var one : due) {
      one.on().ifPresent(day -> calendar.add(event(one, day, made, placeOf.apply(one.thing()))));
    }
    if (calendar.getComponents().isEmpty()) {
      calendar.add(NOTHING);
    }
    var text = new StringWriter();
    try {
      new CalendarOutputter(true, UNFOLDED).output(calendar, text);
    } catch (IOException e) {
      throw new UncheckedIOException("text in memory can't fail to be written", e);
    }
    return Folded.lines(text.toString());
  }

  private static VEvent event(Due due, LocalDate day, Instant made, Optional<String> place) {
    var event = new VEvent(false);
    event.add(new Uid(due.ageing() + "." + due.thing() + "@gear.proofcut"));
    event.add(new DtStamp(made));
    event.add(new DtStart<>(new ParameterList(List.of(Value.DATE)), day));
    event.add(new Summary((due.overdue() ? "Overdue: " : "") + due.name() + ": " + due.what()));
    event.add(
        new Description((due.ends() ? "It is over then.\n" : "") + "Why: " + due.because().text()));
    place.ifPresent(words -> event.add(new Location(words)));
    event.add(ImmutableTransp.TRANSPARENT);
    return event;
  }
}

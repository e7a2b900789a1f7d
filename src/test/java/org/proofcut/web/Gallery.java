package org.proofcut.web;

import io.quarkus.qute.Engine;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.proofcut.core.drawing.Drawing;
import org.proofcut.core.drawing.Drawing.Anchor;
import org.proofcut.core.drawing.Drawing.Fill;
import org.proofcut.core.drawing.Drawing.Line;
import org.proofcut.core.drawing.Drawing.Turn;
import org.proofcut.core.drawing.Drawing.Type;
import org.proofcut.core.drawing.FitBar;
import org.proofcut.core.drawing.Picture;
import org.proofcut.core.drawing.RulePicture;
import org.proofcut.core.drawing.Sign;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.display.Scale;
import org.proofcut.core.safety.SignalWord;
import org.yaml.snakeyaml.Yaml;

/** Every part of a page by its examples, for the eye and for the tests; served only in tests. */
@Path("/")
public class Gallery {

  static final java.nio.file.Path EXAMPLES = java.nio.file.Path.of("src/test/resources/tags");

  /** One example: how the tag is used, with what, and what else has to stand on the page. */
  record Example(String tag, String name, String use, String also, Map<String, Object> data) {
    @Override
    public String toString() {
      return tag + ": " + name;
    }

    String html(Engine engine) {
      return engine.parse(use + also).data(data).render();
    }
  }

  private final Engine engine;

  Gallery(Engine engine) {
    this.engine = engine;
  }

  static List<Example> examples() {
    try (var files = Files.list(EXAMPLES)) {
      return files.sorted().flatMap(file -> read(file).stream()).toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static List<Example> read(java.nio.file.Path file) {
    var tag = file.getFileName().toString().replace(".yaml", "");
    try {
      List<Map<String, Object>> examples = new Yaml().load(Files.readString(file));
      return examples.stream()
          .map(
              each ->
                  new Example(
                      tag,
                      (String) each.get("name"),
                      (String) each.get("use"),
                      (String) each.getOrDefault("also", ""),
                      data(each.get("data"))))
          .toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static Map<String, Object> data(Object written) {
    var data = new HashMap<String, Object>();
    if (written instanceof Map<?, ?> map) {
      map.forEach((name, value) -> data.put((String) name, made(value)));
    }
    return data;
  }

  /** Plain values stay; a map with {@code make} becomes the thing that pages hand to the tag. */
  private static Object made(Object written) {
    if (written instanceof List<?> list) {
      return list.stream().map(Gallery::made).toList();
    }
    if (!(written instanceof Map<?, ?> map)) {
      return written;
    }
    if (!map.containsKey("make")) {
      return data(map);
    }
    return switch ((String) map.get("make")) {
      case "shown" -> Scale.valueOf(text(map, "scale")).show(length(map, "length"));
      case "rule" -> RulePicture.at(length(map, "length"), LengthUnit.valueOf(text(map, "unit")));
      case "sign" -> Sign.valueOf(text(map, "name"));
      case "every-sign" ->
          Arrays.stream(Sign.values())
              .map(
                  sign -> Map.of("sign", sign, "word", sign.name().toLowerCase().replace('_', ' ')))
              .toList();
      case "word" -> SignalWord.valueOf(text(map, "name"));
      case "fit" ->
          new FitBar(
                  Length.of("0.05 mm"),
                  Length.of("0.25 mm"),
                  length(map, "from"),
                  length(map, "to"),
                  "too tight",
                  "right",
                  "loose")
              .drawn(Scale.HUNDREDTH_MILLIMETRE);
      case "plan" -> plan((int) map.get("width"), (int) map.get("height"));
      case "problem" ->
          map.containsKey("warns")
              ? Problem.warns(
                  text(map, "where"), text(map, "what"), text(map, "allowed"), text(map, "do"))
              : Problem.stops(
                  text(map, "where"), text(map, "what"), text(map, "allowed"), text(map, "do"));
      default -> throw new IllegalArgumentException("an example can't be made from " + map);
    };
  }

  private static String text(Map<?, ?> map, String key) {
    return map.get(key).toString();
  }

  private static Length length(Map<?, ?> map, String key) {
    return Length.of(text(map, key));
  }

  /** A plan with every stroke in it; a machine's own plan is made by the room that knows it. */
  static Picture plan(int width, int height) {
    var plan =
        Drawing.of(
            width, height, "Plan from above: fence behind, cutter in the work, feed right to left");
    boolean phone = width < 480;
    plan.field(
        phone ? new Drawing.Margins(24, 34, 8, 84) : new Drawing.Margins(16, 48, 8, 104),
        Length.of("560 mm"),
        Length.of("380 mm"));
    var none = Length.ZERO;
    var right = Length.of("560 mm");
    var fence = Length.of("45 mm");
    var workLeft = Length.of("110 mm");
    var slotNear = Length.of("146.9 mm");
    var slotFar = Length.of("164.9 mm");
    var cutter = Length.of("300 mm");
    plan.text(
            plan.px(12, phone ? 22 : 32),
            "You stand at the lower edge.",
            Type.CAPTION,
            Anchor.START)
        .box(plan.at(none, none), plan.at(right, fence), Fill.MACHINE, Line.THICK)
        .plate(plan.at(Length.of("280 mm"), fence.half()), "fence", Type.CAPTION)
        .box(plan.at(workLeft, fence), plan.at(right, Length.of("380 mm")), Fill.WOOD, Line.THICK)
        .box(plan.at(workLeft, slotNear), plan.at(cutter, slotFar), Fill.SHEET, Line.PLAIN)
        .box(plan.at(cutter, slotNear), plan.at(right, slotFar), Fill.NONE, Line.DASHED);
    var middle = plan.at(cutter, Length.of("155.9 mm"));
    plan.circle(middle, plan.thousandths(Length.of("9 mm")), Fill.INK, Line.PLAIN)
        .turning(middle, phone ? 20 : 30, Turn.COUNTER_CLOCKWISE)
        .line(Line.THIN, plan.at(Length.of("60 mm"), slotNear), plan.at(workLeft, slotNear));
    var edge = Length.of("96 mm");
    plan.dimension(plan.at(edge, slotNear), plan.at(edge, fence), "101.9")
        .text(plan.at(workLeft, Length.of("365 mm")).right(12), "leads", Type.LABEL, Anchor.START)
        .text(
            plan.at(right, Length.of("70 mm")).left(12).down(20),
            "lower end rides it",
            Type.CAPTION,
            Anchor.END)
        .feed(
            plan.px(width - 40, height - (phone ? 54 : 70)),
            plan.px(width / 3, height - (phone ? 54 : 70)))
        .text(plan.px(width - 20, height - 12), "feed right to left", Type.CAPTION, Anchor.END);
    return plan.picture();
  }

  @GET
  @Path("gallery")
  @Produces(MediaType.TEXT_HTML)
  public String gallery() {
    var parts = new StringBuilder();
    var tag = "";
    for (var example : examples()) {
      if (!tag.equals(example.tag)) {
        tag = example.tag;
        parts.append("<h2 class='gallery-tag'>").append(tag).append("</h2>");
      }
      parts.append("<p class='soft small'>").append(example.name).append("</p>");
      parts.append("<div>").append(example.html(engine)).append("</div>");
    }
    var page =
        """
        {#include shell title="Gallery"}
        {#number}6 <small>of 14</small>{/number}
        {#heading}Housing for the bottom, both sides{/heading}
        {#under}<p>Locker for the glaze room · router table · one fence setting for both</p>{/under}
        {#actions}{#go 'Hold' href='#main' /}{#go 'In trouble' href='#main' /}{/actions}
        {parts.raw}
        {/include}
        """;
    return engine.parse(page).data("parts", parts.toString()).render();
  }

  /** The parts put together as a page would. */
  @GET
  @Path("gallery/sheet")
  @Produces(MediaType.TEXT_HTML)
  public String sheet() {
    var byTag = new HashMap<String, Example>();
    examples().forEach(example -> byTag.putIfAbsent(example.toString(), example));
    var parts =
        """
        <div class="sheet">
        <div class="sheet-pauses">%s</div>
        <div class="sheet-figures">%s%s%s</div>
        <div class="sheet-drawing">%s</div>
        <section class="sheet-gear" aria-labelledby="gear"><h2 id="gear" class="unseen">Protective gear</h2>%s</section>
        <div class="sheet-cautions">%s</div>
        <div class="sheet-work">%s%s</div>
        </div>
        """
            .formatted(
                html(byTag, "pauses: the second of four"),
                html(byTag, "figure: between two ticks, with its working"),
                html(byTag, "figure: a strip set by caliper has no rule"),
                html(byTag, "facts: cutter, height and speed"),
                html(byTag, "drawing: a plan of a router table in two widths"),
                html(byTag, "gear: answered, asked, forbidden, and only to read"),
                html(byTag, "caution: a warning that can be acted on"),
                html(byTag, "checkItem: done, next, later, only to read"),
                html(byTag, "partTick: cut, to cut, not open"));
    var page =
        """
        {#include shell title="Sheet 6 of 14"}
        {#number}6 <small>of 14</small>{/number}
        {#heading}Housing for the bottom, both sides{/heading}
        {#under}<p>Locker for the glaze room · router table · one fence setting for both</p>{/under}
        {#actions}{#go 'Hold' href='#main' /}{#go 'In trouble' href='#main' /}{/actions}
        {parts.raw}
        {/include}
        """;
    return engine.parse(page).data("parts", parts).render();
  }

  /** The question with the keypad beside it, as a page would have it. */
  @GET
  @Path("gallery/proof")
  @Produces(MediaType.TEXT_HTML)
  public String proof() {
    var page =
        """
        {#include shell title="Proof cut"}
        {#number}6 <small>of 14</small>{/number}
        {#heading}Housing for the bottom, both sides{/heading}
        {#actions}{#go 'Hold' href='#main' /}{#go 'In trouble' href='#main' /}{/actions}
        <form method='post' action='/gallery' class='question'>
        <div class='question-ask'>
        {#field id='reading' label='Width of the slot, reading 3 of 3' value='17.80' unit='mm' hint='At both ends and the middle of the scrap. So far 17.79 and 17.82.' large=true keys=true /}
        {#fitBar picture=picture /}
        {#stamp proven=false word='Not yet'}<p><b>The thickest part would need a mallet.</b></p><p>Make the strip <b>0.07 mm thicker: 5.97 mm</b>. Cut new scrap, measure again.</p>{/stamp}
        </div>
        <div class='keys-and-go'>{#keypad /}{#button 'Record this reading' main=true /}</div>
        </form>
        {/include}
        """;
    return engine
        .parse(page)
        .data("picture", made(Map.of("make", "fit", "from", "0.01 mm", "to", "0.16 mm")))
        .render();
  }

  private String html(Map<String, Example> examples, String name) {
    return examples.get(name).html(engine);
  }
}

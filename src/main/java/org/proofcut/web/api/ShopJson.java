package org.proofcut.web.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.proofcut.core.intake.Field;
import org.proofcut.core.intake.ItemForm;
import org.proofcut.core.shop.ToGet;
import org.proofcut.logbook.ShopItem;
import org.proofcut.logbook.ShopItem.Shelf;

/** The shop and the forms that it is entered with. */
final class ShopJson {

  private ShopJson() {}

  /** The whole shop. */
  @Schema(name = "Shop")
  record Everything(
      String name,
      @Schema(description = "unit of a number without one") String unit,
      @Schema(description = "whether anything of the demo is still there") boolean demo,
      @Schema(
              description =
                  "kinds of work aid that are at hand: ticked, or entered as a thing that will do")
          List<String> aids,
      List<Thing> items) {}

  /** One thing in the shop, as typed. */
  @Schema(name = "ShopItem")
  record Thing(
      String id,
      @Schema(description = "machine, cutter, gear, kit, liquid or aid") String shelf,
      String kind,
      Map<String, String> typed) {}

  /** What is sent to keep a thing. */
  @Schema(
      name = "ShopItemTyped",
      requiredProperties = {"shelf", "kind", "typed"})
  record ThingTyped(
      @Schema(description = "machine, cutter, gear, kit, liquid or aid") String shelf,
      String kind,
      @Schema(description = "each field of the form by its name; a length as people write it")
          Map<String, String> typed) {}

  /** The fields of one kind of thing. */
  @Schema(name = "Form")
  record Form(String shelf, String kind, String title, List<Input> fields) {}

  /** One field. */
  @Schema(name = "Field")
  record Input(
      String name,
      String label,
      String hint,
      @Schema(description = "text, length, angle, count, number, yes-no, speeds, choice or date")
          String entry,
      boolean optional,
      List<Choice> choices) {}

  /** One choice of a field. */
  @Schema(name = "Choice")
  record Choice(String value, String words) {}

  /** Gear to be got, by kind and marks. */
  @Schema(name = "GearToGet")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Missing(
      String kind,
      String name,
      @Schema(description = "the marks to look for; left out where any will do")
          Optional<String> needed,
      @Schema(description = "sheets and machines that ask for it") List<String> forWhat,
      @Schema(description = "why each owned piece does not do") List<String> why,
      @Schema(description = "the last day that what is owned serves; left out where nothing does")
          Optional<String> until) {}

  static Missing missing(ToGet one) {
    return new Missing(
        one.kind(),
        one.name(),
        one.needed(),
        one.forWhat(),
        one.why(),
        one.until().map(Object::toString));
  }

  static Thing thing(ShopItem item) {
    return new Thing(item.id(), word(item.shelf()), item.kind(), item.typed());
  }

  static Form form(Shelf shelf, ItemForm<?> form) {
    return new Form(word(shelf), form.kind(), form.title(), inputs(form.fields()));
  }

  static List<Input> inputs(List<Field> fields) {
    return fields.stream()
        .map(
            field ->
                new Input(
                    field.name(),
                    field.label(),
                    field.hint(),
                    word(field.entry()),
                    field.optional(),
                    field.choices().stream()
                        .map(choice -> new Choice(choice.value(), choice.words()))
                        .toList()))
        .toList();
  }

  /** A constant as the API writes it: {@code YES_NO} is {@code yes-no}. */
  static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}

package org.proofcut.core.intake;

import java.util.List;
import java.util.Map;
import org.proofcut.core.measure.LengthUnit;

/**
 * The form of one kind of thing in the shop, or of one kind of cut. A new kind is one more of
 * these.
 *
 * @param kind as kept, such as {@code router-table}
 * @param title what the page calls it
 * @param maker reads the fields, in this order, into the thing itself
 */
public record ItemForm<T>(String kind, String title, List<Field> fields, Maker<T> maker) {

  /** Reads typed fields into a thing with this id. */
  interface Maker<T> {
    Read<T> make(String id, FormReader typed);
  }

  public ItemForm {
    fields = List.copyOf(fields);
  }

  /** What was typed, as the thing it describes, or what is wrong with it. */
  public Read<T> read(String id, Map<String, String> typed, LengthUnit unit) {
    return maker.make(id, new FormReader(typed, unit));
  }
}

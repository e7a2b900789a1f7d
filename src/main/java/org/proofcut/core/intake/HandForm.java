package org.proofcut.core.intake;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.proofcut.core.operation.HandTask;
import org.proofcut.core.shop.Shop;

/**
 * The form of one kind of task without a cutter, for when there is no job at all. A new kind is one
 * more of these in {@link HandForms}.
 *
 * @param kind as it stands in addresses, such as {@code carry}
 * @param title what the page calls it
 * @param says in a line what it is
 * @param asks the fields in a shop, in the order they are asked
 * @param maker reads the fields into the task
 */
public record HandForm(
    String kind,
    String title,
    String says,
    Function<Shop, List<Field>> asks,
    Function<Shop, Function<FormReader, Read<HandTask>>> maker) {

  /** All fields in this shop. */
  public List<Field> fields(Shop shop) {
    return asks.apply(shop);
  }

  /** What was typed, as the task that it asks for, or what is wrong with it. */
  public Read<HandTask> read(Map<String, String> typed, Shop shop) {
    var reader = new FormReader(typed, JobForm.unit(typed));
    if (fields(shop).contains(JobForm.UNIT)) {
      reader.choice(JobForm.UNIT);
    }
    return maker.apply(shop).apply(reader);
  }
}

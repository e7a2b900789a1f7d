package org.proofcut;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Says what a package is for and what it may know. Every {@code package-info.java} carries one; the
 * test {@code RoomsTest} reads them all and holds the code to them.
 *
 * <p>The rooms lie one after another as the work flows: what is there, what is wanted, how it is
 * cut, what can hurt, the checklist, the bench. A room may import only rooms with a lower {@link
 * #step()}, and of those only the ones it lists.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.PACKAGE)
public @interface Room {

  /** Place in the flow; a room imports only rooms with a lower step. */
  int step();

  /** The one question this room answers. */
  String question();

  /** What it hands on. */
  String gives();

  /** What is deliberately kept elsewhere, and where. */
  String notHere() default "";

  /** The rooms it may import, by their name below {@code org.proofcut}, such as "core.measure". */
  String[] mayImport() default {};
}

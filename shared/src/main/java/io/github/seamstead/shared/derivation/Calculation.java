package io.github.seamstead.shared.derivation;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Marks a method as a published calculation: its last parameter is a {@link Steps}, and its
 * derivation is re-evaluated by the tests. The value is the derivation's id, such as {@code
 * geometry.frame.pyramid}, unique in the library.
 */
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
public @interface Calculation {

  /**
   * The derivation's id: module, package and calculation in lower case, divided by full stops.
   *
   * @return the id
   */
  String value();
}

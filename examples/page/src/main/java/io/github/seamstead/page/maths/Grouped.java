package io.github.seamstead.page.maths;

import io.github.seamstead.page.build.Brackets;
import org.teavm.backend.javascript.spi.InjectedBy;
import org.teavm.interop.NoSideEffects;

/**
 * Keeps the right operand of a sum or product of doubles one value: the compiler of the page writes
 * {@code a + (b + c)} and {@code a * (b / c)} without the brackets, and rounding then differs.
 */
public final class Grouped {

  private Grouped() {}

  /**
   * Gives the value itself, in the script with brackets round it.
   *
   * @param value any number
   * @return the number
   */
  @NoSideEffects
  @InjectedBy(Brackets.class)
  public static native double of(double value);
}

package io.github.seamstead.materials.internal;

import io.github.seamstead.shared.sensitivity.Scatter;
import io.github.seamstead.shared.sensitivity.internal.UsualDoubt;
import io.github.seamstead.shared.source.Source;

/** How far a floor is usually laid off its plan. */
public final class LayingDoubt {

  /** Thickness of a mixed layer, in metres. */
  public static final UsualDoubt THICKNESS =
      new UsualDoubt(
          Scatter.normal(0.003), Source.commonPractice("screeding by hand over a rough base"));

  /** A price of loose material. */
  public static final UsualDoubt PRICE =
      new UsualDoubt(
          Scatter.evenPart(0.15),
          Source.commonPractice("quotations for loose material at short notice"));

  private LayingDoubt() {}
}

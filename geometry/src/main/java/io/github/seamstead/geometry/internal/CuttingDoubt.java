package io.github.seamstead.geometry.internal;

import io.github.seamstead.shared.sensitivity.Scatter;
import io.github.seamstead.shared.sensitivity.internal.UsualDoubt;
import io.github.seamstead.shared.source.Source;

/** How far cloth is usually cut off its lines. */
public final class CuttingDoubt {

  /** A seam allowance, in metres. */
  public static final UsualDoubt ALLOWANCE =
      new UsualDoubt(
          Scatter.normal(0.003), Source.commonPractice("marking out and cutting by hand"));

  private CuttingDoubt() {}
}

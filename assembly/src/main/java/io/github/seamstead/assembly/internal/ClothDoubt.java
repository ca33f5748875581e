package io.github.seamstead.assembly.internal;

import io.github.seamstead.shared.sensitivity.Scatter;
import io.github.seamstead.shared.sensitivity.internal.UsualDoubt;
import io.github.seamstead.shared.source.Source;

/** How far cloth usually weighs other than stated. */
public final class ClothDoubt {

  /** Mass of an area of reclaimed cloth. */
  public static final UsualDoubt MASS_PER_AREA =
      new UsualDoubt(
          Scatter.logNormal(0.05), Source.commonPractice("reclaimed cloth, worn and damp"));

  private ClothDoubt() {}
}

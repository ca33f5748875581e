package io.github.seamstead.assembly.internal;

import io.github.seamstead.shared.sensitivity.Scatter;
import io.github.seamstead.shared.sensitivity.internal.UsualDoubt;
import io.github.seamstead.shared.source.Source;

/** How far a design wind is usually off for one place. */
public final class WindDoubt {

  /** A gust speed read off a map, for a place between two of its zones. */
  public static final UsualDoubt GUST =
      new UsualDoubt(
          Scatter.logNormal(0.10),
          Source.commonPractice("a gust speed read off a map for the place"));

  /**
   * A mean wind read off a map, for a place between two of its zones; its pull grows as the square.
   */
  public static final UsualDoubt MEAN =
      new UsualDoubt(
          Scatter.logNormal(0.10),
          Source.commonPractice("a mean wind speed read off a map for the place"));

  private WindDoubt() {}
}

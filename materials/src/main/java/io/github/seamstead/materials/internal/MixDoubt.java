package io.github.seamstead.materials.internal;

import io.github.seamstead.shared.sensitivity.Scatter;
import io.github.seamstead.shared.sensitivity.internal.UsualDoubt;
import io.github.seamstead.shared.source.Source;

/** How far what goes into a mix is usually off. */
public final class MixDoubt {

  /** Water over dry mass of a soil as it lies, as a share. */
  public static final UsualDoubt SOIL_MOISTURE =
      new UsualDoubt(
          Scatter.normal(0.02), Source.commonPractice("soil from a heap, judged by hand"));

  /** Water over dry mass of an aggregate as it lies, as a share. */
  public static final UsualDoubt SAND_MOISTURE =
      new UsualDoubt(
          Scatter.normal(0.02), Source.commonPractice("sand from an open heap, judged by hand"));

  /**
   * The same where a sample was dried: the heap is wetter inside than where the sample was taken.
   */
  public static final UsualDoubt DRIED_MOISTURE =
      new UsualDoubt(
          Scatter.normal(0.01),
          Source.commonPractice("one dried sample of a heap that is not even"));

  /** Water over dry mass of a mix as it is laid. */
  public static final UsualDoubt WATER =
      new UsualDoubt(
          Scatter.logNormal(0.10),
          Source.commonPractice("water added by the bucket until it looks right"));

  private MixDoubt() {}
}

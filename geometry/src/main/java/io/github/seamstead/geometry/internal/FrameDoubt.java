package io.github.seamstead.geometry.internal;

import io.github.seamstead.shared.sensitivity.Scatter;
import io.github.seamstead.shared.sensitivity.internal.UsualDoubt;
import io.github.seamstead.shared.source.Source;

/** How far a frame is usually built off its measures. */
public final class FrameDoubt {

  /** A length of the frame, in metres. */
  public static final UsualDoubt LENGTH =
      new UsualDoubt(Scatter.normal(0.005), Source.commonPractice("poles cut and set by hand"));

  private FrameDoubt() {}
}

package io.github.seamstead.materials.internal;

import io.github.seamstead.shared.sensitivity.Scatter;
import io.github.seamstead.shared.sensitivity.internal.UsualDoubt;
import io.github.seamstead.shared.source.Source;

/** How far the air over a floor usually is other than expected. */
public final class WeatherDoubt {

  /** Temperature of the air, in kelvins. */
  public static final UsualDoubt TEMPERATURE =
      new UsualDoubt(
          Scatter.normal(2),
          Source.commonPractice("the mean of a month differs from year to year"));

  /** Relative humidity of the air, as a share. */
  public static final UsualDoubt HUMIDITY =
      new UsualDoubt(
          Scatter.normal(0.07),
          Source.commonPractice("the mean of a month differs from year to year"));

  /** Air speed over the floor: a factor of 1.4 is one standard deviation. */
  public static final UsualDoubt AIR_SPEED =
      new UsualDoubt(
          Scatter.logNormal(StrictMath.log(1.4)),
          Source.commonPractice("draught judged by the skin"));

  private WeatherDoubt() {}
}

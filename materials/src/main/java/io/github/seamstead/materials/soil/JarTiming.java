package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import java.util.List;

/**
 * When the marks of a jar test were made, counted from the end of shaking.
 *
 * @param sandTime when the top of the sand was marked, 20 s or more
 * @param siltTime when the top of the silt was marked, after the sand; more than the sand's
 * @param totalTime when the top of everything was marked, after the silt; more than the silt's, at
 *     most 60 days
 * @param source the chart that gives the times, or the builder's own watch
 */
public record JarTiming(double sandTime, double siltTime, double totalTime, Source source) {

  private static final double HOUR = 3600;

  /** Published times, which differ twelvefold for the silt mark. */
  public static final List<JarTiming> PUBLISHED =
      List.of(
          chart(40, 0.5 * HOUR, 24 * HOUR, "Grower question-and-answer page"),
          chart(45, 3 * HOUR, 24 * HOUR, "Grounds Maintenance, Determining soil texture"),
          chart(60, HOUR, 24 * HOUR, "Jar test article with equal layers example"),
          chart(60, 2 * HOUR, 48 * HOUR, "Guide after Clemson Cooperative Extension, jar test"),
          chart(60, 6 * HOUR, 24 * HOUR, "Montana State University, Soil Texture Jar Test"));

  public JarTiming {
    Args.within("time of the sand mark", sandTime, 20, 600, "s");
    Args.require(
        siltTime > sandTime && totalTime > siltTime && totalTime <= 60 * 24 * HOUR,
        "jar times",
        "sand "
            + Numbers.plain(sandTime)
            + " s, silt "
            + Numbers.plain(siltTime)
            + " s, total "
            + Numbers.plain(totalTime)
            + " s",
        "must rise (sand first, total last, at most 60 days)");
  }

  /**
   * Takes times read from one's own watch.
   *
   * @param sandTime when the top of the sand was marked, 20 s or more
   * @param siltTime when the top of the silt was marked
   * @param totalTime when the top of everything was marked
   * @return the timing
   */
  public static JarTiming measured(double sandTime, double siltTime, double totalTime) {
    return new JarTiming(
        sandTime, siltTime, totalTime, Source.commonPractice("times read from a watch"));
  }

  private static JarTiming chart(double sand, double silt, double total, String title) {
    return new JarTiming(sand, silt, total, Source.found("", title, "", "settling times"));
  }
}

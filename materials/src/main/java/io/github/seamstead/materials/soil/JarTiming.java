package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import java.util.List;

/**
 * When the marks of a jar test were made, counted from the end of shaking.
 *
 * @param sandSeconds when the top of the sand was marked, 20 s or more
 * @param siltSeconds when the top of the silt was marked, after the sand; more than the sand's
 * @param totalSeconds when the top of everything was marked, after the silt; more than the silt's,
 *     at most 60 days
 * @param source the chart that gives the times, or the builder's own watch
 */
public record JarTiming(
    double sandSeconds, double siltSeconds, double totalSeconds, Source source) {

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
    Args.within("time of the sand mark", sandSeconds, 20, 600, "s");
    Args.require(
        siltSeconds > sandSeconds && totalSeconds > siltSeconds && totalSeconds <= 60 * 24 * HOUR,
        "jar times",
        "sand "
            + Numbers.plain(sandSeconds)
            + " s, silt "
            + Numbers.plain(siltSeconds)
            + " s, total "
            + Numbers.plain(totalSeconds)
            + " s",
        "must rise (sand first, total last, at most 60 days)");
  }

  /**
   * Takes times read from one's own watch.
   *
   * @param sandSeconds when the top of the sand was marked, 20 s or more
   * @param siltSeconds when the top of the silt was marked
   * @param totalSeconds when the top of everything was marked
   * @return the timing
   */
  public static JarTiming measured(double sandSeconds, double siltSeconds, double totalSeconds) {
    return new JarTiming(
        sandSeconds, siltSeconds, totalSeconds, Source.commonPractice("times read from a watch"));
  }

  private static JarTiming chart(double sand, double silt, double total, String title) {
    return new JarTiming(sand, silt, total, Source.found("", title, "", "settling times"));
  }
}

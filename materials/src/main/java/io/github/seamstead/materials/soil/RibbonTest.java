package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import java.util.List;

/**
 * Ribbon test: moist soil (kneaded until it just stops sticking) pushed out between thumb and
 * forefinger, 3 to 5 mm thick, until it breaks under its own weight.
 *
 * <p>Likelihood: the length is normal about each chart's length for the clay content, with a
 * standard deviation of 5 mm plus 15 % (two people rarely agree better: common practice), cut off
 * at 0 and 200 mm and scaled to one between them, averaged over the charts; with probability 0.08
 * the test misleads and any such length is alike. The handbook warns that its clay figures must not
 * be turned into laboratory sizes or back, so one ribbon never gives one clay figure.
 *
 * @param length mean length of the ribbons, 0 to 0.2 m
 * @param charts the charts to read it with, one or more
 */
public record RibbonTest(double length, List<RibbonChart> charts) implements SoilEvidence {

  private static final double LONGEST = 0.2;
  private static final double MISLEADS = 0.08;
  private static final double BASE_DEVIATION = 0.005;
  private static final double RELATIVE_DEVIATION = 0.15;

  /** Scale of the logistic that follows the normal within 0.01. */
  private static final double LOGISTIC = 1.702;

  public RibbonTest {
    Args.require(
        length >= 0 && length <= LONGEST,
        "ribbon length",
        Numbers.plain(length) + " m",
        "must be from 0 m to 0.2 m (a ribbon breaks under its own weight",
        "charts end at 75 mm, and some print cm where mm is meant)");
    charts = Args.notEmpty("ribbon charts", charts);
  }

  /**
   * Reads a ribbon with all published charts, so that their spread is part of the doubt.
   *
   * @param length mean length, 0 to 0.2 m
   * @return the test
   */
  public static RibbonTest ofLength(double length) {
    return new RibbonTest(length, RibbonChart.ALL);
  }

  @Override
  public String label() {
    return "ribbon test: " + Numbers.significant(length * 1000, 3) + " mm";
  }

  @Override
  public List<Source> sources() {
    return charts.stream().map(RibbonChart::source).toList();
  }

  @Override
  public TextureLikelihood likelihood() {
    RibbonChart[] read = charts.toArray(new RibbonChart[0]);
    ClayLikelihood byClay =
        clay -> {
          double sum = 0;
          for (RibbonChart chart : read) {
            sum += density(chart.expectedLength(clay));
          }
          return (1 - MISLEADS) * sum / read.length + MISLEADS / LONGEST;
        };
    return byClay;
  }

  /** Density of the length about an expected one; no ribbon is shorter than 0 or told longer. */
  private double density(double expected) {
    double deviation = BASE_DEVIATION + RELATIVE_DEVIATION * expected;
    double told =
        Densities.logistic(LOGISTIC * (LONGEST - expected) / deviation)
            - Densities.logistic(-LOGISTIC * expected / deviation);
    return Densities.normal(length, expected, deviation) / told;
  }

  @Override
  public List<String> remarks() {
    return List.of(
        charts.size() == 1
            ? "Read with one chart only (" + charts.get(0).label() + "); others differ."
            : "Read with "
                + charts.size()
                + " published charts that disagree; the spread is kept.");
  }
}

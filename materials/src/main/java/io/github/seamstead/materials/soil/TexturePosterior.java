package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.uncertainty.Range;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What is known of a texture: a probability for each of the small triangles that the texture
 * triangle is cut into. Immutable; made by {@link SoilAssessment}.
 *
 * <p>All answers are sums over the grid: linear in the number of cells (10 000 at the usual step of
 * 1 % of mass), a region costs their sorting.
 */
public final class TexturePosterior {

  private static final double LOW = 0.05;
  private static final double HIGH = 0.95;
  private static final int BANDS = 10;

  private final TextureGrid grid;
  private final double[] weights;

  /** Takes weights that add to one. */
  TexturePosterior(TextureGrid grid, double[] weights) {
    this.grid = grid;
    this.weights = weights;
  }

  /** A function of a grid point. */
  @FunctionalInterface
  private interface Measure {
    double of(int cell);
  }

  /**
   * Gives the mean texture.
   *
   * @return the mean of each share
   */
  public Texture mean() {
    return Texture.ofClayAndSand(meanClay(), mean(grid::sand));
  }

  /**
   * Gives the most probable texture: the centroid of the most probable small triangle.
   *
   * @return the mode
   */
  public Texture mode() {
    int best = modeCell();
    return Texture.ofClayAndSand(grid.clay(best), grid.sand(best));
  }

  int modeCell() {
    int best = 0;
    for (int cell = 1; cell < weights.length; cell++) {
      if (weights[cell] > weights[best]) {
        best = cell;
      }
    }
    return best;
  }

  /**
   * Gives the clay share with its standard deviation.
   *
   * @return mean and standard deviation, as shares of the dry mass below 2 mm
   */
  public Uncertain clay() {
    return uncertain(grid::clay, meanClay());
  }

  /**
   * Gives the silt share with its standard deviation.
   *
   * @return mean and standard deviation
   */
  public Uncertain silt() {
    return uncertain(grid::silt, mean(grid::silt));
  }

  /**
   * Gives the sand share with its standard deviation.
   *
   * @return mean and standard deviation
   */
  public Uncertain sand() {
    return uncertain(grid::sand, mean(grid::sand));
  }

  /**
   * Gives the 5 % quantile, the mean and the 95 % quantile of the clay share.
   *
   * @return the range
   */
  public Range clayRange() {
    return range(grid::clay);
  }

  /**
   * Gives the 5 % quantile, the mean and the 95 % quantile of the silt share.
   *
   * @return the range
   */
  public Range siltRange() {
    return range(grid::silt);
  }

  /**
   * Gives the 5 % quantile, the mean and the 95 % quantile of the sand share.
   *
   * @return the range
   */
  public Range sandRange() {
    return range(grid::sand);
  }

  /**
   * Gives the probability that the clay share lies between two limits.
   *
   * @param least lower limit, 0 to 1
   * @param greatest upper limit, {@code least} to 1
   * @return 0 to 1
   */
  public double probabilityOfClay(double least, double greatest) {
    return expectation((c, si, sa) -> c >= least && c <= greatest ? 1 : 0);
  }

  /**
   * Gives the mean of any function of the texture.
   *
   * @param function the function
   * @return its posterior mean
   */
  public double expectation(TextureLikelihood function) {
    double sum = 0;
    for (int cell = 0; cell < weights.length; cell++) {
      if (weights[cell] > 0) {
        sum += weights[cell] * function.at(grid.clay(cell), grid.silt(cell), grid.sand(cell));
      }
    }
    return sum;
  }

  /** Gives a function's value in each cell of the texture triangle that has any weight, else 0. */
  double[] values(TextureLikelihood function) {
    double[] values = new double[weights.length];
    for (int cell = 0; cell < weights.length; cell++) {
      if (weights[cell] > 0) {
        values[cell] = function.at(grid.clay(cell), grid.silt(cell), grid.sand(cell));
      }
    }
    return values;
  }

  /**
   * Gives the probability of each texture class.
   *
   * @return the classes with more than 0.1 %, most probable first
   */
  public Map<TextureClass, Double> classProbabilities() {
    EnumMap<TextureClass, Double> sums = new EnumMap<>(TextureClass.class);
    for (int cell = 0; cell < weights.length; cell++) {
      TextureClass found = TextureClass.of(grid.clay(cell), grid.silt(cell), grid.sand(cell));
      sums.merge(found, weights[cell], Double::sum);
    }
    Map<TextureClass, Double> sorted = new LinkedHashMap<>();
    sums.entrySet().stream()
        .filter(entry -> entry.getValue() > 1e-3)
        .sorted(Map.Entry.<TextureClass, Double>comparingByValue().reversed())
        .forEach(entry -> sorted.put(entry.getKey(), entry.getValue()));
    return Collections.unmodifiableMap(sorted);
  }

  /**
   * Gives the smallest region that holds a probability.
   *
   * @param level the probability, above 0 and below 1, such as 0.8 or 0.95
   * @return the region with its outlines
   * @throws IllegalArgumentException if the level is out of range
   */
  public CredibleRegion region(double level) {
    Args.between("probability of the region", level, 0, 1, "");
    double[] sorted = weights.clone();
    Arrays.sort(sorted);
    double held = 0;
    int count = 0;
    double threshold = 0;
    while (held < level && count < sorted.length) {
      threshold = sorted[sorted.length - 1 - count];
      held += threshold;
      count++;
    }
    int inside = 0;
    double probability = 0;
    for (double weight : weights) {
      // Cells of exactly the threshold's weight come in together, so symmetry is kept.
      if (weight >= threshold) {
        inside++;
        probability += weight;
      }
    }
    return new CredibleRegion(
        level,
        Math.min(1, probability),
        (double) inside / weights.length,
        RegionTracer.outlines(grid, weights, threshold));
  }

  TextureGrid grid() {
    return grid;
  }

  double weight(int cell) {
    return weights[cell];
  }

  /** Contributions to the mean clay share of ten bands of clay; their sum is the mean. */
  double[] clayByBand() {
    double[] sums = new double[BANDS];
    for (int band = 0; band < BANDS; band++) {
      int last = firstCellOfBand(band + 1);
      for (int cell = firstCellOfBand(band); cell < last; cell++) {
        sums[band] += weights[cell] * grid.clay(cell);
      }
    }
    return sums;
  }

  int firstCellOfBand(int band) {
    int left = grid.steps() - band * grid.steps() / BANDS;
    // Rows above hold the triangle that remains, which has left^2 cells.
    return grid.size() - left * left;
  }

  private double meanClay() {
    double sum = 0;
    for (double part : clayByBand()) {
      sum += part;
    }
    return sum;
  }

  private double mean(Measure measure) {
    double sum = 0;
    for (int cell = 0; cell < weights.length; cell++) {
      sum += weights[cell] * measure.of(cell);
    }
    return sum;
  }

  private Uncertain uncertain(Measure measure, double mean) {
    double sum = 0;
    for (int cell = 0; cell < weights.length; cell++) {
      double off = measure.of(cell) - mean;
      sum += weights[cell] * off * off;
    }
    return new Uncertain(mean, Math.sqrt(sum));
  }

  private Range range(Measure measure) {
    double[] mass = new double[grid.steps()];
    for (int cell = 0; cell < weights.length; cell++) {
      // A cell lies within one step of every share, with its centroid at a third or two of it.
      mass[(int) (measure.of(cell) * mass.length)] += weights[cell];
    }
    double low = quantile(mass, LOW);
    double high = quantile(mass, HIGH);
    // With tests that contradict each other the mean may lie beyond; the range then reaches to it.
    double mean = mean(measure);
    return new Range(Math.min(low, mean), mean, Math.max(high, mean));
  }

  private static double quantile(double[] mass, double level) {
    double sum = 0;
    for (int i = 0; i < mass.length; i++) {
      if (mass[i] > 0 && sum + mass[i] >= level) {
        return (i + (level - sum) / mass[i]) / mass.length;
      }
      sum += mass[i];
    }
    return 1;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof TexturePosterior posterior && Arrays.equals(posterior.weights, weights);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(weights);
  }

  @Override
  public String toString() {
    return "TexturePosterior[" + mean() + "]";
  }
}

package io.github.seamstead.shared.sensitivity;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.work.Seeds;
import java.util.Collections;
import java.util.List;
import java.util.random.RandomGenerator;

/**
 * The points at which a model is run to find its sensitivity indices: two independent samples A and
 * B of equal size, and for each group of inputs i the sample A with the columns of that group from
 * B. A group is one doubtful thing; it may have several inputs of its own, such as the errors of
 * all readings of one tape.
 *
 * <p>Points are random, from a seed, and in Latin hypercubes: each input of A, and each of B, has
 * one value in each of as many equal strata as there are points. That keeps estimates unbiased and
 * takes the most of the scatter out of them. Cost: {@code N (k + 2)} runs for N points and k
 * groups.
 *
 * <pre>{@code
 * SensitivityDesign design = SensitivityDesign.of(3, 64, 1);
 * design.inputs(); // 3
 * }</pre>
 *
 * @param groups how many inputs each group has, each 1 or more; one or more groups of 1 to 10000
 *     inputs
 * @param points N, how many points each sample has; 2 to 1000000
 * @param seed the seed; equal seeds give equal points
 */
public record SensitivityDesign(List<Integer> groups, int points, long seed) {

  private static final String PURPOSE = "sensitivity";

  public SensitivityDesign {
    Args.require(!groups.isEmpty(), "groups", "none", "must be at least one");
    groups.forEach(size -> Args.within("inputs of a group", size, 1, 10_000));
    Args.within("points", points, 2, 1_000_000);
    groups = List.copyOf(groups);
  }

  /**
   * Makes a design whose groups have one input each.
   *
   * @param inputs how many inputs, 1 or more
   * @param points how many points each sample has
   * @param seed the seed
   * @return the design
   * @throws IllegalArgumentException if a size is out of range
   */
  public static SensitivityDesign of(int inputs, int points, long seed) {
    Args.within("inputs", inputs, 1, 10_000);
    return new SensitivityDesign(Collections.nCopies(inputs, 1), points, seed);
  }

  /**
   * Gives the number of all inputs.
   *
   * @return the sum over the groups
   */
  public int inputs() {
    return groups.stream().mapToInt(Integer::intValue).sum();
  }

  /**
   * Makes all points.
   *
   * @return the samples, each value between 0 and 1
   */
  public Samples samples() {
    return new Samples(this, hypercube(0), hypercube(1));
  }

  private double[][] hypercube(int sample) {
    int inputs = inputs();
    double[][] at = new double[points][inputs];
    for (int input = 0; input < inputs; input++) {
      RandomGenerator random = Seeds.stream(seed, PURPOSE, 2L * input + sample);
      int[] order = shuffled(points, random);
      for (int i = 0; i < points; i++) {
        at[i][input] = (order[i] + random.nextDouble()) / points;
      }
    }
    return at;
  }

  private static int[] shuffled(int count, RandomGenerator random) {
    int[] order = new int[count];
    for (int i = 0; i < count; i++) {
      int j = random.nextInt(i + 1);
      order[i] = order[j];
      order[j] = i;
    }
    return order;
  }

  /** The points of the samples A, B and A with a group from B. */
  public static final class Samples {

    private final SensitivityDesign design;
    private final double[][] a;
    private final double[][] b;

    private Samples(SensitivityDesign design, double[][] a, double[][] b) {
      this.design = design;
      this.a = a;
      this.b = b;
    }

    /**
     * Gives a point of the sample A.
     *
     * @param i the point, from 0
     * @return its inputs, each between 0 and 1
     */
    public double[] a(int i) {
      return a[i].clone();
    }

    /**
     * Gives a point of the sample B.
     *
     * @param i the point, from 0
     * @return its inputs, each between 0 and 1
     */
    public double[] b(int i) {
      return b[i].clone();
    }

    /**
     * Gives a point of the sample A with one group's inputs from B.
     *
     * @param group the group, from 0
     * @param i the point, from 0
     * @return its inputs, each between 0 and 1
     */
    public double[] mixed(int group, int i) {
      double[] point = a[i].clone();
      int from = 0;
      for (int g = 0; g < group; g++) {
        from += design.groups.get(g);
      }
      System.arraycopy(b[i], from, point, from, design.groups.get(group));
      return point;
    }
  }
}

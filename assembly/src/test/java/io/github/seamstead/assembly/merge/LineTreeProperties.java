package io.github.seamstead.assembly.merge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

class LineTreeProperties {

  /** Interval programme that shares nothing with the tree. */
  private static double interval(double[] w) {
    int n = w.length;
    double[] sum = new double[n + 1];
    for (int i = 0; i < n; i++) {
      sum[i + 1] = sum[i] + w[i];
    }
    double[][] best = new double[n][n];
    for (int length = 2; length <= n; length++) {
      for (int i = 0; i + length <= n; i++) {
        int j = i + length - 1;
        double least = Double.POSITIVE_INFINITY;
        for (int k = i; k < j; k++) {
          least = Math.min(least, best[i][k] + best[k + 1][j]);
        }
        best[i][j] = least + sum[j + 1] - sum[i];
      }
    }
    return n == 0 ? 0 : best[0][n - 1];
  }

  private static void check(double[] weights) {
    LineTree tree = LineTree.optimal(weights);
    double expected = interval(weights);
    assertThat(tree.cost()).isCloseTo(expected, within(1e-9 * Math.max(1, expected)));
    checkTree(tree, weights);
  }

  /** The merges form one tree over neighbours whose depths give the cost. */
  private static void checkTree(LineTree tree, double[] weights) {
    int n = weights.length;
    int[] first = new int[2 * n - 1];
    int[] last = new int[2 * n - 1];
    double[] weight = Arrays.copyOf(weights, 2 * n - 1);
    boolean[] used = new boolean[2 * n - 1];
    for (int i = 0; i < n; i++) {
      first[i] = i;
      last[i] = i;
    }
    double cost = 0;
    boolean sound = true;
    for (int m = 0; m < n - 1; m++) {
      int a = tree.left(m);
      int b = tree.right(m);
      sound &= !used[a] && !used[b] && first[b] == last[a] + 1;
      used[a] = true;
      used[b] = true;
      first[n + m] = first[a];
      last[n + m] = last[b];
      weight[n + m] = weight[a] + weight[b];
      cost += weight[n + m];
    }
    assertThat(sound).as("each part used once, beside its neighbour").isTrue();
    double byDepth = 0;
    for (int i = 0; i < n; i++) {
      byDepth += weights[i] * tree.depth(i);
    }
    assertThat(cost).isCloseTo(tree.cost(), within(1e-9 * Math.max(1, cost)));
    assertThat(byDepth).isCloseTo(tree.cost(), within(1e-9 * Math.max(1, cost)));
  }

  @Property(tries = 150)
  void agreesWithIntervalProgramme(
      @ForAll @Size(min = 1, max = 40) List<@IntRange(max = 20) Integer> weights) {
    check(weights.stream().mapToDouble(Number::doubleValue).toArray());
  }

  @Property(tries = 100)
  void agreesForAnyWeights(
      @ForAll @Size(min = 1, max = 30) List<@DoubleRange(min = 0, max = 1e4) Double> weights) {
    check(weights.stream().mapToDouble(Number::doubleValue).toArray());
  }

  @Property(tries = 60)
  void mirroringChangesNothing(
      @ForAll @Size(min = 1, max = 200) List<@IntRange(max = 50) Integer> weights) {
    double[] w = weights.stream().mapToDouble(Number::doubleValue).toArray();
    double[] mirrored = new double[w.length];
    for (int i = 0; i < w.length; i++) {
      mirrored[w.length - 1 - i] = w[i];
    }
    assertThat(LineTree.optimal(mirrored).cost()).isEqualTo(LineTree.optimal(w).cost());
  }

  @Example
  void everySmallCase() {
    for (int n = 1; n <= 6; n++) {
      int[] digits = new int[n];
      while (true) {
        check(Arrays.stream(digits).asDoubleStream().toArray());
        int at = 0;
        while (at < n && digits[at] == 3) {
          digits[at++] = 0;
        }
        if (at == n) {
          break;
        }
        digits[at]++;
      }
    }
  }

  /** Long falling rows fill many levels of the row and move sums far to the left. */
  @Example
  void longRowsOfEveryShape() {
    int n = 400;
    Random random = new Random(7);
    double[][] shapes = new double[6][n];
    for (int i = 0; i < n; i++) {
      shapes[0][i] = n - i;
      shapes[1][i] = i;
      shapes[2][i] = 1;
      shapes[3][i] = i % 2 == 0 ? 1000 - i : 1;
      shapes[4][i] = random.nextInt(1_000_000);
      shapes[5][i] = n - i + (i % 3 == 0 ? 200 : 0);
    }
    for (double[] shape : shapes) {
      check(shape);
    }
  }

  @Example
  void aHundredThousandFallingWeightsMakeATree() {
    int n = 100_000;
    double[] weights = new double[n];
    for (int i = 0; i < n; i++) {
      weights[i] = 2.0 * n - i;
    }
    checkTree(LineTree.optimal(weights), weights);
  }

  @Example
  void refusesBadWeights() {
    assertThatThrownBy(() -> LineTree.optimal(new double[0]))
        .hasMessage("weights: given none, must have at least one");
    assertThatThrownBy(() -> LineTree.optimal(new double[] {1, -2}))
        .hasMessage("weight 2: given -2, must be 0 or more");
    assertThatThrownBy(() -> LineTree.optimal(new double[] {Double.NaN}))
        .hasMessage("weight 1: given NaN, must be 0 or more");
  }
}

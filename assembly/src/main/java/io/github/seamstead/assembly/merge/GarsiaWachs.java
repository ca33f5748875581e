package io.github.seamstead.assembly.merge;

/** The two phases of Garsia and Wachs that give the depths of an optimal alphabetic tree. */
final class GarsiaWachs {

  private final double[] weight;
  private final int[] left;
  private final int[] right;
  private final int leaves;
  private int next;
  private double cost;

  private final double[] row;
  private final int[] node;
  private int length;

  GarsiaWachs(double[] weights) {
    this.leaves = weights.length;
    this.weight = new double[2 * leaves - 1];
    System.arraycopy(weights, 0, weight, 0, leaves);
    this.left = new int[2 * leaves - 1];
    this.right = new int[2 * leaves - 1];
    this.next = leaves;
    this.row = new double[leaves];
    this.node = new int[leaves];
    combine();
  }

  double cost() {
    return cost;
  }

  /**
   * Gives the depth of each leaf in the combination tree, which an alphabetic tree can have too.
   */
  int[] depths() {
    int[] depth = new int[2 * leaves - 1];
    for (int i = 2 * leaves - 2; i >= leaves; i--) {
      depth[left[i]] = depth[i] + 1;
      depth[right[i]] = depth[i] + 1;
    }
    return java.util.Arrays.copyOf(depth, leaves);
  }

  private void combine() {
    for (int i = 0; i < leaves; i++) {
      while (length >= 2 && row[length - 2] <= weight[i]) {
        join(length - 2);
      }
      row[length] = weight[i];
      node[length++] = i;
    }
    while (length > 1) {
      join(length - 2);
    }
  }

  /**
   * Joins the items at a place and the next, and moves the sum left behind the first not lighter.
   */
  private void join(int place) {
    double sum = row[place] + row[place + 1];
    cost += sum;
    int made = next++;
    weight[made] = sum;
    left[made] = node[place];
    right[made] = node[place + 1];
    System.arraycopy(row, place + 2, row, place + 1, length - place - 2);
    System.arraycopy(node, place + 2, node, place + 1, length - place - 2);
    length--;
    int at = place;
    while (at > 0 && row[at - 1] < sum) {
      row[at] = row[at - 1];
      node[at] = node[at - 1];
      at--;
    }
    row[at] = sum;
    node[at] = made;
    while (at >= 2 && row[at - 2] <= row[at]) {
      int fromEnd = length - at;
      join(at - 2);
      at = length - fromEnd;
    }
  }
}

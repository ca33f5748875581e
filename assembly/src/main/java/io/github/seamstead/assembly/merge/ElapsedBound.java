package io.github.seamstead.assembly.merge;

/**
 * A time that no order can beat, from a state on: each merge waits for both its parts, and all that
 * is below it must be done by the teams first. Costs O(s^3) for s spans.
 *
 * <p>For a span of two parts, B = own + max(B_left, B_right, now + (W_left + W_right) / teams), the
 * least over all ways to split, with W the least work below.
 */
final class ElapsedBound {

  private final Groups groups;
  private final PlanOptions options;
  private final double leastMerge;

  ElapsedBound(Groups groups, PlanOptions options) {
    this.groups = groups;
    this.options = options;
    double least = Double.POSITIVE_INFINITY;
    int joints = groups.closed ? groups.size : groups.size - 1;
    for (int i = 0; i < joints; i++) {
      double mass = groups.size > 1 ? groups.mass(i, 2) : 0;
      least = Math.min(least, options.times().time(groups.lengthAfter(i), mass));
    }
    this.leastMerge = least;
  }

  /**
   * Computes the bound.
   *
   * @param first first group of each span, in order
   * @param count groups of each span
   * @param release when each span is free, in seconds
   * @param now the time, in seconds
   * @return seconds from the start to the end of the closing joint, at least
   */
  double of(int[] first, int[] count, double[] release, double now) {
    int s = first.length;
    double[][] bound = new double[s][s + 1];
    double[][] work = new double[s][s + 1];
    int[][] size = new int[s][s + 1];
    for (int a = 0; a < s; a++) {
      bound[a][1] = Math.max(now, release[a]);
      work[a][1] = Math.max(0, release[a] - now);
      size[a][1] = count[a];
    }
    for (int length = 2; length <= s; length++) {
      int starts = groups.closed ? s : s - length + 1;
      for (int a = 0; a < starts; a++) {
        int last = a + length - 1 < s ? a + length - 1 : a + length - 1 - s;
        size[a][length] = size[a][length - 1] + count[last];
        double mass = groups.mass(first[a], size[a][length]);
        double leastBound = Double.POSITIVE_INFINITY;
        double leastWork = Double.POSITIVE_INFINITY;
        for (int part = 1; part < length; part++) {
          int b = a + part < s ? a + part : a + part - s;
          int middle = a + part - 1 < s ? a + part - 1 : a + part - 1 - s;
          double own = options.times().time(lengthBehind(first[middle], count[middle]), mass);
          double below = work[a][part] + work[b][length - part];
          leastWork = Math.min(leastWork, below + own);
          double begin = Math.max(bound[a][part], bound[b][length - part]);
          leastBound = Math.min(leastBound, own + Math.max(begin, now + below / options.teams()));
        }
        bound[a][length] = leastBound;
        work[a][length] = leastWork;
      }
    }
    return closed(first, count, bound, now);
  }

  private double closed(int[] first, int[] count, double[][] bound, double now) {
    int s = first.length;
    double waves = s > 1 ? now + waves(s) * leastMerge : now;
    if (!groups.closed) {
      return Math.max(bound[0][s], waves);
    }
    double whole = groups.mass(0, groups.size);
    double least = Double.POSITIVE_INFINITY;
    for (int a = 0; a < s; a++) {
      int before = (a + s - 1) % s;
      int joint = groups.jointAfter(first[before] + count[before] - 1);
      if (options.closingJoint().isEmpty() || options.closingJoint().get() == joint) {
        double closing = options.times().time(lengthBehind(first[before], count[before]), whole);
        least = Math.min(least, Math.max(bound[a][s], waves) + closing);
      }
    }
    return least;
  }

  private double lengthBehind(int first, int count) {
    return groups.lengthAfter((first + count - 1) % groups.size);
  }

  /** Counts rounds in which each team joins one pair: no order of equal merges needs fewer. */
  private int waves(int spans) {
    int rounds = 0;
    for (int left = spans; left > 1; rounds++) {
      left -= Math.min(options.teams(), left / 2);
    }
    return rounds;
  }
}

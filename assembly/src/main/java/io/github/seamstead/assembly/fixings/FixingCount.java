package io.github.seamstead.assembly.fixings;

import io.github.seamstead.shared.check.Args;
import java.util.List;

/**
 * Fixings of all joints.
 *
 * <pre>{@code
 * FixingPattern staples = FixingPattern.of(FixingKind.STAPLES, 0.05, 2);
 * FixingCount count = FixingCount.of(staples, List.of(2.5, 2.5, 3.0), 0.1, 1000);
 * count.total(); // 326
 * }</pre>
 *
 * @param pattern how they stand
 * @param perJoint fixings of each joint, in the order of the joints
 * @param total fixings of all joints, without spare
 * @param item what to buy
 */
public record FixingCount(
    FixingPattern pattern, List<Integer> perJoint, int total, ShoppingItem item) {

  public FixingCount {
    perJoint = List.copyOf(perJoint);
  }

  /**
   * Counts the fixings of all joints, in time linear in the number of joints.
   *
   * @param pattern how they stand
   * @param jointLength length of each joint, in metres, each greater than 0, at least one
   * @param spare spare as a part of the need, 0 to 1
   * @param packSize fixings in a pack, 1 or more
   * @return counts and what to buy
   * @throws IllegalArgumentException if a number is out of range
   */
  public static FixingCount of(
      FixingPattern pattern, List<Double> jointLength, double spare, int packSize) {
    Args.notEmpty("joints", jointLength);
    Args.within("pack of " + pattern.kind().label(), packSize, 1, Integer.MAX_VALUE);
    List<Integer> counts = jointLength.stream().map(l -> (int) pattern.count(l)).toList();
    long sum = counts.stream().mapToLong(Integer::longValue).sum();
    Args.agree(
        sum <= Integer.MAX_VALUE,
        pattern.kind().label() + " of all joints: " + sum,
        "must be at most 2147483647");
    return new FixingCount(
        pattern,
        counts,
        (int) sum,
        ShoppingItem.of(pattern.kind().label(), "piece", (double) sum, spare, packSize));
  }
}

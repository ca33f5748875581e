package io.github.seamstead.materials.floor;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How long each joint waits until its second side is laid, against the time in which its first side
 * dries.
 *
 * @param joints one entry a joint between neighbouring sectors
 * @param longestWait the longest wait, in seconds
 * @param openTime how long an edge stays wet enough to join, in seconds
 * @param warning what to do if an edge may dry first
 */
public record JointTiming(
    List<Joint> joints, double longestWait, Range openTime, Optional<String> warning) {

  public JointTiming {
    joints = List.copyOf(joints);
  }

  /**
   * One joint.
   *
   * @param firstLaid number of the sector laid first
   * @param secondLaid number of the sector laid against it
   * @param waitTime from the first load of one to the last load of the other, in seconds
   */
  public record Joint(int firstLaid, int secondLaid, double waitTime) {}

  /**
   * Times the joints. The wait counts from the first load of the earlier sector to the last load of
   * the later one, which is the cautious reading. Linear in the sectors.
   *
   * @param sectors the sectors
   * @param plan the loads of the layer
   * @param secondsPerBatch time from load to load, in seconds, greater than 0
   * @param openTime how long a cut edge stays wet enough to join, in seconds: low, likely, high
   * @return the waits and a warning where the longest is beyond the low end of the open time
   * @throws IllegalArgumentException if a time is not positive
   */
  public static JointTiming of(
      SectorPlan sectors, BatchPlan plan, double secondsPerBatch, Range openTime) {
    Args.positive("time from load to load", secondsPerBatch, "s");
    Args.positive("open time", openTime.low(), "s");
    int count = sectors.sectors().size();
    SectorBatches[] rows = new SectorBatches[count];
    for (SectorBatches row : sectors.batches(plan)) {
      rows[row.sector().number() - 1] = row;
    }
    List<Joint> joints = new ArrayList<>();
    double longest = 0;
    for (int i = 0; i < count; i++) {
      SectorBatches a = rows[i];
      SectorBatches b = rows[(i + 1) % count];
      boolean aFirst = a.sector().order() < b.sector().order();
      SectorBatches first = aFirst ? a : b;
      SectorBatches second = aFirst ? b : a;
      double wait = (second.until() - first.from()) * secondsPerBatch;
      longest = Math.max(longest, wait);
      joints.add(new Joint(first.sector().number(), second.sector().number(), wait));
    }
    return new JointTiming(
        joints, longest, openTime, warning(plan.quantity().layer().name(), longest, openTime));
  }

  private static Optional<String> warning(String layer, double longest, Range openTime) {
    if (longest <= openTime.low()) {
      return Optional.empty();
    }
    String sure = longest > openTime.high() ? "will" : "may";
    return Optional.of(
        layer
            + ": an open edge waits up to "
            + Numbers.significant(longest / 60, 2)
            + " min and "
            + sure
            + " dry before it is joined (open "
            + Numbers.significant(openTime.low() / 60, 2)
            + " to "
            + Numbers.significant(openTime.high() / 60, 2)
            + " min): cover the edge with a damp cloth, mist it before joining, put more people on"
            + " the mixer or cut narrower sectors");
  }
}

package io.github.seamstead.assembly.merge;

import io.github.seamstead.assembly.ring.Load;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;

/** Words for a wish that no order of joining can meet. */
final class Refusals {

  private Refusals() {}

  static String kilograms(double kg) {
    return Numbers.significant(kg, 4) + " kg";
  }

  /** Names the limit that the whole cover breaks, which the last step of any order must meet. */
  static String otherThanMass(Groups groups, PlanOptions options) {
    Load whole = groups.load(0, groups.size);
    Limits limits = options.limits();
    List<String> broken = new ArrayList<>();
    limits
        .floorArea()
        .ifPresent(
            floor -> {
              if (whole.laidArea() > floor) {
                broken.add(
                    "the whole cover is laid on "
                        + Numbers.significant(whole.laidArea(), 4)
                        + " m2, the floor is "
                        + Numbers.significant(floor, 4)
                        + " m2");
              }
            });
    double bulk = limits.carriedAtClosing(whole.bulkVolume());
    limits
        .carriedBulk()
        .ifPresent(
            most -> {
              if (groups.closed && bulk > most) {
                broken.add(
                    "the closing joint moves "
                        + Numbers.significant(bulk, 4)
                        + " m3, the limit is "
                        + Numbers.significant(most, 4)
                        + " m3");
              }
            });
    limits
        .reach()
        .ifPresent(
            reach -> {
              if (groups.closed && whole.bunch() / 2 > reach) {
                broken.add(
                    "the closing joint bunches "
                        + Numbers.significant(whole.bunch() / 2, 4)
                        + " m, the reach is "
                        + Numbers.significant(reach, 4)
                        + " m");
              }
            });
    return "no order of joining keeps the limits: "
        + (broken.isEmpty()
            ? "together, or with the first groups and the closing joint, they leave no order"
            : String.join("; ", broken));
  }
}

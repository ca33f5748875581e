package io.github.seamstead.materials.floor;

import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The page that hangs at the mixer: what goes into each load, in the order of loading.
 *
 * @param layer the layer's name
 * @param mix the mix's name
 * @param lines what to tip in, in the order of loading: sand, then soil, fibre last
 * @param water to add, in m³, half before and the rest by feel; 0 where the parts are too wet
 * @param excessWater that the parts bring above what is wanted, in m³
 * @param loads likely number of loads
 * @param compactedVolume what a load fills in the floor, in m³
 * @param clay what rounding to buckets does to the clay; empty where the clay is not known
 * @param order plain sentences: the order of loading
 * @param feel what a good load feels like
 * @param tooWet what to do with a load that is too wet
 * @param tooDry what to do with a load that is too dry
 */
public record BatchCard(
    String layer,
    String mix,
    List<Line> lines,
    double water,
    double excessWater,
    int loads,
    double compactedVolume,
    Optional<BatchClay> clay,
    List<String> order,
    String feel,
    String tooWet,
    String tooDry) {

  private static final double LITRES_PER_CUBIC_METRE = 1000;

  public BatchCard {
    lines = List.copyOf(lines);
    order = List.copyOf(order);
  }

  /**
   * One line of the card.
   *
   * @param material what to tip in
   * @param buckets in words, such as {@code 3½}
   * @param mass mass of these buckets as they lie
   * @param fibre true if it goes in last, by handfuls
   */
  public record Line(String material, String buckets, double mass, boolean fibre) {}

  /**
   * Writes the card of a plan whose clay is not known.
   *
   * @param plan the loads of a layer
   * @return the card
   */
  public static BatchCard of(BatchPlan plan) {
    return of(plan, Optional.empty());
  }

  /**
   * Writes the card of a plan.
   *
   * @param plan the loads of a layer
   * @param clay the clay of its load
   * @return the card
   */
  public static BatchCard of(BatchPlan plan, Optional<BatchClay> clay) {
    Batch batch = plan.batch();
    boolean coat = plan.quantity().layer().role() == LayerRole.EARTH_COAT;
    return new BatchCard(
        plan.quantity().layer().name(),
        batch.mix().name(),
        lines(batch),
        batch.water() / LITRES_PER_CUBIC_METRE,
        batch.excessWater() / LITRES_PER_CUBIC_METRE,
        plan.likelyCount(),
        batch.compactedVolume().likely(),
        clay,
        order(batch),
        coat
            ? "Right when it slides off the shovel in one piece and holds its edge; then stop"
                + " adding water."
            : "Right when a squeezed ball holds, leaves the palm hardly damp and breaks into a few"
                + " lumps when dropped from the hip.",
        coat
            ? "Too wet when it slumps or water stands on it: put half a load of dry parts in the"
                + " same proportion into it, never sand alone; mix the next load stiffer."
            : "Too wet when the ball smears, sticks to the palm or stays whole: spread it thin and"
                + " turn it until it crumbles; rammed wet it heaves under the rammer.",
        coat
            ? "Too dry when the trowel drags and it tears: add water by the cup and mix on for two"
                + " minutes before the next cup."
            : "Too dry when the ball falls apart in the hand: sprinkle it with a can, turn it and"
                + " try again after some minutes.");
  }

  /**
   * Tells whether the parts bring more water than is wanted.
   *
   * @return true if no water may be added
   */
  public boolean partsTooWet() {
    return excessWater > 0;
  }

  private static List<Line> lines(Batch batch) {
    List<BatchPart> parts = new ArrayList<>(batch.parts());
    // The recipe names the soil first; the drum wants the sand before it and the straw last.
    parts.sort((a, b) -> Integer.compare(place(batch, a), place(batch, b)));
    List<Line> lines = new ArrayList<>();
    for (BatchPart part : parts) {
      lines.add(
          new Line(
              part.part().name(),
              buckets(part.part().isFibre() ? quarters(part.buckets()) : part.buckets()),
              part.moistMass(),
              part.part().isFibre()));
    }
    return lines;
  }

  /** Handfuls are told to a quarter of a bucket. */
  private static double quarters(double buckets) {
    return Math.max(0.25, Math.round(buckets * 4) / 4.0);
  }

  private static int place(Batch batch, BatchPart part) {
    if (part.part().isFibre()) {
      return batch.parts().size();
    }
    return -batch.parts().indexOf(part);
  }

  private static List<String> order(Batch batch) {
    List<String> order = new ArrayList<>();
    boolean fibred = batch.parts().stream().anyMatch(part -> part.part().isFibre());
    if (batch.excessWater() > 0) {
      order.add("The parts are too wet: add no water.");
      order.add("Spread the soil or the sand to dry first, turn it, and measure its moisture.");
      order.add(fibred ? "Sand, then soil; fibre last, by handfuls." : "Sand, then soil.");
    } else {
      order.add(
          "Half the water first, then sand, then soil"
              + (fibred ? "; fibre last, by handfuls." : "."));
      order.add("The rest of the water by feel.");
    }
    order.add(
        "Soil in lumps balls up in a turning drum: soak it the day before, or crush and sieve it"
            + " dry.");
    return order;
  }

  /** Whole buckets with a quarter, half or three quarters as people write them. */
  static String buckets(double count) {
    double whole = Math.floor(count + 1e-9);
    double rest = count - whole;
    String fraction = "";
    if (Math.abs(rest - 0.25) < 1e-9) {
      fraction = "¼";
    } else if (Math.abs(rest - 0.5) < 1e-9) {
      fraction = "½";
    } else if (Math.abs(rest - 0.75) < 1e-9) {
      fraction = "¾";
    } else if (rest > 1e-9) {
      return Numbers.significant(count, 3);
    }
    boolean hidden = whole == 0 && !fraction.isEmpty();
    return (hidden ? "" : Numbers.plain(whole)) + fraction;
  }
}

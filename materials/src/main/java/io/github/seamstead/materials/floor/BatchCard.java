package io.github.seamstead.materials.floor;

import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;

/**
 * The page that hangs at the mixer: what goes into each load, in buckets and litres.
 *
 * @param title the layer
 * @param lines what to tip in, in the order of loading
 * @param water litres to add, half before and the rest by feel
 * @param loads likely number of loads
 * @param compactedVolume what a load fills, in litres
 * @param notes plain sentences: order of loading, the feel of a good load, parts too wet
 */
public record BatchCard(
    String title,
    List<Line> lines,
    double water,
    int loads,
    double compactedVolume,
    List<String> notes) {

  /**
   * Copies the lists.
   *
   * @param title the layer
   * @param lines what to tip in
   * @param water litres
   * @param loads number of loads
   * @param compactedVolume in litres
   * @param notes plain sentences
   */
  public BatchCard {
    lines = List.copyOf(lines);
    notes = List.copyOf(notes);
  }

  /**
   * One line of the card.
   *
   * @param material what to tip in
   * @param buckets in words, such as {@code 3½}
   * @param kilograms mass of these buckets as they lie
   */
  public record Line(String material, String buckets, double kilograms) {}

  /**
   * Writes the card of a plan.
   *
   * @param plan the loads of a layer
   * @return the card
   */
  public static BatchCard of(BatchPlan plan) {
    Batch batch = plan.batch();
    List<Line> lines = new ArrayList<>();
    for (BatchPart part : batch.parts()) {
      lines.add(new Line(part.part().name(), buckets(part.buckets()), part.moistMass()));
    }
    boolean wet = plan.quantity().layer().role() == LayerRole.EARTH_COAT;
    List<String> notes = new ArrayList<>();
    notes.add("Half the water first, then sand, then soil; fibre last, by handfuls.");
    notes.add(
        wet
            ? "Right when it slides off the shovel in one piece and holds its edge; then stop"
                + " adding water."
            : "Right when a squeezed ball holds and breaks into a few lumps when dropped from the"
                + " hip.");
    if (batch.excessWater() > 0) {
      notes.add(
          "The parts are too wet by "
              + Numbers.significant(batch.excessWater(), 2)
              + " L a load: add no water, spread the soil or the sand to dry first.");
    }
    return new BatchCard(
        plan.quantity().layer().name() + ": " + batch.mix().name(),
        lines,
        batch.water(),
        plan.likelyCount(),
        batch.compactedVolume().likely() * 1000,
        notes);
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

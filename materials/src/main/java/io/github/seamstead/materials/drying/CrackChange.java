package io.github.seamstead.materials.drying;

import io.github.seamstead.materials.mix.Shrinkage;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.ArrayList;
import java.util.List;

/**
 * What a change of a coat would do to its cracks, each reckoned anew.
 *
 * @param what the change, in the crew's words
 * @param widthPerMetre crack width in a metre of floor after it, in m/m: low, likely, high
 * @param slipFactor slip for the cracks after it over that before it, likely
 */
public record CrackChange(String what, Range widthPerMetre, double slipFactor) {

  /** Sand that is added in a try, in parts by the bucket. */
  private static final double MORE_SAND = 0.5;

  private static final double THICK = 0.020;

  /**
   * Reckons the changes that a crew can make.
   *
   * <p>More sand thins the soil out: the share of the soil falls and with it the free shrinkage
   * ({@link Shrinkage#ofMix}). Straw lets the coat stretch further. Slow drying gives it time to
   * creep, so that it takes the high end of its stretch. Two coats of half the thickness crack as
   * wide for each metre, but half as deep, and the second fills what the first has opened (all
   * common practice).
   *
   * @param now the cracking of the coat as it is planned
   * @param soilShare share of the soil in its dry mass, more than 0, at most 1
   * @param sandParts parts of sand to one of soil by the bucket, 0 to 20
   * @param fibred true if the coat has fibre
   * @param coatThickness in metres, greater than 0
   * @return the changes, in the order in which they are tried
   * @throws IllegalArgumentException if a value is out of range
   */
  public static List<CrackChange> of(
      Cracking now, double soilShare, double sandParts, boolean fibred, double coatThickness) {
    Args.positive("share of the soil", soilShare, "");
    Args.within("share of the soil", soilShare, 0, 1, "");
    Args.within("parts of sand", sandParts, 0, 20, "");
    Args.positive("coat thickness", coatThickness, "m");
    List<CrackChange> changes = new ArrayList<>();
    if (sandParts > 0) {
      double sandPerSoil = (1 / soilShare - 1) / sandParts;
      double leaner = 1 / (1 + (sandParts + MORE_SAND) * sandPerSoil);
      changes.add(
          changed("half a bucket more of sand", now, thinned(leaner / soilShare), now.stretch()));
    }
    if (!fibred) {
      changes.add(changed("chopped straw", now, Range.exactly(1), Cracking.WITH_FIBRE));
    }
    Range crept = new Range(now.stretch().likely(), now.stretch().high(), now.stretch().high());
    if (now.stretch().high() > 0) {
      changes.add(
          changed("drying slowly, in shade and without draught", now, Range.exactly(1), crept));
    }
    if (coatThickness > THICK) {
      changes.add(new CrackChange("two coats of half the thickness", now.widthPerMetre(), 0.5));
    }
    return List.copyOf(changes);
  }

  /** How the free shrinkage falls with the share of soil: squared, to the 1.5th, in proportion. */
  private static Range thinned(double share) {
    return Shrinkage.ofMix(1e-3, share).times(1e3);
  }

  private static CrackChange changed(String what, Cracking now, Range factor, Range stretch) {
    Range width = now.widthWith(factor, stretch);
    double before = now.crackShare().likely();
    double after = Cracking.share(width.likely());
    return new CrackChange(what, width, before > 0 ? after / before : 1);
  }
}

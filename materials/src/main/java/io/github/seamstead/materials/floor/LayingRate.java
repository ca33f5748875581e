package io.github.seamstead.materials.floor;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.uncertainty.Range;

/**
 * Person-hours to wheel, spread, ram and level a layer by hand: a share that grows with what has to
 * be moved, and one that grows with the surface to be made even.
 *
 * @param perCubicMetre for a loose cubic metre; 0 to 100 h
 * @param perSquareMetre for a square metre of surface; 0 to 20 h
 */
public record LayingRate(Range perCubicMetre, Range perSquareMetre) {

  /**
   * Loading sand 1.0, wheeling up to 50 m, spreading and levelling 1.25 h/m³, blinding 2 to 2.4.
   */
  public static final Source MOVING =
      Source.found("", "Labour factors, a quantity-surveying school", "", "excavation, filling");

  /** Filling by hand with compaction in layers up to 100 mm: 1.2 to 1.4 h/m³. */
  public static final Source RAMMING =
      Source.found("Guild of Project Controls", "Hand fill and compact", "", "layer to 100 mm");

  /** Grading a surface by hand 0.45, finishing it 0.55, grading for a slab 1.30 h/m². */
  public static final Source SURFACE =
      Source.found("", "Earthworks man-hours, two-page table", "", "grading and finishing");

  public LayingRate {
    Args.within("hours for a cubic metre (low)", perCubicMetre.low(), 0, 100, "h/m3");
    Args.within("hours for a cubic metre (high)", perCubicMetre.high(), 0, 100, "h/m3");
    Args.within("hours for a square metre (low)", perSquareMetre.low(), 0, 20, "h/m2");
    Args.within("hours for a square metre (high)", perSquareMetre.high(), 0, 20, "h/m2");
  }

  /**
   * Gives the rates of beginners. The likely ones are those of {@link #MOVING}, {@link #RAMMING}
   * and {@link #SURFACE} put together; the ends are half and about twice (common practice).
   *
   * @param role what the layer does
   * @return loose layers are tipped and levelled, a dry pack is rammed and screeded, a coat is
   *     screeded and trowelled
   */
  public static LayingRate of(LayerRole role) {
    return switch (role) {
      case LEVELLING, CAPILLARY_BREAK ->
          new LayingRate(new Range(1.4, 2.3, 3.5), new Range(0.05, 0.15, 0.45));
      case DRY_PACK -> new LayingRate(new Range(1.5, 2.7, 5.0), new Range(0.15, 0.45, 0.9));
      case EARTH_COAT -> new LayingRate(new Range(1.0, 2.0, 4.0), new Range(0.4, 0.8, 1.5));
    };
  }
}

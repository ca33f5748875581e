package io.github.seamstead.materials.floor;

import static io.github.seamstead.shared.quantity.PhysicalConstants.STANDARD_GRAVITY;

import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.caution.Hazard;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.sensitivity.Propagation;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.List;
import java.util.Optional;

/**
 * How far a floor may sink on turf or topsoil that was left under it. A bounded guess, not a soil
 * investigation.
 *
 * @param squeeze by the load: thickness × m_v × load, at most half the thickness, in metres
 * @param decay by roots and humus that rot away, in metres
 * @param total both, in metres
 * @param advice plain sentences
 */
public record Settlement(Range squeeze, Range decay, Range total, List<String> advice) {

  /** Volume compressibility of turf and topsoil, in m²/N (0.3 to 2 m²/MN). */
  public static final Range COMPRESSIBILITY = new Range(0.3e-6, 0.8e-6, 2.0e-6);

  /** Share of the thickness that rots away in time. */
  private static final Range ROT = new Range(0.03, 0.12, 0.35);

  private static final double CLOSED = 0.5;
  private static final double STRIP_ABOVE = 0.003;
  private static final Source COMPRESSION =
      Source.fromMemory(
          "Head",
          "Manual of Soil Laboratory Testing",
          "",
          "organic soils: m_v above 0.3, peat above 1.5 m2/MN");

  public Settlement {
    advice = List.copyOf(advice);
  }

  /**
   * Bounds the settlement.
   *
   * @param organicThickness of turf and topsoil left in place, in metres, 0 to 2
   * @param massPerArea of the floor above it, in kg/m², 0 to 5000
   * @return squeeze and decay with their ranges
   * @throws IllegalArgumentException if a value is out of range
   */
  public static Settlement of(double organicThickness, double massPerArea) {
    Range squeeze =
        new Range(
            squeeze(organicThickness, massPerArea, COMPRESSIBILITY.low(), Steps.none()),
            squeeze(organicThickness, massPerArea, COMPRESSIBILITY.likely(), Steps.none()),
            squeeze(organicThickness, massPerArea, COMPRESSIBILITY.high(), Steps.none()));
    Range decay = ROT.times(organicThickness);
    Range total = squeeze.plus(decay);
    return new Settlement(squeeze, decay, total, advice(organicThickness, total));
  }

  private static List<String> advice(double thickness, Range total) {
    if (thickness == 0) {
      return List.of("stripped to subsoil: ram it damp and lay the levelling layer at once");
    }
    String practice =
        "or load it and wait through a wet season; lay the coats when two levels read four weeks"
            + " apart differ by less than 1 mm (common practice)";
    return total.high() > STRIP_ABOVE
        ? List.of("strip turf and topsoil to subsoil before the first layer", practice)
        : List.of("thin enough to leave, but turf rots: strip it where you can", practice);
  }

  /**
   * Computes the squeeze: t × min(m_v g m, 0.5).
   *
   * @param organicThickness in metres, 0 to 2
   * @param massPerArea in kg/m², 0 to 5000
   * @param compressibility m_v, in m²/N, 0 or more
   * @param steps receives the load and the squeeze
   * @return in metres
   * @throws IllegalArgumentException if a value is out of range
   */
  @Calculation("materials.floor.settlement")
  public static double squeeze(
      double organicThickness, double massPerArea, double compressibility, Steps steps) {
    Args.within("organic layer", organicThickness, 0, 2, "m");
    Args.within("mass of the floor", massPerArea, 0, 5000, "kg/m2");
    Args.notNegative("compressibility", compressibility, "m2/N");
    double load =
        steps
            .step("p", "load")
            .formula("g * m")
            .with("m", massPerArea, "kg/m2")
            .with("g", STANDARD_GRAVITY, "m/s2")
            .gives(STANDARD_GRAVITY * massPerArea, "Pa");
    return steps
        .step("s", "squeeze by the load, at most half the thickness")
        .formula("t * min(m_v * p, 0.5)")
        .with("t", organicThickness, "m")
        .with("m_v", compressibility, "m2/N")
        .with("p", load, "Pa")
        .from(COMPRESSION)
        .gives(organicThickness * Math.min(compressibility * load, CLOSED), "m");
  }

  /**
   * Adds up the doubt of squeeze and rot together: of the compressibility and of the share that
   * rots.
   *
   * @param organicThickness in metres, 0 to 2
   * @param massPerArea in kg/m², 0 to 5000
   * @param steps receives what each number does and its share
   * @return the doubt, in metres
   * @throws IllegalArgumentException if a value is out of range
   */
  @Calculation("materials.floor.settlement-doubt")
  public static Propagation.Doubt doubt(double organicThickness, double massPerArea, Steps steps) {
    Args.within("organic layer", organicThickness, 0, 2, "m");
    Args.within("mass of the floor", massPerArea, 0, 5000, "kg/m2");
    return Propagation.of("s", "squeeze and rot", "t * (min(m_v * 9.80665 * m, 0.5) + q)", "m")
        .exact("t", organicThickness, "m")
        .exact("m", massPerArea, "kg/m2")
        .doubted("m_v", "the compressibility", COMPRESSIBILITY, "m2/N")
        .doubted("q", "the share that rots", ROT, "")
        .write(steps);
  }

  /**
   * Gives the caution that goes with every estimate of settlement.
   *
   * @return the caution
   */
  public Caution caution() {
    return new Caution(
        Hazard.STRUCTURE,
        "Soft, filled or peaty ground may sink unevenly and tilt hearth, posts and floor.",
        "Probe soft ground with a rod at every post, and ask where it sinks in by hand; the"
            + " reckoned sinking is a bound only.",
        Optional.of(COMPRESSION));
  }
}

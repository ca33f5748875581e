package io.github.seamstead.materials.drying;

import io.github.seamstead.materials.floor.FloorMix;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.sensitivity.Propagation;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How wide the cracks of a drying coat will be, all widths along a line added up.
 *
 * <p>Per metre: restraint × free shrinkage − what the coat can stretch, not below 0. The free
 * shrinkage alone is the upper estimate for a coat held fast by its base.
 *
 * @param freeShrinkage linear shrinkage of the mix: low, likely, high
 * @param restraint share of the shrinkage that the base holds back, 0 to 1
 * @param stretch strain that the coat takes without a crack, creep and fibres included
 * @param forecast crack width in a metre of floor by that formula, in m/m
 * @param measured crack width over length of a trial sample of the mix as it is laid; empty if none
 *     was made
 * @param widthPerMetre crack width in a metre of floor that counts, in m/m: from the trial sample
 *     where there is one, else the forecast
 */
public record Cracking(
    Range freeShrinkage,
    Range restraint,
    Range stretch,
    Range forecast,
    Optional<Double> measured,
    Range widthPerMetre) {

  /** Crack width per metre above which the mix should be changed: 4 mm/m. */
  public static final double CHANGE_THE_MIX = 0.004;

  /** Source of {@link #CHANGE_THE_MIX}. */
  public static final Source CHANGE_SOURCE =
      Source.found("", "Shrinkage test guide for poured earth", "", "aim below 4 mm in 1000 mm");

  /** Restraint by a rough, damp base (common practice). */
  public static final Range ROUGH_BASE = new Range(0.6, 0.8, 1.0);

  /** Stretch of a coat without fibre (common practice). */
  public static final Range WITHOUT_FIBRE = new Range(0, 0.0003, 0.0008);

  /** Stretch of a coat with chopped straw (common practice). */
  public static final Range WITH_FIBRE = new Range(0.0003, 0.001, 0.002);

  private static final Range SAMPLE_TO_FLOOR = new Range(0.7, 1, 2);
  private static final double HAIRLINE = 0.0005;
  private static final Source RESTRAINT =
      Source.commonPractice("crack width is restrained shrinkage less the strain the coat takes");

  /**
   * Reckons the crack width.
   *
   * @param freeShrinkage linear shrinkage of the mix, 0 to 0.3
   * @param restraint 0 to 1
   * @param stretch 0 to 0.05
   * @return the cracking
   * @throws IllegalArgumentException if a value is out of range
   */
  public static Cracking of(Range freeShrinkage, Range restraint, Range stretch) {
    Args.within("free shrinkage (low)", freeShrinkage.low(), 0, 0.3, "");
    Args.within("free shrinkage (high)", freeShrinkage.high(), 0, 0.3, "");
    Args.within("restraint (low)", restraint.low(), 0, 1, "");
    Args.within("restraint (high)", restraint.high(), 0, 1, "");
    Args.within("stretch (low)", stretch.low(), 0, 0.05, "");
    Args.within("stretch (high)", stretch.high(), 0, 0.05, "");
    Steps none = Steps.none();
    Range forecast =
        new Range(
            widthPerMetre(freeShrinkage.low(), restraint.low(), stretch.high(), none),
            widthPerMetre(freeShrinkage.likely(), restraint.likely(), stretch.likely(), none),
            widthPerMetre(freeShrinkage.high(), restraint.high(), stretch.low(), none));
    return new Cracking(freeShrinkage, restraint, stretch, forecast, Optional.empty(), forecast);
  }

  /**
   * Takes in a trial sample of the mix as it is laid, which overrules the forecast. A small sample
   * may slide where a floor is held, and its mould dries more evenly: the floor is reckoned from
   * 0.7 to 2 times the sample (common practice).
   *
   * @param crack all cracks and gaps along the sample together, in metres, 0 or more
   * @param length of the sample, in metres, greater than 0
   * @return the cracking with the width that counts from the sample
   * @throws IllegalArgumentException if a length is out of range
   */
  public Cracking measuredBy(double crack, double length) {
    Args.positive("length of the sample", length, "m");
    Args.within("cracks of the sample", crack, 0, 0.3 * length, "m");
    double width = crack / length;
    return new Cracking(
        freeShrinkage,
        restraint,
        stretch,
        forecast,
        Optional.of(width),
        SAMPLE_TO_FLOOR.times(width));
  }

  /**
   * Makes the cracking from a trial sample alone, where no bar of the soil was dried.
   *
   * @param crack all cracks and gaps along the sample together, in metres, 0 or more
   * @param length of the sample, in metres, greater than 0
   * @return the cracking; its forecast is that of the sample's own width
   * @throws IllegalArgumentException if a length is out of range
   */
  public static Cracking ofSample(double crack, double length) {
    Args.positive("length of the sample", length, "m");
    Args.within("cracks of the sample", crack, 0, 0.3 * length, "m");
    return of(Range.exactly(crack / length), Range.exactly(1), Range.exactly(0))
        .measuredBy(crack, length);
  }

  /**
   * Tells whether the sample lies outside the forecast, so that soil, sand or sample should be
   * looked at again.
   *
   * @return true if there is a sample and the forecast does not hold it
   */
  public boolean sampleContradictsForecast() {
    return measured.isPresent()
        && (measured.get() < forecast.low() || measured.get() > forecast.high());
  }

  /**
   * Computes the crack width in a metre of floor.
   *
   * @param freeShrinkage linear shrinkage, 0 to 0.3
   * @param restraint 0 to 1
   * @param stretch strain without a crack, 0 or more
   * @param steps receives the formula
   * @return in m/m, 0 or more
   */
  @Calculation("materials.drying.crack-width")
  public static double widthPerMetre(
      double freeShrinkage, double restraint, double stretch, Steps steps) {
    return steps
        .step("w_c", "crack width in a metre")
        .formula("max(0, R * LS - eps)")
        .with("R", restraint, "")
        .with("LS", freeShrinkage, "")
        .with("eps", stretch, "")
        .from(RESTRAINT)
        .gives(Math.max(0, restraint * freeShrinkage - stretch), "m/m");
  }

  /**
   * Adds up the doubt of the forecast: of shrinkage, restraint and stretch. Cracks are never below
   * nothing, so the samples count where the coat may not crack at all.
   *
   * @param steps receives what each number does and its share
   * @return the doubt, in m/m
   */
  @Calculation("materials.drying.crack-width-doubt")
  public Propagation.Doubt forecastDoubt(Steps steps) {
    return Propagation.of("w_c", "crack width in a metre", "max(0, R * LS - eps)", "m/m")
        .doubted("R", "the restraint", restraint, "")
        .doubted("LS", "the shrinkage of the mix", freeShrinkage, "")
        .doubted("eps", "the stretch", stretch, "")
        .write(steps);
  }

  /**
   * Gives the crack width along a line.
   *
   * @param length in metres, 0 or more
   * @return in metres
   * @throws IllegalArgumentException if the length is negative
   */
  public Range over(double length) {
    return widthPerMetre.times(Args.notNegative("length", length, "m"));
  }

  /**
   * Gives the share of the floor's area that is cracks: 1 − (1 − w)², cracks running both ways.
   *
   * @return 0 to 1
   */
  public Range crackShare() {
    return new Range(
        share(widthPerMetre.low()), share(widthPerMetre.likely()), share(widthPerMetre.high()));
  }

  /**
   * Crack width with another free shrinkage and stretch. Where a sample was measured, what it
   * shrank in all is its cracks and what it stretched.
   */
  Range widthWith(Range factor, Range other) {
    if (measured.isEmpty()) {
      return new Range(
          width(freeShrinkage.low() * factor.low(), restraint.low(), other.high()),
          width(freeShrinkage.likely() * factor.likely(), restraint.likely(), other.likely()),
          width(freeShrinkage.high() * factor.high(), restraint.high(), other.low()));
    }
    double strain = measured.get() + stretch.likely();
    Range sample =
        new Range(
            width(strain * factor.low(), 1, Math.max(other.low(), other.likely())),
            width(strain * factor.likely(), 1, other.likely()),
            width(strain * factor.high(), 1, other.low()));
    return new Range(
        SAMPLE_TO_FLOOR.low() * sample.low(),
        SAMPLE_TO_FLOOR.likely() * sample.likely(),
        SAMPLE_TO_FLOOR.high() * sample.high());
  }

  private static double width(double free, double restraint, double stretch) {
    return widthPerMetre(free, restraint, stretch, Steps.none());
  }

  static double share(double width) {
    return 1 - (1 - width) * (1 - width);
  }

  /**
   * Reckons the slip that fills the cracks over their whole depth and covers the coat with a skim.
   *
   * @param area of the floor, in square metres, greater than 0
   * @param coatThickness depth of the cracks, in metres, greater than 0
   * @param skim thickness of a skim over all, in metres, 0 to 0.01
   * @param coat the coat's mix, whose fine part makes the slip
   * @return volume and dry masses
   * @throws IllegalArgumentException if a value is out of range
   */
  public SlipRepair slip(double area, double coatThickness, double skim, FloorMix coat) {
    return SlipRepair.of(crackShare(), area, coatThickness, skim, coat);
  }

  /**
   * Says what to change where the cracks are too wide.
   *
   * @param fibred true if the coat has fibre
   * @param coatThickness in metres
   * @return plain sentences; one alone if all is well
   */
  public List<String> advice(boolean fibred, double coatThickness) {
    List<String> advice = new ArrayList<>();
    if (widthPerMetre.high() <= HAIRLINE) {
      return List.of("hairlines at most: rub or burnish while leather-hard");
    }
    if (widthPerMetre.likely() <= CHANGE_THE_MIX) {
      advice.add("such cracks can be mended: compress while firm, then fill with slip");
    } else {
      advice.add(
          "cracks so wide are too many for slip: add sand and make a new trial sample before the"
              + " coat is laid");
    }
    if (widthPerMetre.high() > CHANGE_THE_MIX) {
      if (!fibred) {
        advice.add("add chopped straw or other fine fibre");
      }
      if (coatThickness > 0.020) {
        advice.add(
            "lay two coats of half the thickness, the second when the first has cracked and dried");
      }
      advice.add("mix stiffer and dry it slowly: shade, no draught for the first days");
    }
    return List.copyOf(advice);
  }
}

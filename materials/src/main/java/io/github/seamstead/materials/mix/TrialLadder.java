package io.github.seamstead.materials.mix;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * The trial mixes to make: parts of sand to one part of soil, rising.
 *
 * @param sandParts parts of sand per part of soil, two or more, rising; 0 is the soil alone
 * @param basis what the parts are parts of
 * @param soilName the soil
 * @param sandName the sand
 * @param reasons why these, one sentence each
 */
public record TrialLadder(
    List<Double> sandParts, Basis basis, String soilName, String sandName, List<String> reasons) {

  /** The ladder that builders use when nothing is known. */
  public static final Source COMMON = Source.commonPractice("trial ladder 1:1, 1:2, 1:3");

  private static final double SURE = 0.9;
  private static final double MOST_PARTS = 12;

  public TrialLadder {
    sandParts = List.copyOf(sandParts);
    reasons = List.copyOf(reasons);
    Args.require(
        sandParts.size() >= 2 && sandParts.get(0) >= 0,
        "trial ladder",
        sandParts.toString(),
        "must have two or more, each 0 or more");
    for (int i = 1; i < sandParts.size(); i++) {
      Args.require(
          sandParts.get(i) > sandParts.get(i - 1),
          "trial ladder: given " + sandParts + ", parts of sand must rise");
    }
  }

  /**
   * Gives the ladder for a soil of which nothing is known: 1, 2 and 3 parts of sand.
   *
   * @param soilName the soil
   * @param sandName the sand
   * @param basis what the parts are parts of
   * @return the ladder
   */
  public static TrialLadder common(String soilName, String sandName, Basis basis) {
    return new TrialLadder(
        List.of(1.0, 2.0, 3.0), basis, soilName, sandName, List.of(COMMON.citation()));
  }

  /**
   * Designs the shortest ladder that brackets the answer: the first rung is too rich with a
   * probability of 0.9 (so that cracks are seen once), the last has reached the middle of the band
   * with a probability of 0.9; rungs lie a step apart, or wider if that needs too many, or down to
   * a quarter of it if the soil needs so little sand that fewer than three rungs would bracket it.
   * A soil that is hardly too rich starts the ladder alone, without sand.
   *
   * @param soil the soil, its clay share with its doubt
   * @param sand the sand
   * @param band the clay share aimed at
   * @param basis dry mass or bucket
   * @param step distance of the rungs in parts of sand, 0.5 or 1
   * @param mostSamples most samples, 2 to 10
   * @return the ladder
   * @throws IllegalArgumentException if sand has as much clay as the band's middle, so that no
   *     amount of it helps, or an argument is out of range
   */
  public static TrialLadder design(
      MixComponent soil,
      MixComponent sand,
      ClayBand band,
      Basis basis,
      double step,
      int mostSamples) {
    Uncertain clay = soil.clayRatio();
    return design(
        soil,
        sand,
        band,
        basis,
        step,
        mostSamples,
        limit ->
            clay.standardUncertainty() == 0
                ? clay.value() > limit ? 1 : 0
                : NormalTail.above((limit - clay.value()) / clay.standardUncertainty()));
  }

  /**
   * As {@link #design(MixComponent, MixComponent, ClayBand, Basis, double, int)}, with the whole
   * distribution of the soil's clay instead of a normal one.
   *
   * @param soil the soil
   * @param sand the sand
   * @param band the clay share aimed at
   * @param basis dry mass or bucket
   * @param step distance of the rungs in parts of sand, 0.25 to 2
   * @param mostSamples most samples, 2 to 10
   * @param soilClayAbove probability that the soil's clay share is above a share
   * @return the ladder
   * @throws IllegalArgumentException if sand has as much clay as the band's middle, or an argument
   *     is out of range
   */
  public static TrialLadder design(
      MixComponent soil,
      MixComponent sand,
      ClayBand band,
      Basis basis,
      double step,
      int mostSamples,
      DoubleUnaryOperator soilClayAbove) {
    Args.within("step of the ladder", step, 0.25, 2, "");
    Args.within("most samples", mostSamples, 2, 10);
    Args.agree(
        sand.clayRatio().value() < band.middle(),
        sand.name() + ": clay: given " + Numbers.plain(sand.clayRatio().value()),
        "must be below the middle of the band "
            + Numbers.plain(band.middle())
            + ", or no amount of it helps");
    Chances chances = new Chances(soil, sand, basis, soilClayAbove);
    double apart = step;
    double[] ends = ends(chances, band, apart);
    while (ends[1] - ends[0] < 1.5 * apart && apart > step / 4 + 1e-9) {
      apart /= 2;
      ends = ends(chances, band, apart);
    }
    double first = ends[0];
    double last = ends[1];
    double least = apart;
    int rungs = (int) Math.rint((last - first) / apart) + 1;
    while (rungs > mostSamples) {
      apart += least;
      rungs = (int) Math.ceil((last - first) / apart - 1e-9) + 1;
    }
    List<Double> parts = new ArrayList<>();
    for (int i = 0; i < rungs; i++) {
      parts.add(first + i * apart);
    }
    return new TrialLadder(
        parts, basis, soil.name(), sand.name(), reasons(soil, sand, band, basis, parts, chances));
  }

  /** First and last rung for a step. */
  private static double[] ends(Chances chances, ClayBand band, double step) {
    double first = 0;
    while (first + step <= MOST_PARTS && chances.above(first + step, band.greatest()) >= SURE) {
      first += step;
    }
    double last = first + step;
    while (last + step <= MOST_PARTS && chances.above(last, band.middle()) > 1 - SURE) {
      last += step;
    }
    return new double[] {first, last};
  }

  private static List<String> reasons(
      MixComponent soil,
      MixComponent sand,
      ClayBand band,
      Basis basis,
      List<Double> parts,
      Chances chances) {
    double first = parts.get(0);
    double last = parts.get(parts.size() - 1);
    return List.of(
        sentence("The first sample", soil, sand, first, basis)
            + "; it is richer than "
            + percent(band.greatest())
            + " with a probability of "
            + percent(chances.above(first, band.greatest()))
            + (chances.above(first, band.greatest()) >= SURE
                ? ", so cracks should show."
                : ": it may not crack."),
        sentence("The last sample", soil, sand, last, basis)
            + "; it has reached "
            + percent(band.middle())
            + " or less with a probability of "
            + percent(1 - chances.above(last, band.middle()))
            + ".");
  }

  private static String sentence(
      String which, MixComponent soil, MixComponent sand, double parts, Basis basis) {
    Uncertain clay = clay(soil, sand, parts, basis);
    return which
        + " ("
        + proportion(soil.name(), sand.name(), parts, basis).text()
        + ") has about "
        + percent(clay.value())
        + " of clay";
  }

  /**
   * States a rung with both sides named.
   *
   * @param rung number of the rung, from 0
   * @return for example {@code 1 part pit soil to 2 parts washed sand, by dry mass}
   */
  public Proportion proportion(int rung) {
    Args.within("rung", rung, 0, sandParts.size() - 1);
    return proportion(soilName, sandName, sandParts.get(rung), basis);
  }

  static Proportion proportion(String soil, String sand, double parts, Basis basis) {
    return new Proportion(
        List.of(new Proportion.Part(soil, 1), new Proportion.Part(sand, parts)), basis);
  }

  /**
   * Clay share of one part of soil with some parts of sand. Parts of mass carry the doubt of the
   * clay alone; parts of volume that of the loose densities too.
   */
  static Uncertain clay(MixComponent soil, MixComponent sand, double parts, Basis basis) {
    return switch (basis) {
      case LOOSE_VOLUME ->
          new Recipe(List.of(new Recipe.Portion(soil, 1), new Recipe.Portion(sand, parts)))
              .clayRatio();
      case DRY_MASS -> byMass(soil, 1, sand, parts);
      case DAMP_MASS ->
          byMass(soil, 1 / (1 + soil.moistureRatio()), sand, parts / (1 + sand.moistureRatio()));
    };
  }

  private static Uncertain byMass(
      MixComponent soil, double soilMass, MixComponent sand, double sandMass) {
    return soil.clayRatio()
        .times(soilMass / (soilMass + sandMass))
        .plus(sand.clayRatio().times(sandMass / (soilMass + sandMass)));
  }

  /** How probable it is that a rung is richer than a limit. */
  private record Chances(
      MixComponent soil, MixComponent sand, Basis basis, DoubleUnaryOperator soilClayAbove) {

    /** Places and weights of three points that keep a normal doubt's first five moments. */
    private static final double[] PLACES = {-Math.sqrt(3), 0, Math.sqrt(3)};

    private static final double[] WEIGHTS = {1 / 6.0, 2 / 3.0, 1 / 6.0};

    double above(double parts, double limit) {
      double doubt = basis == Basis.LOOSE_VOLUME ? densityDoubt() : 0;
      double sum = 0;
      for (int i = 0; i < PLACES.length; i++) {
        double sandPerSoil = dryRatio(parts) * StrictMath.exp(PLACES[i] * doubt);
        // c_s + r c_n > (1 + r) c, solved for the soil's own clay.
        double least = (1 + sandPerSoil) * limit - sandPerSoil * sand.clayRatio().value();
        sum += WEIGHTS[i] * soilClayAbove.applyAsDouble(least);
      }
      return sum;
    }

    private double dryRatio(double parts) {
      return switch (basis) {
        case DRY_MASS -> parts;
        case DAMP_MASS -> parts * (1 + soil.moistureRatio()) / (1 + sand.moistureRatio());
        case LOOSE_VOLUME ->
            parts * sand.dryMassPerLooseVolume().value() / soil.dryMassPerLooseVolume().value();
      };
    }

    private double densityDoubt() {
      return StrictMath.hypot(relative(soil.looseDryDensity()), relative(sand.looseDryDensity()));
    }

    private static double relative(Uncertain density) {
      return density.standardUncertainty() / density.value();
    }
  }

  private static String percent(double ratio) {
    return Numbers.significant(ratio * 100, 2) + " %";
  }
}

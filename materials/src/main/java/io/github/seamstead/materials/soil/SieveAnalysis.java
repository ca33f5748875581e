package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A sieve analysis: mass held by each sieve and the pan.
 *
 * <p>Likelihood: the share of fines in the part below 2 mm at the finest sieve of 0.04 to 0.1 mm is
 * normal about what the texture predicts, with standard deviation 0.02 if washed and 0.06 if sieved
 * dry (clay clings to sand); with probability 0.02 it misleads. Without such a sieve it tells the
 * gravel alone.
 *
 * @param sieves sieves, coarsest first, the coarsest holding nothing or the largest stones; two or
 *     more
 * @param panMass mass in the pan, kg, 0 or more
 * @param washed whether the fines were washed through
 */
public record SieveAnalysis(List<Sieve> sieves, double panMass, boolean washed)
    implements SoilEvidence {

  /** The method. */
  public static final Source SOURCE =
      Source.found("Das", "Principles of Geotechnical Engineering", "", "ch. 2, sieve analysis");

  private static final double MISLEADS = 0.02;

  /**
   * One sieve.
   *
   * @param opening opening, in metres; 2e-5 to 0.1 m
   * @param retainedMass mass held, kg; 0 or more
   */
  public record Sieve(double opening, double retainedMass) {

    public Sieve {
      Args.within("sieve opening", opening, 2e-5, 0.1, "m");
      Args.notNegative("mass held by the sieve", retainedMass, "kg");
    }
  }

  public SieveAnalysis {
    sieves = List.copyOf(sieves);
    Args.require(sieves.size() >= 2, "sieves", String.valueOf(sieves.size()), "must be 2 or more");
    Args.notNegative("mass in the pan", panMass, "kg");
    for (int i = 1; i < sieves.size(); i++) {
      Args.require(
          sieves.get(i).opening < sieves.get(i - 1).opening,
          "sieves: sieve "
              + (i + 1)
              + " ("
              + Numbers.plain(sieves.get(i).opening * 1000)
              + " mm) must be finer than the one before");
    }
    Args.positive("mass of the sample", total(sieves, panMass), "kg");
  }

  /**
   * Gives the share finer than each sieve, coarsest first.
   *
   * @return shares of the dry mass, 0 to 1
   */
  public List<Double> finerRatios() {
    return finerRatios(Steps.none());
  }

  /**
   * As {@link #finerRatios()}, with its worked steps; the last step is the finest sieve's share.
   *
   * @param steps receives the worked steps
   * @return shares of the dry mass, 0 to 1
   */
  @Calculation("materials.soil.sieve_analysis")
  public List<Double> finerRatios(Steps steps) {
    double all = total(sieves, panMass);
    List<Double> finer = new ArrayList<>();
    double held = 0;
    for (int i = 0; i < sieves.size(); i++) {
      double before = held;
      held += sieves.get(i).retainedMass;
      steps
          .step("H" + (i + 1), "held so far, to " + millimetres(sieves.get(i).opening))
          .formula("H" + i + " + m" + (i + 1))
          .with("H" + i, before, "kg")
          .with("m" + (i + 1), sieves.get(i).retainedMass, "kg")
          .gives(held, "kg");
      finer.add(
          steps
              .step("F" + (i + 1), "share finer than " + millimetres(sieves.get(i).opening))
              .formula("1 - H" + (i + 1) + " / M")
              .with("H" + (i + 1), held, "kg")
              .with("M", all, "kg")
              .from(SOURCE)
              .gives(1 - held / all, ""));
    }
    return List.copyOf(finer);
  }

  /**
   * Gives the grain size curve down to the finest sieve.
   *
   * @return the curve; stones on the coarsest sieve are taken to end at twice its opening
   */
  public GradingCurve curve() {
    List<Double> finer = finerRatios();
    List<GradingCurve.Point> points = new ArrayList<>();
    double coarsest = sieves.get(0).opening;
    if (finer.get(0) < 1) {
      points.add(new GradingCurve.Point(Math.min(0.2, 2 * coarsest), 1));
    }
    for (int i = 0; i < sieves.size(); i++) {
      // Sums of masses may fall a rounding below zero.
      points.add(0, new GradingCurve.Point(sieves.get(i).opening, Math.max(0, finer.get(i))));
    }
    return new GradingCurve(points);
  }

  @Override
  public String label() {
    return "sieve analysis (" + (washed ? "washed" : "dry") + "), " + sieves.size() + " sieves";
  }

  @Override
  public List<Source> sources() {
    return List.of(SOURCE);
  }

  @Override
  public TextureLikelihood likelihood() {
    double opening = sieves.get(sieves.size() - 1).opening;
    GradingCurve curve = curve();
    double fine = curve.finer(GrainSizes.SAND_TO);
    if (opening < 0.04e-3 || opening > 0.1e-3 || fine == 0) {
      return (clay, silt, sand) -> 1;
    }
    double seen = Math.min(1, curve.finer(opening) / fine);
    double deviation = washed ? 0.02 : 0.06;
    double[] parts = GrainSizes.partsFiner(opening);
    return (clay, silt, sand) ->
        (1 - MISLEADS) * Densities.normal(seen, GrainSizes.finer(parts, clay, silt), deviation)
            + MISLEADS;
  }

  @Override
  public Optional<Uncertain> gravelRatio() {
    if (sieves.get(0).opening < GrainSizes.SAND_TO) {
      return Optional.empty();
    }
    return Optional.of(new Uncertain(curve().gravelRatio(), 0.02));
  }

  @Override
  public List<String> remarks() {
    return washed
        ? List.of()
        : List.of(
            "Sieved dry: clay that clings to sand is counted as sand, so fines are under-read.");
  }

  private static double total(List<Sieve> sieves, double pan) {
    return pan + sieves.stream().mapToDouble(Sieve::retainedMass).sum();
  }

  private static String millimetres(double metres) {
    return Numbers.significant(metres * 1000, 4) + " mm";
  }
}

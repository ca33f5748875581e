package io.github.seamstead.materials.mix;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.uncertainty.Range;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What dried trial samples say: the ratio to take, with the probability that it is right, or the
 * next ratio to try.
 *
 * <p>Assumption: there is a sand ratio below which samples crack, and one above which they dust or
 * crumble; each sample shows its side with a logistic scatter of 8 % of the ratio (what measuring
 * by bucket repeats to: common practice) and is misread one time in twenty. Both limits are learnt
 * by Bayes' rule from all samples, independently. A ratio suits if it lies between the two limits.
 * Among ratios of nearly equal probability (within 2 %) the sandiest is taken, as builders do.
 *
 * @param sandParts the best ratio: parts of sand per part of soil
 * @param probability probability that it neither cracks nor dusts
 * @param decided whether that is 0.7 or more and a sound sample within a quarter of it was made:
 *     one that cracked no more than the limit and neither dusts freely nor crumbles
 * @param nextSandParts the ratio to try next; empty once decided
 * @param cracksBelow ratio below which samples crack: 5 %, 50 % and 95 %
 * @param dustsAbove ratio above which samples dust: 5 %, 50 % and 95 %
 * @param soundSamples the samples that cracked no more than the limit and neither dust freely nor
 *     crumble
 * @param curve candidates with their probability, for a drawing
 * @param advice what to do, in words
 */
public record TrialReading(
    double sandParts,
    double probability,
    boolean decided,
    Optional<Double> nextSandParts,
    Range cracksBelow,
    Range dustsAbove,
    List<TrialOutcome> soundSamples,
    List<Candidate> curve,
    List<String> advice) {

  /**
   * A sample within this many parts of sand is one of the mix that is laid: a quarter of a bucket,
   * and what rounding leaves (chosen).
   */
  public static final double SAME_PARTS = 0.26;

  /** The common rule that the model follows. */
  public static final Source SOURCE =
      Source.commonPractice("most sand that does not dust, least clay that does not crumble");

  /** Total crack width over mould length that a floor sample may show. */
  public static final double FLOOR_CRACK_LIMIT = 0.004;

  private static final double DECIDED = 0.7;
  private static final double NEARLY = 0.02;
  private static final double NEAR_A_SAMPLE = 0.25;
  private static final double PRIOR_LOG_DEVIATION = 0.5;
  private static final double BLIND_LOG_DEVIATION = 1.0;
  private static final double MOST_PARTS = 10;

  /** Two readings of 0.5 mm half width each: 0.5 sqrt(2 / 3) mm. */
  private static final double RULE_DEVIATION = 0.0005 * Math.sqrt(2 / 3.0);

  /**
   * A ratio that may be taken.
   *
   * @param sandParts parts of sand per part of soil
   * @param probability probability that it neither cracks nor dusts
   */
  public record Candidate(double sandParts, double probability) {}

  public TrialReading {
    soundSamples = List.copyOf(soundSamples);
    curve = List.copyOf(curve);
    advice = List.copyOf(advice);
  }

  /**
   * Reads samples of a soil of which nothing else is known: cracks are expected to end about 1½ and
   * dusting to begin about 4 parts of sand, each within a factor of e.
   *
   * @param outcomes one sample or more
   * @param crackLimit total crack width over mould length that is allowed, 0 to 0.1
   * @param step step of the ratios, 0.25 to 1
   * @return the reading
   */
  public static TrialReading of(List<TrialOutcome> outcomes, double crackLimit, double step) {
    return read(
        outcomes,
        crackLimit,
        step,
        new RatioLimit(1.5, BLIND_LOG_DEVIATION),
        new RatioLimit(4, BLIND_LOG_DEVIATION),
        Steps.none());
  }

  /**
   * Reads samples of a soil that was assessed: cracks are expected to end where the clay falls to
   * the band's greatest, dusting to begin where it falls below its least.
   *
   * @param outcomes one sample or more
   * @param blend the blend of this soil and sand for the band
   * @param basis basis of the samples' parts
   * @param crackLimit total crack width over mould length that is allowed, 0 to 0.1
   * @param step step of the ratios, 0.25 to 1
   * @param steps receives the worked steps; the last is the probability of the best ratio
   * @return the reading
   */
  @Calculation("materials.mix.trials")
  public static TrialReading of(
      List<TrialOutcome> outcomes,
      ClayBlend blend,
      Basis basis,
      double crackLimit,
      double step,
      Steps steps) {
    double scale = partsPerDryRatio(blend, basis);
    return read(
        outcomes,
        crackLimit,
        step,
        new RatioLimit(Math.max(0.2, blend.leastSandPerSoilDryMass() * scale), PRIOR_LOG_DEVIATION),
        new RatioLimit(
            Math.max(0.3, blend.greatestSandPerSoilDryMass() * scale), PRIOR_LOG_DEVIATION),
        steps);
  }

  /**
   * Gives the sound sample nearest to a ratio.
   *
   * @param parts parts of sand per part of soil, 0 or more
   * @return the sample, if one was made within a quarter of the ratio
   */
  public Optional<TrialOutcome> soundNear(double parts) {
    return soundSamples.stream()
        .filter(o -> Math.abs(o.sandParts() - parts) <= NEAR_A_SAMPLE * parts)
        .min(Comparator.comparingDouble(o -> Math.abs(o.sandParts() - parts)));
  }

  /**
   * Gives the linear shrinkage that the sound sample nearest to the ratio showed: widths of all
   * gaps and cracks along the mould over its length. Each of two readings of the rule is good to
   * 0.5 mm (common practice), taken as the half width of an even spread.
   *
   * @return ratio of the mould's length with its standard uncertainty; empty if no sound sample was
   *     made within a quarter of the ratio
   */
  public Optional<Uncertain> measuredShrinkage() {
    return soundNear(sandParts).map(o -> new Uncertain(o.crackRatio(), RULE_DEVIATION / o.mould()));
  }

  private static double partsPerDryRatio(ClayBlend blend, Basis basis) {
    MixComponent soil = blend.exact().portions().get(0).component();
    MixComponent sand = blend.exact().portions().get(1).component();
    return switch (basis) {
      case DRY_MASS -> 1;
      case DAMP_MASS -> (1 + sand.moistureRatio()) / (1 + soil.moistureRatio());
      case LOOSE_VOLUME ->
          soil.dryMassPerLooseVolume().value() / sand.dryMassPerLooseVolume().value();
    };
  }

  private static TrialReading read(
      List<TrialOutcome> outcomes,
      double crackLimit,
      double step,
      RatioLimit cracks,
      RatioLimit dusts,
      Steps steps) {
    Args.notEmpty("trial samples", outcomes);
    Args.within("crack limit", crackLimit, 0, 0.1, "");
    Args.within("step of the ratios", step, 0.25, 1, "");
    double most = 0;
    for (TrialOutcome outcome : outcomes) {
      cracks.learn(outcome.sandParts(), outcome.crackRatio() > crackLimit ? 1 : 0);
      // Sound samples lie below the ratio at which dusting begins.
      dusts.learn(outcome.sandParts(), 1 - outcome.weakness());
      most = Math.max(most, outcome.sandParts());
    }
    List<Candidate> curve = new ArrayList<>();
    for (double parts : RatioLimit.multiples(step, Math.min(MOST_PARTS, 2 * most + 2))) {
      curve.add(new Candidate(parts, (1 - cracks.below(parts)) * dusts.below(parts)));
    }
    Candidate best = best(curve);
    double uncracked = 1 - cracks.below(best.sandParts);
    double sound = dusts.below(best.sandParts);
    steps
        .step("p_c", "probability that " + Numbers.plain(best.sandParts) + " parts do not crack")
        .from(Source.fromMemory("Gelman et al.", "Bayesian Data Analysis", "2013", "logistic"))
        .note("from all samples, by Bayes' rule on the ratio below which samples crack")
        .gives(uncracked, "");
    steps
        .step("p_d", "probability that they do not dust or crumble")
        .note("from all samples, by Bayes' rule on the ratio above which samples dust")
        .gives(sound, "");
    double probability =
        steps
            .step("p", "probability that this ratio suits")
            .formula("p_c * p_d")
            .with("p_c", uncracked, "")
            .with("p_d", sound, "")
            .from(SOURCE)
            .note("the two limits are taken as independent")
            .gives(uncracked * sound, "");
    List<TrialOutcome> soundSamples =
        outcomes.stream().filter(o -> o.crackRatio() <= crackLimit && o.weakness() < 1).toList();
    boolean decided =
        probability >= DECIDED
            && soundSamples.stream()
                .anyMatch(
                    o ->
                        Math.abs(o.sandParts() - best.sandParts) <= NEAR_A_SAMPLE * best.sandParts);
    Optional<Double> next = decided ? Optional.empty() : Optional.of(next(curve, cracks, dusts));
    return new TrialReading(
        best.sandParts,
        probability,
        decided,
        next,
        range(cracks),
        range(dusts),
        soundSamples,
        curve,
        TrialAdvice.of(outcomes, best, probability, next, crackLimit));
  }

  private static Candidate best(List<Candidate> curve) {
    double greatest = curve.stream().mapToDouble(Candidate::probability).max().orElseThrow();
    Candidate best = curve.get(0);
    for (Candidate candidate : curve) {
      if (candidate.probability >= greatest - NEARLY) {
        best = candidate;
      }
    }
    return best;
  }

  private static double next(List<Candidate> curve, RatioLimit cracks, RatioLimit dusts) {
    double parts = curve.get(0).sandParts;
    double most = -1;
    for (Candidate candidate : curve) {
      double bits =
          cracks.information(candidate.sandParts) + dusts.information(candidate.sandParts);
      if (bits > most) {
        most = bits;
        parts = candidate.sandParts;
      }
    }
    return parts;
  }

  private static Range range(RatioLimit limit) {
    return new Range(limit.quantile(0.05), limit.quantile(0.5), limit.quantile(0.95));
  }
}

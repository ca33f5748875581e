package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Whether a soil suits a use, with reasons.
 *
 * <p>Each texture that the tests leave possible is asked which shares of soil, the rest clean sand,
 * give a mix within the use's limits of clay, silt and linear shrinkage. A verdict is given if it
 * holds with the required probability, and only from tests: with none, with tests that contradict
 * each other, or with a sign of swelling clay whose shrinkage was not measured there is no mix yet,
 * but a test to do.
 *
 * @param use the use
 * @param verdict the verdict
 * @param withinBand probability that the soil lies within all limits as it is
 * @param tooRich probability that sand brings it within them
 * @param tooLean probability that its clay is below the band; probability of a clay share below the
 *     band
 * @param unfit probability that no share of clean sand brings it within them, for silt or
 *     shrinkage; probability that sand does not help
 * @param next what to do next; empty unless there is no mix yet
 * @param reasons sentences, the deciding one first
 * @param cautions what can hurt
 */
public record Suitability(
    SoilUse use,
    Verdict verdict,
    double withinBand,
    double tooRich,
    double tooLean,
    double unfit,
    Optional<String> next,
    List<String> reasons,
    List<Caution> cautions) {

  /** What to do with the soil. */
  public enum Verdict {
    /** Within all limits as it is, probably. */
    AS_IT_IS("suits as it is"),
    /** Sand makes it suit. */
    WITH_SAND("suits with sand added"),
    /** Too lean: a richer soil has to be added. */
    WITH_RICHER_SOIL("needs a richer soil added"),
    /** Not known well enough: test first. */
    NO_MIX_YET("no mix yet: test first"),
    /** Silt or shrinkage that clean sand does not bring within the limits. */
    OTHER_SOIL("does not suit: take another soil"),
    /** A sign speaks against it whatever its grains. */
    NOT_ADVISED("not advised");

    private final String label;

    Verdict(String label) {
      this.label = label;
    }

    /**
     * Says it in words.
     *
     * @return a few words
     */
    public String label() {
      return label;
    }
  }

  /** Probability that a verdict must have unless another is asked for (common practice). */
  public static final double REQUIRED = 0.8;

  /** Below this the other tests speak strongly against one (Jeffreys' scale, from memory). */
  private static final double STRONG_CONFLICT = 0.1;

  private static final double ACTIVE = 0.5;
  private static final double TROUBLESOME = 0.05;

  public Suitability {
    reasons = List.copyOf(reasons);
    cautions = List.copyOf(cautions);
  }

  /**
   * Judges a soil for a use, by its usual clay band and the usual required probability.
   *
   * @param finding what the tests say
   * @param use the use
   * @return the judgement
   */
  public static Suitability of(SoilFinding finding, SoilUse use) {
    return of(finding, use, use.leastClay(), use.greatestClay(), REQUIRED);
  }

  /**
   * Judges a soil for a use. Shares are counted on the whole dry mass, gravel included.
   *
   * @param finding what the tests say
   * @param use the use, with its limits of silt and shrinkage
   * @param leastClay least clay share of the finished mix, 0 to 1
   * @param greatestClay greatest clay share, at least the least
   * @param required probability that a verdict must have, 0.5 to 0.99
   * @return the judgement
   * @throws IllegalArgumentException if an argument is out of range
   */
  public static Suitability of(
      SoilFinding finding, SoilUse use, double leastClay, double greatestClay, double required) {
    Args.within("least clay", leastClay, 0, 1, "");
    Args.within("greatest clay", greatestClay, leastClay, 1, "");
    Args.within("required probability", required, 0.5, 0.99, "");
    MixLimits limits = MixLimits.of(finding, use, leastClay, greatestClay);
    MixLimits.Chances chances = limits.chances(finding.texture());
    Verdict verdict = verdict(chances, required);
    Optional<String> next = Optional.empty();
    List<String> reasons = new ArrayList<>();
    if (finding.evidence().stream().anyMatch(Suitability::forbids)) {
      verdict = Verdict.NOT_ADVISED;
    } else {
      next = openQuestion(finding, limits, verdict, required);
      if (next.isPresent()) {
        verdict = Verdict.NO_MIX_YET;
        reasons.add("Do this next: " + next.get() + ".");
      }
    }
    reasons.add(clayReason(finding, use, limits));
    if (verdict == Verdict.OTHER_SOIL) {
      reasons.add(0, limits.unfitReason(finding.texture()));
    }
    addReasons(finding, use, reasons);
    return new Suitability(
        use,
        verdict,
        chances.asItIs(),
        chances.withSand(),
        chances.lean(),
        chances.unfit(),
        next,
        reasons,
        dust());
  }

  private static Verdict verdict(MixLimits.Chances chances, double required) {
    if (chances.asItIs() >= required) {
      return Verdict.AS_IT_IS;
    }
    if (chances.asItIs() + chances.withSand() >= required) {
      return Verdict.WITH_SAND;
    }
    if (chances.lean() >= required) {
      return Verdict.WITH_RICHER_SOIL;
    }
    return chances.unfit() >= required ? Verdict.OTHER_SOIL : Verdict.NO_MIX_YET;
  }

  /** What has to be done before a verdict can be given; empty if it can. */
  private static Optional<String> openQuestion(
      SoilFinding finding, MixLimits limits, Verdict verdict, double required) {
    if (finding.evidence().stream()
        .allMatch(e -> e instanceof WarningSign || e instanceof HarmfulContent)) {
      return Optional.of(bestTest(finding));
    }
    if (!finding.conflicts().isEmpty() && torn(finding, limits, verdict, required)) {
      return Optional.of(repeat(finding));
    }
    if (verdict == Verdict.NO_MIX_YET) {
      return Optional.of(bestTest(finding));
    }
    boolean mixed = verdict == Verdict.AS_IT_IS || verdict == Verdict.WITH_SAND;
    return mixed && mayShrinkMuch(finding) && limits.shrinkage().isEmpty()
        ? Optional.of(TestKind.SHRINKAGE.label() + ", because the clay may be a swelling one")
        : Optional.empty();
  }

  /** Whether a contradiction is strong, or the verdict rests on one of the contradicting tests. */
  private static boolean torn(
      SoilFinding finding, MixLimits limits, Verdict verdict, double required) {
    for (Conflict conflict : finding.conflicts()) {
      if (conflict.support() < STRONG_CONFLICT) {
        return true;
      }
      List<SoilEvidence> others =
          finding.evidence().stream().filter(e -> !e.label().equals(conflict.label())).toList();
      TexturePosterior without = SoilAssessment.assess(others).texture();
      if (verdict(limits.chances(without), required) != verdict) {
        return true;
      }
    }
    return false;
  }

  private static String repeat(SoilFinding finding) {
    Conflict worst = finding.conflicts().get(0);
    for (Conflict conflict : finding.conflicts()) {
      if (conflict.support() < worst.support()) {
        worst = conflict;
      }
    }
    String label = worst.label();
    boolean undispersed =
        finding.evidence().stream()
            .anyMatch(e -> e.label().equals(label) && e instanceof JarTest jar && !jar.dispersed());
    return "repeat on a fresh sample what the others contradict most, the "
        + label
        + (undispersed
            ? "; shake it with salt or dish soap this time and write down the times of the marks"
            : "");
  }

  private static String bestTest(SoilFinding finding) {
    return NextTest.rank(finding).stream()
        .findFirst()
        .map(test -> test.kind().label())
        .orElse("repeat the tests on a fresh sample");
  }

  private static boolean mayShrinkMuch(SoilFinding finding) {
    return finding.plasticity().activity().filter(a -> a.active() > ACTIVE).isPresent()
        || finding.evidence().stream()
            .anyMatch(
                e -> e instanceof WarningSign sign && sign.kind() == WarningSign.Kind.SWELLING);
  }

  private static boolean forbids(SoilEvidence evidence) {
    return (evidence instanceof WarningSign sign && sign.kind() != WarningSign.Kind.SWELLING)
        || (evidence instanceof HarmfulContent content && content.isTooMuch());
  }

  private static String clayReason(SoilFinding finding, SoilUse use, MixLimits limits) {
    TexturePosterior texture = finding.texture();
    return "Clay is "
        + percent(texture.clayRange().low() * limits.fine())
        + " to "
        + percent(texture.clayRange().high() * limits.fine())
        + " of the dry mass (nine times in ten); "
        + use.label()
        + " wants "
        + percent(limits.leastClay())
        + " to "
        + percent(limits.greatestClay())
        + " ("
        + use.source().citation()
        + ").";
  }

  private static void addReasons(SoilFinding finding, SoilUse use, List<String> reasons) {
    for (SoilEvidence evidence : finding.evidence()) {
      if (evidence instanceof WarningSign sign) {
        reasons.add(0, sign.kind().advice());
      }
      if (evidence instanceof HarmfulContent content && content.isTooMuch()) {
        reasons.add(0, content.advice());
      }
      if (evidence instanceof LinearShrinkage shrinkage && shrinkage.ratio() >= TROUBLESOME) {
        reasons.add(
            "The soil alone shrinks by "
                + percent(shrinkage.ratio())
                + "; from 5 % it is troublesome without sand or fibre.");
      }
    }
    if (finding.plasticity().activity().filter(a -> a.active() > ACTIVE).isPresent()) {
      reasons.add(
          "The clay is active (plasticity index over clay above 1.25): it swells and shrinks much;"
              + " keep to the lean end and make trials.");
    }
    if (finding.texture().silt().value() > use.greatestSilt()) {
      reasons.add(
          "About "
              + percent(finding.texture().silt().value())
              + " is silt, which neither binds nor holds its shape when wet; the mix may have "
              + percent(use.greatestSilt())
              + ".");
    }
    if (!finding.conflicts().isEmpty()) {
      reasons.add("Tests contradict one another, so the range is wide: repeat those named.");
    }
  }

  private static List<Caution> dust() {
    return List.of(SilicaDust.CAUTION);
  }

  private static String percent(double ratio) {
    return Numbers.significant(ratio * 100, 2) + " %";
  }
}

package io.github.seamstead.materials.mix;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The ratio of soil to sand that is used, and why.
 *
 * <p>A ratio fixed by hand goes first. Else trial samples that were made and measured outrank the
 * ratio reckoned from the clay: once they decide ({@link TrialReading#decided()}) theirs is taken;
 * until then the best so far is, for the time being. Without samples the ratio is the reckoned one.
 * A mix of several aggregates is found by {@link MixDesign}.
 *
 * @param recipe the mix: soil first, in buckets
 * @param ground why this ratio
 * @param reason the same in a sentence
 * @param remarks what speaks against it or is still to do, one sentence each
 * @param unmet what of the clay band it cannot meet, if anything
 */
public record MixChoice(
    Recipe recipe, Ground ground, String reason, List<String> remarks, Optional<String> unmet) {

  /** Why a ratio is used. */
  public enum Ground {
    /** Reckoned from the clay of soil and sand; no sample was made. */
    CALCULATED("reckoned from the clay"),
    /** The best ratio of samples that do not decide yet. */
    BEST_SO_FAR("best so far of the trial samples, not decided"),
    /** Decided by trial samples. */
    TRIALS("decided by the trial samples"),
    /** Found by calculation from several aggregates. */
    DESIGNED("found by calculation from several aggregates"),
    /** Fixed in advance. */
    BY_HAND("fixed by hand");

    private final String label;

    Ground(String label) {
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

  public MixChoice {
    remarks = List.copyOf(remarks);
  }

  /**
   * Chooses the ratio.
   *
   * @param blend the ratio reckoned from the clay
   * @param reading what trial samples of this mix say, in buckets, if any were made
   * @param byHand parts of sand to one part of soil by the bucket, 0 to 20, if fixed by hand
   * @return the ratio with its ground
   * @throws IllegalArgumentException if the ratio by hand is out of range
   */
  public static MixChoice of(
      ClayBlend blend, Optional<TrialReading> reading, Optional<Double> byHand) {
    if (byHand.isPresent()) {
      return byHand(blend, reading, Args.within("parts of sand", byHand.get(), 0, 20, ""));
    }
    return reading.isPresent()
        ? fromTrials(blend, reading.get())
        : new MixChoice(
            blend.rounded(),
            Ground.CALCULATED,
            "The ratio is reckoned from the clay of the soil and rounded to half buckets; no trial"
                + " sample has been measured.",
            List.of(),
            blend.unmet());
  }

  /**
   * Takes the mix that {@link MixDesign} found.
   *
   * @param solution the mix
   * @return the choice
   */
  public static MixChoice designed(MixSolution solution) {
    String aim =
        switch (solution.target().aim()) {
          case LEAST_COST -> "of the least price";
          case MIDDLE_OF_BAND -> "in the middle of the band of clay";
          case NEAREST_GRADING -> "nearest the grading aimed at";
        };
    List<String> remarks = new ArrayList<>();
    solution
        .gradingMisfit()
        .ifPresent(
            misfit ->
                remarks.add(
                    "It is off the grading aimed at by "
                        + percent(misfit)
                        + " of the mass in the mean over the sieves."));
    remarks.add("No trial sample of this mix has been measured: make one before the floor.");
    return new MixChoice(
        solution.rounded(),
        Ground.DESIGNED,
        "Of what lies there this is the mix within the band of clay " + aim + ".",
        remarks,
        solution.unmet().isEmpty()
            ? Optional.empty()
            : Optional.of(String.join("; ", solution.unmet())));
  }

  /**
   * Gives the ratio used.
   *
   * @return parts of sand and other aggregates to one part of soil, by the bucket
   */
  public double sandParts() {
    return parts(recipe);
  }

  private static MixChoice byHand(
      ClayBlend blend, Optional<TrialReading> reading, double sandParts) {
    Recipe recipe = recipe(blend, sandParts);
    List<String> remarks = new ArrayList<>();
    boolean trialled = false;
    if (reading.isPresent()) {
      TrialReading read = reading.get();
      trialled = read.soundNear(sandParts).isPresent();
      if (Math.abs(read.sandParts() - sandParts) > 1e-9) {
        remarks.add(
            "The trial samples point to "
                + Numbers.plain(read.sandParts())
                + " parts of sand"
                + (read.decided() ? "." : ", though they do not decide yet."));
      }
    }
    if (!trialled) {
      remarks.add(
          "No sound trial sample of this ratio has been measured: make one before the floor.");
    }
    Optional<String> outside = outside(blend, recipe);
    if (trialled) {
      outside.ifPresent(remarks::add);
    }
    return new MixChoice(
        recipe,
        Ground.BY_HAND,
        ratio(sandParts) + " is fixed by hand; " + reckoned(blend),
        remarks,
        trialled ? Optional.empty() : outside);
  }

  private static MixChoice fromTrials(ClayBlend blend, TrialReading reading) {
    Recipe recipe = recipe(blend, reading.sandParts());
    List<String> remarks = new ArrayList<>();
    outside(blend, recipe)
        .map(text -> text + "; a measured sample outranks the reckoned clay")
        .ifPresent(remarks::add);
    String chance = Numbers.significant(reading.probability() * 100, 2) + " %";
    return reading.decided()
        ? new MixChoice(
            recipe,
            Ground.TRIALS,
            ratio(reading.sandParts())
                + " is what the trial samples decide for, with a probability of "
                + chance
                + "; "
                + reckoned(blend),
            remarks,
            Optional.empty())
        : new MixChoice(
            recipe,
            Ground.BEST_SO_FAR,
            "The trial samples do not decide yet. For the time being "
                + ratio(reading.sandParts()).toLowerCase(java.util.Locale.ROOT)
                + " is used, the best so far with a probability of "
                + chance
                + "; "
                + reckoned(blend),
            remarks,
            blend.unmet());
  }

  private static String ratio(double sandParts) {
    return "One part of soil to " + Numbers.plain(sandParts) + " of sand by the bucket";
  }

  private static String reckoned(ClayBlend blend) {
    return "reckoned from the clay it would be "
        + Numbers.significant(parts(blend.rounded()), 3)
        + ".";
  }

  private static Optional<String> outside(ClayBlend blend, Recipe recipe) {
    double clay = recipe.clayRatio().value();
    ClayBand band = blend.band();
    return band.holds(clay)
        ? Optional.empty()
        : Optional.of(
            "It gives about "
                + percent(clay)
                + " of clay, and "
                + band.use()
                + " wants "
                + percent(band.least())
                + " to "
                + percent(band.greatest()));
  }

  private static Recipe recipe(ClayBlend blend, double sandParts) {
    List<Recipe.Portion> portions = blend.exact().portions();
    return new Recipe(
        List.of(
            new Recipe.Portion(portions.get(0).component(), 1),
            new Recipe.Portion(portions.get(1).component(), sandParts)));
  }

  private static double parts(Recipe recipe) {
    double soil = recipe.portions().get(0).looseVolume();
    double others =
        recipe.portions().stream().skip(1).mapToDouble(Recipe.Portion::looseVolume).sum();
    return others / soil;
  }

  private static String percent(double ratio) {
    return Numbers.significant(ratio * 100, 2) + " %";
  }
}

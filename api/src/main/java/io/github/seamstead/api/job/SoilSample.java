package io.github.seamstead.api.job;

import io.github.seamstead.materials.soil.BendTest;
import io.github.seamstead.materials.soil.DropTest;
import io.github.seamstead.materials.soil.DryStrengthTest;
import io.github.seamstead.materials.soil.ShineTest;
import io.github.seamstead.materials.soil.SqueezeTest;
import io.github.seamstead.materials.soil.WarningSign;
import io.github.seamstead.materials.soil.WashTest;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A local soil and the tests that were made of it.
 *
 * @param id its name, by which mixes and layers call it
 * @param note where it was dug, if stated
 * @param squeeze a moist handful squeezed, if stated
 * @param drop a moist ball dropped from 1.5 m, if stated
 * @param thread the thinnest thread that it can be rolled to, in metres, if stated
 * @param cannotBeRolled true if no thread holds
 * @param bend a roll bent to a ring, if stated
 * @param ribbon mean length of the ribbons before they break, in metres, if stated
 * @param wash how it feels between wet hands, if stated
 * @param shine a moist ball cut with a knife, if stated
 * @param dryStrength a dry lump broken by hand, if stated
 * @param jar the jar test, if stated
 * @param laboratory shares from a laboratory, if stated
 * @param sieve a sieve analysis, if stated
 * @param hydrometer a hydrometer analysis, if stated
 * @param liquidLimit liquid limit, as a part of one, if stated
 * @param plasticLimit plastic limit, as a part of one, if stated
 * @param shrinkage the shrinkage bar, if stated
 * @param signs warning signs noticed
 * @param moisture water over dry mass as it lies, as a part of one
 * @param bulking how much more room it takes as it lies than dry, as a part of one
 * @param stones share of the raw soil that is screened out, as a part of one
 * @param dried a sample dried to tell its moisture, if made
 * @param weighed a weighed bucket of it, if made
 * @param screened a weighed heap that was screened, if made
 * @param pricePerTonne price of a tonne, in the money of the site, if stated
 */
public record SoilSample(
    String id,
    Optional<String> note,
    Optional<SqueezeTest.Outcome> squeeze,
    Optional<DropTest.Outcome> drop,
    Optional<Double> thread,
    boolean cannotBeRolled,
    Optional<BendTest.Outcome> bend,
    Optional<Double> ribbon,
    Optional<WashTest.Outcome> wash,
    Optional<ShineTest.Outcome> shine,
    Optional<DryStrengthTest.Outcome> dryStrength,
    Optional<JarReading> jar,
    Optional<LaboratorySheet> laboratory,
    Optional<SieveSheet> sieve,
    Optional<HydrometerSheet> hydrometer,
    Optional<Double> liquidLimit,
    Optional<Double> plasticLimit,
    Optional<ShrinkageBar> shrinkage,
    List<WarningSign.Kind> signs,
    double moisture,
    double bulking,
    double stones,
    Optional<DriedSample> dried,
    Optional<WeighedBucket> weighed,
    Optional<ScreenedHeap> screened,
    Optional<Double> pricePerTonne) {

  public SoilSample {
    signs = List.copyOf(signs);
  }

  /**
   * Starts a builder, for {@link Job#builder()}.
   *
   * @return a builder that states nothing yet
   */
  public static Builder builder() {
    return new Builder();
  }

  /**
   * Starts a builder from this record.
   *
   * @return a builder that states all that this record holds
   */
  public Builder toBuilder() {
    Builder builder = new Builder();
    builder.stateAll(this, Set.of());
    return builder;
  }

  /** Builds this section of a job. Belongs to one thread. */
  public static final class Builder extends Draft<SoilSample> {

    private Builder() {
      super(SoilSample.class);
    }

    /**
     * States id.
     *
     * @param id its name, by which mixes and layers call it
     * @return this builder
     */
    public Builder id(String id) {
      state("id", id);
      return this;
    }

    /**
     * States note.
     *
     * @param note where it was dug
     * @return this builder
     */
    public Builder note(String note) {
      state("note", note);
      return this;
    }

    /**
     * States squeeze.
     *
     * @param squeeze a moist handful squeezed
     * @return this builder
     */
    public Builder squeeze(SqueezeTest.Outcome squeeze) {
      state("squeeze", squeeze);
      return this;
    }

    /**
     * States drop.
     *
     * @param drop a moist ball dropped from 1.5 m
     * @return this builder
     */
    public Builder drop(DropTest.Outcome drop) {
      state("drop", drop);
      return this;
    }

    /**
     * States thread.
     *
     * @param thread the thinnest thread that it can be rolled to, in metres
     * @return this builder
     */
    public Builder thread(double thread) {
      state("thread", thread);
      return this;
    }

    /**
     * States cannotBeRolled.
     *
     * @param cannotBeRolled true if no thread holds
     * @return this builder
     */
    public Builder cannotBeRolled(boolean cannotBeRolled) {
      state("cannotBeRolled", cannotBeRolled);
      return this;
    }

    /**
     * States bend.
     *
     * @param bend a roll bent to a ring
     * @return this builder
     */
    public Builder bend(BendTest.Outcome bend) {
      state("bend", bend);
      return this;
    }

    /**
     * States ribbon.
     *
     * @param ribbon mean length of the ribbons before they break, in metres
     * @return this builder
     */
    public Builder ribbon(double ribbon) {
      state("ribbon", ribbon);
      return this;
    }

    /**
     * States wash.
     *
     * @param wash how it feels between wet hands
     * @return this builder
     */
    public Builder wash(WashTest.Outcome wash) {
      state("wash", wash);
      return this;
    }

    /**
     * States shine.
     *
     * @param shine a moist ball cut with a knife
     * @return this builder
     */
    public Builder shine(ShineTest.Outcome shine) {
      state("shine", shine);
      return this;
    }

    /**
     * States dryStrength.
     *
     * @param dryStrength a dry lump broken by hand
     * @return this builder
     */
    public Builder dryStrength(DryStrengthTest.Outcome dryStrength) {
      state("dryStrength", dryStrength);
      return this;
    }

    /**
     * States jar.
     *
     * @param jar the jar test
     * @return this builder
     */
    public Builder jar(JarReading.Builder jar) {
      state("jar", jar);
      return this;
    }

    /**
     * States laboratory.
     *
     * @param laboratory shares from a laboratory
     * @return this builder
     */
    public Builder laboratory(LaboratorySheet.Builder laboratory) {
      state("laboratory", laboratory);
      return this;
    }

    /**
     * States sieve.
     *
     * @param sieve a sieve analysis
     * @return this builder
     */
    public Builder sieve(SieveSheet.Builder sieve) {
      state("sieve", sieve);
      return this;
    }

    /**
     * States hydrometer.
     *
     * @param hydrometer a hydrometer analysis
     * @return this builder
     */
    public Builder hydrometer(HydrometerSheet.Builder hydrometer) {
      state("hydrometer", hydrometer);
      return this;
    }

    /**
     * States liquidLimit.
     *
     * @param liquidLimit liquid limit, as a part of one
     * @return this builder
     */
    public Builder liquidLimit(double liquidLimit) {
      state("liquidLimit", liquidLimit);
      return this;
    }

    /**
     * States plasticLimit.
     *
     * @param plasticLimit plastic limit, as a part of one
     * @return this builder
     */
    public Builder plasticLimit(double plasticLimit) {
      state("plasticLimit", plasticLimit);
      return this;
    }

    /**
     * States shrinkage.
     *
     * @param shrinkage the shrinkage bar
     * @return this builder
     */
    public Builder shrinkage(ShrinkageBar shrinkage) {
      state("shrinkage", shrinkage);
      return this;
    }

    /**
     * States signs.
     *
     * @param signs warning signs noticed
     * @return this builder
     */
    public Builder signs(List<WarningSign.Kind> signs) {
      state("signs", signs);
      return this;
    }

    /**
     * States moisture.
     *
     * @param moisture water over dry mass as it lies, as a part of one; 12 % is assumed if left out
     * @return this builder
     */
    public Builder moisture(double moisture) {
      state("moisture", moisture);
      return this;
    }

    /**
     * States bulking.
     *
     * @param bulking how much more room it takes as it lies than dry, as a part of one; 0 is
     *     assumed if left out
     * @return this builder
     */
    public Builder bulking(double bulking) {
      state("bulking", bulking);
      return this;
    }

    /**
     * States stones.
     *
     * @param stones share of the raw soil that is screened out, as a part of one; 0 is assumed if
     *     left out
     * @return this builder
     */
    public Builder stones(double stones) {
      state("stones", stones);
      return this;
    }

    /**
     * States dried.
     *
     * @param dried a sample dried to tell its moisture, if made
     * @return this builder
     */
    public Builder dried(DriedSample dried) {
      state("dried", dried);
      return this;
    }

    /**
     * States weighed.
     *
     * @param weighed a weighed bucket of it, if made
     * @return this builder
     */
    public Builder weighed(WeighedBucket weighed) {
      state("weighed", weighed);
      return this;
    }

    /**
     * States screened.
     *
     * @param screened a weighed heap that was screened, if made
     * @return this builder
     */
    public Builder screened(ScreenedHeap screened) {
      state("screened", screened);
      return this;
    }

    /**
     * States pricePerTonne.
     *
     * @param pricePerTonne price of a tonne, in the money of the site
     * @return this builder
     */
    public Builder pricePerTonne(double pricePerTonne) {
      state("pricePerTonne", pricePerTonne);
      return this;
    }
  }
}

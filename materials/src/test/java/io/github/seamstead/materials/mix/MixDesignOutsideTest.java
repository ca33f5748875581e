package io.github.seamstead.materials.mix;

import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.List;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Mixes against the lever rule by hand and against a linear programme of another library. */
class MixDesignOutsideTest {

  private static final Source LEVER =
      Source.derived("hand sum from first principles: lever rule between two clay shares");
  private static final Source SIMPLEX =
      Source.derived("commons-math3, linear programme by the simplex method");

  private static MixComponent soil(double clay, double price) {
    return MixComponent.claySoil("soil", new Uncertain(clay, 0.03)).withPricePerTonne(price);
  }

  /** Clay of the soil, band, mass of soil in 100 of the mix at the band's middle. */
  @ParameterizedTest
  @CsvSource({
    "0.4,0.15,0.25,50",
    "0.5,0.1,0.2,30",
    "0.6,0.12,0.18,25",
    "0.32,0.14,0.18,50",
    "0.45,0.16,0.2,40"
  })
  void soilForTheMiddleOfABand(double clay, double least, double greatest, double soil) {
    MixSolution mix =
        MixDesign.solve(
            List.of(soil(clay, 5), MixComponent.washedSand("sand")),
            MixTarget.of(ClayBand.of(least, greatest)),
            BucketRounding.NONE,
            Steps.none());
    String what = "soil of " + clay + " clay and clean sand, band " + least + " to " + greatest;
    Recipe.Portion first = mix.exact().portions().get(0);
    OutsideCheck.of("materials.mix.design", what + ": soil, % of dry mass", LEVER)
        .expect(soil)
        .within(1e-3)
        .got(100 * first.dryMass() / mix.exact().dryMass());
    OutsideCheck.of("materials.mix.design", what + ": clay of the mix", LEVER)
        .expect((least + greatest) / 2)
        .within(1e-5)
        .got(mix.clayRatio());
  }

  /** Prices of soil, sand, pit sand and gravel; the least price of a dry tonne within the band. */
  @ParameterizedTest
  @CsvSource({"5,30,20,22", "40,18,12,25", "12,12,30,9", "8,25,7,40"})
  void leastCost(double soil, double sand, double pit, double gravel) {
    double[] prices = {soil, sand, pit, gravel};
    double[] clay = {0.45, 0, 0.05, 0};
    double[] ones = {1, 1, 1, 1};
    double least =
        new SimplexSolver()
            .optimize(
                new LinearObjectiveFunction(prices, 0),
                new LinearConstraintSet(
                    new LinearConstraint(ones, Relationship.EQ, 1),
                    new LinearConstraint(clay, Relationship.GEQ, 0.14),
                    new LinearConstraint(clay, Relationship.LEQ, 0.2)),
                GoalType.MINIMIZE,
                new NonNegativeConstraint(true))
            .getValue();
    MixSolution mix =
        MixDesign.solve(
            List.of(
                soil(0.45, soil),
                MixComponent.washedSand("sand").withPricePerTonne(sand),
                MixComponent.pitSand("pit sand", new Uncertain(0.05, 0.01)).withPricePerTonne(pit),
                MixComponent.gravel("gravel", 0.002, 0.01).withPricePerTonne(gravel)),
            MixTarget.cheapest(ClayBand.of(0.14, 0.2)),
            BucketRounding.NONE,
            Steps.none());
    OutsideCheck.of(
            "materials.mix.design",
            "least price of a tonne at " + soil + ", " + sand + ", " + pit + " and " + gravel,
            SIMPLEX)
        .expect(least)
        .within(1e-4)
        .got(mix.pricePerDryTonne().orElseThrow());
  }
}

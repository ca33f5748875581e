package io.github.seamstead.materials.floor;

import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Clay of loads and settlement by hand. */
class FloorSumsOutsideTest {

  private static final Source BALANCE =
      Source.derived("hand sum from first principles: buckets times density, clay over grain");
  private static final Source HOOKE =
      Source.derived("hand sum from first principles: load times compressibility times thickness");

  private static Batch load(double soilBuckets, double sandBuckets) {
    FloorMix mix =
        new FloorMix(
            "mix",
            List.of(MixPart.of("soil", 0.4, 1200, 0), MixPart.of("sand", 0.6, 1500, 0)),
            new io.github.seamstead.shared.uncertainty.Range(1750, 1850, 1950),
            0.1,
            0.004);
    return Batch.of(mix, Mixer.of(0.09, 400, 0.01), List.of(soilBuckets, sandBuckets));
  }

  /** Buckets of 10 litres: 12 kg of soil, 15 kg of sand. */
  @ParameterizedTest
  @CsvSource({
    "2,4,0.4,0.114285714",
    "1,2,0.42,0.12",
    "2,2,0.45,0.2",
    "3,4,0.5,0.1875",
    "1,1,0.36,0.16"
  })
  void clayOfALoad(double soil, double sand, double clay, double share) {
    OutsideCheck.of(
            "materials.floor.batch-clay",
            soil + " buckets of soil with " + clay + " clay, " + sand + " of sand",
            BALANCE)
        .expect(share)
        .within(5e-10)
        .got(
            BatchClay.clay(
                List.of(load(soil, sand)), Map.of("soil", clay, "sand", 0.0), Steps.none()));
  }

  /** Thickness in m, kg/m2, compressibility in 1/MPa, squeeze in mm; closed at half. */
  @ParameterizedTest
  @CsvSource({
    "0.1,400,1,0.392266",
    "0.2,350,2,1.37293",
    "0.5,500,5,12.258313",
    "0.1,1000,100,50",
    "1,100,0.5,0.490333"
  })
  void settlement(double thickness, double mass, double perMegapascal, double squeeze) {
    OutsideCheck.of(
            "materials.floor.settlement",
            thickness + " m under " + mass + " kg/m2, " + perMegapascal + " per MPa, mm",
            HOOKE)
        .expect(squeeze)
        .within(5e-6)
        .got(1000 * Settlement.squeeze(thickness, mass, perMegapascal / 1e6, Steps.none()));
  }
}

package io.github.seamstead.assembly.handling;

import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Masses, rolls, turning and drop zones by hand. */
class HandlingOutsideTest {

  private static final Source HAND =
      Source.derived("hand sum from first principles: area, mass and volume of cloth");
  private static final Source CIRCLE =
      Source.derived("hand sum from first principles: circle of the same area, pi 3.14159265");
  private static final Source TRIANGLES =
      Source.derived("hand sum from first principles: two right triangles over the apex");
  private static final double HALF_UNIT = 5e-5;

  /** Apex, foot, rope: the triangles are 3-4-5 and its like. */
  @ParameterizedTest
  @CsvSource({"4,3,15.0623", "3,4,14.6158", "6,2.5,18.9043", "2.4,3.2,12.0926", "5,0,14.0711"})
  void ropesOverTheApex(double apex, double foot, double rope) {
    OutsideCheck.of(
            "assembly.handling.dropzone",
            "apex " + apex + " m, foot " + foot + " m, tail 2 m: rope, m",
            TRIANGLES)
        .expect(rope)
        .within(HALF_UNIT)
        .got(DropZone.of(apex, foot).ropeLength(Steps.none()));
  }

  @ParameterizedTest
  @CsvSource({"60,0.68,2.2,43", "25,0.4,0,10", "12.5,0.8,1.5,11.5", "0.4,0.25,0.02,0.12"})
  void massOfABundle(double area, double kilograms, double extra, double mass) {
    OutsideCheck.of(
            "assembly.handling.mass",
            area + " m2 of " + kilograms + " kg/m2 and " + extra + " kg, kg",
            HAND)
        .expect(mass)
        .within(1e-9)
        .got(Bundle.of(area, kilograms, 0.0005, extra).mass(Steps.none()));
  }

  /** Cloth of so many litres, over length and share: the section's circle. */
  @ParameterizedTest
  @CsvSource({
    "60,0.0005,3,0.7,0.1349",
    "20,0.001,2,0.5,0.1596",
    "50,0.0006,2.5,0.6,0.1596",
    "10,0.0004,1,1,0.0714"
  })
  void diameterOfARoll(
      double area, double thickness, double length, double share, double diameter) {
    OutsideCheck.of(
            "assembly.handling.roll",
            area + " m2, " + thickness + " m thick, roll " + length + " m, share " + share + ", m",
            CIRCLE)
        .expect(diameter)
        .within(HALF_UNIT)
        .got(Bundle.of(area, 0.6, thickness, 0).rollDiameter(length, share, Steps.none()));
  }

  /** Girth, thickness, section of the seams, share, bundle. */
  @ParameterizedTest
  @CsvSource({
    "20,0.0005,0.002,0.2,0.2764",
    "10,0.001,0,0.5,0.1596",
    "12,0.0005,0.004,0.25,0.2257",
    "1.2,0.0003,0.0001,0.2,0.0541"
  })
  void gatheredGirth(double girth, double thickness, double seams, double share, double diameter) {
    Turning turning =
        Turning.of(
            new CoverEnds(girth, Optional.empty(), Optional.of(2.0)),
            thickness,
            seams,
            Packing.BUNCHED);
    OutsideCheck.of(
            "assembly.handling.turn",
            "girth " + girth + " m of " + thickness + " m, share " + share + ": bundle, m",
            CIRCLE)
        .expect(diameter)
        .within(HALF_UNIT)
        .got(turning.bundle(share, Steps.none()));
  }

  /** A loose bundle, a tenth of it cloth, fills half of the loop that it must pass. */
  @ParameterizedTest
  @CsvSource({
    "20,0.0005,0.002,1.7366",
    "10,0.001,0,1.5853",
    "12,0.0005,0,1.2280",
    "1.2,0.0003,0.0001,0.3400"
  })
  void leastLoop(double girth, double thickness, double seams, double loop) {
    Turning turning =
        Turning.of(
            new CoverEnds(girth, Optional.empty(), Optional.of(2.0)),
            thickness,
            seams,
            Packing.BUNCHED);
    OutsideCheck.of(
            "assembly.handling.turnloop",
            "girth " + girth + " m of " + thickness + " m: least loop, m",
            CIRCLE)
        .expect(loop)
        .within(HALF_UNIT)
        .got(turning.leastLoop(Steps.none()));
  }
}

package io.github.seamstead.assembly.fixings;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import org.junit.jupiter.api.Test;

/** Beads, cartridges and rope against printed tables and rules. */
class FixingsOutsideTest {

  private static final double POUND = 0.45359237;
  private static final double GRAVITY = 9.80665;
  private static final double INCH = 0.0254;
  private static final Source TRADE =
      Source.found("sealant trade", "Cost for each metre of sealant", "", "examples");
  private static final Source US_CARTRIDGE =
      Source.found("sealant trade", "Sealant yield, US cartridge", "", "10.1 fl oz = 18.3 in3");
  private static final Source MAKERS =
      Source.fromMemory("sealant makers", "Metres for each cartridge of 300 ml", "", "");
  private static final Source TABLE = Source.derived("metres per cartridge, round bead");
  private static final Source COAST_GUARD =
      Source.found("US Coast Guard examination rule", "Marlinespike seamanship", "", "900 C^2");
  private static final Source METRIC =
      Source.found("", "Safe working load of rope", "", "D^2 / 200, 24 mm");

  private static void check(
      String what, Source source, double expected, double within, double got) {
    OutsideCheck.of("assembly.fixings", what, source).expect(expected).within(within).got(got);
  }

  private static double millilitresPerMetre(Bead bead) {
    return bead.area() * 1e6;
  }

  @Test
  void beads() {
    check(
        "10 x 5 mm rectangle, ml/m",
        TRADE,
        50,
        0.5,
        millilitresPerMetre(Bead.rectangle(0.01, 0.005)));
    check("10 x 5 mm fillet, ml/m", TRADE, 25, 0.5, millilitresPerMetre(Bead.fillet(0.01, 0.005)));
    check(
        "10 mm half-round bead, ml/m",
        TRADE,
        39.3,
        0.05,
        millilitresPerMetre(Bead.halfRound(0.01)));
    double cubicInches = 18.3 * INCH * INCH * INCH;
    check("US cartridge, ml", US_CARTRIDGE, 299.9, 0.05, cubicInches * 1e6);
    // The trade's 18 in3 stands for 18.3 in the yield formula.
    check(
        "1/4 x 1/4 in joint, ft from 18 in3",
        US_CARTRIDGE,
        24,
        0.5,
        Bead.rectangle(INCH / 4, INCH / 4).lengthPerCartridge(18 * INCH * INCH * INCH)
            / (12 * INCH));
    check(
        "6 x 6 mm joint, m from 300 ml",
        MAKERS,
        8,
        0.5,
        Bead.rectangle(0.006, 0.006).lengthPerCartridge(300e-6));
    check(
        "10 x 10 mm joint, m from 300 ml",
        MAKERS,
        3,
        0.5,
        Bead.rectangle(0.01, 0.01).lengthPerCartridge(300e-6));
  }

  @Test
  void metresPerCartridge() {
    double[] cartridges = {290, 300, 310, 400, 600};
    double[] diameters = {3, 4, 5, 6, 8, 10};
    double[] millilitres = {7.07, 12.57, 19.63, 28.27, 50.27, 78.54};
    double[][] metres = {
      {41.0, 42.4, 43.9, 56.6, 84.9},
      {23.1, 23.9, 24.7, 31.8, 47.7},
      {14.8, 15.3, 15.8, 20.4, 30.6},
      {10.3, 10.6, 11.0, 14.1, 21.2},
      {5.77, 5.97, 6.17, 7.96, 11.9},
      {3.69, 3.82, 3.95, 5.09, 7.64}
    };
    for (int i = 0; i < diameters.length; i++) {
      Bead bead = Bead.round(diameters[i] / 1000);
      check(
          "bead of " + diameters[i] + " mm, ml/m",
          TABLE,
          millilitres[i],
          0.005,
          millilitresPerMetre(bead));
      for (int j = 0; j < cartridges.length; j++) {
        OutsideCheck.of(
                "assembly.fixings",
                "bead of " + diameters[i] + " mm, m from " + cartridges[j] + " ml",
                TABLE)
            .expect(metres[i][j])
            .withinRatio(0.01)
            .got(bead.lengthPerCartridge(cartridges[j] * 1e-6));
      }
    }
  }

  @Test
  void ropes() {
    RopeStrength manila = RopeStrength.of(Fibre.MANILA, INCH / 2, false, 6);
    RopeStrength nylon = RopeStrength.of(Fibre.NYLON, INCH / 2, false, 6);
    // The printed figures round the circumference: 2220.7 lb with the whole of pi.
    check(
        "manila, 1/2 in, lb",
        COAST_GUARD,
        2218,
        0.002 * 2218,
        manila.rivalBreakingLoad() / GRAVITY / POUND);
    check(
        "nylon, 1/2 in, lb",
        COAST_GUARD,
        5546,
        0.002 * 5546,
        nylon.rivalBreakingLoad() / GRAVITY / POUND);
    RopeStrength metric = RopeStrength.of(Fibre.MANILA, 0.024, false, 6);
    check(
        "manila, 24 mm, breaking, t", METRIC, 2.88, 0.005, metric.breakingLoad() / GRAVITY / 1000);
    check("manila, 24 mm, a sixth, t", METRIC, 0.48, 0.005, metric.workingLoad() / GRAVITY / 1000);
    check(
        "manila, 24 mm, rival rule, t",
        COAST_GUARD,
        3.60,
        0.01,
        metric.rivalBreakingLoad() / GRAVITY / 1000);
    // "Diameter times 60 is the safe load in pounds" is in print and means nothing.
    double inch = RopeStrength.of(Fibre.MANILA, INCH, false, 5).workingLoad() / GRAVITY / POUND;
    assertThat(inch).isGreaterThan(20 * 60);
  }

  @Test
  void lockstitchWithoutThicknessIsTwoThreads() {
    SeamStack thin = new SeamStack(1, 1e-12, 0);
    assertThat(thin.threadLength(0.004, 10, 2))
        .isCloseTo(40, org.assertj.core.data.Offset.offset(1e-6));
  }
}

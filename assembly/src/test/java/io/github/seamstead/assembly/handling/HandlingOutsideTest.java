package io.github.seamstead.assembly.handling;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import org.junit.jupiter.api.Test;

/** Ropes, edges and tackle against printed tables. */
class HandlingOutsideTest {

  private static final Source DELANEY =
      Source.found("Delaney", "Physics for Roping Technicians", "2022", "p. 88");
  private static final Source EDGES = DELANEY.at("75 kg raised and lowered over fixed edges");
  private static final Source DERIVED = Source.derived("capstan equation");
  private static final Source BELT =
      Source.found("", "Friction of belt drives, questions", "", "mu 0.3");
  private static final Source NAVY =
      Source.found("US Navy", "Steelworker, volume 2", "", "twofold purchase, 1000 lb, 10 %");
  private static final Source NAVY_SAFE =
      Source.found("US Navy", "Training manual 14043", "", "threefold purchase, line of 2 t");
  private static final Source ADVANTAGE =
      Source.found("US Navy", "Training manual 14251", "", "frictionless advantage of tackles");
  private static final Source DYER =
      Source.found("Dyer", "Handbook for Light Artillery", "", "real gain of tackles");

  private static void check(
      String what, Source source, double expected, double within, double got) {
    OutsideCheck.of("assembly.handling", what, source).expect(expected).within(within).got(got);
  }

  private static RopePull pull(double kg, double friction, double turns) {
    return RopePull.of(kg, friction, 2 * Math.PI * turns, RopePull.ONE_PERSON);
  }

  private static double kg(double newtons) {
    return newtons / RopePull.GRAVITY;
  }

  @Test
  void capstan() {
    double[] turns = {0.25, 0.5, 1, 2, 3, 4, 5, 6};
    double[] ratio = {1.32, 1.73, 3.00, 9.02, 27.08, 81.31, 244.15, 733.15};
    double[] lower = {75.97, 57.71, 33.30, 11.09, 3.69, 1.23, 0.41, 0.14};
    for (int i = 0; i < turns.length; i++) {
      RopePull pull = pull(100, 0.175, turns[i]);
      check(
          turns[i] + " turns on aluminium: raise over load",
          DELANEY,
          ratio[i],
          0.0051,
          kg(pull.raiseNewtons()) / 100);
      check(
          turns[i] + " turns on aluminium: lower 100 kg with, kg",
          DELANEY,
          lower[i],
          0.0051,
          kg(pull.holdNewtons()));
    }
    check(
        "half turn, mu 0.2: raise 100 kg with, kg",
        DERIVED,
        187.45,
        0.05,
        kg(pull(100, 0.2, 0.5).raiseNewtons()));
    check(
        "half turn, mu 0.2: lower 100 kg with, kg",
        DERIVED,
        53.3,
        0.06,
        kg(pull(100, 0.2, 0.5).holdNewtons()));
    check("half turn, mu 0.3", DERIVED, 2.5663, 5e-5, kg(pull(1, 0.3, 0.5).raiseNewtons()));
    check("half turn, mu 0.5", DERIVED, 4.8105, 5e-5, kg(pull(1, 0.5, 0.5).raiseNewtons()));
    check("quarter turn, mu 0.2", DERIVED, 1.3691, 5e-5, kg(pull(1, 0.2, 0.25).raiseNewtons()));
    check("quarter turn, mu 0.3", DERIVED, 1.6020, 5e-5, kg(pull(1, 0.3, 0.25).raiseNewtons()));
    check("quarter turn, mu 0.5", DERIVED, 2.1933, 5e-5, kg(pull(1, 0.5, 0.25).raiseNewtons()));
    check("one turn, mu 0.3", BELT, 6.6, 0.05, kg(pull(1, 0.3, 1).raiseNewtons()));
    check("two turns, mu 0.3", BELT, 43.4, 0.05, kg(pull(1, 0.3, 2).raiseNewtons()));
  }

  @Test
  void frictionOfEdges() {
    double[][] rows = {
      {98, 50, 90, .21},
      {88, 35, 180, .15},
      {89, 49, 90, .19},
      {92, 53, 90, .18},
      {87, 36, 180, .14},
      {92, 52, 90, .18},
      {103, 47, 90, .25},
      {125, 37, 180, .19},
      {92, 47, 90, .21},
      {127, 29, 180, .24},
      {140, 31, 180, .24},
      {179, 17, 180, .37},
      {140, 15, 180, .36},
      {135, 34, 90, .44}
    };
    for (double[] row : rows) {
      check(
          "friction from " + row[0] + " and " + row[1] + " kg over " + row[2] + " degrees",
          EDGES,
          row[3],
          0.006,
          RopePull.friction(row[0], row[1], Math.toRadians(row[2])));
    }
  }

  @Test
  void tackle() {
    check("twofold purchase, lb", NAVY, 350, 1e-9, new Tackle(4, 4, 0.1).pullNewtons(1000));
    check(
        "threefold purchase, load on a line of 2 t, t",
        NAVY_SAFE,
        7.5,
        1e-9,
        2 / new Tackle(6, 6, 0.1).pullNewtons(1));
    int[][] advantage = {{1, 1}, {2, 1}, {2, 2}, {3, 3}, {4, 4}, {6, 6}};
    String[] names = {"single whip", "runner", "gun", "luff", "twofold", "threefold"};
    for (int i = 0; i < names.length; i++) {
      check(
          names[i] + " without friction",
          ADVANTAGE,
          advantage[i][0],
          1e-9,
          1 / new Tackle(advantage[i][0], advantage[i][1], 0).pullNewtons(1));
    }
    // The old rule of thumb agrees with the lower loss that sailors give.
    check(
        "two doubles, real gain", DYER, 10.0 / 3, 0.333, 1 / new Tackle(4, 4, 0.05).pullNewtons(1));
    check("double and treble, real gain", DYER, 4, 0.4, 1 / new Tackle(5, 5, 0.05).pullNewtons(1));
    check(
        "two singles, real gain, nearly", DYER, 2, 0.2, 1 / new Tackle(2, 2, 0.05).pullNewtons(1));
  }

  @Test
  void aNavyLossIsHarderThanTheRivalForShortTackles() {
    Tackle twofold = new Tackle(4, 4, 0.1);
    // 1000 / (0.9091 + 0.8264 + 0.7513 + 0.6830)
    assertThat(twofold.rivalPullNewtons(1000))
        .isCloseTo(315.47, org.assertj.core.data.Offset.offset(0.01));
    assertThat(new Tackle(2, 1, 0).rivalPullNewtons(1000)).isEqualTo(500);
  }

  private static final Source ROOFING =
      Source.found(
          "National Federation of Roofing Contractors, as quoted",
          "Guidance on roof work in wind",
          "",
          "17 mph mean, 26 gust; 23 mean, 35 gust");

  @Test
  void roofingWind() {
    double mph = 0.44704;
    check("care, mean, m/s", ROOFING, 17 * mph, 0.05, RaisingWind.BEGIN_MEAN);
    check("care, gust, m/s", ROOFING, 26 * mph, 0.05, RaisingWind.BEGIN_GUST);
    check("stop, mean, m/s", ROOFING, 23 * mph, 0.05, RaisingWind.STOP_MEAN);
    check("stop, gust, m/s", ROOFING, 35 * mph, 0.05, RaisingWind.STOP_GUST);
  }
}

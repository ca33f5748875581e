package io.github.seamstead.materials.floor;

import io.github.seamstead.shared.uncertainty.Range;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** An invented floor under a seven-sided frame, for tests. */
final class Demo {

  static final Footprint FOOTPRINT =
      Footprint.regular(7, 2.4).inset(0.12).withoutRound(Vector2D.ZERO, 0.10);
  static final FloorMix GRAVEL = FloorMix.single("20 mm gravel", 1600, 1450, 0.02, 0.020);
  static final FloorMix BASE =
      new FloorMix(
          "dry pack 1 soil : 3 sand",
          List.of(
              new MixPart("clay soil", 0.28, 1080, 0.12, 0.15),
              MixPart.of("washed sand", 0.72, 1290, 0.05)),
          new Range(1800, 1880, 1950),
          0.09,
          0.010);
  static final FloorMix COAT =
      new FloorMix(
          "finish 1 soil : 3 sand",
          List.of(
              new MixPart("clay soil", 0.27, 1080, 0.12, 0.15),
              MixPart.of("washed sand", 0.72, 1290, 0.05),
              MixPart.of("chopped straw", 0.01, 60, 0.10)),
          new Range(1650, 1750, 1850),
          0.20,
          0.005);
  static final MembraneLayer SHEET = new MembraneLayer("damp-proof sheet", 4, 25, 0.15, 0.1);
  static final BuildUp FLOOR =
      BuildUp.level(
          FOOTPRINT,
          List.of(
              EarthLayer.capillaryBreak(0.1, GRAVEL),
              SHEET,
              EarthLayer.dryPack(BASE),
              EarthLayer.coat("first coat", 0.025, COAT),
              FinishLayer.linseedOil()));
  static final Mixer MIXER = Mixer.of(0.090, 180, 0.010);

  private Demo() {}
}

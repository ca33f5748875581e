package io.github.seamstead.examples.derivations;

import io.github.seamstead.assembly.anchor.Ballast;
import io.github.seamstead.assembly.anchor.CapDrainage;
import io.github.seamstead.assembly.anchor.Ground;
import io.github.seamstead.assembly.anchor.GuyRope;
import io.github.seamstead.assembly.anchor.HemRope;
import io.github.seamstead.assembly.anchor.Openings;
import io.github.seamstead.assembly.anchor.PeakWind;
import io.github.seamstead.assembly.anchor.PegCheck;
import io.github.seamstead.assembly.anchor.PegTest;
import io.github.seamstead.assembly.anchor.ShelterForm;
import io.github.seamstead.assembly.anchor.Terrain;
import io.github.seamstead.assembly.anchor.Ventilation;
import io.github.seamstead.assembly.anchor.WindCoefficients;
import io.github.seamstead.assembly.anchor.WindPressure;
import io.github.seamstead.assembly.anchor.WindScreen;
import java.util.List;

/** Wind and what holds the cover down. */
final class AnchorSamples {

  private AnchorSamples() {}

  static void addTo(Samples to) {
    to.add("assembly.anchor.pressure", steps -> WindPressure.of(25).pressure(steps));
    to.add("assembly.anchor.gust", steps -> PeakWind.of(24, Terrain.SHELTERED, 3).gust(steps));
    to.add("assembly.anchor.screen", steps -> SCREEN.pegPull(steps));
    to.add("assembly.anchor.peg", steps -> TEST.holding(steps));
    to.add("assembly.anchor.pegs", steps -> PegCheck.of(SCREEN, TEST).pegsNeeded(steps));
    to.add("assembly.anchor.ballast", steps -> Ballast.of(SCREEN, 0.4).mass(steps));
    to.add("assembly.anchor.hemrope", steps -> HemRope.of(100, 0.6, 0.05).tension(steps));
    to.add("assembly.anchor.guy", steps -> GuyRope.of(500, 0.8).tension(steps));
    to.add("assembly.anchor.vents", steps -> Ventilation.of(28, 0.05, 0.06).neededArea(steps));
    to.add("assembly.anchor.hip", steps -> CapDrainage.of(8, 0.6, 0).hipSlope(steps));
  }

  private static final ShelterForm FORM = new ShelterForm(10, 1.9, 3.2);
  private static final WindScreen SCREEN =
      WindScreen.of(
          FORM,
          WindPressure.of(25),
          WindCoefficients.forPyramid(FORM, Openings.CLOSED),
          90,
          30,
          WindScreen.FACTOR_OCCUPIED);
  private static final PegTest TEST =
      PegTest.of(List.of(900.0, 1100.0, 950.0, 1000.0), 2, Ground.AS_TESTED);
}

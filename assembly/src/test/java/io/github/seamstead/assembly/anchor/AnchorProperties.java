package io.github.seamstead.assembly.anchor;

import static io.github.seamstead.shared.quantity.PhysicalConstants.STANDARD_GRAVITY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

class AnchorProperties {

  private static WindScreen screen(int sides, double width, double gust, double mass, int pegs) {
    ShelterForm form = new ShelterForm(sides, width * Math.tan(Math.PI / sides), 0.6 * width);
    return WindScreen.of(
        form,
        WindPressure.of(gust),
        WindCoefficients.forPyramid(form, Openings.CLOSED),
        mass,
        pegs,
        1.5);
  }

  @Property(tries = 100, seed = "26066")
  void moreWindNeverPullsLessAndMoreMassNeverMore(
      @ForAll @IntRange(min = 3, max = 24) int sides,
      @ForAll @DoubleRange(min = 2, max = 12) double width,
      @ForAll @DoubleRange(min = 1, max = 40) double gust,
      @ForAll @DoubleRange(min = 0, max = 500) double mass,
      @ForAll @IntRange(min = 3, max = 60) int pegs) {
    double pull = screen(sides, width, gust, mass, pegs).pegPull();
    assertThat(screen(sides, width, gust * 1.1, mass, pegs).pegPull()).isGreaterThan(pull);
    assertThat(screen(sides, width, gust, mass + 10, pegs).pegPull()).isLessThanOrEqualTo(pull);
    // Twice the pegs halve the pull on each.
    assertThat(screen(sides, width, gust, mass, 2 * pegs).pegPull())
        .isCloseTo(pull / 2, within(1e-9 * pull));
  }

  @Property(tries = 100, seed = "99755")
  void thePegsNeededAreEnoughAndOneFewerIsNot(
      @ForAll @DoubleRange(min = 5, max = 40) double gust,
      @ForAll @Size(min = 3, max = 8) List<@DoubleRange(min = 800, max = 1000) Double> pulls) {
    PegTest test = PegTest.of(pulls, 2, Ground.AS_TESTED);
    WindScreen plan = screen(10, 6, gust, 80, 20);
    int needed = PegCheck.of(plan, test).pegsNeeded();
    assertThat(PegCheck.of(screen(10, 6, gust, 80, needed), test).usedRatio())
        .isLessThanOrEqualTo(1 + 1e-5);
    if (needed > 20) {
      assertThat(PegCheck.of(screen(10, 6, gust, 80, needed - 1), test).usedRatio())
          .isGreaterThan(1);
    }
  }

  @Property(tries = 100, seed = "86734")
  void ballastNeitherSlidesNorTips(
      @ForAll @DoubleRange(min = 5, max = 40) double gust,
      @ForAll @DoubleRange(min = 0.05, max = 1) double friction) {
    WindScreen screen = screen(8, 5, gust, 60, 20);
    double mass = Ballast.of(screen, friction).mass() + 60;
    double down = 0.9 * mass * STANDARD_GRAVITY - 1.5 * screen.uplift();
    double drag = 1.5 * screen.drag();
    assertThat(friction * down).isGreaterThanOrEqualTo(drag * (1 - 1e-9));
    assertThat(down * screen.form().inradius())
        .isGreaterThanOrEqualTo(drag * screen.form().height() / 3 * (1 - 1e-9));
  }

  @Property(tries = 100, seed = "53916")
  void aHipIsFlatterThanItsFaces(
      @ForAll @IntRange(min = 3, max = 64) int sides,
      @ForAll @DoubleRange(min = 0.1, max = 1.5) double slope) {
    assertThat(CapDrainage.of(sides, slope, 0).hipSlope()).isLessThan(slope).isPositive();
    ShelterForm form = new ShelterForm(sides, 1, 1);
    assertThat(CapDrainage.of(sides, form.faceSlope(), 0).hipSlope())
        .isCloseTo(form.hipSlope(), within(1e-12));
  }

  @Property(tries = 100, seed = "19202")
  void everySpeedHasOneForce(@ForAll @DoubleRange(min = 0, max = 149) double speed) {
    Beaufort force = Beaufort.of(speed);
    assertThat(speed).isBetween(force.low() - 0.05001, force.high() + 0.05001);
    assertThat(Beaufort.of(speed + 1).force()).isGreaterThanOrEqualTo(force.force());
  }
}

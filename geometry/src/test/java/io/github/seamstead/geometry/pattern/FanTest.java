package io.github.seamstead.geometry.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.plane.Outline;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

class FanTest {

  private static Outline face(double base, double top, double height) {
    double x = (base - top) / 2;
    return top == 0
        ? Outline.of(Vector2D.ZERO, Vector2D.of(base, 0), Vector2D.of(base / 2, height))
        : Outline.of(
            Vector2D.ZERO,
            Vector2D.of(base, 0),
            Vector2D.of(base - x, height),
            Vector2D.of(x, height));
  }

  /** Six faces of base 2 m and height 3.2 m fan out over six times their angle at the top. */
  @Test
  void sixFacesFanOutOverSixTimesTheirAngle() {
    double hip = Math.hypot(1, 3.2);
    double angle = 6 * 2 * Math.atan(1 / 3.2);
    Fan fan = Fan.of(Collections.nCopies(6, face(2, 0, 3.2))).orElseThrow();
    assertThat(fan.outline().size()).isEqualTo(8);
    assertThat(fan.outline().area()).isCloseTo(6 * 3.2, within(1e-9));
    // Both arms reach out by the sine of half the angle, and the middle corner hangs straight.
    assertThat(fan.outline().bounds().width())
        .isCloseTo(2 * hip * Math.sin(angle / 2), within(1e-9));
    Vector2D apex = fan.outline().vertex(7);
    assertThat(fan.outline().vertex(0).subtract(apex).norm()).isCloseTo(hip, within(1e-9));
    assertThat(fan.outline().vertex(3).subtract(apex).getX()).isCloseTo(0, within(1e-9));
    assertThat(Math.toDegrees(angle)).isCloseTo(208.25, within(0.005));
  }

  @Property(tries = 200, seed = "7021")
  void areasAddUpAndEdgesKeepTheirLengths(
      @ForAll @IntRange(min = 2, max = 9) int count,
      @ForAll @DoubleRange(min = 0.3, max = 2) double base,
      @ForAll @DoubleRange(min = 0, max = 0.9) double cut,
      @ForAll @DoubleRange(min = 2, max = 5) double height) {
    Outline face = face(base, cut < 0.1 ? 0 : cut * base, height);
    double angle = count * 2 * Math.atan((base - (cut < 0.1 ? 0 : cut * base)) / 2 / height);
    List<Outline> faces = Collections.nCopies(count, face);
    if (angle > 2 * Math.PI - 0.2) {
      return;
    }
    Fan fan = Fan.of(faces).orElseThrow();
    assertThat(fan.outline().area()).isCloseTo(count * face.area(), within(1e-9));
    PanelSpec spec =
        PanelSpec.of(
            "fan", EdgePlan.of(EdgeAllowance.raw(), EdgeAllowance.raw(), EdgeAllowance.raw()));
    Panel panel = Panel.of(fan.outline(), spec.over(count));
    assertThat(panel.baseLength()).isCloseTo(count * base, within(1e-9));
    assertThat(panel.topLength())
        .isCloseTo(face.size() == 3 ? 0 : count * face.edgeLength(2), within(1e-9));
    SeamMatch seam = SeamMatch.between(panel, panel);
    assertThat(seam.first()).isCloseTo(face.edgeLength(1), within(1e-9));
    assertThat(seam.ease()).isCloseTo(0, within(1e-9));
    assertThat(seam.notchesMatch(1e-6)).isTrue();
    for (int i = 0; i < count; i++) {
      Outline there = fan.place(i, face, face);
      for (int k = 0; k < face.size(); k++) {
        assertThat(there.vertex(k).distance(fan.faces().get(i).vertex(k))).isLessThan(1e-9);
      }
    }
  }

  @Test
  void facesThatDoNotMeetOrGoAllRoundStayApart() {
    assertThat(Fan.of(List.of(face(2, 0, 3), face(2, 0, 3.1)))).isEmpty();
    assertThat(Fan.of(Collections.nCopies(12, face(2, 0, 1.5)))).isEmpty();
  }
}

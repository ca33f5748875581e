package io.github.seamstead.geometry.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.geometry.survey.RigidFit.Freedom;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.source.SourceStatus;
import io.github.seamstead.shared.testing.OutsideCheck;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

class RigidFitTest {

  private static final Source DOCUMENTED =
      new Source(
          "SciPy",
          "spatial.procrustes, documentation example",
          "1.1",
          "points found, results recomputed",
          SourceStatus.DERIVED);

  /** The flat example: third axis kept apart by a pair of points far up and down it. */
  private static List<Vector3D> flat(double... xy) {
    List<Vector3D> points = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      points.add(Vector3D.of(xy[i], xy[i + 1], 0));
    }
    return points;
  }

  @Test
  void documentedFlatExampleWithAMirrorImage() {
    // A flat figure is mirrored by a half turn in space: rotation alone brings the residual to 0
    // when scaled, as the source's fit does.
    List<Vector3D> a = flat(1, 3, 1, 2, 1, 1, 2, 1);
    List<Vector3D> b = flat(4, -2, 4, -4, 4, -6, 2, -6);
    RigidFit scaled = RigidFit.of(a, b, Freedom.MIRRORED_AND_SCALED);
    check("reflection and scale, scale").expect(2).within(1e-6).got(scaled.scale());
    check("reflection and scale, sum of squares").expect(0).within(1e-6).got(scaled.sumOfSquares());
    RigidFit mirrored = RigidFit.of(a, b, Freedom.MIRRORED);
    check("reflection, sum of squares").expect(3.5).within(1e-6).got(mirrored.sumOfSquares());
    check("reflection, rms").expect(0.935414).within(1e-6).got(mirrored.rootMeanSquare());
    check("reflection, shift x").expect(4.75).within(1e-6).got(mirrored.shift().getX());
    check("reflection, shift y").expect(-6.25).within(1e-6).got(mirrored.shift().getY());
  }

  @Test
  void documentedFlatExampleWithoutMirrorImage() {
    // Two points above and below each centroid hold the figure's good side up and weigh nothing
    // in the plane.
    List<Vector3D> a = new ArrayList<>(flat(1, 3, 1, 2, 1, 1, 2, 1));
    List<Vector3D> b = new ArrayList<>(flat(4, -2, 4, -4, 4, -6, 2, -6));
    a.add(Vector3D.of(1.25, 1.75, 50));
    a.add(Vector3D.of(1.25, 1.75, -50));
    b.add(Vector3D.of(3.5, -4.5, 50));
    b.add(Vector3D.of(3.5, -4.5, -50));
    RigidFit turned = RigidFit.of(a, b, Freedom.RIGID);
    check("rotation only, sum of squares").expect(7.5).within(1e-6).got(turned.sumOfSquares());
    check("rotation only, R 11").expect(0.8).within(1e-6).got(turned.rotationRows().get(0).getX());
    check("rotation only, R 12").expect(0.6).within(1e-6).got(turned.rotationRows().get(0).getY());
    check("rotation only, R 21").expect(-0.6).within(1e-6).got(turned.rotationRows().get(1).getX());
    check("rotation only, shift x").expect(1.45).within(1e-6).got(turned.shift().getX());
    check("rotation only, shift y").expect(-5.15).within(1e-6).got(turned.shift().getY());
  }

  @Test
  void spaceExample() {
    List<Vector3D> p =
        List.of(
            Vector3D.of(0, 0, 0), Vector3D.of(3, 0, 0), Vector3D.of(3, 2, 0), Vector3D.of(0, 2, 1));
    List<Vector3D> q =
        List.of(
            Vector3D.of(10.01, 20, 5),
            Vector3D.of(10, 22.99, 5),
            Vector3D.of(8, 23.01, 5.01),
            Vector3D.of(7.99, 20, 6));
    RigidFit fit = RigidFit.of(p, q, Freedom.RIGID);
    Source derived = Source.derived("rigid alignment of four points, recomputed reference");
    double[] shift = {9.997267, 19.998703, 4.999385};
    double[][] rows = {
      {0.001732, -0.999998, 0.000537},
      {0.999997, 0.001731, -0.001718},
      {0.001717, 0.000540, 0.999998}
    };
    for (int i = 0; i < 3; i++) {
      OutsideCheck.of("geometry.survey", "alignment in space, shift " + (i + 1), derived)
          .expect(shift[i])
          .within(1e-6)
          .got(fit.shift().toArray()[i]);
      for (int j = 0; j < 3; j++) {
        OutsideCheck.of("geometry.survey", "alignment in space, R " + (i + 1) + (j + 1), derived)
            .expect(rows[i][j])
            .within(1e-6)
            .got(fit.rotationRows().get(i).toArray()[j]);
      }
    }
    OutsideCheck.of("geometry.survey", "alignment in space, rms", derived)
        .expect(0.010181)
        .within(1e-6)
        .got(fit.rootMeanSquare());
    OutsideCheck.of("geometry.survey", "alignment in space, sum of squares", derived)
        .expect(4.14614e-4)
        .within(1e-9)
        .got(fit.sumOfSquares());
  }

  @Test
  void rotationAloneDoesNotMirrorABody() {
    List<Vector3D> p =
        List.of(Vector3D.ZERO, Vector3D.of(1, 0, 0), Vector3D.of(0, 2, 0), Vector3D.of(0, 0, 3));
    List<Vector3D> twin = p.stream().map(v -> Vector3D.of(-v.getX(), v.getY(), v.getZ())).toList();
    assertThat(RigidFit.of(p, twin, Freedom.MIRRORED).rootMeanSquare()).isCloseTo(0, within(1e-12));
    assertThat(RigidFit.of(p, twin, Freedom.RIGID).rootMeanSquare()).isGreaterThan(0.1);
    assertThat(RigidFit.of(p, twin, Freedom.SCALED).scale()).isLessThan(1);
  }

  /** Inner constraints put the frame where no rigid move brings it nearer to the regular one. */
  @Test
  void innerConstraintsAreTheBestFitToTheRegularFrame() {
    Map<Node, Vector3D> nodes = TestFrames.bent(7, false, 3, 3.5, 0.08, 5);
    List<Reading> readings =
        new ArrayList<>(
            TestFrames.readings(nodes, 7, false, 0.002, 5).stream()
                .filter(r -> r instanceof Reading.Distance)
                .toList());
    readings.add(
        Reading.distance(
            Node.APEX, Node.CENTRE, nodes.get(Node.APEX).distance(nodes.get(Node.CENTRE)), 0.002));
    SurveyShape shape = SurveyShape.whole(7).meant(new SurveyShape.Ideal(3, 3.5, 0));
    Adjustment adjustment = Survey.of(shape, readings).adjust().orThrow();
    assertThat(adjustment.freeMotions()).isEqualTo(6);
    assertThat(adjustment.isLevelled()).isFalse();
    List<Vector3D> built = new ArrayList<>();
    List<Vector3D> drawn = new ArrayList<>();
    double sum = 0;
    for (Node node : adjustment.survey().nodes()) {
      built.add(adjustment.position(node));
      drawn.add(adjustment.regular(node));
      sum += adjustment.position(node).subtract(adjustment.regular(node)).normSq();
    }
    RigidFit fit = RigidFit.of(built, drawn, Freedom.RIGID);
    assertThat(fit.sumOfSquares()).isCloseTo(sum, within(1e-12));
    assertThat(fit.shift().norm()).isCloseTo(0, within(1e-9));
  }

  @Test
  void badInput() {
    assertThatThrownBy(() -> RigidFit.of(List.of(), List.of(), Freedom.RIGID))
        .hasMessageContaining("points: given none");
    assertThatThrownBy(
            () -> RigidFit.of(List.of(Vector3D.ZERO), List.of(Vector3D.ZERO), Freedom.RIGID))
        .hasMessageContaining("all lie in one place");
    assertThatThrownBy(
            () ->
                RigidFit.of(
                    List.of(Vector3D.ZERO, Vector3D.of(1, 0, 0)),
                    List.of(Vector3D.ZERO),
                    Freedom.RIGID))
        .hasMessageContaining("must be as many");
  }

  private static OutsideCheck check(String what) {
    return OutsideCheck.of("geometry.survey", "flat alignment, " + what, DOCUMENTED);
  }
}

package io.github.seamstead.geometry.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.threed.rotation.QuaternionRotation;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Cut panels folded back onto a frame that is built in space on its own. */
class FoldBackProperties {

  @Property(tries = 60, seed = "2026110018")
  void piecesFoldBackOntoTheFrame(
      @ForAll @IntRange(min = 3, max = 24) int n,
      @ForAll @Scale(3) @DoubleRange(min = 0.8, max = 3) double side,
      @ForAll @Scale(3) @DoubleRange(min = 0.3, max = 1.2) double slope,
      @ForAll @Scale(3) @DoubleRange(min = 0.6, max = 0.9) double part) {
    double inradius = side / (2 * Math.tan(Math.PI / n));
    double circumradius = side / (2 * Math.sin(Math.PI / n));
    double height = inradius * Math.tan(slope);
    Outline face = Demo.trapezoid(side, inradius / Math.cos(slope), part);
    Panel panel =
        Panel.of(
            face,
            PanelSpec.of("P", Demo.PLAN)
                .withNotchSpacing(0.3)
                .withSplices(SpliceRule.of(1.7, 1.3, 0.07)));
    for (int i = 1; i <= n; i++) {
      AffineTransformMatrix3D raise = raise(n, i, inradius, side, slope);
      AffineTransformMatrix3D next = raise(n, i + 1, inradius, side, slope);
      Vector3D[] corners = {
        corner(n, i - 1, circumradius, 0),
        corner(n, i, circumradius, 0),
        corner(n, i, circumradius * (1 - part), height * part),
        corner(n, i - 1, circumradius * (1 - part), height * part)
      };
      List<Vector3D> sewn = new ArrayList<>();
      for (PatternPiece piece : panel.parts()) {
        for (Vector2D v : piece.stitch().vertices()) {
          sewn.add(raise.apply(Vector3D.of(v.getX(), v.getY(), 0)));
        }
      }
      for (Vector3D corner : corners) {
        assertThat(sewn.stream().mapToDouble(corner::distance).min().orElseThrow())
            .isLessThan(1e-9 * side);
      }
      assertThat(seam(panel, 1, raise))
          .usingElementComparator((a, b) -> a.distance(b) < 1e-9 * side ? 0 : 1)
          .containsExactlyElementsOf(seam(panel, 3, next));
    }
    SeamMatch match = SeamMatch.between(panel, panel);
    assertThat(match.ease()).isCloseTo(0, within(1e-9 * side));
    assertThat(match.notchesMatch(1e-12)).isTrue();
    double cover = panel.parts().stream().mapToDouble(PatternPiece::finishedArea).sum() * n;
    double plan = n * side * inradius / 2;
    assertThat(cover)
        .isCloseTo(plan * (1 - (1 - part) * (1 - part)) / Math.cos(slope), within(1e-9 * plan));
  }

  /** Notches of a hip in space, from the base up. */
  private static List<Vector3D> seam(Panel panel, int faceEdge, AffineTransformMatrix3D raise) {
    return panel.parts().stream()
        .flatMap(
            p -> p.notches().stream().filter(k -> p.edges().get(k.edge()).faceEdge() == faceEdge))
        .sorted((a, b) -> Double.compare(a.fromBase(), b.fromBase()))
        .map(k -> raise.apply(Vector3D.of(k.onStitch().getX(), k.onStitch().getY(), 0)))
        .toList();
  }

  private static Vector3D corner(int n, int hip, double radius, double z) {
    double azimuth = 2 * Math.PI * hip / n;
    return Vector3D.of(radius * Math.cos(azimuth), radius * Math.sin(azimuth), z);
  }

  /** Tilts a panel about its base and sets it on its side of the frame. */
  private static AffineTransformMatrix3D raise(
      int n, int face, double inradius, double side, double slope) {
    // Base middle to the origin, tilt, then move out to the side facing +y turned round.
    double facing = 2 * Math.PI * (face - 0.5) / n;
    return AffineTransformMatrix3D.createTranslation(-side / 2, 0, 0)
        .rotate(QuaternionRotation.fromAxisAngle(Vector3D.Unit.PLUS_X, slope))
        .translate(0, -inradius, 0)
        .rotate(QuaternionRotation.fromAxisAngle(Vector3D.Unit.PLUS_Z, facing + Math.PI / 2));
  }
}

package io.github.seamstead.api.chapter.markout;

import static io.github.seamstead.api.testing.Fixture.filled;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.testing.EarthJob;
import io.github.seamstead.api.testing.Fixture;
import io.github.seamstead.api.testing.Sketch;
import io.github.seamstead.api.testing.Sketch.Point;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A trapezium with a hem: its baseline is the foot of the hem, not the line of the finished face.
 */
class MarkoutDrawingByHandTest {

  private static final String TEXT =
      """
      {"seamstead": 1,
       "frame": {"sides": 4, "measures": {"baseSide": "4 m", "height": "3 m"},
         "opening": {"side": "1 m"}},
       "cover": {"fabric": {"name": "x", "massPerArea": "500 g/m2", "thickness": "0.5 mm"},
         "seam": {"kind": "fin", "allowance": "40 mm"},
         "hem": {"kind": "turned", "allowance": "50 mm"}, "topTurnIn": "60 mm",
         "cap": {"overlap": "300 mm", "lap": "50 mm"}}}
      """;

  private static Fixture planned() {
    return Fixture.of(TEXT, Chapter.MARKOUT);
  }

  /** The corners of the cut line along the foot of the hem and off it. */
  private static List<double[]> corners(Fixture f, String shape) {
    List<double[]> corners = new ArrayList<>();
    for (JsonNode corner : f.at(shape + "/cut_m")) {
      corners.add(new double[] {corner.get(0).asDouble(), corner.get(1).asDouble()});
    }
    double foot = corners.stream().mapToDouble(c -> c[1]).min().orElseThrow();
    double left =
        corners.stream().filter(c -> c[1] < foot + 1e-9).mapToDouble(c -> c[0]).min().orElseThrow();
    return corners.stream().map(c -> new double[] {c[0] - left, c[1] - foot}).toList();
  }

  private static void at(Point point, double x, double y) {
    assertThat(point.x()).isCloseTo(x, within(0.0051));
    assertThat(point.y()).isCloseTo(y, within(0.0051));
  }

  /** In 284 units of width; a corner's number stands 13 units outside of it. */
  @Test
  void theCornersAreNumberedInTheDrawing() {
    Fixture f = planned();
    List<double[]> corners = corners(f, "/cover/shapes/0");
    double left = corners.stream().mapToDouble(c -> c[0]).min().orElseThrow();
    double right = corners.stream().mapToDouble(c -> c[0]).max().orElseThrow();
    double high = corners.stream().mapToDouble(c -> c[1]).max().orElseThrow();
    double scale = 284 / (right - left);
    Sketch sketch = Sketch.of(f, "markout-shape-1");
    at(sketch.size(), 360, 76 + high * scale);
    assertThat(sketch.paths().get(0).points()).hasSameSizeAs(corners);
    assertThat(sketch.dots()).hasSameSizeAs(corners);
    // The middle of the drawing: half way up and half way across.
    Point middle = new Point(180, 38 + high * scale / 2);
    int beside = 0;
    for (int i = 0; i < corners.size(); i++) {
      double x = 38 + (corners.get(i)[0] - left) * scale;
      double y = 38 + (high - corners.get(i)[1]) * scale;
      at(sketch.paths().get(0).at(i), x, y);
      at(sketch.dots().get(i).at(), x, y);
      double length = Math.hypot(x - middle.x(), y - middle.y());
      Point wanted =
          new Point(x + 13 * (x - middle.x()) / length, y + 13 * (y - middle.y()) / length);
      // Where two corners lie a hand's breadth apart, a number is moved off the other by 6.
      double moved = sketch.where("" + i).from(wanted);
      assertThat(moved).isLessThan(6.01);
      beside += moved < 0.0072 ? 1 : 0;
    }
    assertThat(beside).isGreaterThanOrEqualTo(4);
    double foot = 38 + high * scale;
    at(sketch.paths().get(1).at(0), 38 - 18, foot);
    at(sketch.paths().get(1).at(1), 322 + 18, foot);
    // The marks stand 14 below; A is moved along, off the number of its corner.
    double base = f.number("/markout/0/baseline_m");
    at(sketch.where("B"), 38 + (base - left) * scale, foot + 14);
    assertThat(sketch.where("A").from(new Point(38 - left * scale, foot + 14))).isLessThan(6.1);
    assertThat(sketch.told()).startsWith("Marking out panel 1–4\n");
  }

  /** The tables of the page are those of the results, and mark A is their zero. */
  @Test
  void theTablesOfThePage() {
    Fixture f = planned();
    List<double[]> corners = corners(f, "/cover/shapes/0");
    List<String> page = f.read(Chapter.MARKOUT);
    // A cap is not marked out by its corners.
    assertThat(f.at("/markout")).hasSize(1);
    assertThat(f.at("/markout/0/baselineEdge").asInt()).isEqualTo(1);
    assertThat(f.at("/markout/0/offsets/1/along_m").asDouble()).isZero();
    assertThat(f.at("/markout/0/offsets/1/off_m").asDouble()).isZero();
    assertThat(f.at("/markout/0/twoTapes")).hasSameSizeAs(corners);
    assertThat(page.get(0)).contains("Mark A is the zero of the baseline.");
    assertThat(page).containsSubsequence("panel 1–4", "By offsets: panel 1–4");
    double base = corners.get(2)[0];
    int n = corners.size();
    for (int i = 0; i < n; i++) {
      double x = corners.get(i)[0];
      double y = corners.get(i)[1];
      double off = f.number("/markout/0/offsets/" + i + "/error_m");
      double tapes = f.number("/markout/0/twoTapes/" + i + "/error_m");
      String side = i == 1 ? "at mark A" : i == 2 ? "at mark B" : "left";
      assertThat(page)
          .contains(
              filled("%d | %.3f m | %.3f m | %.1f mm", i, x, y, 1000 * off),
              filled(
                  "%d | %.3f m | %.3f m | %s | %.1f mm",
                  i, Math.hypot(x, y), Math.hypot(x - base, y), side, 1000 * tapes));
      for (int j = i + 1; j < n; j++) {
        boolean next = j == i + 1 || i == 0 && j == n - 1;
        double length = Math.hypot(corners.get(j)[0] - x, corners.get(j)[1] - y);
        assertThat(page)
            .contains(filled("%d | %d%s | %.3f m", i, j, next ? " (side)" : "", length));
      }
    }
  }

  /** The worked sum shows a corner that lies farthest off. */
  @Test
  void theWorkedSumIsThatOfTheFarthestCorner() {
    Fixture f = planned();
    double high = corners(f, "/cover/shapes/0").stream().mapToDouble(c -> c[1]).max().orElseThrow();
    List<Double> values =
        f.plan().derivations().stream()
            .filter(d -> d.id().equals("geometry.markout.offset"))
            .flatMap(d -> d.steps().stream())
            .map(step -> step.value())
            .toList();
    assertThat(values).anySatisfy(v -> assertThat(v).isCloseTo(high, within(1e-9)));
  }

  /** All shapes are drawn to the scale of the largest. */
  @Test
  void shapesAreDrawnToOneScale() {
    Fixture f =
        Fixture.of(
            EarthJob.with(
                TEXT,
                " \"cover\":",
                " \"stock\": {\"sheets\": [{\"id\": \"a\", \"length\": \"5 m\", \"width\": \"2"
                    + " m\", \"count\": 9}]},\n \"cover\":"),
            Chapter.MARKOUT);
    assertThat(f.at("/markout").size()).isGreaterThan(1);
    double scale = Double.MAX_VALUE;
    for (int i = 0; i < f.at("/markout").size(); i++) {
      List<double[]> corners = drawn(f, i);
      scale = Math.min(scale, Math.min(284 / spread(corners, 0), 304 / spread(corners, 1)));
    }
    for (int i = 0; i < f.at("/markout").size(); i++) {
      List<double[]> corners = drawn(f, i);
      List<Point> points =
          Sketch.of(f, "markout-" + f.at("/markout/" + i + "/shape").asText())
              .paths()
              .get(0)
              .points();
      double wide =
          points.stream().mapToDouble(Point::x).max().orElseThrow()
              - points.stream().mapToDouble(Point::x).min().orElseThrow();
      // Corners are rounded to the tape in the results: by half a millimetre on either side.
      assertThat(wide).isCloseTo(spread(corners, 0) * scale, within(0.002 * scale + 0.01));
    }
  }

  private static List<double[]> drawn(Fixture f, int part) {
    List<double[]> corners = new ArrayList<>();
    for (JsonNode row : f.at("/markout/" + part + "/offsets")) {
      corners.add(new double[] {row.at("/along_m").asDouble(), row.at("/off_m").asDouble()});
    }
    return corners;
  }

  private static double spread(List<double[]> corners, int axis) {
    return corners.stream().mapToDouble(c -> c[axis]).max().orElseThrow()
        - corners.stream().mapToDouble(c -> c[axis]).min().orElseThrow();
  }
}

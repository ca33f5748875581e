package io.github.seamstead.api.chapter.cover;

import static io.github.seamstead.api.testing.Fixture.filled;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.testing.EarthJob;
import io.github.seamstead.api.testing.Fixture;
import io.github.seamstead.api.testing.Sketch;
import io.github.seamstead.api.testing.Sketch.Path;
import io.github.seamstead.api.testing.Sketch.Point;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Each piece is drawn true to size in millimetres, 15 mm from the border, and once small. */
class PieceDrawingByHandTest {

  private static final String TEXT =
      """
      {"seamstead": 1,
       "frame": {"sides": 4, "measures": {"baseSide": "4 m", "height": "3 m"},
         "opening": {"side": "1 m"}},
       "cover": {"fabric": {"name": "x", "massPerArea": "500 g/m2", "thickness": "0.5 mm"},
         "seam": {"kind": "fin", "allowance": "40 mm"}, "hem": {"kind": "raw"},
         "topTurnIn": "60 mm",
         "vents": [{"id": "v", "face": 2, "outline": [{"x": "1.8 m", "y": "1 m"},
           {"x": "2.2 m", "y": "1 m"}, {"x": "2.2 m", "y": "1.4 m"}, {"x": "1.8 m", "y": "1.4 m"}]}],
         "keepTogether": false}}
      """;

  private static final String PALE = "#f0f0ec";
  private static final String PAPER = "#fff";
  private static final double HEAVY = 2.8;

  /** How a drawing lies in the shape's own coordinates, by the outline that is cut. */
  private record Place(double left, double high, double scale, double margin) {

    Point of(double x, double y) {
      return new Point(margin + (x - left) * scale, margin + (high - y) * scale);
    }

    Point of(JsonNode corner) {
      return of(corner.get(0).asDouble(), corner.get(1).asDouble());
    }
  }

  private static double[] bounds(JsonNode corners) {
    double[] b = {Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
    for (JsonNode corner : corners) {
      b[0] = Math.min(b[0], corner.get(0).asDouble());
      b[1] = Math.min(b[1], corner.get(1).asDouble());
      b[2] = Math.max(b[2], corner.get(0).asDouble());
      b[3] = Math.max(b[3], corner.get(1).asDouble());
    }
    return b;
  }

  private static Place trueSize(JsonNode shape) {
    double[] b = bounds(shape.at("/cut_m"));
    return new Place(b[0], b[3], 1000, 15);
  }

  private static void same(Point point, Point expected) {
    assertThat(point.x()).isCloseTo(expected.x(), within(0.0051));
    assertThat(point.y()).isCloseTo(expected.y(), within(0.0051));
  }

  private static void is(Path path, JsonNode corners, Place place) {
    assertThat(path.points()).hasSameSizeAs(corners);
    for (int i = 0; i < corners.size(); i++) {
      same(path.at(i), place.of(corners.get(i)));
    }
    assertThat(path.closed()).isTrue();
  }

  /** The cut line full, the stitch line dashed, the notches from the cut line inwards. */
  @Test
  void aPanelTrueToSize() {
    Fixture f = Fixture.of(TEXT, Chapter.PATTERN);
    JsonNode shape = f.at("/cover/shapes/0");
    Place place = trueSize(shape);
    Sketch sketch = Sketch.of(f, "true-size-panel-1");
    double[] b = bounds(shape.at("/cut_m"));
    assertThat(sketch.size().x()).isCloseTo(1000 * (b[2] - b[0]) + 30, within(0.0051));
    assertThat(sketch.size().y()).isCloseTo(1000 * (b[3] - b[1]) + 30, within(0.0051));
    List<Path> paths = sketch.paths();
    is(paths.get(0), shape.at("/cut_m"), place);
    assertThat(paths.get(0).fill()).isEqualTo(PALE);
    assertThat(paths.get(0).dash()).isEmpty();
    is(paths.get(1), shape.at("/stitch_m"), place);
    assertThat(paths.get(1).dash()).isNotEmpty();
    int next = 2;
    for (JsonNode notch : shape.at("/notches")) {
      // Six tenths of the way from the cut line to the stitch line.
      Point stitch = place.of(notch.at("/stitchToCut_m/0"));
      Point cut = place.of(notch.at("/stitchToCut_m/1"));
      Point inner =
          new Point(cut.x() + 0.6 * (stitch.x() - cut.x()), cut.y() + 0.6 * (stitch.y() - cut.y()));
      same(paths.get(next).at(0), cut);
      same(paths.get(next).at(1), inner);
      next++;
      if (notch.at("/doubled").asBoolean()) {
        // The second stroke stands a quarter of the allowance of 40 mm to the left of the first.
        double x = (stitch.x() - cut.x()) / 4;
        double y = (stitch.y() - cut.y()) / 4;
        same(paths.get(next).at(0), new Point(cut.x() + y, cut.y() - x));
        same(paths.get(next).at(1), new Point(inner.x() + y, inner.y() - x));
        next++;
      }
    }
    assertThat(paths).hasSize(next);
    List<String> texts = sketch.texts().stream().map(Sketch.Text::text).toList();
    assertThat(texts).contains("1", "1R", "1L");
    assertThat(sketch.told())
        .startsWith("1, true size\n1 (panel), seen on its good side; 3 to cut, ")
        .contains(filled("3 to cut, %.3f m by %.3f m. ", b[2] - b[0], b[3] - b[1]))
        .doesNotContain("across the piece");
  }

  /** In the book the whole fits into 360 by 420 with 24 free round it. */
  @Test
  void aPanelInTheBook() {
    Fixture f = Fixture.of(TEXT, Chapter.PATTERN);
    JsonNode shape = f.at("/cover/shapes/0");
    double[] b = bounds(shape.at("/cut_m"));
    double scale = Math.min(312 / (b[2] - b[0]), 372 / (b[3] - b[1]));
    Sketch sketch = Sketch.of(f, "piece-panel-1");
    is(sketch.paths().get(0), shape.at("/cut_m"), new Place(b[0], b[3], scale, 24));
    is(sketch.paths().get(1), shape.at("/stitch_m"), new Place(b[0], b[3], scale, 24));
    assertThat(sketch.told()).startsWith("1\n1 (panel), seen on its good side; ");
    // What is written on the cloth is written in the drawing, within the cut line.
    for (Sketch.Text text : sketch.texts()) {
      assertThat(text.at().x()).isBetween(0.0, 360.0);
      assertThat(text.at().y()).isBetween(0.0, sketch.size().y());
    }
    assertThat(sketch.texts()).hasSizeGreaterThan(5);
  }

  /** A hole is paper white, its cut line full and its finished edge dashed; no label lies in it. */
  @Test
  void anOpeningIsDrawn() {
    Fixture f = Fixture.of(TEXT, Chapter.PATTERN);
    JsonNode shape = f.at("/cover/shapes/1");
    assertThat(shape.at("/labels").toString()).isEqualTo("[\"2\"]");
    Place place = trueSize(shape);
    Sketch sketch = Sketch.of(f, "true-size-panel-2");
    is(sketch.paths().get(2), shape.at("/holes/0/cut_m"), place);
    assertThat(sketch.paths().get(2).fill()).isEqualTo(PAPER);
    is(sketch.paths().get(3), shape.at("/holes/0/finished_m"), place);
    assertThat(sketch.paths().get(3).dash()).isNotEmpty();
    Point low = place.of(1.8, 1);
    Point high = place.of(2.2, 1.4);
    for (String name : List.of("true-size-panel-2", "piece-panel-2")) {
      assertThat(Sketch.of(f, name).texts()).isNotEmpty();
    }
    for (Sketch.Text text : sketch.texts()) {
      boolean within =
          text.at().x() > low.x()
              && text.at().x() < high.x()
              && text.at().y() < low.y()
              && text.at().y() > high.y();
      assertThat(within).as(text.toString()).isFalse();
    }
  }

  /** The edge that is kept on the band of a sheet is a heavy line along the base. */
  @Test
  void theBandIsHeavy() {
    Fixture f = Fixture.of(EarthJob.with(TEXT, "\"raw\"", "\"reinforced\""), Chapter.PATTERN);
    JsonNode cut = f.at("/cover/shapes/0/cut_m");
    Place place = trueSize(f.at("/cover/shapes/0"));
    double[] b = bounds(cut);
    List<Point> foot = new ArrayList<>();
    for (JsonNode corner : cut) {
      if (Math.abs(corner.get(1).asDouble() - b[1]) < 1e-9) {
        foot.add(place.of(corner));
      }
    }
    assertThat(foot).hasSize(2);
    double cutWeight = Sketch.of(f, "true-size-panel-1").paths().get(0).weight();
    List<Path> heavy =
        Sketch.of(f, "true-size-panel-1").paths().stream()
            .filter(path -> path.weight() > 1.5 * cutWeight)
            .toList();
    assertThat(heavy).hasSize(1);
    // A line of the book is 1.4 wide where it is cut, and twice as wide on a band.
    assertThat(heavy.get(0).weight() / cutWeight).isCloseTo(HEAVY / 1.4, within(0.02));
    same(heavy.get(0).at(0), foot.get(0));
    same(heavy.get(0).at(1), foot.get(1));
  }

  /** Three faces in one piece: two hips within, named along their lower halves, never head down. */
  @Test
  void hipsWithinAreDashedAndNamed() {
    Fixture f =
        Fixture.of(
            EarthJob.with(
                    TEXT,
                    " \"cover\":",
                    " \"stock\": {\"sheets\": [{\"id\": \"a\", \"length\": \"9 m\", \"width\": \"8"
                        + " m\"}]},\n \"cover\":")
                .replace(",\n   \"keepTogether\": false", ""),
            Chapter.PATTERN);
    JsonNode shape = f.at("/cover/shapes/0");
    assertThat(shape.at("/folds")).hasSize(3);
    Place place = trueSize(shape);
    Sketch sketch = Sketch.of(f, "true-size-panel-1-to-4");
    List<Path> dashed =
        sketch.paths().stream().filter(p -> !p.dash().isEmpty() && !p.closed()).toList();
    assertThat(dashed).hasSize(3);
    for (int i = 0; i < 3; i++) {
      JsonNode ends = shape.at("/folds/" + i + "/footToTop_m");
      Point foot = place.of(ends.get(0));
      Point top = place.of(ends.get(1));
      same(dashed.get(i).at(0), foot);
      same(dashed.get(i).at(1), top);
      String name = "hip " + (i + 1) + "|" + (i + 2);
      assertThat(shape.at("/folds/" + i + "/name").asText()).isEqualTo(name);
      Sketch.Text label =
          sketch.texts().stream().filter(t -> t.text().equals(name)).findFirst().orElseThrow();
      // Moved aside where something lies there already, but by less than to the next hip.
      Point wanted =
          new Point(foot.x() + 0.35 * (top.x() - foot.x()), foot.y() + 0.35 * (top.y() - foot.y()));
      assertThat(label.at().from(wanted)).isLessThan(500);
      double turn = Math.toDegrees(Math.atan2(top.y() - foot.y(), top.x() - foot.x()));
      double upright = turn > 90 ? turn - 180 : turn < -90 ? turn + 180 : turn;
      double written =
          label.turn().isEmpty() ? 0 : Double.parseDouble(label.turn().replaceAll("[^-0-9.]", ""));
      assertThat(written).isCloseTo(upright, within(0.0051));
    }
    assertThat(sketch.told()).contains("; across the piece: a hip, bent and not cut");
    assertThat(f.read(Chapter.PATTERN))
        .contains(
            "Panel 1 to 4 goes over 4 faces in one piece, with 3 seams fewer. Chalk a line from"
                + " each corner of its lower edge to the corner above it: there the cloth bends"
                + " over the pole. Snip the turn-in of the upper edge at these lines, so that it"
                + " lies flat.")
        .containsSubsequence(
            "– | – | raw edge | 4 × 4.001 m | 0 mm",
            "1 to 4R | A-10 | fin seam | 3.092 m | 40 mm",
            "– | – | turn-in | 4 × 1.001 m | 60 mm",
            "1 to 4L | A-10 | fin seam | 3.092 m | 40 mm");
  }

  /** Names on the cloth and the edges of each shape; like sides in a run are one row. */
  @Test
  void theTablesOfAShape() {
    Fixture f =
        Fixture.of(
            EarthJob.with(
                TEXT,
                "\"topTurnIn\"",
                "\"cap\": {\"overlap\": \"300 mm\", \"lap\": \"50 mm\"}, \"topTurnIn\""),
            Chapter.PATTERN);
    double grown = 0.001 / Math.sin(Math.atan2(3, 2));
    double hip = 0.75 * Math.sqrt(17);
    assertThat(f.read(Chapter.PATTERN))
        .containsSubsequence(
            "panel 1, 3, 4",
            "Edges of panel 1, 3, 4",
            filled("– | – | raw edge | %.3f m | 0 mm", 4 + grown),
            filled("see each | see each | fin seam | %.3f m | 40 mm", hip),
            filled("– | – | turn-in | %.3f m | 60 mm", 1 + grown),
            filled("see each | see each | fin seam | %.3f m | 40 mm", hip),
            "What is written on each",
            "1 | 1R A-10, 1L D-20",
            "3 | 3R C-32, 3L B-21",
            "4 | 4R D-20, 4L C-32",
            filled("2R | B-21 | fin seam | %.3f m | 40 mm", hip));
    // The arc of a sector of the cap: so many sides of one length.
    double rim = (1 + grown) / Math.sqrt(2) + 0.3 * Math.cos(Math.atan2(3, 2 * Math.sqrt(2)));
    int sides = 0;
    double side = 0;
    for (String line : f.read(Chapter.PATTERN)) {
      if (line.matches("– \\| – \\| raw edge \\| \\d+ × .*")) {
        String[] cells = line.split(" \\| ", -1)[3].split(" × ", -1);
        sides = Integer.parseInt(cells[0]);
        side = Double.parseDouble(cells[1].replace(" m", ""));
      }
    }
    assertThat(sides * side).isCloseTo(Math.PI * rim, within(0.0006 * sides));
  }
}

package io.github.seamstead.api.chapter.frame;

import static io.github.seamstead.api.testing.Fixture.filled;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.testing.EarthJob;
import io.github.seamstead.api.testing.Fixture;
import io.github.seamstead.api.testing.Sketch;
import io.github.seamstead.api.testing.Sketch.Path;
import io.github.seamstead.api.testing.Sketch.Point;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A square of 4 m, 3 m to its tip, cut off where it is 1 m wide, from above and from the side. */
class FrameDrawingsByHandTest {

  private static final String TEXT =
      """
      {"seamstead": 1,
       "frame": {"sides": 4, "measures": {"baseSide": "4 m", "height": "3 m"},
         "opening": {"side": "1 m"}},
       "cover": {"fabric": {"name": "x", "massPerArea": "500 g/m2", "thickness": "1 mm"},
         "seam": {"kind": "fin", "allowance": "40 mm"}, "hem": {"kind": "raw"},
         "door": {"id": "d", "face": 1, "outline": [{"x": "1.8 m", "y": "0.5 m"},
           {"x": "2.2 m", "y": "0.5 m"}, {"x": "2 m", "y": "0.8 m"}]}}}
      """;

  private static final String LIGHT = "#dcdcd4";
  private static final double HEAVY = 2.8;
  private static final double THIN = 0.72;

  private static Fixture planned(String old, String changed) {
    return Fixture.of(EarthJob.with(TEXT, old, changed), Chapter.FRAME);
  }

  private static Fixture planned() {
    return Fixture.of(TEXT, Chapter.FRAME);
  }

  private static void at(Point point, double x, double y) {
    assertThat(point.x()).isCloseTo(x, within(0.0051));
    assertThat(point.y()).isCloseTo(y, within(0.0051));
  }

  /** Corners lie at the ends of the diagonals, 280 units long about the middle of 360 by 340. */
  @Test
  void thePlanWithTheDoorAtTheBottom() {
    double scale = 280 / (4 * Math.sqrt(2));
    for (int door = 1; door <= 4; door++) {
      Fixture f = planned("\"face\": 1", "\"face\": " + door);
      Sketch plan = Sketch.of(f, "frame-plan");
      at(plan.size(), 360, 340);
      for (int i = 0; i < 4; i++) {
        // Counter-clockwise from the right end of the side at the bottom: corner and face by turns.
        int hip = (door - 1 + i) % 4 + 1;
        double turn = Math.toRadians(-45 + 90 * i);
        double x = 2 * Math.sqrt(2) * scale * Math.cos(turn);
        double y = 2 * Math.sqrt(2) * scale * Math.sin(turn);
        Path line = plan.paths().get(hip - 1);
        at(line.at(0), 180 + x, 170 - y);
        // The opening is a quarter as wide as the base.
        at(line.at(1), 180 + x / 4, 170 - y / 4);
        at(plan.where("B" + hip), 180 + x * 154 / 140, 170 - y * 154 / 140);
        double middle = Math.toRadians(-90 + 90 * i);
        at(
            plan.where("" + hip),
            180 + 0.62 * 2 * scale * Math.cos(middle),
            170 - 0.62 * 2 * scale * Math.sin(middle));
      }
      at(plan.where("door"), 180, 170 + 2 * scale - 10);
      Path base = plan.paths().get(4);
      assertThat(base.weight()).isEqualTo(HEAVY);
      assertThat(base.closed()).isTrue();
      assertThat(base.points()).hasSize(4);
      assertThat(plan.filled(LIGHT)).hasSize(1);
      for (int i = 0; i < 4; i++) {
        at(base.at(i), plan.paths().get(i).at(0).x(), plan.paths().get(i).at(0).y());
        Point top = plan.paths().get(i).at(1);
        at(plan.filled(LIGHT).get(0).at(i), top.x(), top.y());
      }
      assertThat(plan.told()).contains("The door, at face " + door + ", is at the bottom.");
    }
  }

  /** Faces of five sides stand 72 degrees apart, the first at the bottom with the door. */
  @Test
  void thePlanOfFiveSides() {
    Sketch plan = Sketch.of(planned("\"sides\": 4", "\"sides\": 5"), "frame-plan");
    double flat = 140 * Math.cos(Math.PI / 5);
    for (int face = 1; face <= 5; face++) {
      double middle = Math.toRadians(-90 + 72 * (face - 1));
      at(
          plan.where("" + face),
          180 + 0.62 * flat * Math.cos(middle),
          170 - 0.62 * flat * Math.sin(middle));
    }
    at(plan.where("door"), 180, 170 + flat - 10);
  }

  /** Without an opening the hips meet in the middle; of 50 corners every second is named. */
  @Test
  void thePlanOfAWholeFrameAndOfMany() {
    Sketch whole = Sketch.of(planned(",\n   \"opening\": {\"side\": \"1 m\"}", ""), "frame-plan");
    for (int i = 0; i < 4; i++) {
      at(whole.paths().get(i).at(1), 180, 170);
    }
    assertThat(whole.filled(LIGHT)).isEmpty();
    Fixture many =
        Fixture.of(
            """
            {"seamstead": 1,
             "frame": {"sides": 50, "measures": {"circumradius": "4 m", "height": "3 m"}}}
            """,
            Chapter.FRAME);
    List<String> texts =
        Sketch.of(many, "frame-plan").texts().stream().map(Sketch.Text::text).toList();
    assertThat(texts.stream().filter(text -> text.startsWith("B"))).hasSize(25);
    assertThat(texts).contains("B1", "B3", "B49", "1", "49").doesNotContain("B2", "2");
  }

  /** 2.4 half diagonals wide in 300 units, with the height and the way across written beside. */
  @Test
  void theElevationOfASquare() {
    Sketch side = Sketch.of(planned(), "frame-elevation");
    double half = 2 * Math.sqrt(2);
    double s = 300 / (2.4 * half);
    double middle = 30 + 1.05 * half * s;
    double ground = 30 + 2.25 * s;
    at(side.size(), 360, 60 + 1.12 * 2.25 * s);
    List<Path> paths = side.paths();
    at(paths.get(0).at(0), 30, ground);
    at(paths.get(0).at(1), middle + 1.05 * half * s, ground);
    assertThat(paths.get(0).weight()).isEqualTo(HEAVY);
    at(paths.get(1).at(0), middle - half * s, ground);
    at(paths.get(1).at(1), middle - half / 4 * s, 30);
    at(paths.get(1).at(2), middle + half / 4 * s, 30);
    at(paths.get(1).at(3), middle + half * s, ground);
    double aside = middle + 1.12 * half * s;
    double below = ground + 0.09 * 2.25 * s;
    at(paths.get(2).at(0), aside, 30 + 1.125 * s);
    at(paths.get(2).at(1), aside, 30);
    at(paths.get(3).at(0), aside, 30 + 1.125 * s);
    at(paths.get(3).at(1), aside, ground);
    at(paths.get(4).at(0), middle, below);
    at(paths.get(4).at(1), middle - half * s, below);
    at(paths.get(5).at(1), middle + half * s, below);
    assertThat(paths.get(5).weight()).isEqualTo(THIN);
    at(where(side, "2.250 m"), aside - 8, 30 + 1.125 * s);
    at(where(side, "5.657 m"), middle, below + 9);
    // From 2.83 m at the foot to 0.71 m at the top: half way up 1.77 m.
    at(where(side, "hip 3.092 m"), middle - half * 5 / 8 * s + 14, 30 + 1.125 * s);
    assertThat(side.told())
        .contains(
            "Seen along the ground through two opposite hips: across the base corners 5.657 m,"
                + " height 2.250 m, opening across its corners 1.414 m.");
  }

  private static Point where(Sketch sketch, String text) {
    return sketch.texts().stream()
        .filter(t -> t.text().replace('\u00a0', ' ').equals(text))
        .findFirst()
        .orElseThrow()
        .at();
  }

  /** Opposite the hip of five sides stands a face: 0.81 of the way to a corner from the middle. */
  @Test
  void theElevationOfFiveSides() {
    Fixture f = planned("\"sides\": 4", "\"sides\": 5");
    Sketch side = Sketch.of(f, "frame-elevation");
    double half = 2 / Math.sin(Math.PI / 5);
    double flat = 2 / Math.tan(Math.PI / 5);
    double s = 300 / (2.4 * half);
    double middle = 30 + 1.05 * half * s;
    double ground = 30 + 2.25 * s;
    Path outline = side.paths().get(1);
    at(outline.at(0), middle - half * s, ground);
    at(outline.at(1), middle - half / 4 * s, 30);
    at(outline.at(2), middle + flat / 4 * s, 30);
    at(outline.at(3), middle + flat * s, ground);
    at(side.paths().get(5).at(1), middle + flat * s, ground + 0.09 * 2.25 * s);
    assertThat(side.told())
        .contains(
            filled(
                "through a hip and the face opposite: from the base corner to the side %.3f m,"
                    + " height 2.250 m, opening across in the same way %.3f m.",
                half + flat, (half + flat) / 4));
    assertThat(f.read(Chapter.FRAME)).contains(filled("across the flats | %.3f m", half + flat));
    Sketch whole =
        Sketch.of(planned(",\n   \"opening\": {\"side\": \"1 m\"}", ""), "frame-elevation");
    at(whole.paths().get(1).at(1), 30 + 1.05 * 300 / 2.4, 30);
    at(whole.paths().get(1).at(2), 30 + 1.05 * 300 / 2.4, 30);
    assertThat(whole.told()).endsWith("height 3.000 m, closed to a point.");
  }
}

package io.github.seamstead.api.chapter.joining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.testing.EarthJob;
import io.github.seamstead.api.testing.Fixture;
import io.github.seamstead.api.testing.Sketch;
import io.github.seamstead.api.testing.Sketch.Path;
import io.github.seamstead.api.testing.Sketch.Point;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The drawings of four panels that two teams join, three hours for each seam. */
class JoiningDrawingsByHandTest {

  private static final String TEXT =
      """
      {"seamstead": 1,
       "site": {"name": "t", "crew": {"people": 4, "teams": 2, "hoursPerDay": "8 h"},
         "start": "2027-05-03"},
       "frame": {"sides": 4, "measures": {"baseSide": "4 m", "height": "3 m"}},
       "cover": {"fabric": {"name": "x", "massPerArea": "500 g/m2", "thickness": "0.5 mm"},
         "seam": {"kind": "fin", "allowance": "40 mm"}, "hem": {"kind": "raw"},
         "joining": {"quickestSeam": "120 min", "usualSeam": "180 min", "slowestSeam": "240 min"}}}
      """;

  private static final String MIDDLE = "#b8b8ae";
  private static final String PALE = "#f0f0ec";
  private static final String PAPER = "#fff";

  /** Coordinates are written to a hundredth. */
  private static final double HUNDREDTH = 0.0051;

  private static Fixture planned(String old, String changed) {
    return Fixture.of(EarthJob.with(TEXT, old, changed), Chapter.JOINING);
  }

  private static Fixture planned() {
    return Fixture.of(TEXT, Chapter.JOINING);
  }

  private static void at(Point point, double x, double y) {
    assertThat(point.x()).isCloseTo(x, within(HUNDREDTH));
    assertThat(point.y()).isCloseTo(y, within(HUNDREDTH));
  }

  private static List<String> texts(List<Sketch.Text> texts) {
    return texts.stream().map(Sketch.Text::text).toList();
  }

  /** The point of the map at an angle counter-clockwise from the right. */
  private static void onMap(Point point, double degrees, double radius) {
    // 1.22 to each side of the middle, in a square of 360 with 6 free round it.
    double unit = 348 / 2.44;
    double angle = Math.toRadians(degrees);
    at(point, 180 + unit * radius * Math.cos(angle), 180 - unit * radius * Math.sin(angle));
  }

  /**
   * With a door in the second panel that one lies at the bottom, and a quarter turn on the next.
   */
  @Test
  void theMapGoesRoundFromTheDoor() {
    Fixture f =
        planned(
            "\"seam\":",
            "\"door\": {\"id\": \"d\", \"face\": 2, \"outline\": [{\"x\": \"1.6 m\", \"y\": \"0.2"
                + " m\"}, {\"x\": \"2.4 m\", \"y\": \"0.2 m\"}, {\"x\": \"2 m\", \"y\": \"1"
                + " m\"}]}, \"seam\":");
    Sketch standing = Sketch.of(f, "map-as-it-stands");
    Sketch lying = Sketch.of(f, "map-as-it-lies");
    List<String> marks = f.at("/joining/ring").findValuesAsText("mark");
    for (int panel = 1; panel <= 4; panel++) {
      // Counter-clockwise from above as it stands, clockwise as it lies inside out.
      double stands = -90 + 90.0 * (panel - 2);
      double lies = -90 - 90.0 * (panel - 2);
      onMap(standing.where("" + panel), stands, 0.62);
      onMap(lying.where("" + panel), lies, 0.62);
      // A panel takes 90 degrees; its letters stand at 0.62 of the way to its edges.
      onMap(standing.where(panel + "L"), stands - 0.62 * 45, 0.86);
      onMap(standing.where(panel + "R"), stands + 0.62 * 45, 0.86);
      onMap(lying.where(panel + "R"), lies - 0.62 * 45, 0.86);
      onMap(lying.where(panel + "L"), lies + 0.62 * 45, 0.86);
      // The joint on the right of a panel has its name outside, on the seam.
      onMap(standing.where(marks.get(panel - 1)), stands + 45, 1.12);
      onMap(lying.where(marks.get(panel - 1)), lies - 45, 1.12);
      Path wedge = standing.paths().get(panel - 1);
      onMap(wedge.at(0), stands - 45, 0.2);
      onMap(wedge.at(1), stands - 45, 1);
      onMap(wedge.at(2), stands + 45, 1);
      onMap(wedge.at(3), stands + 45, 0.2);
      assertThat(wedge.closed()).isTrue();
      assertThat(wedge.fill()).isEqualTo(panel % 2 == 0 ? PALE : PAPER);
    }
    assertThat(standing.told())
        .startsWith("The cover as it stands, seen from outside\nGood sides towards you.")
        .contains("Pieces run 1, 2, 3 … 4 counter-clockwise seen from above.");
    assertThat(lying.told())
        .startsWith("The cover as it lies, inside out\nPlain sides towards you, mirrored:")
        .contains("pieces run 1, 4, 3 … 2 clockwise seen from above.");
  }

  /** Three panels are all named; of 13 the edges are too narrow for letters. */
  @Test
  void theMapOfFewAndOfMany() {
    assertThat(Sketch.of(planned("\"sides\": 4", "\"sides\": 3"), "map-as-it-stands").told())
        .contains("Pieces run 1, 2, 3 counter-clockwise");
    Sketch many =
        Sketch.of(
            planned(
                "\"sides\": 4, \"measures\": {\"baseSide\": \"4 m\"",
                "\"sides\": 13, \"measures\": {\"baseSide\": \"1 m\""),
            "map-as-it-stands");
    // The names of panels and of joints alone.
    assertThat(many.texts()).hasSize(2 * 13);
    Sketch twelve =
        Sketch.of(
            planned(
                "\"sides\": 4, \"measures\": {\"baseSide\": \"4 m\"",
                "\"sides\": 12, \"measures\": {\"baseSide\": \"1 m\""),
            "map-as-it-stands");
    assertThat(twelve.texts()).hasSize(4 * 12);
  }

  /** Two pairs, their pair: a tree of three widths and two heights in a width of four. */
  @Test
  void theTreeOfTwoPairs() {
    Sketch tree = Sketch.of(planned(), "join-tree");
    double unit = 332 / 4.0;
    // 0.66 of the width of three for two steps, below a top at 0.7 of it.
    double step = 0.66 * 3 / 2;
    List<double[]> nodes =
        List.of(
            new double[] {0, 0},
            new double[] {1, 0},
            new double[] {2, 0},
            new double[] {3, 0},
            new double[] {0.5, step},
            new double[] {2.5, step},
            new double[] {1.5, 2 * step});
    List<String> names = List.of("1", "2", "3", "4", "1.", "2.", "3.");
    int[] parents = {4, 4, 5, 5, 6, 6};
    assertThat(tree.dots()).hasSize(7);
    for (int i = 0; i < 7; i++) {
      double x = 14 + unit * (nodes.get(i)[0] + 0.5);
      double y = 14 + unit * (2.1 - nodes.get(i)[1]);
      at(tree.where(names.get(i)), x, y);
      at(tree.dots().get(i).at(), x, y);
      assertThat(tree.dots().get(i).radius()).isEqualTo(i < 4 ? 9 : 10);
      if (i < 6) {
        double[] above = nodes.get(parents[i]);
        Path line = tree.paths().get(i);
        at(line.at(0), x, y);
        at(line.at(1), x, 14 + unit * (2.1 - above[1]));
        at(line.at(2), 14 + unit * (above[0] + 0.5), 14 + unit * (2.1 - above[1]));
        assertThat(line.closed()).isFalse();
      }
    }
  }

  /** From 8 to 14 two rounds, the ring on the next morning from 8 to 11. */
  @Test
  void theSeamsByTheClock() {
    Fixture f = planned();
    Sketch days = Sketch.of(f, "join-days");
    // 390 units wide with what is written beside, in 352.
    double s = 352 / 390.0;
    double hour = 290 / 6.0;
    double band = 15 * 2.6;
    at(days.size(), 360, 8 + s * (15 + 2 * band + 6));
    at(days.where("2027-05-03"), 4 + s * 78, 4 + s * (6 + band / 2));
    at(days.where("2027-05-04"), 4 + s * 78, 4 + s * (6 + 1.5 * band));
    for (int day = 0; day < 2; day++) {
      Path under = days.paths().get(day);
      at(under.at(0), 4 + s * 84, 4 + s * (6 + band * (day + 1) - 4.5));
      at(under.at(1), 4 + s * (84 + 290), 4 + s * (6 + band * (day + 1) - 4.5));
    }
    double[][] bars = {{0, 3, 0, 1}, {0, 3, 0, 2}, {3, 6, 0, 1}, {0, 3, 1, 1}};
    List<String> joints = f.at("/schedule/days").findValuesAsText("joint");
    assertThat(days.filled(MIDDLE)).hasSize(4);
    for (int i = 0; i < 4; i++) {
      double left = 4 + s * (84 + hour * bars[i][0]);
      double right = 4 + s * (84 + hour * bars[i][1]);
      double middle = 4 + s * (6 + band * bars[i][2] + 15 * (bars[i][3] - 0.5));
      Path bar = days.filled(MIDDLE).get(i);
      at(bar.at(0), left, middle + 5 * s);
      at(bar.at(1), right, middle + 5 * s);
      at(bar.at(2), right, middle - 5 * s);
      at(bar.at(3), left, middle - 5 * s);
      at(days.where(joints.get(i).substring(0, 1)), (left + right) / 2, middle);
    }
    List<Sketch.Text> hours = days.row(4 + s * (6 + 2 * band + 7.5));
    assertThat(texts(hours)).containsExactly("8", "9", "10", "11", "12", "13", "14");
    for (int i = 0; i < 7; i++) {
      assertThat(hours.get(i).at().x()).isCloseTo(4 + s * (84 + hour * i), within(HUNDREDTH));
    }
    // Without a date the days are counted.
    Sketch counted = Sketch.of(planned(",\n   \"start\": \"2027-05-03\"", ""), "join-days");
    assertThat(texts(counted.texts())).contains("day 1", "day 2").doesNotContain("day 3");
  }

  /** Nine hours in a width of 280: an hour is 31.1 wide. */
  @Test
  void theSeamsInTime() {
    Sketch chart = Sketch.of(planned(), "join-schedule");
    at(chart.size(), 360, 4 + 6 + 15 * 5.2 + 4);
    int[][] bars = {{0, 3}, {0, 3}, {3, 6}, {6, 9}};
    List<String> joints =
        planned().at("/schedule/days").findValuesAsText("joint").stream()
            .map(joint -> joint.substring(0, 1))
            .toList();
    assertThat(chart.filled(MIDDLE)).hasSize(4);
    for (int i = 0; i < 4; i++) {
      double middle = 10 + 15 * (i + 0.5);
      at(chart.where(joints.get(i)), 4 + 60 - 6, middle);
      Path bar = chart.filled(MIDDLE).get(i);
      at(bar.at(0), 64 + 280 * bars[i][0] / 9.0, middle + 5);
      at(bar.at(1), 64 + 280 * bars[i][1] / 9.0, middle + 5);
      at(bar.at(2), 64 + 280 * bars[i][1] / 9.0, middle - 5);
      at(bar.at(3), 64 + 280 * bars[i][0] / 9.0, middle - 5);
    }
    List<Sketch.Text> minutes = chart.row(10 + 15 * 4.8);
    List<Path> ticks = chart.paths().stream().filter(path -> !path.closed()).toList();
    assertThat(texts(minutes))
        .isEqualTo(IntStream.range(0, 10).mapToObj(hours -> "" + 60 * hours).toList());
    assertThat(ticks).hasSize(10);
    for (int i = 0; i < 10; i++) {
      double x = 64 + 280 * i / 9.0;
      at(minutes.get(i).at(), x, 10 + 15 * 4.8);
      at(ticks.get(i).at(0), x, 10 + 60 + 2);
      at(ticks.get(i).at(1), x, 10 + 60 + 6);
    }
  }

  /** Three seams one after the other, of 20 minutes, of 9 and of 60. */
  @Test
  void theStepOfTheMinutesFitsTheWhole() {
    assertThat(minutes(20)).containsExactly("0", "10", "20", "30", "40", "50", "60");
    assertThat(minutes(9)).containsExactly("0", "5", "10", "15", "20", "25");
    assertThat(minutes(60)).containsExactly("0", "30", "60", "90", "120", "150", "180");
  }

  private static List<String> minutes(int each) {
    Fixture f =
        planned(
            "\"quickestSeam\": \"120 min\", \"usualSeam\": \"180 min\", \"slowestSeam\": \"240"
                + " min\"",
            "\"quickestSeam\": \"%d min\", \"usualSeam\": \"%d min\", \"slowestSeam\": \"%d min\""
                .formatted(each - 2, each, each + 2));
    return texts(Sketch.of(f, "join-schedule").row(10 + 15 * 4.8));
  }

  /** A crew that learns makes the second pair more quickly, so that nothing waits for it. */
  @Test
  void whatNothingWaitsForIsPale() {
    Fixture f =
        planned(
            "\"slowestSeam\": \"240 min\"", "\"slowestSeam\": \"240 min\", \"learning\": \"80 %\"");
    List<Path> bars = Sketch.of(f, "join-schedule").paths().stream().filter(Path::closed).toList();
    assertThat(bars).hasSize(4);
    for (int i = 0; i < 4; i++) {
      boolean waits = f.at("/schedule/days/" + i + "/critical").asBoolean();
      assertThat(bars.get(i).fill()).isEqualTo(waits ? MIDDLE : PALE);
      // The first, the second, the third and the fourth: two doublings leave 0.64 of the time.
      double minutes = 180 * Math.pow(i + 1, Math.log(0.8) / Math.log(2));
      double wide = bars.get(i).at(1).x() - bars.get(i).at(0).x();
      double end = f.number("/schedule/mean_s") / 60;
      assertThat(wide).isCloseTo(280 * minutes / end, within(2 * HUNDREDTH));
    }
    assertThat(bars.stream().map(Path::fill).toList()).containsAll(Set.of(MIDDLE, PALE));
  }
}

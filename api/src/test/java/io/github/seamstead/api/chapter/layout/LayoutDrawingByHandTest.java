package io.github.seamstead.api.chapter.layout;

import static io.github.seamstead.api.testing.Fixture.filled;
import static io.github.seamstead.api.testing.Fixture.near;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.testing.EarthJob;
import io.github.seamstead.api.testing.Fixture;
import io.github.seamstead.api.testing.Sketch;
import io.github.seamstead.api.testing.Sketch.Path;
import io.github.seamstead.api.testing.Sketch.Point;
import io.github.seamstead.api.testing.SmallJob;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where the pieces lie in the drawings and lists: four panels of 1 m on sheets and on a roll. */
class LayoutDrawingByHandTest {

  private static final String SHEETS =
      "\"sheets\": [{\"id\": \"s\", \"length\": \"3 m\", \"width\": \"1.3 m\", \"count\": 2,"
          + " \"cost\": 12}]";

  private static final String ROLL =
      "\"rolls\": [{\"id\": \"r\", \"width\": \"1.3 m\", \"length\": \"20 m\", \"costPerMetre\":"
          + " 3, \"reinforced\": [\"bottom\"], \"flaws\": [{\"x\": \"0.5 m\", \"y\": \"0.5 m\","
          + " \"width\": \"0.1 m\", \"height\": \"0.2 m\"}]}]";

  private static final String TEXT =
      """
      {"seamstead": 1,
       "frame": {"sides": 4, "measures": {"baseSide": "1 m", "height": "1 m"}},
       "stock": {%s, "spacing": "5 mm", "edgeMargin": "10 mm"},
       "cover": {"fabric": {"name": "x", "massPerArea": "500 g/m2", "thickness": "0.5 mm"},
         "seam": {"kind": "fin", "allowance": "20 mm"}, "hem": {"kind": "raw"},
         "keepTogether": false}}
      """;

  private static final String LIGHT = "#dcdcd4";
  private static final double HEAVY = 2.8;

  private static Fixture planned(String stock) {
    return Fixture.of(TEXT.formatted(stock), Chapter.LAYOUT);
  }

  private static void at(Point point, double x, double y) {
    assertThat(point.x()).isCloseTo(x, within(0.0051));
    assertThat(point.y()).isCloseTo(y, within(0.0051));
  }

  private static void piecesLieWhereTheyAreCut(
      Fixture f, Sketch sketch, double scale, double left) {
    JsonNode places = f.at("/layout/used/0/placements");
    List<Path> pieces = sketch.filled(LIGHT);
    assertThat(pieces).hasSameSizeAs(places);
    for (int i = 0; i < places.size(); i++) {
      List<double[]> corners = f.laidAt(places.get(i));
      double lowest = Double.MAX_VALUE;
      double highest = 0;
      double first = Double.MAX_VALUE;
      double last = 0;
      for (double[] corner : corners) {
        double x = left + corner[0] * scale;
        double y = 24 + (1.3 - corner[1]) * scale;
        assertThat(pieces.get(i).points()).anyMatch(p -> p.from(new Point(x, y)) < 0.0072);
        first = Math.min(first, x);
        last = Math.max(last, x);
        highest = Math.max(highest, y);
        lowest = Math.min(lowest, y);
      }
      // Its name lies within it.
      Point name = sketch.where(Integer.toString(places.get(i).at("/copy").asInt()));
      assertThat(name.x()).isBetween(first, last);
      assertThat(name.y()).isBetween(lowest, highest);
    }
  }

  /** The whole sheet in 312 units, 24 from the border. */
  @Test
  void aSheet() {
    Fixture f = planned(SHEETS);
    Sketch sketch = Sketch.of(f, "layout-s-1");
    double scale = 312 / 3.0;
    at(sketch.size(), 360, 48 + 1.3 * scale);
    Path whole = sketch.paths().get(0);
    assertThat(whole.closed()).isTrue();
    at(whole.at(0), 24, 24 + 1.3 * scale);
    at(whole.at(1), 336, 24 + 1.3 * scale);
    at(whole.at(2), 336, 24);
    piecesLieWhereTheyAreCut(f, sketch, scale, 24);
    // No name is so long that a thin line has to lead to it.
    assertThat(sketch.paths())
        .filteredOn(path -> path.weight() < 1)
        .allMatch(path -> !path.dash().isEmpty());
    double used = f.number("/layout/usedLength_m");
    assertThat(sketch.told())
        .isEqualTo(
            filled(
                "Cut from s no. 1\n3.000 m by 1.300 m, seen on the good side; used to %.3f m. 4"
                    + " pieces, grey. Heavy line: reinforced edge. Hatched: flaw. Dotted: remnants"
                    + " worth keeping.",
                used));
    // What is left beyond the last cut is worth keeping.
    Path remnant =
        sketch.paths().stream().filter(p -> !p.dash().isEmpty()).findFirst().orElseThrow();
    assertThat(remnant.points()).hasSize(4);
    assertThat(remnant.points()).allMatch(p -> p.x() >= 24 + used * scale - 0.01);
    assertThat(f.at("/layout/method").asText()).isEqualTo("rows");
    assertThat(f.at("/layout/stopped").isMissingNode()).isTrue();
    // A whole sheet costs 12, and no layout does without one.
    near(f, "/layout/lowerBound", 12);
    near(f, "/layout/gap_ratio", 0);
    assertThat(f.read(Chapter.LAYOUT))
        .contains(
            "how it was found | rows, in closed form",
            filled(
                "no layout on it is shorter than | %.3f m",
                Math.floor(1000 * f.number("/layout/lengthBound_m")) / 1000),
            "cost of the cloth used | 12.00",
            "no layout costs less than | 12.00",
            filled(
                "cloth in pieces, of the cloth used | %.0f %%",
                100 * f.number("/cover/clothArea_m2") / (3 * 1.3)))
        .doesNotContain("no layout does with fewer than");
    Fixture free = planned(SHEETS.replace("\"cost\": 12", "\"cost\": 0"));
    assertThat(free.read(Chapter.LAYOUT))
        .contains("sheets and rolls used | 1", "no layout does with fewer than | 1")
        .doesNotContain("cost of the cloth used", "no layout costs less than");
    Fixture one = planned(SHEETS.replace("\"count\": 2", "\"count\": 1"));
    assertThat(Sketch.of(one, "layout-s-1").told()).startsWith("Cut from s\n");
  }

  /** A roll is drawn a thirtieth further than it is used, and is open there. */
  @Test
  void aRoll() {
    Fixture f = planned(ROLL);
    double used = f.number("/layout/usedLength_m");
    double right = 1.03 * used;
    double scale = Math.min(312 / right, 372 / 1.3);
    Sketch sketch = Sketch.of(f, "layout-r-1");
    Path edge = sketch.paths().get(0);
    assertThat(edge.closed()).isFalse();
    at(edge.at(0), 336, 24 + 1.3 * scale);
    at(edge.at(1), 24, 24 + 1.3 * scale);
    at(edge.at(2), 24, 24);
    at(edge.at(3), 336, 24);
    piecesLieWhereTheyAreCut(f, sketch, scale, 24);
    Path remnant =
        sketch.paths().stream().filter(p -> !p.dash().isEmpty()).findFirst().orElseThrow();
    assertThat(remnant.points()).hasSize(4);
    assertThat(remnant.points()).allMatch(p -> p.x() <= 336.01 && p.x() > 24 + used * scale - 0.01);
    // The band along the foot, as far as the roll is drawn.
    Path band = sketch.paths().stream().filter(p -> p.weight() == HEAVY).findFirst().orElseThrow();
    at(band.at(0), 24, 24 + 1.3 * scale);
    at(band.at(1), 336, 24 + 1.3 * scale);
    Path flaw = sketch.filled("url(#hatch)").get(0);
    at(flaw.at(0), 24 + 0.5 * scale, 24 + 0.8 * scale);
    at(flaw.at(2), 24 + 0.6 * scale, 24 + 0.6 * scale);
    assertThat(f.at("/layout/method").asText()).isEqualTo("search");
    assertThat(f.read(Chapter.LAYOUT)).contains("how it was found | search");
  }

  /** The list names each piece once, where it lies and whether its hem is on a band. */
  @Test
  void theListOfPlaces() {
    for (String hem : List.of("raw", "reinforced")) {
      Fixture f =
          Fixture.of(
              EarthJob.with(
                  TEXT.formatted(
                      SHEETS.replace("\"count\": 2", "\"count\": 9, \"reinforced\": [\"bottom\"]")),
                  "\"raw\"",
                  "\"" + hem + "\""),
              Chapter.LAYOUT);
      List<String> rows = new ArrayList<>();
      rows.add("stock,copy,piece,x_m,y_m,turn_degrees,on_reinforced_edge");
      for (JsonNode use : f.at("/layout/used")) {
        for (JsonNode place : use.at("/placements")) {
          rows.add(
              filled(
                  "s,%d,%d,%.4f,%.4f,%.2f,%s",
                  use.at("/copy").asInt(),
                  place.at("/copy").asInt(),
                  place.at("/x_m").asDouble(),
                  place.at("/y_m").asDouble(),
                  Math.toDegrees(place.at("/rotation_rad").asDouble()),
                  hem.equals("raw") ? "no" : "yes"));
        }
      }
      assertThat(rows).hasSize(5);
      assertThat(f.lists().get("cutting-layout.csv").lines().toList()).isEqualTo(rows);
    }
  }

  private static List<String> list(Fixture f) {
    return f.lists().get("cutting-layout.csv").lines().toList();
  }

  /** A sheet that costs less comes later: what is cut stays, and the rest is laid anew. */
  @Test
  void whatIsCutStaysOnItsSheet() {
    String was = TEXT.formatted(SHEETS);
    String now =
        TEXT.formatted(
            SHEETS.replace(
                "\"sheets\": [",
                "\"sheets\": [{\"id\": \"a\", \"length\": \"3 m\", \"width\": \"1.3 m\","
                    + " \"cost\": 1}, "));
    List<String> before = list(Fixture.of(was, Chapter.LAYOUT));
    assertThat(list(Fixture.of(now, Chapter.LAYOUT)))
        .filteredOn(row -> row.startsWith("s,"))
        .isEmpty();
    Fixture f =
        Fixture.of(
            was,
            now,
            SmallJob.diary("{\"date\": \"2031-05-05\", \"cut\": {\"pieces\": [\"1\", \"2\"]}}"));
    assertThat(list(f)).contains(before.get(1), before.get(2)).hasSize(5);
    assertThat(before.get(1)).startsWith("s,1,1,");
    assertThat(before.get(2)).startsWith("s,1,2,");
  }

  /** What was cut for another cover leaves a hole where nothing else is laid. */
  @Test
  void whatNoLongerFitsLeavesItsHole() {
    String one = SHEETS.replace("\"count\": 2", "\"count\": 3");
    String was = TEXT.formatted(one);
    String now = EarthJob.with(was, "\"20 mm\"", "\"15 mm\"");
    Fixture before = Fixture.of(was, Chapter.LAYOUT);
    Fixture f =
        Fixture.of(
            was,
            now,
            SmallJob.diary(
                "{\"date\": \"2031-05-05\", \"cut\": {\"pieces\": [\"1\"]}},"
                    + " {\"date\": \"2031-05-06\", \"spoiled\": {\"pieces\": [\"1\"]}}"));
    double[] hole = centre(before.laidAt(before.at("/layout/used/0/placements/0")));
    int laid = 0;
    for (JsonNode use : f.at("/layout/used")) {
      for (JsonNode place : use.at("/placements")) {
        laid++;
        double[] there = centre(f.laidAt(place));
        if (use.at("/copy").asInt() == 1) {
          // Triangles head to tail are half a base apart.
          assertThat(Math.hypot(there[0] - hole[0], there[1] - hole[1])).isGreaterThan(0.4);
        }
      }
    }
    assertThat(laid).isEqualTo(4);
  }

  private static double[] centre(List<double[]> corners) {
    return new double[] {
      corners.stream().mapToDouble(c -> c[0]).average().orElseThrow(),
      corners.stream().mapToDouble(c -> c[1]).average().orElseThrow()
    };
  }
}

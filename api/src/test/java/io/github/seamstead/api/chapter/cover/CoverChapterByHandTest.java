package io.github.seamstead.api.chapter.cover;

import static io.github.seamstead.api.testing.Fixture.near;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.testing.EarthJob;
import io.github.seamstead.api.testing.Fixture;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Covers of a square of 4 m, 3 m high: four triangles of 4 m by the square root of 13. */
class CoverChapterByHandTest {

  /** Cloth half a millimetre outside of the centre lines: all grows by its part of the base. */
  private static final double GROWN = 1 + 0.0005 / Math.sin(Math.atan2(3, 2)) / 2;

  private static final double SLANT = Math.sqrt(13);
  private static final double FACE = 2 * SLANT * GROWN * GROWN;

  private static final String TEXT =
      """
      {"seamstead": 1,
       "frame": {"sides": 4, "measures": {"baseSide": "4 m", "height": "3 m"}},
       "cover": {"fabric": {"name": "x", "massPerArea": "500 g/m2", "thickness": "0.5 mm"},
         "seam": {"kind": "fin", "allowance": "40 mm"}, "hem": {"kind": "raw"},
         "keepTogether": false}}
      """;

  private static Fixture planned(String text) {
    return Fixture.of(text, Chapter.PATTERN);
  }

  private static Fixture with(String old, String changed) {
    return planned(EarthJob.with(TEXT, old, changed));
  }

  private static Fixture stocked(String stock) {
    return with("\"cover\":", "\"stock\": {" + stock + "}, \"cover\":");
  }

  /** The area within a list of corners, by the cross products of its edges. */
  private static double area(JsonNode corners) {
    double sum = 0;
    for (int i = 0; i < corners.size(); i++) {
      JsonNode a = corners.get(i);
      JsonNode b = corners.get((i + 1) % corners.size());
      sum += a.get(0).asDouble() * b.get(1).asDouble() - b.get(0).asDouble() * a.get(1).asDouble();
    }
    return sum / 2;
  }

  @Test
  void fourTrianglesWithTheirSeams() {
    Fixture f = planned(TEXT);
    assertThat(f.at("/cover/panels")).hasSize(4);
    assertThat(f.at("/cover/shapes")).hasSize(1);
    near(f, "/cover/panels/0/faceArea_m2", FACE);
    near(f, "/cover/panels/0/faces", 1);
    near(f, "/cover/shapes/0/count", 4);
    assertThat(f.at("/cover/shapes/0/kind").asText()).isEqualTo("panel");
    assertThat(f.at("/cover/shapes/0/labels")).hasSize(4);
    assertThat(area(f.at("/cover/panels/0/face_m"))).isCloseTo(FACE, within(1e-9));
    assertThat(area(f.at("/cover/shapes/0/stitch_m"))).isCloseTo(FACE, within(1e-9));
    double cut = area(f.at("/cover/shapes/0/cut_m"));
    near(f, "/cover/shapes/0/clothArea_m2", cut);
    near(f, "/cover/clothArea_m2", 4 * cut);
    near(f, "/cover/clothMass_kg", 4 * cut * 0.5);
    // Two strips of 40 mm along hips of sqrt 17; at the base they reach out a little more.
    double strips = 2 * 0.04 * Math.sqrt(17);
    assertThat(cut - FACE).isBetween(strips - 0.01, strips + 0.01);
    // Upwards: a quarter of a turn from the first axis.
    near(f, "/cover/shapes/0/grain_rad", Math.PI / 2);
    JsonNode notches = f.at("/cover/shapes/0/notches");
    assertThat(notches.size()).isGreaterThan(2);
    assertThat(notches.get(0).at("/doubled").asBoolean()).isTrue();
    assertThat(notches.get(1).at("/doubled").asBoolean()).isFalse();
    for (JsonNode notch : notches) {
      assertThat(notch.at("/fromBase_m").asDouble()).isBetween(0.01, Math.sqrt(17));
      JsonNode ends = notch.at("/stitchToCut_m");
      double length =
          Math.hypot(
              ends.get(0).get(0).asDouble() - ends.get(1).get(0).asDouble(),
              ends.get(0).get(1).asDouble() - ends.get(1).get(1).asDouble());
      assertThat(length).isCloseTo(0.04, within(1e-9));
    }
    assertThat(f.noughts("/cover"))
        .isSubsetOf(
            Set.of(
                "/misfits",
                "/panels/face_m",
                "/panels/splices",
                "/shapes/cut_m",
                "/shapes/folds",
                "/shapes/holes",
                "/shapes/notches/doubled",
                "/shapes/notches/edge",
                "/shapes/stitch_m"));
    assertThat(f.worked("geometry.pattern"))
        .containsExactly(
            "geometry.pattern.height",
            "geometry.pattern.mitre",
            "geometry.pattern.notches",
            "geometry.pattern.width");
    assertThat(f.read(Chapter.PATTERN))
        .contains("Cut list")
        .anyMatch(line -> line.startsWith("Edges of "))
        .anyMatch(line -> line.startsWith("All drawings show the good side."))
        .contains("What is written on each");
    assertThat(f.lists().get("cut-list.csv").lines().count()).isEqualTo(5);
    assertThat(f.book().drawings().keySet())
        .anyMatch(name -> name.startsWith("piece-"))
        .anyMatch(name -> name.startsWith("true-size-"));
  }

  /** A turned hem of 50 mm and an opening at the top with its turn-in. */
  @Test
  void hemsAndTopsAreAdded() {
    Fixture f =
        planned(
            EarthJob.with(
                    TEXT,
                    "\"hem\": {\"kind\": \"raw\"}",
                    "\"hem\": {\"kind\": \"turned\", \"allowance\": \"50 mm\"}, \"topTurnIn\": \"60"
                        + " mm\"")
                .replace(
                    "\"height\": \"3 m\"}}",
                    "\"height\": \"3 m\"}, \"opening\": {\"side\": \"1 m\"}}"));
    // A quarter of the way from the apex: 15/16 of the triangle is left.
    assertThat(f.number("/cover/panels/0/faceArea_m2"))
        .isCloseTo(2 * SLANT * 15 / 16, within(0.004));
    JsonNode cut = f.at("/cover/shapes/0/cut_m");
    double low = Double.MAX_VALUE;
    double high = -Double.MAX_VALUE;
    for (JsonNode corner : cut) {
      low = Math.min(low, corner.get(1).asDouble());
      high = Math.max(high, corner.get(1).asDouble());
    }
    assertThat(high - low).isCloseTo(SLANT * 3 / 4 + 0.05 + 0.06, within(1e-3));
    assertThat(f.worked("geometry.pattern"))
        .containsExactly(
            "geometry.pattern.height", "geometry.pattern.notches", "geometry.pattern.width");
  }

  /** A lap seam takes its allowance on both sides, over on one and under on the other. */
  @Test
  void lapSeamsGoOverAndUnder() {
    Fixture f = with("\"fin\"", "\"lap\"");
    double cut = area(f.at("/cover/shapes/0/cut_m"));
    assertThat(cut).isGreaterThan(2 * SLANT);
    assertThat(f.read(Chapter.PATTERN))
        .anyMatch(line -> line.contains("over"))
        .anyMatch(line -> line.contains("under"));
  }

  private static final String DOOR =
      "\"door\": {\"id\": \"d\", \"face\": 2, \"outline\": [{\"x\": \"1.6 m\", \"y\": \"0.2 m\"},"
          + " {\"x\": \"2.4 m\", \"y\": \"0.2 m\"}, {\"x\": \"2.4 m\", \"y\": \"1.4 m\"}, {\"x\":"
          + " \"1.6 m\", \"y\": \"1.4 m\"}], \"flap\": \"100 mm\", \"patch\": \"50 mm\"},"
          + " \"vents\": [{\"id\": \"v\", \"face\": 3, \"outline\": [{\"x\": \"1.8 m\", \"y\": \"1"
          + " m\"}, {\"x\": \"2.2 m\", \"y\": \"1 m\"}, {\"x\": \"2 m\", \"y\": \"1.4 m\"}]}], ";

  /** A door of 0.8 m by 1.2 m in the second face and a vent in the third: three shapes of panel. */
  @Test
  void openingsAreCutWhereTheyLie() {
    Fixture f = with("\"seam\":", DOOR + "\"seam\":");
    JsonNode door = null;
    JsonNode vent = null;
    for (JsonNode shape : f.at("/cover/shapes")) {
      for (JsonNode hole : shape.at("/holes")) {
        if (hole.at("/name").asText().equals("d")) {
          door = shape;
          assertThat(area(hole.at("/finished_m"))).isCloseTo(0.96, within(1e-9));
        } else {
          vent = shape;
          assertThat(area(hole.at("/finished_m"))).isCloseTo(0.08, within(1e-9));
        }
        assertThat(area(hole.at("/cut_m"))).isPositive();
      }
    }
    assertThat(door.at("/labels").toString()).startsWith("[\"2");
    assertThat(vent.at("/labels").toString()).startsWith("[\"3");
    // Beside the panels a flap and a patch.
    assertThat(f.at("/cover/shapes").findValuesAsText("kind")).contains("flap", "patch");
    double sum = 0;
    for (JsonNode shape : f.at("/cover/shapes")) {
      sum += shape.at("/count").asInt() * shape.at("/clothArea_m2").asDouble();
    }
    near(f, "/cover/clothArea_m2", sum);
  }

  /** Sheets of 2 m by 5 m cannot hold a triangle of 4 m by 3.6 m in one. */
  @Test
  void panelsArePutTogetherOfTheCloth() {
    Fixture f =
        stocked(
            "\"sheets\": [{\"id\": \"a\", \"length\": \"5 m\", \"width\": \"2 m\", \"count\": 8}],"
                + " \"edgeMargin\": \"10 mm\"");
    JsonNode splice = f.at("/cover/panels/0/splices/0");
    assertThat(splice.at("/length_m").asDouble()).isBetween(1.0, 4.0);
    assertThat(splice.at("/lap_m").asDouble()).isPositive();
    assertThat(splice.at("/under").asText()).isNotEmpty();
    assertThat(splice.at("/over").asText()).isNotEmpty();
    // What is cut is the face, its seams and its laps.
    double laps = 0;
    for (JsonNode one : f.at("/cover/panels/0/splices")) {
      laps += one.at("/lap_m").asDouble() * one.at("/length_m").asDouble();
    }
    double whole = planned(TEXT).number("/cover/panels/0/clothArea_m2");
    assertThat(f.number("/cover/panels/0/clothArea_m2") - whole).isBetween(0.8 * laps, 1.4 * laps);
    Fixture more =
        planned(
            EarthJob.with(
                EarthJob.with(
                    TEXT,
                    "\"cover\":",
                    "\"stock\": {\"sheets\": [{\"id\": \"a\", \"length\": \"5 m\", \"width\": \"2"
                        + " m\", \"count\": 8}]}, \"cover\":"),
                "\"keepTogether\": false",
                "\"keepTogether\": false, \"moreSplices\": [2]"));
    assertThat(more.at("/cover/panels/1/splices").size())
        .isGreaterThan(more.at("/cover/panels/0/splices").size());
  }

  @Test
  void stockThatIsNoneIsRefused() {
    Fixture f =
        stocked(
            "\"sheets\": [{\"id\": \"a\", \"length\": \"1 m\", \"width\": \"90 mm\"}],"
                + " \"edgeMargin\": \"10 mm\"");
    assertThat(f.unmet(Chapter.PATTERN))
        .singleElement()
        .asString()
        .contains("no sheet or roll with more than 0.07")
        .contains("must hold part of a panel");
  }

  /** All faces of a low pyramid lie flat in one sheet of six metres by six. */
  @Test
  void facesStayTogetherWhereTheClothAllows() {
    String low =
        """
        {"seamstead": 1,
         "frame": {"sides": 6, "measures": {"baseSide": "1 m", "height": "2 m"},
           "opening": {"side": "0.3 m"}},
         "stock": {"sheets": [{"id": "a", "length": "6 m", "width": "6 m", "count": 3}]},
         "cover": {"fabric": {"name": "x", "massPerArea": "500 g/m2", "thickness": "0.5 mm"},
           "seam": {"kind": "fin", "allowance": "40 mm"}, "hem": {"kind": "raw"},
           "topTurnIn": "40 mm"}}
        """;
    Fixture f = planned(low);
    int faces = 0;
    for (JsonNode panel : f.at("/cover/panels")) {
      faces += panel.at("/faces").asInt();
    }
    assertThat(faces).isEqualTo(6);
    assertThat(f.at("/cover/panels").size()).isLessThan(6);
    JsonNode folds = f.at("/cover/shapes/0/folds");
    assertThat(folds.size()).isEqualTo(f.at("/cover/panels/0/faces").asInt() - 1);
    // A hip from the base to the opening: 0.7 of sqrt 5.
    assertThat(folds.get(0).at("/length_m").asDouble())
        .isCloseTo(0.7 * Math.sqrt(5), within(0.002));
    assertThat(f.read(Chapter.PATTERN))
        .anyMatch(line -> line.matches("Panel .* goes over \\d faces in one piece.*Snip.*"));
  }

  @Test
  void withoutCoverThatIsSaid() {
    Fixture f = planned("{\"seamstead\": 1, \"soils\": [{\"id\": \"a\", \"ribbon\": \"50 mm\"}]}");
    assertThat(f.skipped(Chapter.PATTERN)).containsExactly("the document has no cover");
  }
}

package io.github.seamstead.api.chapter.cover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.testing.EarthJob;
import io.github.seamstead.api.testing.Fixture;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Four triangles of 1 m, 1.118 m high, their hips sqrt(1.5) m. Cut with seams of 20 mm a panel is
 * 1.045 m by 1.159 m. An apex has 48.2 degrees, so that two faces beside each other are 1.83 m
 * wide, and all four 2.45 m and 1.36 m high.
 */
class ClothChoiceByHandTest {

  private static final String TEXT =
      """
      {"seamstead": 1,
       "frame": {"sides": 4, "measures": {"baseSide": "1 m", "height": "1 m"}},
       "stock": {"sheets": [%s], "spacing": "5 mm", "edgeMargin": "10 mm"},
       "cover": {"fabric": {"name": "x", "massPerArea": "500 g/m2", "thickness": "0.5 mm"},
         "seam": {"kind": "fin", "allowance": "20 mm"}, "hem": {"kind": "raw"}}}
      """;

  private static String sheet(String id, String length, String width, int count, String more) {
    return "{\"id\": \"%s\", \"length\": \"%s m\", \"width\": \"%s m\", \"count\": %d%s}"
        .formatted(id, length, width, count, more);
  }

  private static Fixture planned(String... sheets) {
    return Fixture.of(TEXT.formatted(String.join(", ", sheets)), Chapter.LAYOUT);
  }

  private static List<String> panels(Fixture f) {
    assertThat(f.at("/layout/complete").asBoolean()).isTrue();
    return f.at("/cover/panels").findValuesAsText("id");
  }

  private static List<String> panels(String length, String width) {
    return panels(planned(sheet("a", length, width, 4, "")));
  }

  private static final List<String> SINGLE = List.of("panel-1", "panel-2", "panel-3", "panel-4");

  /** Each large sheet takes a panel in one piece; the others are put together of the narrow. */
  @Test
  void wholePanelsFromLargeSheetsAndSplicedOnesFromNarrow() {
    for (int large = 1; large <= 4; large++) {
      Fixture f = planned(sheet("a", "1.3", "1.2", large, ""), sheet("b", "1.3", "0.6", 9, ""));
      assertThat(panels(f)).isEqualTo(SINGLE);
      int whole = 0;
      for (JsonNode panel : f.at("/cover/panels")) {
        whole += panel.at("/splices").isEmpty() ? 1 : 0;
      }
      assertThat(whole).isEqualTo(large);
      List<String> used = f.at("/layout/used").findValuesAsText("stock");
      assertThat(used.stream().filter(id -> id.equals("a")).count()).isEqualTo(large);
    }
  }

  /** A lower edge on the band of a sheet: of two sheets two panels in one piece stand on it. */
  @Test
  void lowerEdgesOnABand() {
    Fixture f =
        Fixture.of(
            EarthJob.with(
                TEXT.formatted(
                    sheet("a", "1.3", "1.2", 2, ", \"reinforced\": [\"bottom\"]")
                        + ", "
                        + sheet("b", "1.3", "1.2", 4, "")),
                "{\"kind\": \"raw\"}",
                "{\"kind\": \"raw\", \"faces\": [{\"face\": 2, \"kind\": \"reinforced\"},"
                    + " {\"face\": 3, \"kind\": \"reinforced\"}]}"),
            Chapter.LAYOUT);
    assertThat(panels(f)).isEqualTo(SINGLE);
    for (JsonNode use : f.at("/layout/used")) {
      for (JsonNode place : use.at("/placements")) {
        assertThat(place.at("/onReinforcedEdge").asBoolean())
            .isEqualTo(use.at("/stock").asText().equals("a"));
      }
    }
    assertThat(f.at("/layout/used").findValuesAsText("stock"))
        .containsExactlyInAnyOrder("a", "a", "b", "b");
  }

  /** A lower edge that is to be a band finds none on sheets without. */
  @Test
  void withoutABandNoLowerEdgeIsKept() {
    Fixture f =
        Fixture.of(
            EarthJob.with(
                TEXT.formatted(sheet("a", "1.3", "1.2", 4, "")), "\"raw\"", "\"reinforced\""),
            Chapter.LAYOUT);
    assertThat(f.unmet(Chapter.PATTERN))
        .singleElement()
        .asString()
        .contains("no stock has a reinforced edge");
    assertThat(f.at("/cover").isMissingNode()).isTrue();
  }

  /** As many faces in one piece as a sheet takes, where they need no more sheets than apart. */
  @Test
  void facesStayTogetherWhereASheetTakesThem() {
    List<String> two = List.of("panel-1-to-2", "panel-3-to-4");
    // Two panels apart lie on a sheet of 1.6 m too, head to tail.
    assertThat(panels("2", "1.3")).isEqualTo(two);
    // 1.83 m and the margins of 20 mm are more than 1.8 m.
    assertThat(panels("1.8", "1.3")).isEqualTo(SINGLE);
    assertThat(panels("2.6", "1.5")).containsExactly("panel-1-to-4");
    // Apart all four lie on one sheet of 2.6 m by 1.3 m, and three together leave no room on it.
    assertThat(panels("2.6", "1.3")).isEqualTo(SINGLE);
    // On one sheet of 2.2 m by 2.2 m two faces stay together, and two lie beside them.
    assertThat(panels("2.2", "2.2")).containsExactly("panel-1-to-2", "panel-3", "panel-4");
  }

  /** Together on a sheet for 30, or apart on two for 5 each: what costs less is cut. */
  @Test
  void facesStayTogetherWhereItCostsNoMore() {
    String small = sheet("a", "1.6", "1.3", 2, ", \"cost\": 5");
    assertThat(panels(planned(small, sheet("b", "2.6", "1.5", 1, ", \"cost\": 30"))))
        .isEqualTo(SINGLE);
    assertThat(panels(planned(small, sheet("b", "2.6", "1.5", 1, ", \"cost\": 8"))))
        .containsExactly("panel-1-to-4");
  }

  /** Four apart, head to tail, want some 2.55 m; together they lie on a sheet of 2.5 m. */
  @Test
  void facesStayTogetherWhereApartTheyHaveNoPlace() {
    String sheet = sheet("a", "2.5", "1.43", 1, "");
    assertThat(panels(planned(sheet))).containsExactly("panel-1-to-4");
    Fixture apart =
        Fixture.of(
            EarthJob.with(TEXT.formatted(sheet), "\"raw\"}", "\"raw\"}, \"keepTogether\": false"),
            Chapter.LAYOUT);
    assertThat(apart.at("/layout/complete").asBoolean()).isFalse();
  }

  private static Fixture opened(String openings) {
    return Fixture.of(
        EarthJob.with(
            TEXT.formatted(sheet("a", "1.3", "1.2", 4, "")), "\"hem\"", openings + " \"hem\""),
        Chapter.LAYOUT);
  }

  private static String outline(String id, int face, String left, String right) {
    return ("{\"id\": \"%s\", \"face\": %d, \"patch\": \"10 mm\", \"flap\": \"10 mm\","
            + " \"outline\": [{\"x\": \"%s m\", \"y\": \"0.2 m\"}, {\"x\": \"%s m\", \"y\": \"0.2"
            + " m\"}, {\"x\": \"%s m\", \"y\": \"0.4 m\"}]}")
        .formatted(id, face, left, right, right);
  }

  /** An opening that leaves its face is named where the document states it. */
  @Test
  void whatLeavesItsFaceIsNamed() {
    assertThat(opened("\"door\": " + outline("d", 2, "0.4", "0.95") + ",").unmet(Chapter.PATTERN))
        .singleElement()
        .asString()
        .startsWith("$.cover.door (line");
    String good = outline("v", 2, "0.4", "0.6");
    String bad = outline("w", 3, "0.4", "0.95");
    assertThat(
            opened(
                    "\"door\": "
                        + outline("d", 1, "0.4", "0.6")
                        + ", \"vents\": ["
                        + good
                        + ", "
                        + bad
                        + "],")
                .unmet(Chapter.PATTERN))
        .singleElement()
        .asString()
        .startsWith("$.cover.vents[1] (line");
    assertThat(opened("\"vents\": [" + good + "],").unmet(Chapter.PATTERN)).isEmpty();
  }

  /** Outlines that cross themselves are no openings. */
  @Test
  void outlinesThatCrossThemselvesAreRefused() {
    String crossed =
        "\"outline\": [{\"x\": \"0.4 m\", \"y\": \"0.2 m\"}, {\"x\": \"0.6 m\", \"y\": \"0.4 m\"},"
            + " {\"x\": \"0.6 m\", \"y\": \"0.2 m\"}, {\"x\": \"0.4 m\", \"y\": \"0.4 m\"}]}";
    for (String where :
        List.of(
            "\"door\": {\"id\": \"d\", \"face\": 1, %s,",
            "\"vents\": [{\"id\": \"d\", \"face\": 1, %s],")) {
      assertThatThrownBy(() -> opened(where.formatted(crossed)))
          .hasMessageContaining(where.contains("door") ? "$.cover.door" : "$.cover.vents[0]");
    }
  }
}

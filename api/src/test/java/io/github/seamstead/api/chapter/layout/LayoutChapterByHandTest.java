package io.github.seamstead.api.chapter.layout;

import static io.github.seamstead.api.testing.Fixture.near;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.testing.EarthJob;
import io.github.seamstead.api.testing.Fixture;
import org.junit.jupiter.api.Test;

/** Four triangles of 1 m by the square root of 1.25 on sheets and rolls. */
class LayoutChapterByHandTest {

  private static final String TEXT =
      """
      {"seamstead": 1,
       "frame": {"sides": 4, "measures": {"baseSide": "1 m", "height": "1 m"}},
       "stock": {"sheets": [{"id": "s", "length": "3 m", "width": "1.3 m", "count": 2,
           "cost": 12}],
         "spacing": "5 mm", "edgeMargin": "10 mm"},
       "cover": {"fabric": {"name": "x", "massPerArea": "500 g/m2", "thickness": "0.5 mm"},
         "seam": {"kind": "fin", "allowance": "20 mm"}, "hem": {"kind": "raw"},
         "keepTogether": false}}
      """;

  private static Fixture planned(String text) {
    return Fixture.of(text, Chapter.LAYOUT);
  }

  /** What is laid is what is cut, each piece once and within its sheet. */
  @Test
  void everyPieceHasItsPlace() {
    Fixture f = planned(TEXT);
    assertThat(f.at("/layout/complete").asBoolean()).isTrue();
    assertThat(f.at("/layout/unplaced")).isEmpty();
    int placed = 0;
    double used = 0;
    for (JsonNode use : f.at("/layout/used")) {
      assertThat(use.at("/stock").asText()).isEqualTo("s");
      assertThat(use.at("/copy").asInt()).isBetween(1, 2);
      placed += use.at("/placements").size();
      used += use.at("/usedLength_m").asDouble();
      for (JsonNode place : use.at("/placements")) {
        assertThat(place.at("/shape").asText()).isEqualTo("shape-1");
        assertThat(place.at("/onReinforcedEdge").asBoolean()).isFalse();
        JsonNode corners = f.at("/cover/shapes/0/cut_m");
        double turn = place.at("/rotation_rad").asDouble();
        for (JsonNode corner : corners) {
          double x = corner.get(0).asDouble() * (place.at("/mirrored").asBoolean() ? -1 : 1);
          double y = corner.get(1).asDouble();
          double along = x * Math.cos(turn) - y * Math.sin(turn) + place.at("/x_m").asDouble();
          double across = x * Math.sin(turn) + y * Math.cos(turn) + place.at("/y_m").asDouble();
          assertThat(along).isBetween(0.01 - 1e-6, 2.99 + 1e-6);
          assertThat(across).isBetween(0.01 - 1e-6, 1.29 + 1e-6);
        }
      }
    }
    assertThat(placed).isEqualTo(4);
    near(f, "/layout/usedLength_m", used);
    double cloth = f.number("/cover/clothArea_m2");
    int sheets = f.at("/layout/used").size();
    assertThat(f.number("/layout/density_ratio"))
        .isBetween(cloth / (sheets * 3 * 1.3) - 1e-9, cloth / (used * 1.28) + 0.05);
    // Sheets have their price, so that the least cost is looked for.
    near(f, "/layout/cost", 12 * sheets);
    assertThat(f.number("/layout/objective"))
        .isGreaterThanOrEqualTo(f.number("/layout/lowerBound"));
    assertThat(f.number("/layout/lengthBound_m")).isBetween(0.5, used + 1e-9);
    assertThat(Long.parseLong(f.at("/layout/workUsed").asText())).isNotNegative();
    assertThat(f.read(Chapter.LAYOUT))
        .contains("The layout", "sheets and rolls used | " + sheets)
        .noneMatch(line -> line.startsWith("The search was stopped"));
    assertThat(f.lists().get("cutting-layout.csv").lines().count()).isEqualTo(5);
    assertThat(f.book().drawings().keySet()).anyMatch(name -> name.startsWith("layout-s-"));
  }

  /** One short sheet holds one triangle: three are left, and two more sheets are named. */
  @Test
  void whatFindsNoPlaceIsNamed() {
    Fixture f =
        planned(
            EarthJob.with(
                TEXT,
                "\"length\": \"3 m\", \"width\": \"1.3 m\", \"count\": 2",
                "\"length\": \"1.4 m\", \"width\": \"1.3 m\", \"count\": 1"));
    assertThat(f.at("/layout/complete").asBoolean()).isFalse();
    int missing = 0;
    for (JsonNode none : f.at("/layout/unplaced")) {
      missing += none.at("/count").asInt();
      assertThat(none.at("/message").asText()).isNotEmpty();
      assertThat(none.at("/reason").asText()).isNotEmpty();
    }
    int placed = f.at("/layout/used/0/placements").size();
    assertThat(placed).isBetween(1, 2);
    assertThat(missing).isEqualTo(4 - placed);
    JsonNode need = f.at("/layout/furtherStock/0");
    assertThat(need.at("/stock").asText()).isEqualTo("s");
    assertThat(need.at("/items").asInt()).isEqualTo((int) Math.ceil((4.0 - placed) / placed));
    assertThat(need.at("/cost").asDouble()).isEqualTo(12.0 * need.at("/items").asInt());
    assertThat(f.unmet(Chapter.LAYOUT)).isNotEmpty();
    assertThat(f.at("/layout/savings").isMissingNode()).isFalse();
    for (JsonNode saving : f.at("/layout/savings/tried")) {
      assertThat(saving.at("/change").asText()).isNotEmpty();
      assertThat(saving.at("/price").asText()).isNotEmpty();
      assertThat(saving.at("/enough").asBoolean())
          .isEqualTo(saving.at("/withoutPlace").asInt() == 0);
      if (saving.at("/withoutPlace").asInt() == 0) {
        assertThat(saving.at("/areaWithoutPlace_m2").asDouble()).isZero();
      } else {
        assertThat(saving.at("/areaWithoutPlace_m2").asDouble()).isPositive();
      }
    }
  }

  /** From a roll of 1.3 m for three a metre only what is used is paid. */
  @Test
  void rollsAreUsedByTheMetre() {
    Fixture f =
        planned(
            EarthJob.with(
                TEXT,
                "\"sheets\": [{\"id\": \"s\", \"length\": \"3 m\", \"width\": \"1.3 m\", \"count\":"
                    + " 2,\n     \"cost\": 12}]",
                "\"rolls\": [{\"id\": \"r\", \"width\": \"1.3 m\", \"length\": \"20 m\","
                    + " \"costPerMetre\": 3}]"));
    near(f, "/layout/cost", 3 * f.number("/layout/usedLength_m"));
    assertThat(f.number("/layout/usedLength_m")).isBetween(2.0, 4.5);
    assertThat(f.at("/layout/complete").asBoolean()).isTrue();
  }

  @Test
  void withoutStockThatIsSaid() {
    String text =
        EarthJob.with(
            TEXT,
            " \"stock\": {\"sheets\": [{\"id\": \"s\", \"length\": \"3 m\", \"width\": \"1.3 m\","
                + " \"count\": 2,\n     \"cost\": 12}],\n   \"spacing\": \"5 mm\", \"edgeMargin\":"
                + " \"10 mm\"},\n",
            "");
    Fixture f = planned(text);
    assertThat(f.at("/layout").isMissingNode()).isTrue();
    assertThat(f.skipped(Chapter.LAYOUT)).isNotEmpty();
  }
}

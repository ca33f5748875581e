package io.github.seamstead.api.chapter.cover;

import static io.github.seamstead.api.testing.Fixture.filled;
import static io.github.seamstead.api.testing.Fixture.near;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.job.JobFaultsException;
import io.github.seamstead.api.testing.EarthJob;
import io.github.seamstead.api.testing.Fixture;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Cap, skirt and lining of a square of 4 m, 3 m to its tip and cut off where it is 1 m wide. */
class CoverTrimsByHandTest {

  private static final double GROWN = 0.001 / Math.sin(Math.atan2(3, 2));
  private static final double HIP_SLOPE = Math.atan2(3, 2 * Math.sqrt(2));

  private static final String TEXT =
      """
      {"seamstead": 1,
       "frame": {"sides": 4, "measures": {"baseSide": "4 m", "height": "3 m"},
         "opening": {"side": "1 m"}},
       "cover": {"fabric": {"name": "x", "massPerArea": "500 g/m2", "thickness": "0.5 mm"},
         "seam": {"kind": "fin", "allowance": "40 mm"}, "hem": {"kind": "raw"},
         "keepTogether": false,
         "cap": {"overlap": "300 mm", "lap": "50 mm"},
         "skirt": {"drop": "300 mm", "overlap": "150 mm"},
         "lining": {"fabric": {"name": "y", "massPerArea": "200 g/m2", "thickness": "0.4 mm"},
           "airGap": "80 mm", "allowance": "30 mm"}}}
      """;

  private static JsonNode shape(Fixture f, String kind) {
    List<JsonNode> found = new ArrayList<>();
    f.at("/cover/shapes")
        .forEach(
            shape -> {
              if (shape.at("/kind").asText().equals(kind)) {
                found.add(shape);
              }
            });
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  /** The rim of a cone that rests on the hips 0.3 m below the corners of the opening. */
  private static double rim(double overlap) {
    return (1 + GROWN) / Math.sqrt(2) + overlap * Math.cos(HIP_SLOPE);
  }

  @Test
  void theCapInTwoSectors() {
    Fixture f = Fixture.of(TEXT, Chapter.PATTERN);
    JsonNode cap = shape(f, "cap");
    double slant = rim(0.3) / Math.cos(HIP_SLOPE);
    // A whole turn times the cosine of the slope is 247 degrees: two sectors of half of that.
    assertThat(cap.at("/count").asInt()).isEqualTo(2);
    double sector = Math.PI * Math.cos(HIP_SLOPE) * slant * slant / 2;
    double cloth = cap.at("/clothArea_m2").asDouble();
    // A lap of 50 mm along one leg; a polygon within 0.2 mm of the arc.
    assertThat(cloth).isCloseTo(sector + 0.05 * slant, within(0.003));
    assertThat(f.worked("geometry.pattern.c"))
        .containsExactly("geometry.pattern.cap", "geometry.pattern.cone");
    JsonNode skirt = shape(f, "skirt");
    assertThat(skirt.at("/count").asInt()).isEqualTo(4);
    double strip = (4 + GROWN + 2 * 0.04) * 0.45;
    assertThat(skirt.at("/clothArea_m2").asDouble()).isCloseTo(strip, within(1e-9));
    near(
        f,
        "/cover/clothArea_m2",
        4 * f.number("/cover/panels/0/clothArea_m2") + 2 * cloth + 4 * strip);
    near(f, "/cover/clothMass_kg", 0.5 * f.number("/cover/clothArea_m2"));
    assertThat(f.lists().get("cut-list.csv").lines().count()).isEqualTo(1 + 4 + 2 + 4);
  }

  /** Hips of 70 degrees: the cone unrolls to 123 degrees, one sector. */
  @Test
  void aSteepCapIsOfOneSector() {
    double height = 2 * Math.sqrt(2) * Math.tan(Math.toRadians(70));
    Fixture f = Fixture.of(EarthJob.with(TEXT, "\"3 m\"", "\"" + height + " m\""), Chapter.PATTERN);
    assertThat(shape(f, "cap").at("/count").asInt()).isEqualTo(1);
  }

  /** The lining lies 80 mm inside of the faces: all shrinks by twice that at the base. */
  @Test
  void theLiningHasItsOwnCloth() {
    Fixture f = Fixture.of(TEXT, Chapter.PATTERN);
    double less = 2 * 0.08 / Math.sin(Math.atan2(3, 2));
    double foot = 4 - less;
    double top = 1 - less;
    double high = 0.75 * Math.sqrt(13);
    JsonNode cut = f.at("/cover/lining/cut_m");
    double area = 0;
    double width = 0;
    for (int i = 0; i < cut.size(); i++) {
      JsonNode a = cut.get(i);
      JsonNode b = cut.get((i + 1) % cut.size());
      area += a.get(0).asDouble() * b.get(1).asDouble() - b.get(0).asDouble() * a.get(1).asDouble();
      width = Math.max(width, Math.abs(a.get(0).asDouble() - b.get(0).asDouble()));
    }
    // Seams of 30 mm along both hips, the base and the top raw.
    double hip = 0.75 * Math.sqrt(17);
    double one = (foot + top) / 2 * high + 2 * 0.03 * hip;
    assertThat(area / 2).isCloseTo(one, within(1e-6));
    assertThat(width).isCloseTo(foot + 2 * 0.03 * hip / high, within(1e-6));
    near(f, "/cover/lining/count", 4);
    assertThat(f.number("/cover/lining/clothArea_m2")).isCloseTo(4 * one, within(1e-5));
    near(f, "/cover/lining/clothMass_kg", 0.2 * f.number("/cover/lining/clothArea_m2"));
    assertThat(f.read(Chapter.PATTERN))
        .containsSubsequence(
            "Lining",
            "panels, all of one shape | 4",
            filled("width to cut | %.3f m", width),
            filled("height to cut | %.3f m", high),
            filled("cloth in all, without waste | %.2f m²", 4 * one),
            filled("mass of all | %.1f kg", 0.2 * 4 * one));
    Fixture bare =
        Fixture.of(
            TEXT.replaceAll(",\\s*\"lining\": \\{.*?\"allowance\": \"30 mm\"}", "")
                .replaceAll("(?s),\\s*\"lining\".*\"30 mm\"}", ""),
            Chapter.PATTERN);
    assertThat(bare.at("/cover/lining").isMissingNode()).isTrue();
    assertThat(bare.read(Chapter.PATTERN)).doesNotContain("Lining");
    assertThat(bare.skipped(Chapter.PATTERN)).isEmpty();
  }

  private static String distance(String from, String to, double metres) {
    return "{\"from\": \"%s\", \"to\": \"%s\", \"distance\": %s}".formatted(from, to, metres);
  }

  /** A frame that was only surveyed has panels, of 2 sqrt(13) each, and nothing beside them. */
  @Test
  void withoutMeasuresNothingIsCutBesideThePanels() {
    double hip = Math.sqrt(17);
    String survey =
        String.join(
            ", ",
            distance("B1", "B2", 4),
            distance("B2", "B3", 4),
            distance("B3", "B4", 4),
            distance("B4", "B1", 4),
            distance("B1", "B3", Math.sqrt(32)),
            distance("B2", "B4", Math.sqrt(32)),
            distance("B1", "A", hip),
            distance("B2", "A", hip),
            distance("B3", "A", hip),
            distance("B4", "A", hip));
    Fixture f =
        Fixture.of(
            EarthJob.with(
                TEXT,
                "\"measures\": {\"baseSide\": \"4 m\", \"height\": \"3 m\"},\n"
                    + "   \"opening\": {\"side\": \"1 m\"}",
                "\"survey\": {\"distances\": ["
                    + survey
                    + "], \"heights\": [{\"from\": \"B1\", \"to\": \"B2\", \"rise\": \"0 mm\"},"
                    + " {\"from\": \"B2\", \"to\": \"B3\", \"rise\": \"0 mm\"}], \"uncertainty\":"
                    + " \"2 mm\", \"heightUncertainty\": \"2 mm\", \"tolerance\": \"8 mm\"}"),
            Chapter.PATTERN);
    assertThat(f.at("/cover/panels")).hasSize(4);
    // A template fits the faces within their tolerance of 8 mm.
    assertThat(f.number("/cover/panels/0/faceArea_m2"))
        .isCloseTo(2 * Math.sqrt(13), within(0.008 * (4 + 2 * hip) / 2));
    assertThat(f.skipped(Chapter.PATTERN))
        .contains(
            "cap: the document has no measures under frame",
            "skirt: the document has no measures under frame",
            "lining: the document has no measures under frame");
    assertThat(f.at("/cover/shapes").findValuesAsText("kind")).containsOnly("panel");
    assertThat(f.at("/cover/lining").isMissingNode()).isTrue();
  }

  private static Fixture stocked(String stock) {
    return Fixture.of(
        EarthJob.with(TEXT, " \"cover\":", " \"stock\": {" + stock + "},\n \"cover\":"),
        Chapter.PATTERN);
  }

  /** Four faces of 6.76 m² from pieces that cover 0.21 m by 0.21 m between margins and laps. */
  @Test
  void tooManyPartsAreASlipOfThePen() {
    String sheet =
        "\"%s\": [{\"id\": \"a\", \"length\": \"%s m\", \"width\": \"0.35 m\"}],"
            + " \"edgeMargin\": \"20 mm\"";
    // 0.35 m less 40 mm and a lap of 100 mm.
    double faces = 4 * (2.5 + GROWN) * 0.75 * Math.sqrt(13);
    for (String kind : List.of("sheets", "rolls")) {
      assertThatThrownBy(() -> stocked(sheet.formatted(kind, "0.35")))
          .isInstanceOf(JobFaultsException.class)
          .hasMessageContaining("cover at most 0.044 m2 each")
          .hasMessageContaining(filled("for faces of %.1f m2", faces))
          .hasMessageContaining("in at most 150 parts")
          .hasMessageContaining(filled("not in %.0f or more", Math.ceil(faces / (0.21 * 0.21))));
    }
    // Five times as long it covers 1.61 m by 0.21 m: 80 parts.
    assertThat(stocked(sheet.formatted("sheets", "1.75")).unmet(Chapter.PATTERN))
        .noneMatch(text -> text.contains("parts"));
  }

  @Test
  void rollsThatAreTooNarrowAreRefused() {
    assertThat(
            stocked("\"rolls\": [{\"id\": \"a\", \"length\": \"10 m\", \"width\": \"0.15 m\"}]")
                .unmet(Chapter.PATTERN))
        .singleElement()
        .asString()
        .contains("no sheet or roll with more than 0.15 m between margins")
        .contains("more than twice the splice lap of 0.1 m");
  }
}

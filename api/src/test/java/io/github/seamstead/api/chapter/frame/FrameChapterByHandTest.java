package io.github.seamstead.api.chapter.frame;

import static io.github.seamstead.api.testing.Fixture.near;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.testing.EarthJob;
import io.github.seamstead.api.testing.Fixture;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A square of 4 m, 3 m to where the hips would meet, cut off where its opening is 1 m wide. */
class FrameChapterByHandTest {

  private static final double SLANT = Math.sqrt(13);
  private static final double HIP = Math.sqrt(17);
  private static final double SLOPE = Math.atan2(3, 2);
  private static final double HIP_SLOPE = Math.atan2(3, 2 * Math.sqrt(2));

  private static final String TEXT =
      """
      {"seamstead": 1,
       "frame": {"sides": 4, "measures": {"baseSide": "4 m", "height": "3 m"},
         "opening": {"side": "1 m"},
         "poles": {"section": "round", "diameter": "50 mm", "setback": "60 mm",
           "bars": [{"length": "6 m"}], "kerf": "3 mm"},
         "purlins": ["1 m"]},
       "cover": {"fabric": {"name": "x", "massPerArea": "500 g/m2", "thickness": "1 mm"},
         "seam": {"kind": "fin", "allowance": "40 mm"}, "hem": {"kind": "raw"},
         "topTurnIn": "60 mm",
         "lining": {"fabric": {"name": "y", "massPerArea": "200 g/m2", "thickness": "0.4 mm"},
           "airGap": "80 mm", "allowance": "30 mm"}}}
      """;

  private static Fixture planned(String text) {
    return Fixture.of(text, Chapter.FRAME);
  }

  @Test
  void allMeasuresByHand() {
    Fixture f = planned(TEXT);
    String m = "/frame/measures/";
    near(f, "/frame/sides", 4);
    near(f, m + "baseSide_m", 4);
    near(f, m + "circumradius_m", 2 * Math.sqrt(2));
    near(f, m + "inradius_m", 2);
    near(f, m + "perimeter_m", 16);
    near(f, m + "baseArea_m2", 16);
    near(f, m + "apexHeight_m", 3);
    near(f, m + "frameHeight_m", 2.25);
    near(f, m + "hipEdge_m", HIP);
    near(f, m + "hipLength_m", 0.75 * HIP);
    near(f, m + "slantHeight_m", SLANT);
    near(f, m + "faceHeight_m", 0.75 * SLANT);
    near(f, m + "faceSlope_rad", SLOPE);
    near(f, m + "hipSlope_rad", HIP_SLOPE);
    near(f, m + "apexAngle_rad", 2 * Math.atan2(2, SLANT));
    // The outward normals of two faces have the square of the slope's cosine in common.
    near(f, m + "hipDihedral_rad", Math.PI - Math.acos(4.0 / 13));
    near(f, m + "hipBend_rad", Math.acos(4.0 / 13));
    near(f, m + "baseDihedral_rad", SLOPE);
    near(f, m + "openingSide_m", 1);
    near(f, m + "openingArea_m2", 1);
    near(f, m + "faceArea_m2", 2.5 * 0.75 * SLANT);
    near(f, m + "coverArea_m2", 10 * 0.75 * SLANT);
    // A pyramid of 16 m3 less one of a quarter of its sides.
    near(f, m + "volume_m3", 16 - 16.0 / 64);
    near(f, m + "centroidHeight_m", (16 * 0.75 - 0.25 * (2.25 + 0.75 / 4)) / 15.75);
    near(f, m + "acrossFlats_m", 4);
    near(f, m + "acrossCorners_m", 4 * Math.sqrt(2));
    near(f, m + "baseAngle_rad", Math.atan2(SLANT, 2));
    near(f, m + "topAngle_rad", Math.PI - Math.atan2(SLANT, 2));
    near(f, m + "openingDihedral_rad", Math.PI - SLOPE);
    near(f, m + "openingCircumradius_m", Math.sqrt(0.5));
    near(f, m + "openingInradius_m", 0.5);
    // A trapezium of 4 and 1 has its centroid at 2/5 of its height.
    near(f, m + "coverCentroidHeight_m", 0.4 * 2.25);
    near(f, m + "developedAngle_rad", 8 * Math.atan2(2, SLANT));
    near(f, "/frame/lapFor100mm_m", 0.1 / Math.sin(HIP_SLOPE));
    assertThat(f.at("/frame/truncated").asBoolean()).isTrue();
    assertThat(f.noughts("/frame"))
        .isSubsetOf(Set.of("/members/list/ends/mitre_rad", "/members/list/ends/tilt_rad"));
  }

  @Test
  void membersAndBars() {
    Fixture f = planned(TEXT);
    double pieces = 0;
    for (JsonNode member : f.at("/frame/members/list")) {
      assertThat(member.at("/count").asInt()).isEqualTo(4);
      assertThat(member.at("/cutLength_m").asDouble())
          .isPositive()
          .isLessThanOrEqualTo(member.at("/centreLine_m").asDouble() + 0.06);
      pieces += 4 * member.at("/cutLength_m").asDouble();
    }
    // Hips of 0.75 of the square root of 17, base ring, opening ring, a purlin 1 m up.
    assertThat(f.at("/frame/members/list").findValuesAsText("centreLine_m"))
        .anySatisfy(v -> assertThat(Double.parseDouble(v)).isCloseTo(0.75 * HIP, within(1e-9)))
        .anySatisfy(v -> assertThat(Double.parseDouble(v)).isCloseTo(4, within(1e-9)))
        .anySatisfy(v -> assertThat(Double.parseDouble(v)).isCloseTo(1, within(1e-9)));
    near(f, "/frame/bars/pieceLength_m", pieces);
    near(f, "/frame/bars/usedLength_m", 6 * f.number("/frame/bars/bars"));
    int bars = 0;
    double left = 0;
    for (JsonNode cut : f.at("/frame/bars/cuts")) {
      bars += cut.at("/times").asInt();
      left += cut.at("/times").asInt() * cut.at("/offcut_m").asDouble();
      assertThat(cut.at("/length_m").asDouble()).isEqualTo(6);
      assertThat(cut.at("/pieces")).isNotEmpty();
    }
    assertThat(bars).isEqualTo(f.at("/frame/bars/bars").asInt());
    // Offcuts are what pieces and saw cuts leave.
    double saw = 6.0 * bars - pieces - left;
    assertThat(saw).isBetween(0.0, 0.003 * 16 + 1e-9);
    assertThat(f.number("/frame/bars/lowerBound_m"))
        .isBetween(pieces, f.number("/frame/bars/usedLength_m") + 1e-9);
    assertThat(f.at("/frame/members/plateBends")).isNotEmpty();
    assertThat(f.worked("geometry."))
        .contains(
            "geometry.bars.plan",
            "geometry.frame.lap",
            "geometry.frame.measures",
            "geometry.frame.offset",
            "geometry.frame.solve",
            "geometry.members.hiplength",
            "geometry.members.memberreach",
            "geometry.members.ringlength");
    assertThat(f.cautions(Chapter.FRAME)).hasSizeGreaterThanOrEqualTo(2);
  }

  /** The cover lies outside of poles of 25 mm and cloth of a millimetre, the lining inside. */
  @Test
  void surfacesLieOffTheCentreLines() {
    Fixture f = planned(TEXT);
    double out = f.number("/frame/fabric/distance_m");
    assertThat(out).isBetween(0.025, 0.06);
    near(f, "/frame/fabric/baseSide_m", 4 + 2 * out / Math.sin(SLOPE));
    double in = f.number("/frame/lining/distance_m");
    assertThat(in).isNegative();
    near(f, "/frame/lining/baseSide_m", 4 + 2 * in / Math.sin(SLOPE));
    double base = f.number("/frame/fabric/baseSide_m");
    double top = f.number("/frame/fabric/openingSide_m");
    double height = f.number("/frame/fabric/coverArea_m2") / 4 / ((base + top) / 2);
    assertThat(height).isBetween(0.74 * SLANT, 0.78 * SLANT);
  }

  @Test
  void thePageTellsAllOfIt() {
    Fixture f = planned(TEXT);
    assertThat(f.read(Chapter.FRAME))
        .contains(
            "Measures on the centre lines of the poles",
            "sides | 4",
            "base side | 4.000 m",
            "centre to a base corner | 2.828 m",
            "hip pole | 3.092 m",
            "height of a face along its middle | 2.704 m",
            "opening side | 1.000 m",
            "height to the point where the hips would meet | 3.000 m",
            "all faces | 27.04 m²",
            "room inside | 15.75 m³",
            "Surfaces of the cloth",
            "Members",
            "Cut list of the frame",
            "Saw settings",
            "Bends of the joining plates",
            "Bars")
        .anyMatch(line -> line.startsWith("Hips are flatter than faces"))
        .anyMatch(line -> line.startsWith("cover | ") && line.contains(" outside"))
        .anyMatch(line -> line.startsWith("lining | ") && line.contains(" inside"))
        .anyMatch(line -> line.contains("bars; a saw cut takes 3"));
    assertThat(f.lists().get("frame-members.csv").lines().count())
        .isEqualTo(1 + f.at("/frame/members/list").size());
    assertThat(f.book().drawings().keySet()).anyMatch(n -> n.contains("plan"));
  }

  @Test
  void openingsOfEachKind() {
    String side = "\"side\": \"1 m\"";
    Fixture radius = planned(EarthJob.with(TEXT, side, "\"radius\": \"0.5 m\""));
    near(radius, "/frame/measures/openingSide_m", Math.sqrt(0.5));
    Fixture height = planned(EarthJob.with(TEXT, side, "\"cutHeight\": \"1.5 m\""));
    near(height, "/frame/measures/openingSide_m", 2);
    Fixture whole =
        planned(
            EarthJob.with(TEXT, "\"opening\": {\"side\": \"1 m\"},", "")
                .replace("\"topTurnIn\": \"60 mm\",", ""));
    near(whole, "/frame/measures/frameHeight_m", 3);
    assertThat(whole.at("/frame/truncated").asBoolean()).isFalse();
    assertThat(whole.read(Chapter.FRAME)).noneMatch(line -> line.startsWith("opening side"));
  }

  /** A bar of 3 m holds no base side of 4 m. */
  @Test
  void barsThatAreTooShortAreNamed() {
    Fixture f = planned(EarthJob.with(TEXT, "{\"length\": \"6 m\"}", "{\"length\": \"3 m\"}"));
    assertThat(f.unmet(Chapter.FRAME))
        .singleElement()
        .asString()
        .contains("must be at most the longest bar's 3 m");
    Fixture few =
        planned(
            EarthJob.with(TEXT, "{\"length\": \"6 m\"}", "{\"length\": \"6 m\", \"count\": 2}"));
    assertThat(few.unmet(Chapter.FRAME))
        .singleElement()
        .asString()
        .startsWith("bars too few or too short for: ");
    assertThat(planned(TEXT).unmet(Chapter.FRAME)).isEmpty();
    Fixture timber =
        planned(
            EarthJob.with(
                TEXT,
                "\"section\": \"round\", \"diameter\": \"50 mm\"",
                "\"section\": \"rectangular\", \"width\": \"50 mm\", \"depth\": \"80 mm\""));
    // Timber of 80 mm stands out by 40 mm and more.
    assertThat(timber.number("/frame/fabric/distance_m"))
        .isGreaterThan(planned(TEXT).number("/frame/fabric/distance_m"));
  }

  @Test
  void whatIsMissingIsSaid() {
    Fixture bare =
        planned(
            """
            {"seamstead": 1,
             "frame": {"sides": 4, "measures": {"baseSide": "4 m", "height": "3 m"}},
             "cover": {"fabric": {"name": "x", "massPerArea": "500 g/m2", "thickness": "1 mm"},
               "seam": {"kind": "fin", "allowance": "40 mm"}, "hem": {"kind": "raw"}}}
            """);
    assertThat(bare.skipped(Chapter.FRAME))
        .containsExactly("members and their cuts: the document has no poles under frame");
    assertThat(bare.assumed()).contains("$.frame.poles.diameter: 0 mm");
    assertThat(bare.at("/frame/members").isMissingNode()).isTrue();
    near(bare, "/frame/fabric/distance_m", 0.001);
    Fixture none =
        planned("{\"seamstead\": 1, \"soils\": [{\"id\": \"a\", \"ribbon\": \"50 mm\"}]}");
    assertThat(none.skipped(Chapter.FRAME)).containsExactly("the document has no frame");
    Fixture noBars = planned(EarthJob.with(TEXT, "\"bars\": [{\"length\": \"6 m\"}], ", ""));
    assertThat(noBars.skipped(Chapter.FRAME))
        .containsExactly("cutting of bars: the document has no bars under frame.poles");
  }
}

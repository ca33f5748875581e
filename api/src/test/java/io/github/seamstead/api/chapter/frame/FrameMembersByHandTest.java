package io.github.seamstead.api.chapter.frame;

import static io.github.seamstead.api.testing.Fixture.filled;
import static io.github.seamstead.api.testing.Fixture.near;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.testing.EarthJob;
import io.github.seamstead.api.testing.Fixture;
import io.github.seamstead.geometry.survey.SurveyShape;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The saw and the bars for a square of 4 m, 3 m to its tip and cut off where it is 1 m wide. */
class FrameMembersByHandTest {

  private static final String TEXT =
      """
      {"seamstead": 1,
       "frame": {"sides": 4, "measures": {"baseSide": "4 m", "height": "3 m"},
         "opening": {"side": "1 m"},
         "poles": {"section": "rectangular", "width": "50 mm", "depth": "80 mm",
           "bars": [{"length": "6 m"}], "kerf": "3 mm"},
         "purlins": ["1 m"]},
       "cover": {"fabric": {"name": "x", "massPerArea": "500 g/m2", "thickness": "1 mm"},
         "seam": {"kind": "fin", "allowance": "40 mm"}, "hem": {"kind": "raw"}}}
      """;

  private static final double HIP_SLOPE = Math.atan2(3, 2 * Math.sqrt(2));

  /** The outward normals of two faces have the square of the slope's cosine in common. */
  private static final double BEND = Math.acos(4.0 / 13);

  private static Fixture planned() {
    return Fixture.of(TEXT, Chapter.FRAME);
  }

  private static void cut(Fixture f, String place, double mitre, double tilt) {
    near(f, "/frame/members/list/" + place + "/mitre_rad", mitre);
    near(f, "/frame/members/list/" + place + "/tilt_rad", tilt);
  }

  /** Sawn level at the foot, plumb at the head, bevelled by half of the bend over the hip. */
  @Test
  void theSawForTimber() {
    Fixture f = planned();
    assertThat(f.at("/frame/members/list").findValuesAsText("name"))
        .containsExactly("hip pole", "base ring", "purlin ring 1", "opening ring");
    cut(f, "0/ends/0", Math.PI / 2 - HIP_SLOPE, 0);
    cut(f, "0/ends/1", HIP_SLOPE, 0);
    cut(f, "0/ends/2", 0, BEND / 2);
    // Level rings meet at a right angle; a purlin lies in the face, at its base angle to the hip.
    cut(f, "1/ends/0", Math.PI / 4, 0);
    cut(f, "2/ends/0", Math.PI / 2 - Math.atan2(Math.sqrt(13), 2), BEND / 2);
    cut(f, "3/ends/0", Math.PI / 4, 0);
    List<String> rows = new ArrayList<>();
    for (JsonNode member : f.at("/frame/members/list")) {
      for (JsonNode end : member.at("/ends")) {
        rows.add(
            filled(
                "%s | %s | %s | %.1f ° | %.1f °",
                member.at("/name").asText(),
                end.at("/where").asText(),
                end.at("/laidOn").asText(),
                Math.toDegrees(end.at("/mitre_rad").asDouble()),
                Math.toDegrees(end.at("/tilt_rad").asDouble())));
      }
    }
    assertThat(rows).hasSize(6);
    assertThat(f.read(Chapter.FRAME)).containsSequence(rows);
    assertThat(f.cautions(Chapter.FRAME))
        .anyMatch(text -> text.startsWith("This is a cutting list"))
        .anyMatch(
            text ->
                text.startsWith(
                    "Water and snow lie longest along the hips, which slope 46.7° where the faces"
                        + " slope 56.3°"));
    assertThat(f.book().drawings()).containsKeys("frame-plan", "frame-elevation");
  }

  /** The table of the bars says what the results say, and how good it is. */
  @Test
  void theBarsOnThePage() {
    Fixture f = planned();
    List<String> rows = new ArrayList<>();
    for (JsonNode bar : f.at("/frame/bars/cuts")) {
      List<String> pieces = new ArrayList<>();
      for (JsonNode piece : bar.at("/pieces")) {
        String name = piece.asText().replaceFirst("\\d+ × ", "");
        for (JsonNode member : f.at("/frame/members/list")) {
          if (member.at("/name").asText().equals(name)) {
            pieces.add(filled("%s %.3f m", piece.asText(), member.at("/cutLength_m").asDouble()));
          }
        }
      }
      rows.add(
          filled(
              "%d | bar-1, 6.000 m | %s | %.3f m",
              bar.at("/times").asInt(), String.join(", ", pieces), bar.at("/offcut_m").asDouble()));
    }
    assertThat(rows).isNotEmpty();
    assertThat(f.read(Chapter.FRAME))
        .containsSubsequence(rows)
        .contains(
            f.at("/frame/bars/bars").asInt()
                + " bars; a saw cut takes 3 mm. Proved: no plan uses less.");
  }

  /**
   * Two bars of 6 m and three of 5 m: they are told apart, and what they do not hold is counted.
   */
  @Test
  void fewBarsOfTwoLengths() {
    Fixture f =
        Fixture.of(
            EarthJob.with(
                TEXT,
                "{\"length\": \"6 m\"}",
                "{\"length\": \"6 m\", \"count\": 2}, {\"length\": \"5 m\", \"count\": 3}"),
            Chapter.FRAME);
    int[] left = {4, 4, 4, 4};
    List<String> names = f.at("/frame/members/list").findValuesAsText("name");
    for (JsonNode bar : f.at("/frame/bars/cuts")) {
      assertThat(bar.at("/bar").asText())
          .isEqualTo(bar.at("/length_m").asDouble() == 6 ? "bar-1" : "bar-2");
      for (JsonNode piece : bar.at("/pieces")) {
        String[] parts = piece.asText().split(" × ", -1);
        left[names.indexOf(parts[1])] -= bar.at("/times").asInt() * Integer.parseInt(parts[0]);
      }
    }
    List<String> missing = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      if (left[i] > 0) {
        missing.add(left[i] + " × " + names.get(i));
      }
    }
    assertThat(missing).isNotEmpty();
    assertThat(f.unmet(Chapter.FRAME))
        .containsExactly("bars too few or too short for: " + String.join(", ", missing));
  }

  /** What a survey takes the frame to be meant as. */
  @Test
  void theFrameThatWasMeant() {
    FramePart truncated = planned().plan().frame().orElseThrow();
    assertThat(truncated.surveyShape())
        .isEqualTo(
            SurveyShape.truncated(4)
                .meant(
                    new SurveyShape.Ideal(
                        truncated.measures().circumradius(),
                        3,
                        truncated.measures().frameHeight())));
    assertThat(truncated.measures().circumradius()).isEqualTo(2 * Math.sqrt(2));
    FramePart whole =
        Fixture.of(EarthJob.with(TEXT, ",\n   \"opening\": {\"side\": \"1 m\"}", ""), Chapter.FRAME)
            .plan()
            .frame()
            .orElseThrow();
    assertThat(whole.surveyShape())
        .isEqualTo(SurveyShape.whole(4).meant(new SurveyShape.Ideal(2 * Math.sqrt(2), 3, 0)));
  }

  @Test
  void aSurveyAloneIsNoIdealFrame() {
    Fixture f =
        Fixture.of(
            """
            {"seamstead": 1,
             "frame": {"sides": 4, "survey": {"distances": [
               {"from": "B1", "to": "B2", "distance": 4}, {"from": "B2", "to": "B3", "distance": 4}],
               "uncertainty": "2 mm", "tolerance": "8 mm"}}}
            """,
            Chapter.FRAME);
    assertThat(f.skipped(Chapter.FRAME))
        .containsExactly("the document has no measures under frame, only a survey");
  }
}

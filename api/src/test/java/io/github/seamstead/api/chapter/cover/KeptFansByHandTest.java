package io.github.seamstead.api.chapter.cover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.testing.EarthJob;
import io.github.seamstead.api.testing.Fixture;
import io.github.seamstead.api.testing.SmallJob;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Four faces of 1 m by sqrt(1.25) m in two pieces of two faces each, of which one is cut. */
class KeptFansByHandTest {

  private static final String TEXT =
      """
      {"seamstead": 1,
       "site": {"name": "t"},
       "frame": {"sides": 4, "measures": {"baseSide": "1 m", "height": "1 m"}},
       "stock": {"sheets": [{"id": "a", "length": "2 m", "width": "1.3 m", "count": 4}],
         "spacing": "5 mm", "edgeMargin": "10 mm"},
       "cover": {"fabric": {"name": "x", "massPerArea": "500 g/m2", "thickness": "0.5 mm"},
         "seam": {"kind": "fin", "allowance": "20 mm"}, "hem": {"kind": "raw"}}}
      """;

  /** Two faces, grown by cloth half a millimetre outside of frames so high. */
  private static double two(double height) {
    double slant = Math.hypot(0.5, height);
    double grown = 1 + 0.001 * slant / height;
    return slant * grown * grown;
  }

  private static Fixture changed(String old, String changed, String pieces) {
    return Fixture.of(
        TEXT,
        EarthJob.with(TEXT, old, changed),
        SmallJob.diary("{\"date\": \"2031-05-05\", \"cut\": {\"pieces\": [" + pieces + "]}}"));
  }

  /** What is cut stays, and what is not is drawn anew over the same faces. */
  @Test
  void theOtherPieceIsDrawnAnew() {
    for (int cut = 0; cut < 2; cut++) {
      Fixture f =
          changed(
              "\"height\": \"1 m\"",
              "\"height\": \"0.95 m\"",
              cut == 0 ? "\"1 to 2\"" : "\"3 to 4\"");
      assertThat(f.at("/cover/panels").findValuesAsText("id"))
          .containsExactly("panel-1-to-2", "panel-3-to-4");
      assertThat(f.number("/cover/panels/" + cut + "/faceArea_m2")).isCloseTo(two(1), within(1e-9));
      assertThat(f.number("/cover/panels/" + (1 - cut) + "/faceArea_m2"))
          .isCloseTo(two(0.95), within(1e-9));
      assertThat(f.at("/cover/misfits")).hasSize(1);
      assertThat(f.at("/cover/misfits/0/name").asText())
          .isEqualTo(cut == 0 ? "panel 1 to 2" : "panel 3 to 4");
      assertThat(f.unmet(Chapter.PATTERN)).hasSize(1);
      // Its bases are as long as before, to a tenth of a millimetre; both hips are too long.
      assertThat(f.at("/cover/misfits/0/text").asText())
          .contains(": the right edge is ", "; the left edge is ")
          .doesNotContain("lower edge");
    }
  }

  /** A wider allowance: what is cut has the old one, what is not the new. */
  @Test
  void whatIsNotCutFollowsTheDocument() {
    double before = Fixture.of(TEXT, Chapter.PATTERN).number("/cover/panels/0/clothArea_m2");
    Fixture f = changed("\"20 mm\"", "\"25 mm\"", "\"1 to 2\"");
    assertThat(f.at("/cover/misfits")).isEmpty();
    assertThat(f.at("/cover/panels")).hasSize(2);
    assertThat(f.number("/cover/panels/0/clothArea_m2")).isCloseTo(before, within(1e-9));
    // Two hips of sqrt(1.5) m each take 5 mm more, with some more at base and tip.
    assertThat(f.number("/cover/panels/1/clothArea_m2") - before)
        .isCloseTo(2 * Math.sqrt(1.5) * 0.005, within(0.001));
    // By the diary alone all stays as it was drawn.
    Fixture same =
        Fixture.of(
            TEXT,
            SmallJob.diary("{\"date\": \"2031-05-05\", \"cut\": {\"pieces\": [\"3 to 4\"]}}"));
    assertThat(same.at("/cover/panels").findValuesAsText("id"))
        .containsExactly("panel-1-to-2", "panel-3-to-4");
    assertThat(same.number("/cover/clothArea_m2")).isCloseTo(2 * before, within(1e-9));
  }

  private static List<String> panels(String was, String old, String changed, String cut) {
    Fixture f =
        Fixture.of(
            was,
            EarthJob.with(was, old, changed),
            SmallJob.diary("{\"date\": \"2031-05-05\", \"cut\": {\"pieces\": [\"" + cut + "\"]}}"));
    int faces = 0;
    for (JsonNode panel : f.at("/cover/panels")) {
      faces += panel.at("/faces").asInt();
    }
    assertThat(faces).isEqualTo(4);
    assertThat(f.at("/joining/joints").asInt()).isEqualTo(f.at("/cover/panels").size());
    assertThat(f.unmet(Chapter.PATTERN)).isEmpty();
    return f.at("/cover/panels").findValuesAsText("id");
  }

  /** Other cloth would part the faces otherwise: each face is there once all the same. */
  @Test
  void noFaceIsLostOrDoubledByOtherCloth() {
    // No sheet takes two faces any more; what is cut of two stays.
    assertThat(panels(TEXT, "\"2 m\"", "\"1.6 m\"", "1 to 2"))
        .containsExactly("panel-1-to-2", "panel-3", "panel-4");
    // The second piece keeps its number, so that there is one piece before it.
    assertThat(panels(TEXT, "\"2 m\"", "\"1.6 m\"", "3 to 4"))
        .containsExactly("panel-1-to-2", "panel-3-to-4");
    // A sheet would take all four faces, but one is cut by itself.
    String apart = EarthJob.with(TEXT, "\"1.3 m\"", "\"1.5 m\"").replace("\"2 m\"", "\"1.8 m\"");
    for (String face : List.of("1", "3")) {
      assertThat(panels(apart, "\"1.8 m\"", "\"2.6 m\"", face))
          .containsExactly("panel-1", "panel-2", "panel-3", "panel-4");
    }
  }

  /** Of six faces in three pieces the first and the last are cut: two faces are left between. */
  @Test
  void whatLiesBetweenPiecesThatAreCut() {
    String six =
        EarthJob.with(TEXT, "\"sides\": 4", "\"sides\": 6")
            .replace("\"height\": \"1 m\"", "\"height\": \"1.5 m\"")
            .replace("\"2 m\", \"width\": \"1.3 m\"", "\"2.05 m\", \"width\": \"1.95 m\"");
    assertThat(Fixture.of(six, Chapter.PATTERN).at("/cover/panels").findValuesAsText("id"))
        .containsExactly("panel-1-to-2", "panel-3-to-4", "panel-5-to-6");
    // A piece over two faces is 1.92 m wide at least, and finds no sheet any more.
    Fixture f =
        Fixture.of(
            six,
            EarthJob.with(
                six,
                "\"2.05 m\", \"width\": \"1.95 m\", \"count\": 4",
                "\"2.05 m\", \"width\": \"1.4 m\", \"count\": 9"),
            SmallJob.diary(
                "{\"date\": \"2031-05-05\", \"cut\": {\"pieces\": [\"1 to 2\", \"5 to 6\"]}}"));
    assertThat(f.at("/cover/panels").findValuesAsText("id"))
        .containsExactly("panel-1-to-2", "panel-3-to-4", "panel-5-to-6");
    assertThat(f.at("/cover/misfits")).isEmpty();
  }

  /** A piece over two faces whose lower edges became unlike cannot stay as it is cut. */
  @Test
  void unlikeLowerEdgesAreNamed() {
    Fixture f =
        changed(
            "{\"kind\": \"raw\"}",
            "{\"kind\": \"raw\", \"faces\": [{\"face\": 2, \"kind\": \"turned\", \"allowance\":"
                + " \"50 mm\"}]}",
            "\"1 to 2\"");
    assertThat(f.unmet(Chapter.PATTERN))
        .anyMatch(text -> text.contains("faces that are cut in one piece"));
  }
}

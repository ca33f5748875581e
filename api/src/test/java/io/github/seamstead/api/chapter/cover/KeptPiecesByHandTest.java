package io.github.seamstead.api.chapter.cover;

import static io.github.seamstead.api.testing.Fixture.filled;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.testing.EarthJob;
import io.github.seamstead.api.testing.Fixture;
import io.github.seamstead.api.testing.SmallJob;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Pieces that were cut for a frame that is not the one that stands there now. */
class KeptPiecesByHandTest {

  private static final String TEXT =
      """
      {"seamstead": 1,
       "site": {"name": "t"},
       "frame": {"sides": 4, "measures": {"baseSide": "4 m", "height": "3 m"},
         "opening": {"side": "1 m"}},
       "cover": {"fabric": {"name": "x", "massPerArea": "500 g/m2", "thickness": "0.5 mm"},
         "seam": {"kind": "fin", "allowance": "40 mm"}, "hem": {"kind": "raw"},
         "cap": {"overlap": "300 mm", "lap": "50 mm"},
         "skirt": {"drop": "300 mm", "overlap": "150 mm"}}}
      """;

  private static final String OTHERS = "; ease it in the seams, or write it as spoiled to have it";

  /** What cloth of half a millimetre adds to a side of the square, whose faces are so high. */
  private static double grown(double height) {
    return 0.001 / Math.sin(Math.atan2(height, 2));
  }

  private static Fixture changed(String was, String now, String pieces) {
    return Fixture.of(
        was,
        now,
        SmallJob.diary("{\"date\": \"2031-05-05\", \"cut\": {\"pieces\": [" + pieces + "]}}"));
  }

  private static Fixture changed(String old, String changed, int panel) {
    return changed(TEXT, EarthJob.with(TEXT, old, changed), "\"" + panel + "\"");
  }

  private static String misfit(Fixture f) {
    assertThat(f.at("/cover/misfits")).hasSize(1);
    String text = f.at("/cover/misfits/0/text").asText();
    assertThat(f.unmet(Chapter.PATTERN)).containsExactly(text);
    assertThat(f.read(Chapter.PATTERN)).contains(text + ".");
    return text;
  }

  /** Three quarters of the hips of 3 m and of 2 m: 0.75 of sqrt(17) less sqrt(12). */
  @Test
  void aPanelForAHigherFrame() {
    Fixture f = changed("\"3 m\"", "\"2 m\"", 1);
    double hip = 0.75 * Math.sqrt(12);
    double more = 0.75 * Math.sqrt(17) - hip;
    String text = misfit(f);
    assertThat(text)
        .startsWith(
            filled(
                "panel 1 is cut and no longer fits: the right edge is %.0f mm longer than %.3f m;"
                    + " the left edge is %.0f mm longer than %.3f m; laid on the face as well as"
                    + " it goes, corner ",
                1000 * more, hip, 1000 * more, hip))
        .contains(OTHERS);
    assertThat(f.at("/cover/misfits/0/name").asText()).isEqualTo("panel 1");
    List<Double> edges = List.of(grown(2) - grown(3), -more, grown(2) - grown(3), -more);
    // Both lie on one middle: each corner is off by half of what the one is higher.
    double off = 0.75 * (Math.sqrt(13) - Math.sqrt(8)) / 2;
    for (int i = 0; i < 4; i++) {
      assertThat(f.number("/cover/misfits/0/edgesShort_m/" + i))
          .isCloseTo(edges.get(i), within(1e-9));
      assertThat(f.number("/cover/misfits/0/cornersOff_m/" + i)).isCloseTo(off, within(1e-6));
    }
    assertThat(text).contains(filled(" is %.0f mm off", 1000 * off));
    assertThat(f.number("/cover/misfits/0/tolerance_m")).isEqualTo(0.003);
    // The cut one is as it was, the others as they are to be.
    double high = (2.5 + grown(3)) * 0.75 * Math.sqrt(13);
    double low = (2.5 + grown(2)) * 0.75 * Math.sqrt(8);
    for (int panel = 0; panel < 4; panel++) {
      assertThat(f.number("/cover/panels/" + panel + "/faceArea_m2"))
          .isCloseTo(panel == 0 ? high : low, within(1e-9));
    }
  }

  /** A smaller opening: legs that reach 0.2 m of four further up, and a top that is too long. */
  @Test
  void aPanelForAWiderOpening() {
    double hip = 0.8 * Math.sqrt(17);
    double top = 0.8 + grown(3);
    String text = misfit(changed("\"side\": \"1 m\"", "\"side\": \"0.8 m\"", 3));
    assertThat(text)
        .startsWith(
            filled(
                "panel 3 is cut and no longer fits: the right edge is %.0f mm short of %.3f m; the"
                    + " upper edge is 200 mm longer than %.3f m; the left edge is %.0f mm short of"
                    + " %.3f m; laid",
                50 * Math.sqrt(17), hip, top, 50 * Math.sqrt(17), hip));
    // A twentieth of sqrt(13) higher, half of it above and below; the top 0.1 m out on each side.
    double off = Math.hypot(Math.sqrt(13) / 40, 0.1);
    assertThat(text).containsPattern(filled("corner [34] is %.0f mm off", 1000 * off));
  }

  /** A base of 4.1 m: 0.1 m short at the foot. */
  @Test
  void aPanelForANarrowerFrame() {
    assertThat(misfit(changed("\"4 m\"", "\"4.1 m\"", 2)))
        .startsWith(
            "panel 2 is cut and no longer fits: the lower edge is 100 mm short of 4.101 m; ");
  }

  @Test
  void aPanelOfOtherCorners() {
    String whole =
        EarthJob.with(TEXT, ",\n   \"opening\": {\"side\": \"1 m\"}", "")
            .replace(" \"cap\": {\"overlap\": \"300 mm\", \"lap\": \"50 mm\"},", "");
    Fixture f = changed(TEXT, whole, "\"4\"");
    assertThat(misfit(f))
        .isEqualTo("panel 4 is cut and no longer fits: it has 4 corners and should have 3");
    assertThat(f.at("/cover/misfits/0/edgesShort_m")).isEmpty();
  }

  /** Of a strip 0.45 m high one is cut: all of its kind stay so, and are 50 mm too low. */
  @Test
  void aStripOfTheSkirt() {
    Fixture f = changed(TEXT, EarthJob.with(TEXT, "\"150 mm\"", "\"200 mm\""), "\"skirt 1\"");
    assertThat(misfit(f))
        .startsWith(
            "skirt is cut and no longer fits: the right edge is 50 mm short of 0.500 m; the left"
                + " edge is 50 mm short of 0.500 m; laid");
    assertThat(f.at("/cover/shapes").findValuesAsText("kind")).contains("skirt");
    f.at("/cover/shapes")
        .forEach(
            shape -> {
              if (shape.at("/kind").asText().equals("skirt")) {
                assertThat(shape.at("/clothArea_m2").asDouble())
                    .isCloseTo((4 + grown(3) + 0.08) * 0.45, within(1e-9));
              }
            });
  }

  /** The arcs of a cap have many edges: they are counted. */
  @Test
  void aCapOfAnotherLap() {
    Fixture f =
        changed(
            TEXT,
            EarthJob.with(TEXT, "\"overlap\": \"300 mm\"", "\"overlap\": \"296 mm\""),
            "\"cap 1\"");
    String text = misfit(f);
    assertThat(text).startsWith("cap is cut and no longer fits: ");
    if (!text.contains(" corners and should have ")) {
      assertThat(text).containsPattern("edge \\d+ is 4 mm longer than").doesNotContain("the upper");
    }
  }

  /** All faces in one piece: its bases, its tops and its two hips are told apart. */
  @Test
  void aPanelOverAllFaces() {
    String fan =
        EarthJob.with(
                TEXT,
                " \"cover\":",
                " \"stock\": {\"sheets\": [{\"id\": \"a\", \"length\": \"9 m\", \"width\": \"8"
                    + " m\"}]},\n"
                    + " \"cover\":")
            .replace(" \"cap\": {\"overlap\": \"300 mm\", \"lap\": \"50 mm\"},", "")
            .replace(",\n   \"skirt\": {\"drop\": \"300 mm\", \"overlap\": \"150 mm\"}", "");
    Fixture f =
        changed(
            fan,
            EarthJob.with(fan, "\"4 m\"", "\"4.1 m\"").replace("\"1 m\"", "\"0.9 m\""),
            "\"1 to 4\"");
    // The hip of the wider frame is cut off at 0.9 of 4.1.
    double hip = 3.2 / 4.1 * Math.sqrt(2 * 2.05 * 2.05 + 9);
    String legs = filled(" is %.0f mm short of %.3f m; ", 1000 * (hip - 0.75 * Math.sqrt(17)), hip);
    StringBuilder text = new StringBuilder("panel 1 to 4 is cut and no longer fits: ");
    for (int face = 1; face <= 4; face++) {
      text.append("the lower edge of face ").append(face).append(" is 100 mm short of 4.101 m; ");
    }
    text.append("the right edge").append(legs);
    for (int face = 4; face >= 1; face--) {
      text.append("the upper edge of face ")
          .append(face)
          .append(" is 100 mm longer than 0.901 m; ");
    }
    assertThat(misfit(f)).startsWith(text.append("the left edge").append(legs).toString());
  }

  /** What is cut and fits is no misfit; what is not cut keeps the parting that was begun. */
  @Test
  void whatFitsStays() {
    Fixture same = changed(TEXT, TEXT, "\"1\", \"cap 1\", \"skirt 2\"");
    assertThat(same.at("/cover/misfits")).isEmpty();
    assertThat(same.unmet(Chapter.PATTERN)).isEmpty();
    assertThat(same.number("/cover/clothArea_m2"))
        .isCloseTo(Fixture.of(TEXT, Chapter.PATTERN).number("/cover/clothArea_m2"), within(1e-9));
    // A millimetre of height more is less than 3 mm anywhere.
    Fixture little = changed("\"3 m\"", "\"3.001 m\"", 1);
    assertThat(little.at("/cover/misfits")).isEmpty();
    assertThat(little.number("/cover/panels/0/faceArea_m2"))
        .isCloseTo((2.5 + grown(3)) * 0.75 * Math.sqrt(13), within(1e-9));
  }
}

package io.github.seamstead.api.chapter.rigging;

import static io.github.seamstead.api.testing.CoverJob.GROWN;
import static io.github.seamstead.api.testing.CoverJob.TEXT;
import static io.github.seamstead.api.testing.CoverJob.planned;
import static io.github.seamstead.api.testing.Fixture.near;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.testing.EarthJob;
import io.github.seamstead.api.testing.Fixture;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Wind, pegs and air of a square of 4 m, 3 m high. */
class AnchoringFactsByHandTest {

  private static final double GRAVITY = 9.80665;

  /** Half of 1.25 kg/m3 times the square of 20 m/s; one and a half of the wind on every peg. */
  @Test
  void anchoringByHand() {
    Fixture f = planned();
    near(f, "/anchoring/gust_m_per_s", 20);
    near(f, "/anchoring/pressure_Pa", 0.5 * 1.25 * 400);
    near(f, "/anchoring/pegs", 28);
    double pull = f.number("/anchoring/pegPull_N");
    double drag = f.number("/anchoring/drag_N");
    // The silhouette of a square pyramid across a side is the triangle of 4 m by 3 m.
    assertThat(drag).isBetween(250 * 6 * 0.5, 250 * 6 * Math.sqrt(2) * 2);
    near(f, "/anchoring/guy_N", 1.5 * drag / 2 * Math.sqrt(2));
    // A dip of a tenth: H = w s / 0.8, and half of w s down at the peg.
    double along = pull * 28 / (16 * GROWN);
    double spacing = 16.0 * GROWN / 28;
    near(f, "/anchoring/hemRope_N", along * spacing * Math.hypot(1.25, 0.5));
    // Sacks hold by weight and by a friction of 0.4.
    double mass = f.number("/cover/clothMass_kg");
    double up = 1.5 * f.number("/anchoring/uplift_N");
    near(f, "/anchoring/ballast_kg", (up + 1.5 * drag / 0.4) / (0.9 * GRAVITY) - mass);
    assertThat(f.number("/anchoring/pegHolding_N")).isBetween(100.0, 2000.0);
    near(f, "/anchoring/ventilationThere_m2", 0.2);
    // All of it high: a hundred and fiftieth of sixteen square metres.
    near(f, "/anchoring/ventilation_m2", 16 / 150.0);
    double slope = Math.atan2(3, 2 * Math.sqrt(2));
    near(f, "/anchoring/drainageHipSlope_rad", slope);
    assertThat(f.noughts("/anchoring")).isSubsetOf(Set.of("/pullAngle_rad"));
    assertThat(f.number("/anchoring/pullAngle_rad"))
        .isEqualTo(f.plan().anchoring().orElseThrow().screen().pullAngle())
        .isBetween(0.0, Math.PI / 2);
    assertThat(f.worked("assembly.anchor"))
        .containsExactly(
            "assembly.anchor.ballast",
            "assembly.anchor.guy",
            "assembly.anchor.hemrope",
            "assembly.anchor.hip",
            "assembly.anchor.peg",
            "assembly.anchor.pegs",
            "assembly.anchor.pressure",
            "assembly.anchor.screen",
            "assembly.anchor.vents");
    assertThat(f.assumed())
        .anyMatch(a -> a.startsWith("(wind): the cover alone rests on the ground"))
        .contains("(ballast): friction 0.4 on the ground");
    assertThat(f.cautions(Chapter.ANCHORING))
        .anyMatch(c -> c.contains("carbon monoxide"))
        .anyMatch(c -> c.contains("No open flame inside"))
        .anyMatch(c -> c.contains("A steep guy pulls far more"))
        .anyMatch(c -> c.contains("A pull test holds for one soil"));
    assertThat(f.read(Chapter.ANCHORING))
        .contains(
            "Wind on the whole and on each peg",
            "Ropes of the edge, if you set them",
            "Air and water",
            "Openings",
            "pegs | 28",
            "enough? | yes",
            "there is, high | 0.20 m²")
        .anyMatch(line -> line.startsWith("This page screens; it certifies nothing."))
        .anyMatch(
            line -> line.startsWith("A door is not counted") && line.contains(" 0.05 m² in all"))
        .contains(f.plan().anchoring().orElseThrow().drainage().text())
        .anyMatch(line -> line.startsWith("Worst peg: "));
  }

  @Test
  void untestedPegsAreToBeTested() {
    Fixture f =
        planned(",\n   \"pegs\": {\"pulls\": [\"2 kN\", \"2.1 kN\", \"2.2 kN\", \"2.3 kN\"]}", "");
    assertThat(f.at("/anchoring/pegHolding_N").isMissingNode()).isTrue();
    AnchoringPart part = f.plan().anchoring().orElseThrow();
    assertThat(f.cautions(Chapter.ANCHORING))
        .anyMatch(c -> c.contains("A pull test holds for one soil"))
        .containsAll(part.screen().cautions().stream().map(c -> c.text()).toList())
        .contains(part.ballast().caution().text());
    assertThat(f.read(Chapter.ANCHORING))
        .anyMatch(line -> line.startsWith("Test the pegs in your own ground"));
  }

  /** A mean of 15 m/s of a code is raised to its gust. */
  @Test
  void aBasicWindIsRaisedToAGust() {
    Fixture f =
        planned(
            "\"designWind\": \"20 m/s\"",
            "\"basicWind\": {\"speed\": \"15 m/s\", \"terrain\": \"open\"}");
    near(f, "/anchoring/peak/basic_m_per_s", 15);
    near(f, "/anchoring/peak/height_m", 3 * GROWN);
    double exposure = f.number("/anchoring/peak/exposure");
    near(f, "/anchoring/gust_m_per_s", 15 * Math.sqrt(exposure));
    assertThat(f.worked("assembly.anchor.gust")).hasSize(1);
    assertThat(f.at("/anchoring/peak/terrain").asText()).isNotEmpty();
    assertThat(f.cautions(Chapter.ANCHORING))
        .anyMatch(c -> c.contains("The gust is raised from a mean for flat ground"));
    assertThat(f.read(Chapter.ANCHORING))
        .anyMatch(
            line ->
                line.startsWith("raised from a mean of 15")
                    && line.endsWith(
                        String.format(java.util.Locale.ROOT, "by | %.2f", Math.sqrt(exposure))));
  }

  /** Figures of an engineer replace those of the forms: 1.3 on 6 m2 and 0.8 on 16 m2. */
  @Test
  void statedFiguresAreTaken() {
    Fixture f =
        planned(
            "\"designWind\": \"20 m/s\"",
            "\"designWind\": \"20 m/s\", \"windFigures\": {\"drag\": 1.3, \"uplift\": 0.8,"
                + " \"source\": \"engineer\"}");
    Fixture twice =
        planned(
            "\"designWind\": \"20 m/s\"",
            "\"designWind\": \"20 m/s\", \"windFigures\": {\"drag\": 2.6, \"uplift\": 0.4,"
                + " \"source\": \"engineer\"}");
    near(twice, "/anchoring/drag_N", 2 * f.number("/anchoring/drag_N"));
    near(f, "/anchoring/uplift_N", 250 * 16 * GROWN * GROWN * 0.8);
    near(twice, "/anchoring/uplift_N", 250 * 16 * GROWN * GROWN * 0.4);
  }

  @Test
  void withoutWindThatIsSaid() {
    Fixture f = planned("\"designWind\": \"20 m/s\",", "");
    assertThat(f.at("/anchoring").isMissingNode()).isTrue();
    assertThat(f.skipped(Chapter.ANCHORING))
        .containsExactly("the document states neither designWind nor basicWind under site");
    Fixture nobody = planned("\"crew\": {\"people\": 2}, ", "");
    assertThat(nobody.skipped(Chapter.HANDLING))
        .containsExactly("the document states no crew under site");
  }

  /** Steeper than its width is high, no printed coefficient holds: an engineer is asked. */
  @Test
  void formsThatNoFigureCoversAreLeftToAnEngineer() {
    Fixture f = planned("\"height\": \"3 m\"}}", "\"height\": \"9 m\"}}");
    assertThat(f.at("/anchoring").isMissingNode()).isTrue();
    assertThat(f.skipped(Chapter.ANCHORING))
        .singleElement()
        .asString()
        .contains("height over width: given 1.59")
        .contains("ask a licensed engineer");
  }

  /** Wind gets in where the top is open, and not under a cap. */
  @Test
  void anOpenTopLetsTheWindIn() {
    String open = "\"height\": \"3 m\"}, \"opening\": {\"side\": \"1 m\"}}";
    Fixture f = planned("\"height\": \"3 m\"}}", open);
    assertThat(f.plan().anchoring().orElseThrow().screen().form().openAtTheTop()).isTrue();
    Fixture capped =
        Fixture.of(
            EarthJob.with(TEXT, "\"height\": \"3 m\"}}", open)
                .replace(
                    "\"hem\":", "\"cap\": {\"overlap\": \"300 mm\", \"lap\": \"50 mm\"}, \"hem\":"),
            Chapter.ANCHORING);
    assertThat(capped.plan().anchoring().orElseThrow().screen().form().openAtTheTop()).isFalse();
    // The same walls; less suction without wind inside.
    assertThat(capped.number("/anchoring/uplift_N")).isLessThan(f.number("/anchoring/uplift_N"));
    // A hole of a square metre is air; under a cap it is not counted.
    near(f, "/anchoring/ventilationThere_m2", 1.2);
    near(capped, "/anchoring/ventilationThere_m2", 0.2);
    // An open top of a frame with nothing above is not the closed one of a whole pyramid.
    assertThat(planned().plan().anchoring().orElseThrow().screen().form().openAtTheTop()).isFalse();
  }
}

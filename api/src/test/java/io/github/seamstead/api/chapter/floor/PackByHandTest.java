package io.github.seamstead.api.chapter.floor;

import static io.github.seamstead.api.testing.Fixture.near;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.testing.EarthJob;
import io.github.seamstead.api.testing.Fixture;
import io.github.seamstead.api.testing.SmallJob;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A pack of nine square metres that is tested by cylinders and holes, and half laid. */
class PackByHandTest {

  private static final String TEST =
      ", \"compaction\": {\"mould\": \"1 l\", \"particleDensity\": \"2650 kg/m3\","
          + " \"points\": [{\"wetMass\": \"1.855 kg\", \"moisture\": \"6 %\"}, {\"wetMass\":"
          + " \"1.998 kg\", \"moisture\": \"8 %\"}, {\"wetMass\": \"2.09 kg\", \"moisture\": \"10"
          + " %\"}, {\"wetMass\": \"2.072 kg\", \"moisture\": \"12 %\"}], \"cones\": [{\"poured\":"
          + " \"5 kg\", \"inCone\": \"1.55 kg\", \"sandDensity\": \"1500 kg/m3\", \"dug\": \"4.6"
          + " kg\", \"moisture\": \"9 %\"}, {\"poured\": \"5 kg\", \"inCone\": \"1.55 kg\","
          + " \"sandDensity\": \"1500 kg/m3\", \"dug\": \"4 kg\", \"moisture\": \"9 %\"}]}";

  private static Fixture planned(String old, String changed) {
    return Fixture.of(EarthJob.with(old, changed), Chapter.FLOOR);
  }

  /** Cylinders of a litre: 1.75, 1.85, 1.90 and 1.85 kg dry. The densest is that at 10 %. */
  @Test
  void aPackIsTestedByItsHoles() {
    String pack = "\"thickness\": \"50 mm\", \"mix\": \"pack\"";
    Fixture f = planned(pack, pack + TEST);
    assertThat(f.number("/floor/packs/0/greatestDryDensity_kgPerM3/likely"))
        .isBetween(1895.0, 1905.0);
    double optimum = f.number("/floor/packs/0/optimumMoisture/likely");
    assertThat(optimum).isBetween(0.095, 0.105);
    near(f, "/floor/packs/0/waterToOptimum", (optimum - 0.09) / 1.09);
    // A hole of 3.45 kg of sand is 2.3 l: 4.6 kg damp are 1835 kg/m3 dry.
    near(f, "/floor/packs/0/places/0/dryDensity_kgPerM3", 2000 / 1.09);
    double dense = f.number("/floor/packs/0/greatestDryDensity_kgPerM3/likely");
    near(f, "/floor/packs/0/places/0/relative", 2000 / 1.09 / dense);
    assertThat(f.at("/floor/packs/0/places/0/passes").asBoolean()).isTrue();
    assertThat(f.at("/floor/packs/0/places/1/passes").asBoolean()).isFalse();
    // Pores: 1 - 1835 / 2650 of the volume; 9 % of 1835 kg is their water.
    double dry = 2000 / 1.09;
    double pores = 1 - dry / 2650;
    assertThat(f.number("/floor/packs/0/places/0/saturation"))
        .isCloseTo(dry * 0.09 / 1000 / pores, within(2e-3));
    assertThat(f.number("/floor/packs/0/places/0/airContent"))
        .isCloseTo(pores - dry * 0.09 / 1000, within(2e-3));
    assertThat(f.unmet(Chapter.FLOOR)).singleElement().asString().startsWith("pack: ");
    assertThat(f.noughts("/floor/packs")).containsExactly("/places/passes");
    assertThat(f.worked("materials.water"))
        .contains(
            "materials.water.proctor",
            "materials.water.zero-air-voids",
            "materials.water.sand-cone",
            "materials.water.phases",
            "materials.water.water-to-add");
    assertThat(f.read(Chapter.FLOOR))
        .contains("Compaction: pack", "Compaction test: pack", "Places measured: pack")
        .anyMatch(line -> line.startsWith("water to add, over the damp mass"))
        .anyMatch(line -> line.startsWith("1 | ") && line.endsWith("| yes"))
        .anyMatch(line -> line.startsWith("2 | ") && line.endsWith("| no"))
        .anyMatch(line -> line.startsWith("pack: "));
    assertThat(f.book().drawings()).containsKey("compaction-pack");
  }

  /**
   * Without air a cubic metre at 12 % of water holds 1/(1/2650 + 0.12/1000) kg of dry earth, 2011:
   * the line falls to it, above the cylinders.
   */
  @Test
  void theDrawingShowsTheLineWithoutAir() {
    String pack = "\"thickness\": \"50 mm\", \"mix\": \"pack\"";
    Fixture f = planned(pack, pack + TEST);
    String drawing = f.book().drawings().get("compaction-pack").replaceFirst("<defs>.*</defs>", "");
    Matcher circles = Pattern.compile("<circle cx=\"([0-9.]+)\" cy=\"([0-9.]+)\"").matcher(drawing);
    double[][] at = new double[4][];
    for (int i = 0; i < 4; i++) {
      assertThat(circles.find()).isTrue();
      at[i] =
          new double[] {Double.parseDouble(circles.group(1)), Double.parseDouble(circles.group(2))};
    }
    // Cylinders of 1750 and 1900 kg/m3 at 6 and 10 % give the scale of both axes.
    double up = (at[0][1] - at[2][1]) / 150;
    double along = (at[2][0] - at[0][0]) / 4;
    assertThat(at[3][0]).isCloseTo(at[0][0] + 6 * along, within(0.05));
    assertThat(at[1][1]).isCloseTo(at[2][1] + 50 * up, within(0.05));
    Matcher dashed =
        Pattern.compile(
                "<path d=\"M([0-9.]+) ([0-9.]+)L[^\"]* ([0-9.]+)\"[^>]*stroke-dasharray=\"5 2.5\"")
            .matcher(drawing);
    assertThat(dashed.find()).isTrue();
    double full = 1 / (1 / 2650.0 + 0.12 / 1000);
    assertThat(Double.parseDouble(dashed.group(3)))
        .isCloseTo(at[2][1] - (full - 1900) * up, within(0.05));
    // It starts where it comes into the drawing, which ends a twentieth above its end.
    double start = Double.parseDouble(dashed.group(2));
    assertThat(1900 + (at[2][1] - start) / up).isBetween(1.02 * full, 1.05 * full + 1);
    // And the drawing begins a twentieth below the loosest cylinder.
    double ground = at[0][1] + 0.05 * 1750 * up;
    assertThat(drawing).containsPattern("y2=\"" + Math.round(ground) + "\"");
  }

  @Test
  void eachPlaceAndItsAdviceAreNamed() {
    String pack = "\"thickness\": \"50 mm\", \"mix\": \"pack\"";
    Fixture f = planned(pack, pack + TEST);
    assertThat(f.plan().derivations().stream().map(d -> d.title()).toList())
        .contains(
            "Place 1 of pack",
            "Place 2 of pack",
            "Pores of place 1 of pack",
            "Pores of place 2 of pack");
    assertThat(f.unmet(Chapter.FLOOR))
        .singleElement()
        .asString()
        .startsWith("pack: place 2 is rammed to 84.0 % of the test's greatest dry density");
    assertThat(f.read(Chapter.FLOOR)).contains(f.unmet(Chapter.FLOOR).get(0) + ".");
    // The other place alone is dense enough, and nothing is left to do.
    String dense = TEST.replace("4 kg", "4.6 kg");
    assertThat(planned(pack, pack + dense).unmet(Chapter.FLOOR)).isEmpty();
  }

  /** Half of the pack is laid: one sector of four, and half of the next by its loads. */
  @Test
  void whatIsLaidIsNotOrderedAgain() {
    Fixture f =
        Fixture.of(
            EarthJob.TEXT,
            SmallJob.diary(
                "{\"date\": \"2027-05-03\", \"delivered\": {\"material\": \"sand\", \"mass\": \"600"
                    + " kg\"}}, {\"date\": \"2027-05-04\", \"laid\": {\"layer\": \"levelling\"}},"
                    + " {\"date\": \"2027-05-04\", \"laid\": {\"layer\": \"capillaryBreak\"}},"
                    + " {\"date\": \"2027-05-04\", \"laid\": {\"layer\": \"sheet\"}},"
                    + " {\"date\": \"2027-05-05\", \"laid\": {\"layer\": \"pack\", \"sector\":"
                    + " 1}}, {\"date\": \"2027-05-05\", \"laid\": {\"layer\": \"pack\","
                    + " \"sector\": 2, \"loads\": 1.5}}"));
    assertThat(f.at("/floor/rest")).hasSize(7);
    near(f, "/floor/rest/0/laid_ratio", 1);
    assertThat(f.at("/floor/rest/0/laidOn").asText()).isEqualTo("2027-05-04");
    near(f, "/floor/rest/4/laid_ratio", 0);
    // Each of four sectors takes 11.56 / 4 loads.
    double laid = (1 + 1.5 / (832.5 / 72 / 4)) / 4;
    near(f, "/floor/rest/3/laid_ratio", laid);
    assertThat(f.at("/floor/rest/3/sectorsLeft").toString()).isEqualTo("[2,3,4]");
    // 516 kg of pack are left: eight loads of 72 kg.
    near(f, "/floor/rest/3/loadsLeft/likely", Math.ceil(832.5 * (1 - laid) / 72));
    near(f, "/floor/rest/4/loadsLeft/likely", 5);
    assertThat(f.at("/floor/rest/3/laidOn").isMissingNode()).isTrue();
    near(f, "/floor/work/layers/0/personHours_h/likely", 0);
    assertThat(f.read(Chapter.FLOOR))
        .contains("For what is not laid yet, less what came and lies ready.");
  }
}

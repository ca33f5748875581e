package io.github.seamstead.api.chapter.floor;

import static io.github.seamstead.api.testing.Fixture.near;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.testing.EarthJob;
import io.github.seamstead.api.testing.Fixture;
import io.github.seamstead.api.testing.SmallJob;
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

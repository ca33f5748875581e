package io.github.seamstead.api.chapter.soil;

import static io.github.seamstead.api.testing.Fixture.near;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.testing.EarthJob;
import io.github.seamstead.api.testing.Fixture;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Soils and mixes whose shares a pencil gives. */
class SoilChapterByHandTest {

  private static final String LABORATORY =
      "\"laboratory\": {\"clay\": \"42 %\", \"silt\": \"30 %\", \"sand\": \"28 %\"},\n  ";

  private static Fixture planned() {
    return Fixture.of(EarthJob.TEXT, Chapter.SOIL, Chapter.MIX);
  }

  private static Fixture planned(String old, String changed) {
    return Fixture.of(EarthJob.with(old, changed), Chapter.SOIL, Chapter.MIX);
  }

  /** The first soil with other tests than those of a laboratory. */
  private static Fixture tested(String tests) {
    return planned(LABORATORY, tests);
  }

  @Test
  void theLaboratoryTellsTheShares() {
    Fixture f = planned();
    assertThat(f.at("/soils/0/id").asText()).isEqualTo("pit");
    double clay = f.number("/soils/0/clayRatio/value");
    double silt = f.number("/soils/0/siltRatio/value");
    double sand = f.number("/soils/0/sandRatio/value");
    assertThat(clay).isCloseTo(0.42, within(0.02));
    assertThat(silt).isCloseTo(0.30, within(0.02));
    assertThat(sand).isCloseTo(0.28, within(0.02));
    assertThat(clay + silt + sand).isCloseTo(1, within(1e-9));
    assertThat(f.number("/soils/0/clayRange/low")).isLessThan(clay);
    assertThat(f.number("/soils/0/clayRange/high")).isGreaterThan(clay);
    double classes = 0;
    double before = 1;
    for (JsonNode one : f.at("/soils/0/classes")) {
      classes += one.at("/probability").asDouble();
      assertThat(one.at("/probability").asDouble()).isLessThanOrEqualTo(before);
      before = one.at("/probability").asDouble();
    }
    assertThat(classes).isCloseTo(1, within(5e-3));
    assertThat(f.at("/soils/0/classes/0/name").asText()).contains("clay");
    // 42 % of clay is far above the 14 to 20 % of a floor.
    assertThat(f.number("/soils/0/tooRichProbability")).isGreaterThan(0.99);
    assertThat(
            f.number("/soils/0/tooRichProbability")
                + f.number("/soils/0/tooLeanProbability")
                + f.number("/soils/0/withinBandProbability"))
        .isCloseTo(1, within(0.01));
    assertThat(f.at("/soils/0/tests")).hasSize(2);
    assertThat(f.at("/soils/0/tests/0/clayRange/likely").asDouble()).isCloseTo(clay, within(0.05));
    assertThat(f.noughts("/soils"))
        .containsOnly("/conflicts", "/remarks", "/tests/ofPlasticity", "/withinBandProbability");
  }

  /** A bucket of 1000 kg/m3 to one of 1400: 5/12 of the mix is soil, 17.5 % of it clay. */
  @Test
  void theMixIsItsBuckets() {
    Fixture f = planned();
    double clay = f.number("/soils/0/clayRatio/value");
    assertThat(f.at("/mixes")).hasSize(2);
    assertThat(f.at("/mixes/0/id").asText()).isEqualTo("pack");
    near(f, "/mixes/0/leastClayRatio", 0.14);
    near(f, "/mixes/0/greatestClayRatio", 0.20);
    near(f, "/mixes/0/sandPerSoilDryMass", (clay - 0.17) / 0.17);
    near(f, "/mixes/0/sandParts", 1);
    near(f, "/mixes/0/clayRatio/value", clay * 5 / 12);
    near(f, "/mixes/0/bucketParts/0/parts", 1);
    near(f, "/mixes/0/bucketParts/1/parts", 1);
    assertThat(f.at("/mixes/0/bucketParts/1/material").asText()).isEqualTo("sand");
    assertThat(f.at("/mixes/0/ratioGroundCode").asText()).isEqualTo("byHand");
    assertThat(f.number("/mixes/0/clayRange/low")).isLessThan(clay * 5 / 12);
    assertThat(f.number("/mixes/0/clayRange/high")).isGreaterThan(clay * 5 / 12);
    assertThat(f.keys("/mixes/0")).doesNotContain("unmet", "design");
    assertThat(f.noughts("/mixes")).isEqualTo(Set.of("/composition"));
    var mix = f.plan().mixes().get(0).floorMix();
    assertThat(mix.parts().get(0).dryMassShare()).isCloseTo(5.0 / 12, within(1e-12));
    assertThat(mix.parts().get(0).looseDryDensity()).isCloseTo(1000, within(1e-9));
    assertThat(mix.parts().get(0).moisture()).isCloseTo(0.1, within(1e-12));
    assertThat(mix.parts().get(0).screenedOut()).isCloseTo(0.05, within(1e-12));
    assertThat(mix.parts().get(1).screenedOut()).isZero();
    assertThat(mix.parts().get(1).looseDryDensity()).isCloseTo(1400, within(1e-9));
    assertThat(mix.compactedDryDensity().low()).isCloseTo(1850 * 0.96, within(1e-9));
    assertThat(mix.compactedDryDensity().high()).isCloseTo(1850 * 1.04, within(1e-9));
    assertThat(f.worked("materials."))
        .containsExactly(
            "materials.mix.clay_blend",
            "materials.mix.clay_blend-doubt",
            "materials.soil.assessment",
            "materials.soil.linear_shrinkage",
            "materials.water.bulked-density");
    assertThat(f.cautions(Chapter.SOIL)).isNotEmpty();
    assertThat(f.cautions(Chapter.MIX)).isNotEmpty();
    assertThat(f.unmet(Chapter.MIX)).isEmpty();
  }

  /** Ten parts of sand leave 3 % of clay: too lean, and said so. */
  @Test
  void aRatioOutOfItsBandIsUnmet() {
    Fixture f = planned("\"sandParts\": 1,", "\"sandParts\": 10,");
    assertThat(f.unmet(Chapter.MIX)).hasSize(2).allMatch(u -> u.matches("(?s)(pack|coat): .*"));
    assertThat(f.keys("/mixes/0")).contains("unmet");
    assertThat(f.read(Chapter.MIX))
        .anyMatch(line -> line.contains(f.at("/mixes/0/unmet").asText()));
  }

  /** A mix of its own band: 10 to 20 % is met by any mix between. */
  @Test
  void aStatedBandIsAimedAt() {
    Fixture f =
        planned("\"sandParts\": 1,", "\"leastClay\": \"10 %\", \"greatestClay\": \"18 %\",");
    near(f, "/mixes/0/leastClayRatio", 0.10);
    near(f, "/mixes/0/greatestClayRatio", 0.18);
    double clay = f.number("/soils/0/clayRatio/value");
    near(f, "/mixes/0/sandPerSoilDryMass", (clay - 0.14) / 0.14);
    assertThat(f.at("/mixes/0/ratioGroundCode").asText()).isEqualTo("calculated");
    // In half buckets: two of sand by mass are 1.43 buckets, so one and a half.
    near(f, "/mixes/0/sandParts", 1.5);
    assertThat(f.plan().mixes().get(0).ladder()).isPresent();
    assertThat(f.read(Chapter.MIX))
        .anyMatch(line -> line.startsWith("Trial samples to make first"));
  }

  /** 100 g of tin, 310 g wet, 280 g dry: 30 g of water in 180 g. */
  @Test
  void driedSamplesAndTinsAreTheirSums() {
    String dried = "\"dried\": {\"wet\": \"310 g\", \"dry\": \"280 g\", \"tin\": \"100 g\"}";
    Fixture f = planned("\"moisture\": \"10 %\"", dried);
    assertThat(f.plan().mixes().get(0).floorMix().parts().get(0).moisture())
        .isCloseTo(30.0 / 180, within(1e-12));
    // 1100 kg/m3 as it lies.
    assertThat(f.plan().mixes().get(0).floorMix().parts().get(0).looseDryDensity())
        .isCloseTo(1100 / (1 + 1.0 / 6), within(1e-9));
    assertThat(f.worked("materials.water.tin")).hasSize(1);
    // 18 g of water in 180 g. A tin 120 mm high of damp sand sinks to 100 mm: a fifth of bulking.
    String sandDried = dried.replace("310 g", "298 g");
    Fixture tin =
        planned(
            "\"moisture\": \"5 %\",\n    \"weighed\": {\"volume\": \"10 l\", \"mass\": \"14.7"
                + " kg\"}",
            sandDried + ", \"bulkingTin\": {\"damp\": \"120 mm\", \"flooded\": \"100 mm\"}");
    double sand = tin.plan().mixes().get(0).floorMix().parts().get(1).looseDryDensity();
    assertThat(tin.plan().mixes().get(0).floorMix().parts().get(1).moisture())
        .isCloseTo(0.1, within(1e-12));
    assertThat(sand).isCloseTo(1555 / 1.2, within(1e-6));
    assertThat(tin.worked("materials.water"))
        .containsExactly(
            "materials.water.bulked-density", "materials.water.bulking", "materials.water.tin");
  }

  /** Three kilograms of stones in forty: the sieve keeps back 7.5 %. */
  @Test
  void screenedStonesAreTakenOff() {
    Fixture f =
        planned(
            "\"stones\": \"5 %\"",
            "\"screened\": {\"stones\": \"12 kg\", \"total\": \"40 kg\", \"opening\": \"4 mm\"}");
    assertThat(f.plan().mixes().get(0).floorMix().parts().get(0).screenedOut())
        .isCloseTo(0.3, within(1e-12));
    // 30 % by mass at 2650 beside earth of 1450 or so is a sixth of the volume: gravelly.
    assertThat(f.at("/soils/0/stoniness").asText()).contains("gravelly");
    assertThat(f.worked("materials.soil.stones_by_volume")).hasSize(1);
    assertThat(f.read(Chapter.SOIL))
        .contains("Its stones make it gravelly.")
        .anyMatch(line -> line.startsWith("gravel, of the whole | 30"));
  }

  /** Each test of the hand is one reading, and the next one is proposed. */
  @Test
  void handTestsAreEachRead() {
    Fixture f =
        tested(
            "\"squeeze\": \"keepsFingerprints\", \"drop\": \"flattens\", \"thread\": \"3 mm\","
                + " \"bend\": \"crackedRing\", \"ribbon\": \"70 mm\", \"wash\": \"soapy\","
                + " \"shine\": \"shiny\", \"dryStrength\": \"high\", \"liquidLimit\": \"45 %\","
                + " \"plasticLimit\": \"22 %\", \"signs\": [\"salts\"], ");
    assertThat(f.at("/soils/0/tests").size()).isGreaterThanOrEqualTo(9);
    assertThat(f.at("/soils/0/tests").findValuesAsText("ofPlasticity")).contains("true", "false");
    assertThat(f.at("/soils/0/nextTest").asText()).isNotEmpty();
    assertThat(f.worked("materials.soil.plasticity_chart")).hasSize(1);
    assertThat(f.read(Chapter.SOIL))
        .contains("Tests made", "Tests to make next", "Shares of dry mass", "Texture class")
        .anyMatch(line -> line.startsWith("Tests of plasticity, felt by hand or measured"))
        .anyMatch(line -> line.startsWith("As earth floor: "))
        .anyMatch(line -> line.startsWith("Texture of pit"))
        .anyMatch(line -> line.startsWith("Grading of pit"));
    Fixture one = tested("\"ribbon\": \"70 mm\", ");
    assertThat(one.read(Chapter.SOIL))
        .noneMatch(line -> line.startsWith("Tests of plasticity") && line.contains("dried"));
    Fixture none = tested("\"cannotBeRolled\": true, ");
    assertThat(none.number("/soils/0/clayRatio/value"))
        .isLessThan(f.number("/soils/0/clayRatio/value"));
  }

  /** A jar, sieves and a hydrometer with their sums; harmful contents are told. */
  @Test
  void instrumentsAreWorked() {
    Fixture f =
        tested(
            "\"jar\": {\"sandTop\": \"28 mm\", \"siltTop\": \"58 mm\", \"total\": \"100 mm\","
                + " \"fall\": \"190 mm\", \"temperature\": \"17 degC\", \"dispersed\": true,"
                + " \"sandTime\": \"95 s\", \"siltTime\": \"15 h\", \"totalTime\": \"96 h\"},"
                + " \"sieve\": {\"sieves\": [{\"opening\": \"4.75 mm\", \"retained\": \"10 g\"},"
                + " {\"opening\": \"2 mm\", \"retained\": \"10 g\"}, {\"opening\": \"0.075 mm\","
                + " \"retained\": \"120 g\"}], \"pan\": \"360 g\", \"washed\": true},"
                + " \"liquidLimit\": \"45 %\", \"plasticLimit\": \"22 %\", ");
    assertThat(f.worked("materials.soil"))
        .contains(
            "materials.soil.settling_time",
            "materials.soil.smallest_settled_grain",
            "materials.soil.sieve_analysis",
            "materials.soil.plasticity_chart");
    // 72 % pass the finest sieve; 45 less 22 lies above 0.73 (45 - 20): a lean clay.
    assertThat(f.at("/soils/0/group").asText()).isEqualTo("CL");
    assertThat(f.read(Chapter.SOIL)).contains("Group by sieve and limits (ASTM D2487): CL.");
    assertThat(f.number("/soils/0/sandRatio/value")).isBetween(0.2, 0.35);
    Fixture short2 =
        tested(
            "\"jar\": {\"sandTop\": \"28 mm\", \"siltTop\": \"58 mm\", \"total\": \"100 mm\","
                + " \"fall\": \"190 mm\", \"temperature\": \"17 degC\"}, ");
    assertThat(short2.number("/soils/0/clayRatio/standardUncertainty"))
        .isGreaterThan(f.number("/soils/0/clayRatio/standardUncertainty"));
  }

  /** Salts in the laboratory's sheet make it no floor. */
  @Test
  void harmfulContentsStopTheMixes() {
    Fixture f =
        planned(
            "\"sand\": \"28 %\"}",
            "\"sand\": \"28 %\", \"organicMatter\": \"12 %\", \"solubleSalts\": \"4 %\"}");
    assertThat(f.at("/mixes")).isEmpty();
    assertThat(f.unmet(Chapter.MIX))
        .singleElement()
        .asString()
        .startsWith("pack, coat: no mixes and no orders. pit as earth floor: ");
    assertThat(f.at("/soils/0/floorVerdictCode").asText()).isEqualTo("notAdvised");
  }

  private static final String DESIGN = "\"design\": {\"with\": [\"gravel\"], \"aim\": \"%s\"},";

  /** Prices of 10 for soil, 20 for sand, 30 for gravel: a dry tonne costs between. */
  @Test
  void aDesignedMixKeepsItsBand() {
    for (String aim : new String[] {"grading", "cheapest", "middle"}) {
      Fixture f = planned("\"sandParts\": 1,", DESIGN.formatted(aim));
      assertThat(f.number("/mixes/0/design/clayRatio")).isBetween(0.14 - 1e-6, 0.20 + 1e-6);
      assertThat(f.at("/mixes/0/ratioGroundCode").asText()).isEqualTo("designed");
      assertThat(f.worked("materials.mix.design")).hasSize(1);
      assertThat(f.read(Chapter.MIX))
          .contains("The mix as calculated, before rounding to buckets")
          .anyMatch(line -> line.startsWith("linear shrinkage | "))
          .anyMatch(line -> line.startsWith("price of a dry tonne | "));
      // Dry tonnes: a tonne of soil as it lies is 10/11 of one, of sand 20/21, of gravel 50/51.
      double clay = f.number("/soils/0/clayRatio/value");
      double price = f.number("/mixes/0/design/pricePerDryTonne");
      assertThat(price).isBetween(11.0, 30.6);
      if (aim.equals("cheapest")) {
        // Soil is the cheapest: as much of it as the band allows, the rest sand.
        double soil = 0.20 / clay;
        assertThat(price).isCloseTo(soil * 11 + (1 - soil) * 21, within(0.05));
      }
      if (aim.equals("middle")) {
        assertThat(f.number("/mixes/0/design/clayRatio")).isCloseTo(0.17, within(1e-3));
      }
      assertThat(f.keys("/mixes/0/design").contains("gradingMisfit"))
          .isEqualTo(aim.equals("grading"));
    }
  }

  private static final String TRIALS =
      "\"trialMixes\": [{\"mix\": \"coat\", \"samples\": ["
          + "{\"sandParts\": 1, \"crack\": \"7 mm\", \"mould\": \"500 mm\", \"dusting\": \"none\","
          + " \"scratch\": \"hard\", \"sticky\": true},"
          + " {\"sandParts\": 2, \"crack\": \"0.8 mm\", \"mould\": \"500 mm\", \"dusting\":"
          + " \"none\", \"scratch\": \"hard\"},"
          + " {\"sandParts\": 3, \"crack\": \"0 mm\", \"mould\": \"500 mm\", \"dusting\":"
          + " \"heavy\", \"scratch\": \"crumbles\"},"
          + " {\"sandParts\": 2, \"crack\": \"0 mm\", \"mould\": \"500 mm\", \"dusting\":"
          + " \"none\", \"straw\": \"3 %\"}]}], \"floor\": {";

  /** One cracks by 14 in 1000, three dust: two parts of sand are between. */
  @Test
  void trialSamplesAreRead() {
    Fixture f =
        Fixture.of(
            EarthJob.with(EarthJob.with("\"floor\": {", TRIALS), "\"sandParts\": 1,\n", "\n"),
            Chapter.SOIL,
            Chapter.MIX);
    assertThat(f.at("/trials/0/mix").asText()).isEqualTo("coat");
    assertThat(f.number("/trials/0/sandParts")).isBetween(1.5, 2.5);
    assertThat(f.number("/trials/0/probability")).isBetween(0.1, 1.0);
    assertThat(f.number("/trials/0/cracksBelow/likely")).isBetween(1.0, 2.1);
    assertThat(f.number("/trials/0/dustsAbove/likely")).isBetween(1.9, 3.0);
    assertThat(f.worked("materials.mix.trials")).hasSize(1);
    assertThat(f.skipped(Chapter.MIX))
        .containsExactly(
            "trial samples of coat: 1 has other straw than the 1.0 % of the mix, and cannot tell"
                + " its ratio");
    assertThat(f.read(Chapter.MIX))
        .contains("Trial samples as measured")
        .anyMatch(line -> line.matches("1.00 \\| .* \\| cracks"))
        .anyMatch(line -> line.matches("2.00 \\| .* \\| sound"))
        .anyMatch(line -> line.matches("3.00 \\| .* \\| dusts or crumbles"));
  }

  @Test
  void withoutSoilsAndMixesThatIsSaid() {
    Fixture f =
        Fixture.of(
            "{\"seamstead\": 1, \"frame\": {\"sides\": 4, \"measures\": {\"baseSide\": \"4 m\","
                + " \"height\": \"3 m\"}}}");
    assertThat(f.skipped(Chapter.SOIL)).contains("the document has no soils");
    assertThat(f.skipped(Chapter.MIX)).contains("the document has no mixes under floor");
  }
}

package io.github.seamstead.api.chapter.soil;

import static io.github.seamstead.api.testing.Fixture.near;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.api.testing.EarthJob;
import io.github.seamstead.api.testing.Fixture;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** Tests and pages of soils, and the mixes that they give. */
class SoilNumbersByHandTest {

  private static final String LABORATORY =
      "\"laboratory\": {\"clay\": \"42 %\", \"silt\": \"30 %\", \"sand\": \"28 %\"},\n  ";

  private static Fixture planned(String text) {
    return Fixture.of(text, Chapter.SOIL, Chapter.MIX);
  }

  private static Fixture planned(String old, String changed) {
    return planned(EarthJob.with(old, changed));
  }

  private static Fixture tested(String tests) {
    return planned(LABORATORY, tests);
  }

  private static List<String> labels(Fixture f) {
    return f.at("/soils/0/tests").findValuesAsText("test");
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.0f %%", 100 * share);
  }

  /** Each test of the document is a reading of its own, and none is read twice. */
  @Test
  void everyTestIsRead() {
    String[][] tests = {
      {"\"squeeze\": \"keepsFingerprints\", ", "squeeze test: "},
      {"\"drop\": \"flattens\", ", "drop test: "},
      {"\"thread\": \"3 mm\", ", "roll test: holds at 3 mm"},
      {"\"cannotBeRolled\": true, ", "roll test: cannot be rolled"},
      {"\"bend\": \"crackedRing\", ", "roll and bend test: "},
      {"\"ribbon\": \"70 mm\", ", "ribbon test: 70 mm"},
      {"\"wash\": \"soapy\", ", "wash test: "},
      {"\"shine\": \"shiny\", ", "shine test: "},
      {"\"dryStrength\": \"high\", ", "dry strength: "},
      {
        "\"liquidLimit\": \"45 %\", \"plasticLimit\": \"22 %\", ",
        "limits: liquid 45 %, plastic 22 %"
      },
    };
    String all = "";
    for (String[] test : tests) {
      if (!test[0].contains("cannotBeRolled")) {
        all += test[0];
      }
    }
    List<String> read = labels(tested(all));
    for (String[] test : tests) {
      if (!test[0].contains("cannotBeRolled")) {
        assertThat(read).filteredOn(l -> l.startsWith(test[1])).as(test[1]).hasSize(1);
      }
    }
    assertThat(read).filteredOn(l -> l.startsWith("linear shrinkage: 10 %")).hasSize(1);
    // What cannot be rolled is read, and shrinks with the other tests of plasticity.
    assertThat(labels(tested(tests[3][0]))).anyMatch(l -> l.startsWith(tests[3][1]));
    // Two tests of plasticity make a line of their own; one test does not.
    assertThat(labels(tested(tests[5][0]))).hasSize(3);
    Fixture lone =
        planned(
            EarthJob.with(
                EarthJob.with(LABORATORY, tests[5][0]),
                "\"shrinkage\": {\"mould\": \"140 mm\", \"gap\": \"14 mm\"}, ",
                ""));
    assertThat(labels(lone)).hasSize(1);
    assertThat(lone.read(Chapter.SOIL))
        .anyMatch(l -> l.startsWith("ribbon test: 70 mm | ") && l.endsWith(" | yes"))
        .contains(
            "ribbon test: 70 mm: Read with 4 published charts that disagree; the spread is kept.")
        .noneMatch(l -> l.startsWith("Tests of plasticity, felt by hand"));
    Fixture wash = tested("\"wash\": \"soapy\", ");
    assertThat(wash.read(Chapter.SOIL))
        .anyMatch(l -> l.startsWith("wash test: ") && l.endsWith(" | no"));
  }

  /**
   * The scale of a hydrometer 152H shows the grains of 2.65 t/m³ in a litre (ASTM E100, from
   * memory): 12 g of 50 are finer than what has settled by the last reading.
   */
  @Test
  void theHydrometerIsRead() {
    Fixture f =
        tested(
            "\"hydrometer\": {\"readings\": [{\"time\": \"1 min\", \"density\": \"25 kg/m3\"},"
                + " {\"time\": \"120 min\", \"density\": \"12 kg/m3\"}], \"soilPerVolume\": \"50"
                + " kg/m3\", \"temperature\": \"20 degC\"}, ");
    assertThat(labels(f)).anyMatch(l -> l.startsWith("hydrometer"));
    assertThat(f.sums("materials.soil.hydrometer_finer"))
        .singleElement()
        .satisfies(s -> assertThat(s).isCloseTo(12 / 50.0, within(1e-3)));
    assertThat(f.sums("materials.soil.hydrometer_diameter"))
        .singleElement()
        .satisfies(d -> assertThat(d).isBetween(2e-6, 6e-6));
  }

  @Test
  void eachHarmIsNamedAndStopsTheMixes() {
    String[][] harms = {
      {
        "\"organicMatter\": \"12 %\"", "A laboratory found 12 % of organic matter; 2 % is the most."
      },
      {"\"solubleSalts\": \"4 %\"", "A laboratory found 4 % of soluble salts; 2 % is the most."}
    };
    for (String[] harm : harms) {
      Fixture f = planned("\"sand\": \"28 %\"}", "\"sand\": \"28 %\", " + harm[0] + "}");
      assertThat(f.at("/soils/0/floorReasons/0").asText()).startsWith(harm[1]);
      assertThat(f.unmet(Chapter.MIX))
          .singleElement()
          .asString()
          .startsWith(
              "pack, coat: no mixes and no orders. pit as earth floor: not advised. " + harm[1]);
      assertThat(f.read(Chapter.SOIL)).anyMatch(l -> l.startsWith(harm[1]));
    }
    Fixture sign = tested("\"ribbon\": \"70 mm\", \"signs\": [\"salts\"], ");
    assertThat(sign.at("/soils/0/floorVerdictCode").asText()).isEqualTo("notAdvised");
  }

  /** A plan without worked sums finds the same soil. */
  @Test
  void theFindingDoesNotHangOnTheSteps() {
    Fixture bare =
        Fixture.of(JobPlanner.plan(JobReader.parse(EarthJob.TEXT), PlanOptions.defaults()));
    Fixture worked = planned(EarthJob.TEXT);
    near(bare, "/soils/0/clayRatio/value", worked.number("/soils/0/clayRatio/value"));
    near(bare, "/mixes/0/clayRatio/value", worked.number("/mixes/0/clayRatio/value"));
  }

  private static String range(Fixture f, String pointer) {
    return percent(f.number(pointer + "/likely"))
        + " ("
        + percent(f.number(pointer + "/low"))
        + " to "
        + percent(f.number(pointer + "/high"))
        + ")";
  }

  @Test
  void thePageOfASoilSaysItsNumbers() {
    Fixture f = planned(EarthJob.TEXT);
    List<String> page = f.read(Chapter.SOIL);
    assertThat(page).contains("pit", "clay | " + range(f, "/soils/0/clayRange"));
    // Classes of 2 % and more stand on the page, and all of them in the results.
    for (JsonNode one : f.at("/soils/0/classes")) {
      String name = one.at("/name").asText() + " | ";
      double probability = one.at("/probability").asDouble();
      if (probability >= 0.02) {
        assertThat(page).contains(name + percent(probability));
      } else {
        assertThat(page).noneMatch(l -> l.startsWith(name));
      }
    }
    JsonNode reasons = f.at("/soils/0/floorReasons");
    assertThat(reasons).isNotEmpty();
    reasons.forEach(reason -> assertThat(page).contains(reason.asText()));
    // Four tests, by what each leaves of the doubt; a squeeze of the hand is 2 minutes of work.
    int at = page.indexOf("test | doubt of clay left | work (min)");
    assertThat(page.subList(at + 1, at + 5))
        .allMatch(l -> l.matches("[a-z -]+ test \\| \\d+ % \\| \\d+"))
        .contains("squeeze test | 100 % | 2");
    assertThat(page.get(at + 1)).startsWith(f.at("/soils/0/nextTest").asText() + " | ");
    Fixture torn =
        tested("\"thread\": \"3 mm\", \"ribbon\": \"70 mm\", \"squeeze\": \"keepsFingerprints\", ");
    assertThat(torn.at("/soils/0/conflicts")).isNotEmpty();
    torn.at("/soils/0/conflicts")
        .forEach(c -> assertThat(torn.read(Chapter.SOIL)).contains(c.asText()));
  }

  /** Dry sand to a part of dry soil: clay / wanted - 1, for 17 %, 20 % and 14 %. */
  @Test
  void thePageOfAMixSaysItsNumbers() {
    Fixture f = planned(EarthJob.TEXT);
    double clay = f.number("/soils/0/clayRatio/value");
    List<String> page = f.read(Chapter.MIX);
    assertThat(page)
        .contains("pack", "coat", f.at("/mixes/0/ratioReason").asText())
        .contains(f.at("/mixes/0/remarks/0").asText())
        .contains("clay in the dry mix, nine times in ten | " + range(f, "/mixes/0/clayRange"))
        .contains("clay wanted | 14 % to 20 %")
        .contains(
            String.format(
                Locale.ROOT,
                "dry sand to one part of dry soil, by mass, for the middle of that (for its ends) |"
                    + " %.2f (%.2f to %.2f)",
                clay / 0.17 - 1,
                clay / 0.20 - 1,
                clay / 0.14 - 1))
        .anyMatch(l -> l.startsWith("yield: compacted volume of one loose volume | "))
        .anyMatch(l -> l.startsWith("Grading of the mix pack. "))
        .noneMatch(l -> l.startsWith("What is known of the soil leaves the clay"));
    // A band of 16 to 18 % is narrower than what is known of the soil: 15.9 to 18.8 %.
    String tight = "\"sandParts\": 1, \"leastClay\": \"16 %\", \"greatestClay\": \"18 %\",";
    assertThat(planned("\"sandParts\": 1,", tight).read(Chapter.MIX))
        .anyMatch(l -> l.startsWith("What is known of the soil leaves the clay of this mix open"));
    // At either end alone.
    for (String band :
        List.of("\"10 %\", \"greatestClay\": \"18 %\"", "\"16 %\", \"greatestClay\": \"25 %\"")) {
      assertThat(
              planned("\"sandParts\": 1,", "\"sandParts\": 1, \"leastClay\": " + band + ",")
                  .read(Chapter.MIX))
          .anyMatch(
              l -> l.startsWith("What is known of the soil leaves the clay of this mix open"));
    }
    // The first samples are told with their reasons, richest first.
    Fixture reckoned = planned("\"sandParts\": 1,", "");
    var ladder = reckoned.plan().mixes().get(0).ladder().orElseThrow();
    List<String> read = reckoned.read(Chapter.MIX);
    for (int rung = 0; rung < ladder.sandParts().size(); rung++) {
      assertThat(read).contains(ladder.proportion(rung).text());
    }
    assertThat(ladder.reasons()).isNotEmpty();
    assertThat(read).containsAll(ladder.reasons());
    assertThat(ladder.reasons().get(0)).contains("with a probability of 100 %");
  }

  /** A band that is not stated is that of the use; rammed earth has an envelope of grains too. */
  @Test
  void eachUseHasItsBand() {
    String[] uses = {"floor", "cob", "pressedBlock", "rammedEarth", "plaster"};
    List<Double> least = new ArrayList<>();
    for (String use : uses) {
      Fixture f = planned("\"use\": \"floor\"", "\"use\": \"" + use + "\"");
      var band = f.plan().mixes().stream().findFirst().map(m -> m.blend().band());
      var known = io.github.seamstead.materials.soil.SoilUse.values()[List.of(uses).indexOf(use)];
      band.ifPresent(
          b -> {
            assertThat(b.least()).as(use).isEqualTo(known.leastClay());
            assertThat(b.greatest()).as(use).isEqualTo(known.greatestClay());
            least.add(b.least());
          });
    }
    assertThat(least).hasSizeGreaterThan(2);
    // Ten parts of sand leave less than the 5 % of clay of the envelope (Walker et al., from
    // memory).
    Fixture rammed =
        planned(
            EarthJob.with(
                EarthJob.with("\"use\": \"floor\"", "\"use\": \"rammedEarth\""),
                "\"sandParts\": 1,",
                "\"sandParts\": 10,"));
    assertThat(rammed.at("/mixes/0/composition")).isNotEmpty();
    assertThat(rammed.read(Chapter.MIX)).contains(rammed.at("/mixes/0/composition/0").asText());
  }

  /** A soil that no test tells: no mix without a ratio fixed by hand or by samples. */
  @Test
  void anUnknownSoilGivesNoMixUntilSamplesDecide() {
    String open =
        EarthJob.with(
            EarthJob.with(LABORATORY, "\"cannotBeRolled\": true, "), "\"sandParts\": 1,", "");
    Fixture f = planned(open);
    assertThat(f.at("/soils/0/floorVerdictCode").asText()).isEqualTo("noMixYet");
    assertThat(f.at("/mixes")).isEmpty();
    assertThat(f.unmet(Chapter.MIX))
        .singleElement()
        .asString()
        .startsWith("pack, coat: no mixes and no orders. pit as earth floor: ");
    String sample =
        "{\"sandParts\": %s, \"crack\": \"%s mm\", \"mould\": \"500 mm\", \"dusting\": \"%s\","
            + " \"scratch\": \"%s\"}";
    String undecided =
        "\"trialMixes\": [{\"mix\": \"coat\", \"samples\": ["
            + sample.formatted("1", "7", "none", "hard")
            + "]}], \"floor\": {";
    Fixture one = planned(EarthJob.with(open, "\"floor\": {", undecided));
    assertThat(one.at("/mixes")).isEmpty();
    assertThat(one.unmet(Chapter.MIX))
        .anyMatch(u -> u.startsWith("coat: ") && !u.contains("no mix"));
    String sound = sample.formatted("1", "0", "none", "hard");
    String decided =
        "\"trialMixes\": [{\"mix\": \"coat\", \"samples\": ["
            + String.join(
                ", ",
                sample.formatted("0.5", "7", "none", "hard"),
                sound,
                sound,
                sound,
                sample.formatted("1.5", "0", "heavy", "crumbles"))
            + "]}], \"floor\": {";
    Fixture two = planned(EarthJob.with(open, "\"floor\": {", decided));
    assertThat(two.at("/trials/0/decided").asBoolean()).isTrue();
    assertThat(two.at("/mixes").findValuesAsText("id")).containsExactly("coat");
    // What neither cracks nor dusts lies between a half and one and a half.
    near(two, "/mixes/0/sandParts", 1);
    near(two, "/trials/0/sandParts", 1);
    assertThat(two.read(Chapter.MIX))
        .anyMatch(l -> l.matches("0\\.50 \\| 7 mm in 500 mm \\| 1\\.4 % \\| cracks"))
        .anyMatch(l -> l.matches("1\\.00 \\| .* in 500 mm \\| 0.* % \\| sound"))
        .anyMatch(l -> l.matches("1\\.50 \\| .* \\| dusts or crumbles"));
    two.at("/trials/0/advice").forEach(a -> assertThat(two.read(Chapter.MIX)).contains(a.asText()));
  }
}

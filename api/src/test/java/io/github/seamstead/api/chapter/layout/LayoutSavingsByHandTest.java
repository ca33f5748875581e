package io.github.seamstead.api.chapter.layout;

import static io.github.seamstead.api.testing.Fixture.filled;
import static io.github.seamstead.api.testing.Fixture.near;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.testing.EarthJob;
import io.github.seamstead.api.testing.Fixture;
import io.github.seamstead.api.testing.SmallJob;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** One sheet takes one of four panels of 1 m: each change that is tried is a plan of its own. */
class LayoutSavingsByHandTest {

  private static final String TEXT =
      """
      {"seamstead": 1,
       "frame": {"sides": 4, "measures": {"baseSide": "1 m", "height": "1 m"}},
       "stock": {"sheets": [{"id": "s", "length": "1.4 m", "width": "1.3 m", "cost": 12}],
         "spacing": "5 mm", "edgeMargin": "10 mm"},
       "cover": {"fabric": {"name": "x", "massPerArea": "500 g/m2", "thickness": "0.5 mm"},
         "seam": {"kind": "fin", "allowance": "20 mm"}, "hem": {"kind": "raw"},
         "keepTogether": false}}
      """;

  private static final String NARROWER = "A tenth narrower";
  private static final String SEAM = "Seam allowance a quarter smaller";
  private static final String TOGETHER = "Neighbouring faces in one piece where a sheet takes them";

  private static double cloth(String text) {
    return Fixture.of(text, Chapter.PATTERN).number("/cover/clothArea_m2");
  }

  private static Map<String, JsonNode> tried(Fixture f) {
    Map<String, JsonNode> tried = new LinkedHashMap<>();
    for (JsonNode saving : f.at("/layout/savings/tried")) {
      tried.put(saving.at("/change").asText(), saving);
    }
    assertThat(f.at("/layout/savings/tried")).hasSize(tried.size());
    return tried;
  }

  @Test
  void eachChangeSavesWhatAPlanWithItSaves() {
    Fixture f = Fixture.of(TEXT, Chapter.LAYOUT);
    double whole = f.number("/cover/clothArea_m2");
    String narrow = EarthJob.with(TEXT, "\"baseSide\": \"1 m\"", "\"baseSide\": \"0.9 m\"");
    String small = EarthJob.with(TEXT, "\"20 mm\"", "\"15 mm\"");
    String both = EarthJob.with(narrow, "\"20 mm\"", "\"15 mm\"");
    Map<String, Double> cloth = new LinkedHashMap<>();
    cloth.put(NARROWER, cloth(narrow));
    cloth.put(SEAM, cloth(small));
    cloth.put(
        "A tenth lower",
        cloth(EarthJob.with(TEXT, "\"height\": \"1 m\"", "\"height\": \"0.9 m\"")));
    cloth.put(TOGETHER, whole);
    cloth.put(NARROWER + " + " + SEAM, cloth(both));
    Map<String, JsonNode> tried = tried(f);
    cloth.forEach(
        (name, area) ->
            assertThat(tried.get(name).at("/clothSaved_m2").asDouble())
                .as(name)
                .isCloseTo(whole - area, within(1e-9)));
    // Of four narrow panels the sheet takes two; a sheet more takes the other two.
    JsonNode narrower = tried.get(NARROWER);
    assertThat(narrower.at("/withoutPlace").asInt()).isEqualTo(2);
    assertThat(narrower.at("/areaWithoutPlace_m2").asDouble())
        .isCloseTo(cloth(narrow) / 2, within(1e-9));
    assertThat(narrower.at("/furtherStock/0/items").asInt()).isEqualTo(1);
    assertThat(narrower.at("/furtherStock/0/cost").asInt()).isEqualTo(12);
    // Of the panels as they are it takes one.
    assertThat(tried.get(TOGETHER).at("/withoutPlace").asInt()).isEqualTo(3);
    assertThat(tried.get(TOGETHER).at("/areaWithoutPlace_m2").asDouble())
        .isCloseTo(3 * whole / 4, within(1e-9));
    // Two changes together, for no change alone is enough; of the frame only one.
    assertThat(tried.get(NARROWER + " + " + SEAM).at("/areaWithoutPlace_m2").asDouble())
        .isCloseTo(cloth(both) / 2, within(1e-9));
    assertThat(tried.keySet())
        .containsExactlyInAnyOrder(
            NARROWER + " + " + SEAM,
            NARROWER,
            "A splice more in panel 2",
            "A splice more in panels 2–4",
            "A tenth lower",
            SEAM,
            TOGETHER);
    assertThat(tried.get(NARROWER + " + " + SEAM).at("/price").asText())
        .isEqualTo(
            tried.get(NARROWER).at("/price").asText()
                + "; "
                + tried.get(SEAM).at("/price").asText());
    List<Double> lacks =
        tried.values().stream().map(s -> s.at("/areaWithoutPlace_m2").asDouble()).toList();
    assertThat(lacks).isSorted();
    assertThat(f.at("/layout/savings/notTried")).isEmpty();
    assertThat(tried.values()).noneMatch(s -> s.at("/enough").asBoolean());
  }

  /** The page has a line for each plan that was run, and the lack as planned. */
  @Test
  void thePageTellsEachPlan() {
    Fixture f = Fixture.of(TEXT, Chapter.LAYOUT);
    double lacks = 3 * f.number("/cover/clothArea_m2") / 4;
    List<String> page = f.read(Chapter.LAYOUT);
    assertThat(page)
        .contains("Buy besides: 3 more of s, for 36.00.", "Where to save cloth")
        .contains(
            "Where to save cloth instead: each line is a plan of its own with that change, its"
                + " panels drawn and laid out on the same stock. As planned "
                + filled("3 pieces, %.2f m², have", lacks)
                + " no place. None of these changes is enough by itself.")
        .contains(f.unmet(Chapter.LAYOUT).get(0))
        .contains("sheets and rolls used | 1");
    assertThat(f.unmet(Chapter.LAYOUT).get(0)).startsWith("piece shape-1 (panel 1–4), ");
    List<String> rows = new ArrayList<>();
    tried(f)
        .forEach(
            (name, s) -> {
              double saved = s.at("/clothSaved_m2").asDouble();
              double area = s.at("/areaWithoutPlace_m2").asDouble();
              rows.add(
                  filled(
                      "%s | %s%.2f m² | %d pieces, %.2f m² | %d of s: %d.00 | %s",
                      name,
                      saved < 0 ? "−" : "",
                      Math.abs(saved),
                      s.at("/withoutPlace").asInt(),
                      area,
                      s.at("/furtherStock/0/items").asInt(),
                      12 * s.at("/furtherStock/0/items").asInt(),
                      s.at("/price").asText()));
            });
    assertThat(page).containsSubsequence(rows);
    assertThat(rows).anyMatch(row -> row.startsWith("A splice more in panel 2 | −0.0"));
  }

  /** Two narrow panels lie head to tail on a sheet of 1.5 m: no two changes are tried together. */
  @Test
  void whatIsEnoughAloneComesFirst() {
    // As they are two of them want 1.55 m.
    Fixture f =
        Fixture.of(
            EarthJob.with(TEXT, "\"length\": \"1.4 m\"", "\"length\": \"1.5 m\", \"count\": 2"),
            Chapter.LAYOUT);
    assertThat(f.at("/layout/complete").asBoolean()).isFalse();
    Map<String, JsonNode> tried = tried(f);
    assertThat(tried.get(NARROWER).at("/enough").asBoolean()).isTrue();
    assertThat(tried.get(NARROWER).at("/withoutPlace").asInt()).isZero();
    assertThat(tried.get(NARROWER).at("/furtherStock")).isEmpty();
    assertThat(tried.keySet()).noneMatch(name -> name.contains(" + "));
    List<Boolean> enough = tried.values().stream().map(s -> s.at("/enough").asBoolean()).toList();
    assertThat(enough.lastIndexOf(true))
        .isEqualTo((int) enough.stream().filter(e -> e).count() - 1);
    assertThat(f.read(Chapter.LAYOUT))
        .noneMatch(line -> line.endsWith("None of these changes is enough by itself."))
        .anyMatch(
            line -> line.startsWith(NARROWER + " | ") && line.contains(" | nothing | nothing | "));
  }

  /** A door that a narrower frame has no room for: that change is named, and why it was not run. */
  @Test
  void whatCannotBePlannedIsNamed() {
    Fixture f =
        Fixture.of(
            EarthJob.with(
                TEXT,
                "\"hem\"",
                "\"door\": {\"id\": \"d\", \"face\": 1, \"patch\": \"20 mm\", \"flap\": \"20 mm\","
                    + " \"outline\": [{\"x\": \"0.2 m\", \"y\": \"0.1 m\"}, {\"x\": \"0.8 m\","
                    + " \"y\": \"0.1 m\"}, {\"x\": \"0.8 m\", \"y\": \"0.3 m\"}, {\"x\": \"0.2 m\","
                    + " \"y\": \"0.3 m\"}]}, \"hem\""),
            Chapter.LAYOUT);
    JsonNode not = f.at("/layout/savings/notTried");
    assertThat(not.findValuesAsText("change")).contains(NARROWER);
    assertThat(not.get(0).at("/why").asText()).contains("$.cover.door");
    assertThat(f.read(Chapter.LAYOUT))
        .anyMatch(line -> line.startsWith("Not planned: " + NARROWER + ". "));
  }

  /** What was cut lies where it was cut; what is left is laid beside it. */
  @Test
  void whatIsCutStaysWhereItIs() {
    String two =
        EarthJob.with(TEXT, "\"length\": \"1.4 m\"", "\"length\": \"1.4 m\", \"count\": 4");
    Fixture before = Fixture.of(two, Chapter.LAYOUT);
    Fixture f =
        Fixture.of(
            two,
            SmallJob.diary("{\"date\": \"2031-05-05\", \"cut\": {\"pieces\": [\"1\", \"3\"]}}"));
    assertThat(f.lists().get("cutting-layout.csv").lines().toList())
        .containsExactlyInAnyOrderElementsOf(
            before.lists().get("cutting-layout.csv").lines().toList());
    near(f, "/layout/cost", 48);
    // A layout of a part is no layout of the whole, so that its sums are not worked.
    assertThat(f.worked("geometry.layout")).isEmpty();
    assertThat(before.worked("geometry.layout"))
        .containsExactly(
            "geometry.layout.bound", "geometry.layout.density", "geometry.layout.rowlength");
  }
}

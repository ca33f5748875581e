package io.github.seamstead.api.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.chapter.Recall;
import io.github.seamstead.api.chapter.Series;
import io.github.seamstead.api.chapter.Supposed;
import io.github.seamstead.api.chapter.layout.ClothSaving;
import io.github.seamstead.api.chapter.layout.LayoutPart;
import io.github.seamstead.api.chapter.layout.Savings;
import io.github.seamstead.api.chapter.layout.ShortCloth;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobDraft;
import io.github.seamstead.api.job.JobFaultsException;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.results.ResultsJson;
import io.github.seamstead.geometry.layout.StockNeed;
import io.github.seamstead.shared.quantity.UnitSystem;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A plan whose cloth is short says what to fetch and where to save, each from a plan of its own.
 */
class ShortClothTest {

  private static final String SKIRT = "\"skirt\": {\"drop\": \"300 mm\"},";
  private static final String SHEETS =
      "\"sheets\": [{\"id\": \"tarp\", \"length\": \"3.4 m\", \"width\": \"2.6 m\", \"count\": 2,"
          + " \"reinforced\": [\"bottom\"]}]";
  private static final String ROLL =
      ", \"rolls\": [{\"id\": \"green\", \"width\": \"1.7 m\", \"length\": \"1.7 m\","
          + " \"costPerMetre\": 8}]";

  private static String text(String cover, String hem, String stock) {
    return """
    {"seamstead": 1,
     "site": {"name": "short", "crew": {"people": 3}},
     "frame": {"sides": 6, "measures": {"baseSide": "1.5 m", "height": "2 m"},
      "opening": {"radius": "0.2 m"}},
     "cover": {"fabric": {"massPerArea": "600 g/m2"}, "seam": {"kind": "fin", "allowance": "40 mm"},
      "keepTogether": false, %s "cap": {"overlap": "250 mm"}, "hem": %s},
     "stock": {%s, "spacing": "5 mm", "edgeMargin": "10 mm"}}
    """
        .formatted(cover, hem, stock);
  }

  private static final String TURNED = "{\"kind\": \"turned\", \"allowance\": \"50 mm\"}";
  private static final String KEPT = "{\"kind\": \"reinforced\"}";

  private static JobPlan plan(String text) {
    return JobPlanner.plan(JobReader.parse(text), PlanOptions.defaults());
  }

  private static Savings savings(JobPlan plan) {
    return plan.layout().flatMap(LayoutPart::savings).orElseThrow();
  }

  @Test
  void everySavingIsThatOfAPlanOfItsOwn() {
    String text = text(SKIRT, TURNED, SHEETS + ROLL);
    JobPlan plan = plan(text);
    assertThat(plan.layout().orElseThrow().withoutPlace()).isPositive();
    Savings savings = savings(plan);
    assertThat(savings.tried()).hasSizeGreaterThan(4);
    JobDraft draft = JobDraft.parse(text.getBytes(StandardCharsets.UTF_8));
    for (ClothSaving saving : savings.tried()) {
      Job changed = draft.with(saving.lever().changes()).job();
      JobPlan alone = JobPlanner.plan(changed, PlanOptions.defaults());
      LayoutPart laid = alone.layout().orElseThrow();
      String name = saving.lever().name();
      assertThat(laid.withoutPlace()).as(name).isEqualTo(saving.withoutPlace());
      assertThat(laid.areaWithoutPlace())
          .as(name)
          .isCloseTo(saving.areaWithoutPlace(), within(1e-9));
      assertThat(laid.result().furtherStock()).as(name).isEqualTo(saving.furtherStock());
      assertThat(plan.cover().orElseThrow().clothArea() - alone.cover().orElseThrow().clothArea())
          .as(name)
          .isCloseTo(saving.clothSaved(), within(1e-9));
    }
  }

  @Test
  void whatIsEnoughStandsFirstAndIsSaid() {
    JobPlan plan = plan(text(SKIRT, TURNED, SHEETS + ROLL));
    Savings savings = savings(plan);
    assertThat(savings.enough()).isNotEmpty();
    assertThat(savings.tried().subList(0, savings.enough().size())).isEqualTo(savings.enough());
    List<String> advice = ShortCloth.advice(plan.layout().orElseThrow(), UnitSystem.METRIC);
    assertThat(advice).hasSize(2);
    assertThat(advice.get(0)).startsWith("Buy besides: ").contains("more of green", "wide, for ");
    assertThat(advice.get(1)).contains(savings.tried().get(0).lever().name() + " is enough");
    assertThat(ResultsJson.text(plan)).contains("\"savings\"", "\"No skirt\"", "\"furtherStock\"");
  }

  @Test
  void whatHasAPriceIsBoughtAndOnlyWhatMustLieOnABandIsFound() {
    JobPlan plan = plan(text(SKIRT, KEPT, SHEETS.replace("\"count\": 2", "\"count\": 1") + ROLL));
    List<StockNeed> needs = plan.layout().orElseThrow().result().furtherStock();
    assertThat(needs).extracting(StockNeed::stockId).containsExactly("green", "tarp");
    assertThat(needs.get(0).cost()).isCloseTo(8 * needs.get(0).length(), within(1e-9));
    assertThat(ShortCloth.advice(plan.layout().orElseThrow(), UnitSystem.METRIC).get(0))
        .contains("nothing with a price takes these pieces");
    assertThat(savings(plan).tried())
        .extracting(s -> s.lever().name())
        .anyMatch(name -> name.startsWith("Lower edge turned, not kept on the band, of panel"))
        .anyMatch(name -> name.startsWith("A splice more in panel"));
  }

  @Test
  void noSavingIsLookedForWhereClothIsEnoughOrPlansAreCompared() {
    String many = SHEETS.replace("\"count\": 2", "\"count\": 9");
    assertThat(plan(text(SKIRT, TURNED, many)).layout().orElseThrow().savings()).isEmpty();
    Job job = JobReader.parse(text(SKIRT, TURNED, SHEETS));
    Series one = new Series(Recall.of(4), Supposed.NOTHING, false, false);
    JobPlan compared = JobPlanner.plan(job, PlanOptions.defaults(), one);
    assertThat(compared.unmet()).isNotEmpty();
    assertThat(compared.layout().orElseThrow().savings()).isEmpty();
  }

  @Test
  void whatIsNotTriedIsSaid() {
    Job job = JobReader.parse(text(SKIRT, TURNED, SHEETS));
    PlanOptions hurried = PlanOptions.defaults().withTimeLimit(Duration.ofNanos(1));
    JobPlan plan = JobPlanner.plan(job, hurried);
    // A search that was stopped does not know whether cloth is short.
    assertThat(plan.layout().orElseThrow().savings()).isEmpty();
    String door =
        "\"door\": {\"id\": \"door\", \"face\": 1, \"patch\": \"40 mm\", \"flap\": \"40 mm\","
            + "\"outline\": [{\"x\": \"0.2 m\", \"y\": \"0.15 m\"},"
            + "{\"x\": \"1.3 m\", \"y\": \"0.15 m\"}, {\"x\": \"1.05 m\", \"y\": \"0.45 m\"},"
            + "{\"x\": \"0.45 m\", \"y\": \"0.45 m\"}]},";
    Savings savings = savings(plan(text(SKIRT + door, TURNED, SHEETS)));
    assertThat(savings.notTried())
        .anySatisfy(
            n -> {
              assertThat(n.lever().name()).isEqualTo("A tenth narrower");
              assertThat(n.why()).contains("door");
            });
  }

  @Test
  void aFaceIsPutTogetherFromABandMore() {
    String plenty = SHEETS.replace("\"count\": 2", "\"count\": 9");
    JobPlan before = plan(text("", TURNED, plenty));
    JobPlan after = plan(text("\"moreSplices\": [2, 5],", TURNED, plenty));
    for (int face = 1; face <= 6; face++) {
      int more = face == 2 || face == 5 ? 1 : 0;
      assertThat(after.cover().orElseThrow().panels().get(face - 1).splices())
          .hasSize(before.cover().orElseThrow().panels().get(face - 1).splices().size() + more);
    }
    assertThat(after.unmet()).isEmpty();
    assertThatThrownBy(() -> plan(text("\"moreSplices\": [2, 7],", TURNED, plenty)))
        .isInstanceOf(JobFaultsException.class)
        .hasMessageContaining("$.cover.moreSplices[1]");
  }
}

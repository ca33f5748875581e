package io.github.seamstead.api.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.api.chapter.layout.LayoutPart;
import io.github.seamstead.api.job.JobDraft;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.job.VariantsDocument;
import io.github.seamstead.api.job.VariantsReader;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.plan.JobPlanner;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where to save when the cloth is short: each line is a plan that was run. */
class ClothLeversTest {

  private static String job(String roll, String hem) {
    return """
    {"seamstead": 1,
     "site": {"name": "short of cloth", "crew": {"people": 2}},
     "frame": {"sides": 6, "measures": {"baseSide": "2 m", "height": "2.5 m"},
               "opening": {"radius": "0.3 m"}},
     "cover": {"fabric": {"massPerArea": "250 g/m2"}, "seam": {"kind": "lap", "allowance": "50 mm"},
      "hem": %s, "skirt": {"drop": "300 mm"}, "cap": {"overlap": "200 mm", "lap": "50 mm"}},
     "stock": {%s}}
    """
        .formatted(hem, roll);
  }

  private static final String TURNED = "{\"kind\": \"turned\", \"allowance\": \"50 mm\"}";

  private static Comparison compare(String text) {
    JobDraft draft = JobDraft.parse(text.getBytes(StandardCharsets.UTF_8));
    VariantsDocument none =
        VariantsReader.parse(
            ("{\"seamstead\": 1, \"list\": [{\"name\": \"as it is\", \"set\": [{\"path\":"
                    + " \"site.name\", \"value\": \"same\"}]}]}")
                .getBytes(StandardCharsets.UTF_8),
            draft);
    return Comparison.of(draft, none, CompareOptions.whole(), ParetoFront.USUAL, Runnable::run, 1);
  }

  @Test
  void whatShortensTheLackComesFirstAndSaysByHowMuch() {
    String text =
        job("\"rolls\": [{\"id\": \"green\", \"width\": \"1.5 m\", \"length\": \"22 m\"}]", TURNED);
    Comparison comparison = compare(text);
    VariantRow asWritten = comparison.rows().get(0);
    assertThat(asWritten.isFeasible()).isFalse();
    JobPlan plan = JobPlanner.plan(JobReader.parse(text), CompareOptions.whole().planned());
    LayoutPart layout = plan.layout().orElseThrow();
    double lacks =
        layout.result().unplaced().stream()
            .mapToDouble(s -> s.count() * layout.outlines().get(s.pieceId()).area())
            .sum();
    assertThat(asWritten.value(Measure.CLOTH_SHORT).orElseThrow()).isCloseTo(lacks, within(1e-9));
    List<LeverRow> levers = comparison.levers();
    assertThat(levers)
        .extracting(row -> row.lever().name())
        .contains("No skirt", "Cap cut from other cloth", "A tenth lower", "A tenth narrower");
    for (int i = 1; i < levers.size(); i++) {
      if (levers.get(i - 1).after().isFeasible() == levers.get(i).after().isFeasible()) {
        assertThat(levers.get(i - 1).saved(Measure.CLOTH_SHORT).orElse(0.0))
            .isGreaterThanOrEqualTo(levers.get(i).saved(Measure.CLOTH_SHORT).orElse(0.0));
      }
    }
    LeverRow skirt =
        levers.stream().filter(r -> r.lever().name().equals("No skirt")).findFirst().orElseThrow();
    assertThat(skirt.saved(Measure.CLOTH_AREA).orElseThrow()).isGreaterThan(3);
    assertThat(skirt.saved(Measure.CLOTH_SHORT).orElseThrow()).isPositive();
  }

  @Test
  void aTurnedHemLetsFacesStayInOnePiece() {
    String tarp =
        "\"sheets\": [{\"id\": \"tarp\", \"length\": \"9 m\", \"width\": \"8 m\", \"reinforced\":"
            + " [\"bottom\", \"top\", \"left\", \"right\"]}]";
    LeverRow turned =
        compare(job(tarp, "{\"kind\": \"reinforced\"}")).levers().stream()
            .filter(row -> row.lever().name().startsWith("Lower edges turned"))
            .findFirst()
            .orElseThrow();
    assertThat(turned.after().isFeasible()).isTrue();
    // Five hips of about 3 m less, a hem of 12 m more; hours and handled mass fall.
    assertThat(turned.saved(Measure.HOURS).orElseThrow()).isPositive();
    assertThat(turned.saved(Measure.HANDLED_MASS).orElseThrow()).isPositive();
  }
}

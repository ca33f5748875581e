package io.github.seamstead.api.plan;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.chapter.Recall;
import io.github.seamstead.api.chapter.Series;
import io.github.seamstead.api.chapter.Supposed;
import io.github.seamstead.api.chapter.layout.LayoutPart;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.geometry.pattern.Panel;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/**
 * More cloth never makes a worse plan: no more pieces without a place, then no more splices, then
 * no higher objective. Panels are divided to suit each heap, fans are tried.
 */
class MoreClothProperties {

  private static final Series BRIEF = new Series(Recall.none(), Supposed.NOTHING, true, false);

  /** What a plan comes to. */
  private record Outcome(int withoutPlace, double area, int splices, double objective) {}

  @Property(tries = 3, seed = "20261129")
  void moreClothIsNeverWorse(@ForAll long seed) {
    Random random = new Random(seed);
    boolean isPriced = random.nextBoolean();
    List<String> heap = heap(random, isPriced);
    String cover = cover(random);
    List<Outcome> met = new ArrayList<>();
    for (int n = 1 + heap.size() / 2; n <= heap.size(); n++) {
      Outcome now = outcome(cover, heap.subList(0, n));
      if (!met.isEmpty()) {
        assertNoWorse(met.get(met.size() - 1), now);
      }
      met.add(now);
    }
  }

  private static void assertNoWorse(Outcome before, Outcome now) {
    String what = before + " became " + now;
    assertThat(now.withoutPlace()).as(what).isLessThanOrEqualTo(before.withoutPlace());
    if (now.withoutPlace() == 0 && before.withoutPlace() == 0) {
      assertThat(now.splices()).as(what).isLessThanOrEqualTo(before.splices());
      if (now.splices() == before.splices()) {
        assertThat(now.objective()).as(what).isLessThanOrEqualTo(before.objective() + 1e-9);
      }
    }
  }

  private static Outcome outcome(String cover, List<String> heap) {
    String text = cover.formatted(String.join(", ", heap));
    JobPlan plan =
        JobPlanner.plan(
            JobReader.parse(text),
            PlanOptions.defaults().only(Chapter.PATTERN, Chapter.LAYOUT),
            BRIEF);
    LayoutPart layout = plan.layout().orElseThrow();
    List<Panel> panels = plan.cover().orElseThrow().panels();
    return new Outcome(
        layout.withoutPlace(),
        layout.areaWithoutPlace(),
        panels.stream().mapToInt(panel -> panel.splices().size()).sum(),
        layout.result().objectiveValue());
  }

  private static String cover(Random random) {
    return String.format(
        Locale.ROOT,
        """
        {"seamstead": 1,
         "frame": {"sides": %d, "measures": {"baseSide": "%.2f m", "height": "%.2f m"}},
         "cover": {"fabric": {"massPerArea": "600 g/m2"},
          "seam": {"kind": "fin", "allowance": "40 mm"}, "keepTogether": %s,
          "hem": {"kind": "turned", "allowance": "50 mm"}},
         "stock": {"sheets": [%%s], "spacing": "5 mm", "edgeMargin": "10 mm"}}
        """,
        5 + random.nextInt(4),
        1.1 + 0.7 * random.nextDouble(),
        1.6 + 1.2 * random.nextDouble(),
        random.nextBoolean());
  }

  /** Odd sheets, some torn; with a price each, or none. */
  private static List<String> heap(Random random, boolean isPriced) {
    List<String> heap = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      double length = 1.8 + 2.6 * random.nextDouble();
      double width = 1 + 1.4 * random.nextDouble();
      String flaw =
          random.nextInt(3) > 0
              ? ""
              : String.format(
                  Locale.ROOT,
                  ", \"flaws\": [{\"x\": \"%.3f m\", \"y\": \"%.3f m\", \"width\": \"0.2 m\","
                      + " \"height\": \"0.2 m\"}]",
                  (length - 0.2) * random.nextDouble(),
                  (width - 0.2) * random.nextDouble());
      String price = isPriced ? ", \"cost\": " + (5 + random.nextInt(20)) : "";
      heap.add(
          String.format(
              Locale.ROOT,
              "{\"id\": \"s%d\", \"length\": \"%.3f m\", \"width\": \"%.3f m\", \"count\": %d%s%s}",
              i,
              length,
              width,
              1 + random.nextInt(2),
              flaw,
              price));
    }
    Collections.shuffle(heap, random);
    return heap;
  }
}

package io.github.seamstead.api.chapter.layout;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.seamstead.api.book.Book;
import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.api.results.ResultsJson;
import io.github.seamstead.api.testing.EarthJob;
import io.github.seamstead.api.testing.Fixture;
import io.github.seamstead.api.testing.Sketch;
import io.github.seamstead.api.testing.SmallJob;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is laid beside what is cut, on cloth of several kinds, and on other terms. */
class LayoutRestByHandTest {

  private static final String SHEET =
      "{\"id\": \"s\", \"length\": \"3 m\", \"width\": \"1.3 m\", \"count\": 2, \"cost\": 12}";

  private static final String TEXT =
      """
      {"seamstead": 1,
       "site": {"name": "t"},
       "frame": {"sides": 4, "measures": {"baseSide": "1 m", "height": "1 m"}},
       "stock": {%s, "spacing": "5 mm", "edgeMargin": "10 mm"},
       "cover": {"fabric": {"name": "x", "massPerArea": "500 g/m2", "thickness": "0.5 mm"},
         "seam": {"kind": "fin", "allowance": "20 mm"}, "hem": {"kind": "raw"},
         "keepTogether": false}}
      """;

  private static String sheets(String sheets) {
    return TEXT.formatted("\"sheets\": [" + sheets + "]");
  }

  private static List<String> list(Fixture f) {
    return f.lists().get("cutting-layout.csv").lines().toList();
  }

  /** A sheet that costs less comes later: what was laid before and is as it was stays there. */
  @Test
  void whatWasPlannedStaysWhereItWas() {
    String was = sheets(SHEET);
    String now =
        sheets("{\"id\": \"a\", \"length\": \"3 m\", \"width\": \"1.3 m\", \"cost\": 1}, " + SHEET);
    Fixture f =
        Fixture.of(
            was,
            now,
            SmallJob.diary("{\"date\": \"2031-05-05\", \"cut\": {\"pieces\": [\"1\", \"2\"]}}"));
    assertThat(list(f)).containsExactlyInAnyOrderElementsOf(list(Fixture.of(was, Chapter.LAYOUT)));
    assertThat(list(Fixture.of(now, Chapter.LAYOUT))).noneMatch(row -> row.startsWith("s,"));
  }

  private static double[] centre(List<double[]> corners) {
    return new double[] {
      corners.stream().mapToDouble(c -> c[0]).average().orElseThrow(),
      corners.stream().mapToDouble(c -> c[1]).average().orElseThrow()
    };
  }

  /** Of three sides the fourth piece is no longer needed: its hole stays where it was cut. */
  @Test
  void whatIsNeededNoMoreLeavesItsHole() {
    String was = sheets(SHEET);
    Fixture before = Fixture.of(was, Chapter.LAYOUT);
    Fixture f =
        Fixture.of(
            was,
            EarthJob.with(was, "\"sides\": 4", "\"sides\": 3"),
            SmallJob.diary("{\"date\": \"2031-05-05\", \"cut\": {\"pieces\": [\"2\", \"4\"]}}"));
    List<double[]> holes = new ArrayList<>();
    for (JsonNode place : before.at("/layout/used/0/placements")) {
      int copy = place.at("/copy").asInt();
      if (copy == 4) {
        holes.add(centre(before.laidAt(place)));
      }
    }
    assertThat(holes).hasSize(1);
    int laid = 0;
    for (JsonNode use : f.at("/layout/used")) {
      for (JsonNode place : use.at("/placements")) {
        laid++;
        if (use.at("/copy").asInt() == 1) {
          double[] there = centre(f.laidAt(place));
          // Triangles head to tail are half a base apart.
          assertThat(Math.hypot(there[0] - holes.get(0)[0], there[1] - holes.get(0)[1]))
              .isGreaterThan(0.4);
        }
      }
    }
    assertThat(laid).isEqualTo(3);
    // The second is cut and stays.
    assertThat(list(f)).contains(list(before).get(2));
    assertThat(list(before).get(2)).startsWith("s,1,2,");
  }

  /** Whole panels from large sheets and spliced ones from narrow: each drawn on its own sheet. */
  @Test
  void everySheetIsDrawnAsItIs() {
    Fixture f =
        Fixture.of(
            sheets(
                "{\"id\": \"a\", \"length\": \"1.3 m\", \"width\": \"1.2 m\", \"count\": 2},"
                    + " {\"id\": \"b\", \"length\": \"1.3 m\", \"width\": \"0.6 m\", \"count\":"
                    + " 9}"),
            Chapter.LAYOUT);
    assertThat(f.at("/layout/complete").asBoolean()).isTrue();
    int placed = 0;
    for (JsonNode use : f.at("/layout/used")) {
      String stock = use.at("/stock").asText();
      String name = "layout-" + stock + "-" + use.at("/copy").asInt();
      assertThat(Sketch.of(f, name).told())
          .contains(stock.equals("a") ? "1.300 m by 1.200 m, " : "1.300 m by 0.600 m, ");
      placed += use.at("/placements").size();
    }
    int pieces = 0;
    for (JsonNode shape : f.at("/cover/shapes")) {
      pieces += shape.at("/count").asInt();
    }
    assertThat(placed).isEqualTo(pieces);
    assertThat(list(f)).hasSize(1 + pieces);
  }

  /** Of two shapes that lack each is named by its own pieces. */
  @Test
  void everyShapeThatLacksIsNamed() {
    Fixture f =
        Fixture.of(
            EarthJob.with(
                sheets("{\"id\": \"s\", \"length\": \"1.4 m\", \"width\": \"1.3 m\"}"),
                "\"hem\"",
                "\"skirt\": {\"drop\": \"200 mm\", \"overlap\": \"100 mm\"}, \"hem\""),
            Chapter.LAYOUT);
    assertThat(f.unmet(Chapter.LAYOUT))
        .anyMatch(text -> text.startsWith("piece shape-1 (panel 1–4), "))
        .anyMatch(text -> text.startsWith("piece shape-2 (ground skirt 4 × skirt), "));
  }

  private static JobPlan planned(String text, PlanOptions options) {
    return JobPlanner.plan(JobReader.parse(text), options.only(Chapter.LAYOUT));
  }

  /** A search without time says so. */
  @Test
  void aSearchThatIsStoppedSaysSo() {
    String roll =
        TEXT.formatted("\"rolls\": [{\"id\": \"r\", \"width\": \"1.3 m\", \"length\": \"20 m\"}]");
    JobPlan plan = planned(roll, PlanOptions.defaults().withTimeLimit(Duration.ofNanos(1)));
    assertThat(ResultsJson.text(plan)).contains("\"stopped\": \"time_limit\"");
    assertThat(Book.of(plan).html()).contains("The search was stopped (time limit): best so far.");
  }

  /** Twice the effort tries twice the placements; beside other work the result is the same. */
  @Test
  void theEffortAndTheThreads() {
    String roll =
        TEXT.formatted(
            "\"rolls\": [{\"id\": \"r\", \"width\": \"1.3 m\", \"length\": \"20 m\","
                + " \"costPerMetre\": 3, \"flaws\": [{\"x\": \"0.5 m\", \"y\": \"0.5 m\","
                + " \"width\": \"0.1 m\", \"height\": \"0.2 m\"}]}]");
    JobPlan once = planned(roll, PlanOptions.defaults());
    long work = once.layout().orElseThrow().result().workUsed();
    JobPlan twice = planned(roll, PlanOptions.defaults().withEffort(2));
    assertThat(work).isBetween(4_000L, 8_000L);
    assertThat(twice.layout().orElseThrow().result().workUsed()).isGreaterThan(work + work / 2);
    JobPlan beside = planned(roll, PlanOptions.defaults().on(Runnable::run));
    assertThat(beside.layout().orElseThrow().result())
        .isEqualTo(once.layout().orElseThrow().result());
  }

  /** Ten minutes are more than a few small plans take: all changes are tried. */
  @Test
  void aTimeLimitThatIsNotReachedLeavesNothingOut() {
    JobPlan plan =
        planned(
            sheets("{\"id\": \"s\", \"length\": \"1.4 m\", \"width\": \"1.3 m\"}"),
            PlanOptions.defaults().withTimeLimit(Duration.ofMinutes(10)));
    Savings savings = plan.layout().flatMap(LayoutPart::savings).orElseThrow();
    assertThat(savings.notTried()).isEmpty();
    assertThat(savings.tried()).hasSizeGreaterThan(5);
  }

  /** On a band three changes together leave the least: each adds to the one before. */
  @Test
  void threeChangesTogether() {
    Fixture f =
        Fixture.of(
            EarthJob.with(
                sheets(
                    "{\"id\": \"s\", \"length\": \"1.5 m\", \"width\": \"1.25 m\", \"cost\": 12,"
                        + " \"reinforced\": [\"bottom\"]}"),
                "\"raw\"",
                "\"reinforced\""),
            Chapter.LAYOUT);
    List<String> names = f.at("/layout/savings/tried").findValuesAsText("change");
    List<Double> lacks = new ArrayList<>();
    for (JsonNode saving : f.at("/layout/savings/tried")) {
      lacks.add(saving.at("/areaWithoutPlace_m2").asDouble());
    }
    assertThat(lacks).isSorted();
    String[] parts = names.get(0).split(" \\+ ", -1);
    assertThat(parts).hasSize(3);
    assertThat(names.get(1)).isEqualTo(parts[0] + " + " + parts[1]);
    assertThat(lacks.get(0)).isLessThan(lacks.get(1));
    assertThat(lacks.get(1)).isLessThan(lacks.get(names.indexOf(parts[0])));
    // Two changes of the lower edge, or of the splices, are not put together.
    assertThat(names)
        .filteredOn(name -> name.contains(" + "))
        .allSatisfy(name -> assertThat(name.split("splice more", -1).length).isLessThan(3))
        .noneMatch(name -> name.contains("Lower edge"));
  }
}

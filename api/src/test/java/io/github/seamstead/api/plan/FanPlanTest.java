package io.github.seamstead.api.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.api.book.BookWriter;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.api.chapter.cover.CutShape;
import io.github.seamstead.api.chapter.joining.JoiningPart;
import io.github.seamstead.api.job.Diary;
import io.github.seamstead.api.job.DiaryReader;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.results.ResultsJson;
import io.github.seamstead.assembly.fixings.SeamKind;
import io.github.seamstead.geometry.pattern.Fold;
import io.github.seamstead.geometry.pattern.Panel;
import io.github.seamstead.geometry.pattern.PatternPiece;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Neighbouring faces that stay in one piece where a sheet takes them. */
class FanPlanTest {

  private static final String SIX_BY_EIGHT =
      "{\"id\": \"tarp\", \"length\": \"8 m\", \"width\": \"6 m\"}";
  private static final String SMALLER =
      "{\"id\": \"tarp\", \"length\": \"5.6 m\", \"width\": \"4.6 m\", \"count\": 2}";

  private static String job(String sheet, String hem, String more) {
    return """
    {"seamstead": 1,
     "site": {"name": "market roof", "crew": {"people": 2}},
     "frame": {"sides": 6, "measures": {"baseSide": "2 m", "height": "2.5 m"}},
     "cover": {"fabric": {"massPerArea": "250 g/m2"}, "seam": {"kind": "lap", "allowance": "50 mm"},
      "hem": %s, "fixings": {"method": "staples"},
      "door": {"id": "door", "face": 1, "outline": [{"x": 0.6, "y": 0.3}, {"x": 1.4, "y": 0.3},
       {"x": 1.2, "y": 1.5}, {"x": 0.8, "y": 1.5}]} %s},
     "stock": {"sheets": [%s]}}
    """
        .formatted(hem, more, sheet);
  }

  private static final String TURNED = "{\"kind\": \"turned\", \"allowance\": \"60 mm\"}";

  private static JobPlan plan(String text) {
    return JobPlanner.plan(JobReader.parse(text), PlanOptions.defaults());
  }

  @Test
  void oneBigTarpBecomesAFanWithOneSeam() {
    JobPlan plan = plan(job(SIX_BY_EIGHT, TURNED, ""));
    JobPlan apart = plan(job(SIX_BY_EIGHT, TURNED, ", \"keepTogether\": false"));
    CoverPart cover = plan.cover().orElseThrow();
    assertThat(plan.unmet()).isEmpty();
    assertThat(cover.names()).containsExactly("1 to 6");
    assertThat(apart.cover().orElseThrow().names()).hasSize(6);
    JoiningPart joining = plan.joining().orElseThrow();
    assertThat(joining.ring().joints()).hasSize(1);
    JoiningPart six = apart.joining().orElseThrow();
    // One hip of six is sewn; what is round the foot and the door stays.
    assertThat(joining.seams().length(SeamKind.RING))
        .isCloseTo(six.seams().length(SeamKind.RING) / 6, within(1e-9));
    assertThat(joining.seams().length(SeamKind.HEM))
        .isCloseTo(six.seams().length(SeamKind.HEM), within(1e-9));
    assertThat(joining.seams().length(SeamKind.PATCH))
        .isCloseTo(six.seams().length(SeamKind.PATCH), within(1e-9));
    assertThat(joining.order().orElseThrow().steps()).hasSize(1);
    assertThat(cover.clothArea()).isLessThan(apart.cover().orElseThrow().clothArea());
    assertThat(fixings(plan)).isLessThan(fixings(apart));
    assertThat(joining.order().orElseThrow().cost().workTime())
        .isLessThan(six.order().orElseThrow().cost().workTime());
    // The door is where it is in its own face: one hole, with its patch and flap beside.
    Panel fan = cover.panels().get(0);
    assertThat(fan.parts().get(0).holes()).hasSize(1);
    assertThat(fan.parts().get(0).holes().get(0).finished().area()).isCloseTo(0.72, within(1e-9));
    assertThat(fan.extras()).hasSize(2);
    assertThat(ResultsJson.text(plan)).contains("\"faces\": 6");
  }

  @Test
  void hipsWithinAFanAreDrawnNamedAndMeasured(@TempDir Path folder) throws IOException {
    JobPlan plan = plan(job(SMALLER, TURNED, ""));
    CoverPart cover = plan.cover().orElseThrow();
    int folds = 0;
    for (CutShape shape : cover.cuts()) {
      PatternPiece pattern = shape.pattern();
      for (Fold fold : pattern.folds()) {
        folds++;
        // The faces of a regular frame share their hips, whichever way the fan lies.
        assertThat(fold.length()).isCloseTo(cover.face(1).edgeLength(1), within(1e-9));
        assertThat(pattern.stitch().vertices()).contains(fold.lower(), fold.upper());
        assertThat(pattern.turnedOver().folds().get(fold.ordinal() - 1).length())
            .isCloseTo(fold.length(), within(1e-12));
      }
    }
    assertThat(folds).isPositive();
    int within =
        cover.panels().stream()
            .mapToInt(panel -> panel.parts().get(0).folds().size() - (panel.faces() - 1))
            .sum();
    assertThat(within).isZero();
    BookWriter.write(plan, folder);
    String last =
        "hip " + (cover.panels().get(0).faces() - 1) + "|" + cover.panels().get(0).faces();
    assertThat(Files.readString(folder.resolve("book.html")))
        .contains("Hips within the piece: mark, do not cut", last);
    try (Stream<Path> drawings = Files.list(folder.resolve("drawings"))) {
      List<Path> named = drawings.filter(file -> reads(file, last)).toList();
      assertThat(named)
          .extracting(file -> file.getFileName().toString())
          .anyMatch(name -> name.startsWith("card-"))
          .anyMatch(name -> name.startsWith("cut-"))
          .anyMatch(name -> name.startsWith("piece-"));
    }
    assertThat(ResultsJson.text(plan)).contains("\"footToTop_m\"");
  }

  private static boolean reads(Path file, String text) {
    try {
      return Files.readString(file).contains(text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Diary diary(String text) {
    return DiaryReader.parse(text.getBytes(StandardCharsets.UTF_8));
  }

  private static long fixings(JobPlan plan) {
    return plan.fixings().orElseThrow().fixings().total();
  }

  @Test
  void smallerSheetsTakeFansOfSomeFaces() {
    CoverPart cover = plan(job(SMALLER, TURNED, "")).cover().orElseThrow();
    assertThat(cover.names()).hasSizeBetween(2, 4);
    assertThat(cover.panels().stream().mapToInt(Panel::faces).sum()).isEqualTo(6);
  }

  /** A lower edge that is the band of a sheet is straight: a fan's is not. */
  @Test
  void facesThatKeepABandStayApart() {
    String banded = SIX_BY_EIGHT.replace("}", ", \"reinforced\": [\"bottom\", \"top\"]}");
    CoverPart cover = plan(job(banded, "{\"kind\": \"reinforced\"}", "")).cover().orElseThrow();
    assertThat(cover.names()).hasSize(6);
  }

  @Test
  void whatIsCutInOnePieceStaysInOnePiece() {
    String cut =
        """
        {"seamstead": 1, "diary": [
         {"date": "2031-05-05", "cut": {"pieces": ["1 to 6"]}}]}
        """;
    JobPlan then =
        JobPlanner.plan(
            JobReader.parse(job(SIX_BY_EIGHT, TURNED, "")), diary(cut), PlanOptions.defaults());
    assertThat(then.cover().orElseThrow().names()).containsExactly("1 to 6");
    assertThat(then.cover().orElseThrow().misfits()).isEmpty();
    JobPlan joined =
        JobPlanner.plan(
            JobReader.parse(job(SIX_BY_EIGHT, TURNED, "")),
            diary(
                cut.replace(
                    "]}}",
                    "]}}, {\"date\": \"2031-05-06\", \"joined\": {\"edges\": [\"1 to 6R\","
                        + " \"1to6L\"]}}")),
            PlanOptions.defaults());
    assertThat(joined.joining().orElseThrow().log().orElseThrow().open()).isEmpty();
  }

  @Test
  void aSpoiledFanIsCutInOnePieceAgain() {
    JobPlan then =
        JobPlanner.plan(
            JobReader.parse(job(SIX_BY_EIGHT.replace("}", ", \"count\": 2}"), TURNED, "")),
            diary(
                """
                {"seamstead": 1, "diary": [
                 {"date": "2031-05-05", "cut": {"pieces": ["1 to 6"]}},
                 {"date": "2031-05-06", "spoiled": {"pieces": ["1 to 6"]}}]}
                """),
            PlanOptions.defaults());
    assertThat(then.cover().orElseThrow().names()).containsExactly("1 to 6");
    assertThat(then.unmet()).isEmpty();
    assertThat(then.layout().orElseThrow().result().used()).hasSize(2);
  }
}

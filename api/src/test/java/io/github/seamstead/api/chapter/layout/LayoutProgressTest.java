package io.github.seamstead.api.chapter.layout;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlanner;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is heard of a layout that is short of cloth: each change that is tried. */
class LayoutProgressTest {

  private static final String TEXT =
      """
      {"seamstead": 1,
       "frame": {"sides": 4, "measures": {"baseSide": "1 m", "height": "1 m"}},
       "stock": {"sheets": [{"id": "s", "length": "1.4 m", "width": "1.3 m"}],
         "edgeMargin": "10 mm"},
       "cover": {"fabric": {"name": "x", "massPerArea": "500 g/m2", "thickness": "0.5 mm"},
         "seam": {"kind": "fin", "allowance": "20 mm"}, "hem": {"kind": "raw"},
         "keepTogether": false}}
      """;

  private record Heard(double ratio, String message) {}

  @Test
  void whatIsHeard() {
    List<Heard> heard = Collections.synchronizedList(new ArrayList<>());
    PlanOptions usual = PlanOptions.defaults();
    PlanOptions asked =
        new PlanOptions(
            usual.effort(),
            usual.seed(),
            false,
            EnumSet.of(Chapter.LAYOUT),
            usual.timeLimit(),
            (ratio, message) -> heard.add(new Heard(ratio, message)),
            usual.cancellation());
    JobPlanner.plan(JobReader.parse(TEXT), asked);
    assertThat(heard).extracting(Heard::ratio).allMatch(ratio -> ratio >= 0 && ratio <= 1);
    assertThat(heard).extracting(Heard::ratio).isSorted();
    List<String> savings =
        heard.stream()
            .map(Heard::message)
            .filter(message -> message.startsWith("where to save cloth: "))
            .toList();
    assertThat(savings)
        .containsExactly(
            "where to save cloth: Seam allowance a quarter smaller",
            "where to save cloth: A splice more in panel 2",
            "where to save cloth: A splice more in panels 2–4",
            "where to save cloth: Neighbouring faces in one piece where a sheet takes them",
            "where to save cloth: A tenth narrower",
            "where to save cloth: A tenth lower");
  }
}

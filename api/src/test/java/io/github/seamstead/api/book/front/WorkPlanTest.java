package io.github.seamstead.api.book.front;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.chapter.drying.DryingPart;
import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.api.testing.DemoJobs;
import io.github.seamstead.assembly.fixings.SeamKind;
import io.github.seamstead.materials.floor.FloorStep;
import io.github.seamstead.shared.quantity.UnitSystem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The days: their order, their steps, their place on the calendar. */
class WorkPlanTest {

  private static final int LONGEST_WARNING = 25;

  @ParameterizedTest
  @ValueSource(strings = {"seed-loft", "hill-hide", "class-model", "clay-bank"})
  void aDayIsOneThatACrewCanWorkBy(String job) {
    List<Day> days = WorkPlan.of(Sheets.of(job)).days();
    assertThat(days).isNotEmpty();
    for (Day day : days) {
      assertThat(day.steps()).as(day.title()).hasSizeBetween(2, Day.MOST_STEPS);
      assertThat(day.pause()).as(day.title()).hasSizeLessThan(10);
      assertThat(day.startIf()).as(day.title()).isNotBlank();
      assertThat(day.tools()).as(day.title()).isNotBlank();
      assertThat(day.material()).as(day.title()).isNotBlank();
      assertThat(day.home()).as(day.title()).isNotEmpty();
      assertThat(day.stops()).as(day.title()).isNotBlank();
      assertThat(day.people()).as(day.title()).isPositive();
      for (Day.Step step : day.steps()) {
        assertThat(step.warning().split("\\s+")).hasSizeLessThanOrEqualTo(LONGEST_WARNING);
      }
    }
  }

  @Test
  void theLoftIsWorkedInTheOrderOfItsNeeds() {
    List<String> titles =
        WorkPlan.of(Sheets.of("seed-loft")).days().stream().map(Day::title).toList();
    assertThat(titles)
        .containsExactly(
            "Soil and tiles first",
            "Frame and tape",
            "Mark out and cut",
            "Splices, hems and patches",
            "Join the ring",
            "Turn and raise",
            "Peg down, the same day",
            "Cap, skirt and lining",
            "Dig and level",
            "Gravel and sheet",
            "Lay the dry pack",
            "Lay the levelling coat",
            "Oil and finish");
  }

  @Test
  void everySeamOfTheOrderStandsInADay() {
    Desk desk = Sheets.of("seed-loft");
    String join = Sheets.text(desk, "Day 5: Join the ring");
    desk.plan()
        .joining()
        .orElseThrow()
        .order()
        .orElseThrow()
        .steps()
        .forEach(s -> assertThat(join).contains(s.joint().mark().text()));
  }

  @Test
  void warningsStandBeforeWhatCanKill() {
    Desk desk = Sheets.of("seed-loft");
    String raise = Sheets.text(desk, "Day 6: Turn and raise");
    assertThat(raise.indexOf("WARNING")).isPositive().isLessThan(raise.indexOf("Haul evenly"));
    assertThat(raise.indexOf("Pause: before anything is raised"))
        .isLessThan(raise.indexOf("WARNING"));
    assertThat(raise).contains("4.2\u00a0m/s").contains("5.7\u00a0m/s").contains("6.11\u00a0m");
  }

  @Test
  void waitingFollowsTheForecast() {
    Desk desk = Sheets.of("seed-loft");
    WorkPlan work = WorkPlan.of(desk);
    // The rammed pack takes its coat at once; the coat is oiled when it is dry.
    assertThat(work.days().stream().filter(d -> d.waiting().isPresent()).map(Day::title))
        .containsExactly("Lay the levelling coat");
    double waits =
        desk.plan().drying().stream()
            .filter(d -> d.layer().name().equals("levelling coat"))
            .map(DryingPart::forecast)
            .flatMap(f -> f.milestones().stream())
            .filter(m -> m.name().equals("dry to coat"))
            .mapToDouble(m -> m.likely().orElse(m.horizon()))
            .sum();
    assertThat(waits).isPositive();
    assertThat(work.likely()).isCloseTo(work.workingDays() * 7 / 5 + waits, within(1e-9));
    assertThat(work.soonest()).isLessThan(work.likely());
    assertThat(work.latest()).isGreaterThan(work.likely());
    List<WorkPlan.Stretch> calendar = work.calendar();
    for (int i = 1; i < calendar.size(); i++) {
      assertThat(calendar.get(i).from()).isCloseTo(calendar.get(i - 1).dry(), within(1e-9));
    }
    String card = Sheets.text(desk, WaitingCard.TITLE);
    assertThat(card).contains("levelling coat").doesNotContain("dry pack");
  }

  @Test
  void aModelHasNoWindNoPegsNoLifting() {
    Desk desk = Sheets.of("class-model");
    for (Sheet sheet : desk.sheets()) {
      assertThat(Sheets.text(sheet).toLowerCase(java.util.Locale.ROOT))
          .as(sheet.title())
          .doesNotContain("gust")
          .doesNotContain(" hoist")
          .doesNotContain("pegs round")
          .doesNotContain("kills");
    }
  }

  @Test
  void theDateOfJoiningGivesEveryDayItsDate() throws IOException {
    String text =
        Files.readString(DemoJobs.FOLDER.resolve("seed-loft.json"))
            .replace("\"units\": \"metric\"", "\"units\": \"metric\", \"start\": \"2027-05-03\"");
    WorkPlan work =
        WorkPlan.of(
            Front.sheets(
                JobPlanner.plan(
                    JobReader.parse(text.getBytes(StandardCharsets.UTF_8)), PlanOptions.defaults()),
                new Words(UnitSystem.METRIC),
                number -> Optional.empty()));
    // The third of May 2027 is a Monday: what comes before ends on the Friday, the floor follows.
    assertThat(work.dateText(3)).contains("Fri 30 Apr 2027");
    assertThat(work.dateText(4)).contains("Mon 3 May 2027");
    // Raising and pegging are two sheets of one day.
    assertThat(work.dateText(5)).contains("Tue 4 May 2027");
    assertThat(work.dateText(6)).contains("Tue 4 May 2027");
    assertThat(work.dateText(7)).contains("Wed 5 May 2027");
    assertThat(work.dateText(10)).contains("Mon 10 May 2027");
    int last = work.days().size() - 1;
    double wait = work.days().get(last - 1).waiting().orElseThrow().likely().orElseThrow();
    assertThat(work.date(last).orElseThrow())
        .isAfterOrEqualTo(work.date(last - 1).orElseThrow().plusDays((long) wait));
    assertThat(WorkPlan.of(Sheets.of("seed-loft")).date(0)).isEmpty();
  }

  @Test
  void thePartsOwnNumbersStandOnTheDays() {
    Desk desk = Sheets.of("seed-loft");
    String prepare = Sheets.text(desk, "Day 4: Splices, hems and patches");
    SeamWork seams = new SeamWork(desk);
    assertThat(prepare)
        .contains(seams.amount(SeamKind.SPLICE))
        .contains(SeamKind.SPLICE.lap())
        .contains(seams.amount(SeamKind.PATCH))
        .contains(seams.amount(SeamKind.SKIRT_ENDS));
    String raise = Sheets.text(desk, "Day 6: Turn and raise");
    var h = desk.plan().handling().orElseThrow();
    assertThat(raise)
        .contains(desk.sizes().pull(h.hold() / h.pull().ropes()))
        .contains(desk.sizes().pull(RaisingDays.hauled(h)));
    // A pull of 428 N hangs like 428 / 9.80665 = 43.6 kg.
    assertThat(desk.sizes().pull(428)).isEqualTo("428\u00a0N (44\u00a0kgf)");
    String peg = Sheets.text(desk, "Day 6: Peg down, the same day");
    assertThat(peg).contains("36 in all").doesNotContain("Set the cap");
    String upper = Sheets.text(desk, "Day 7: Cap, skirt and lining");
    assertThat(upper).contains(seams.amount(SeamKind.CAP)).contains(seams.amount(SeamKind.SKIRT));
    for (FloorStep step : desk.plan().floor().orElseThrow().steps()) {
      if (step.title().startsWith("Ram the dry pack")) {
        assertThat(Sheets.text(desk, "Day 10: Lay the dry pack"))
            .contains(step.check().split("; ", -1)[0])
            .contains(step.hands());
      }
    }
  }
}

package io.github.seamstead.api.compare;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.Alternative;
import io.github.seamstead.api.job.JobChange;
import io.github.seamstead.api.job.JobDraft;
import io.github.seamstead.api.job.JobValue;
import io.github.seamstead.api.job.VariantsDocument;
import io.github.seamstead.api.job.VariantsReader;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.api.testing.DemoJobs;
import io.github.seamstead.shared.work.Cancellation;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class VariantPlansTest {

  private static final JobDraft JOB = JobDraft.read(DemoJobs.FOLDER.resolve("seed-loft.json"));

  private static Alternative height(int centimetres) {
    return new Alternative(
        centimetres + " cm",
        List.of(new JobChange("frame.measures.height", JobValue.text(centimetres + " cm"))));
  }

  private static List<Alternative> heights(int count) {
    return IntStream.range(0, count).mapToObj(i -> height(330 + i)).toList();
  }

  @Test
  void anyExecutorGivesTheSameRowsInTheSameOrder() {
    CompareOptions quick = CompareOptions.quickly();
    List<VariantRow> alone = VariantPlans.rows(JOB, heights(5), quick, Runnable::run, 1).toList();
    ExecutorService three = Executors.newFixedThreadPool(3);
    try {
      assertThat(VariantPlans.rows(JOB, heights(5), quick, three, 6).toList()).isEqualTo(alone);
      assertThat(VariantPlans.rows(JOB, heights(5), quick, ForkJoinPool.commonPool(), 3).toList())
          .isEqualTo(alone);
    } finally {
      three.shutdownNow();
    }
    assertThat(alone.stream().map(VariantRow::number)).containsExactly(0, 1, 2, 3, 4, 5);
  }

  @Test
  void aRowIsWhatThePlanOfThatDocumentSays() {
    VariantRow row =
        VariantPlans.rows(JOB, List.of(height(310)), CompareOptions.whole(), Runnable::run, 1)
            .skip(1)
            .findFirst()
            .orElseThrow();
    var plan = JobPlanner.plan(JOB.with(height(310).set()).job(), PlanOptions.defaults());
    assertThat(row.values()).isEqualTo(Measures.of(plan));
    assertThat(row.isFeasible()).isTrue();
    assertThat(row.value(Measure.CLOTH_AREA)).contains(plan.cover().orElseThrow().clothArea());
    assertThat(row.value(Measure.PEG_PULL))
        .contains(plan.anchoring().orElseThrow().screen().pegPull());
  }

  @Test
  void plansAreMadeAsRowsAreReadAndNeverMoreThanAllowedAhead() {
    AtomicInteger begun = new AtomicInteger();
    Stream<VariantRow> rows =
        VariantPlans.rows(
            JOB,
            heights(40),
            CompareOptions.quickly(),
            work -> {
              begun.incrementAndGet();
              work.run();
            },
            2);
    assertThat(begun).hasValue(0);
    Iterator<VariantRow> iterator = rows.iterator();
    iterator.next();
    iterator.next();
    assertThat(begun.get()).isLessThanOrEqualTo(4);
  }

  @Test
  void theSwitchEndsTheStreamWithWholeRows() {
    Cancellation cancellation = new Cancellation();
    CompareOptions options =
        new CompareOptions(PlanOptions.defaults().stoppedBy(cancellation), true);
    List<VariantRow> read = new ArrayList<>();
    VariantPlans.rows(JOB, heights(40), options, Runnable::run, 2)
        .forEach(
            row -> {
              read.add(row);
              if (row.number() == 2) {
                cancellation.cancel();
              }
            });
    assertThat(read.stream().map(VariantRow::number)).containsExactly(0, 1, 2);
    assertThat(read).allSatisfy(row -> assertThat(row.isFeasible()).isTrue());
  }

  @Test
  void aVariantThatCannotBeMetSaysWhyAndTheRestGoesOn() {
    List<Alternative> variants =
        List.of(
            new Alternative(
                "door off its face",
                List.of(new JobChange("cover.door.face", JobValue.number(13)))),
            new Alternative(
                "narrow faces", List.of(new JobChange("frame.sides", JobValue.number(30)))),
            height(345));
    List<VariantRow> rows =
        VariantPlans.rows(JOB, variants, CompareOptions.quickly(), Runnable::run, 1).toList();
    assertThat(rows).hasSize(4);
    assertThat(rows.get(1).whyNot()).anySatisfy(why -> assertThat(why).contains("face 13"));
    assertThat(rows.get(2).isFeasible()).isFalse();
    assertThat(rows.get(3).isFeasible()).isTrue();
  }

  /** Counts what is dear instead of the time, which other work on the machine would spoil. */
  @Test
  void theWorkGrowsInStepWithTheVariants() {
    assertThat(tasks(6)).isEqualTo(7);
    assertThat(tasks(12)).isEqualTo(13);
    assertThat(tasks(60)).isEqualTo(61);
  }

  private static int tasks(int count) {
    AtomicInteger begun = new AtomicInteger();
    CompareOptions quick = CompareOptions.quickly();
    VariantPlans.rows(
            JOB,
            heights(count),
            quick,
            work -> {
              begun.incrementAndGet();
              work.run();
            },
            1)
        .forEach(row -> assertThat(row.isFeasible()).isTrue());
    return begun.get();
  }

  @Test
  void theDemoComparesSixVariantsAndItsLevers() {
    VariantsDocument document =
        VariantsReader.read(DemoJobs.FOLDER.resolve("variants/seed-loft.json"), JOB);
    Comparison comparison =
        Comparison.of(JOB, document, CompareOptions.quickly(), ParetoFront.USUAL, Runnable::run, 1);
    assertThat(comparison.rows()).hasSize(7);
    assertThat(comparison.front().numbers()).isNotEmpty();
    assertThat(comparison.levers().stream().map(row -> row.lever().name()))
        .contains("No skirt", "Dry pack thinner, 40 mm", "A second barrow, loaded as the first");
    List<Double> saved =
        comparison.levers().stream()
            .filter(row -> row.after().isFeasible())
            .map(row -> row.saved(Measure.MONEY).orElseThrow())
            .toList();
    assertThat(saved).isSortedAccordingTo(Collections.reverseOrder());
    LeverRow skirt = lever(comparison, "No skirt");
    assertThat(skirt.elsewhere()).contains(Measure.CLOTH_AREA, Measure.SEAM_LENGTH);
    assertThat(skirt.saved(Measure.CLOTH_AREA).orElseThrow()).isPositive();
    assertThat(lever(comparison, "A second barrow, loaded as the first").elsewhere())
        .containsExactly(Measure.BARROW_TRIPS);
    String csv = CompareTable.csv(comparison);
    assertThat(csv.lines()).hasSize(8);
    assertThat(CompareJson.text(comparison)).contains("\"objectives\"").contains("clothArea_m2");
    ComparePage.Written page = ComparePage.of(comparison);
    assertThat(page.drawings()).isNotEmpty();
    assertThat(page.html()).contains("Variants that none beats").contains(CompareOptions.LEFT_OUT);
  }

  private static LeverRow lever(Comparison comparison, String name) {
    return comparison.levers().stream()
        .filter(row -> row.lever().name().equals(name))
        .findFirst()
        .orElseThrow();
  }
}

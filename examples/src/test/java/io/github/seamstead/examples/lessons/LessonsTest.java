package io.github.seamstead.examples.lessons;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.testing.DerivationChecks;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class LessonsTest {

  private static final List<Lesson> LESSONS = Lessons.all();

  /** The answers by textbook formulas that share no code with the library, and a relative limit. */
  private record Textbook(double limit, double first, double second, double third) {}

  private static final double EXACT = 1e-12;
  private static final double GRAVITY = 9.81;

  private static final List<Textbook> TEXTBOOK =
      List.of(
          // Hexagon 3/2 sqrt(3) a2; corner a/(2 sin); side 2 r tan.
          new Textbook(
              EXACT,
              1.5 * Math.sqrt(3) * 4,
              1.9 / (2 * Math.sin(Math.PI / 8)),
              6 * Math.tan(Math.PI / 10)),
          // Pythagoras: the corner of a hexagon is one side away from its centre.
          new Textbook(
              1e-10,
              Math.sqrt(2.5 * 2.5 - 2 * 2),
              Math.sqrt(4 + square(1.9 / (2 * Math.sin(Math.PI / 8)))),
              Math.sqrt(3.1 * 3.1 - 0.95 * 0.95)),
          // Isosceles face: sin(half the tip) = half side / hip; cone: 360 R / hip.
          new Textbook(
              EXACT,
              2 * Math.toDegrees(Math.asin(1.0 / 3)),
              12 * Math.toDegrees(Math.asin(1.0 / 3)),
              360 * 2.0 / 3),
          // Flat: half the outer angle. Leaning at 45 degrees: sin(18)/sqrt(2). Box: 45 degrees.
          new Textbook(
              EXACT, 30, Math.toDegrees(Math.asin((Math.sqrt(5) - 1) / 4 / Math.sqrt(2))), 45),
          // Two poles of 2.9 m fit a bar; of 3 m with a cut between them only one.
          new Textbook(EXACT, 5, 100 * (1 - 10 * 2.9 / (5 * 6.0)), 10),
          // alpha L dT; w2 l3 / (24 P2) off; marked times true over marked.
          new Textbook(
              EXACT, 30 + 11.6e-6 * 30 * 15, 10 - 0.04 * 1000 / (24 * 2500), 12 * 30.012 / 30),
          // Equal allowances a: a / sin(half the corner); square corner: Pythagoras.
          new Textbook(
              1e-9, 30 / Math.sin(Math.toRadians(60)), 50, 20 / Math.sin(Math.toRadians(37.5))),
          // Eight in three full rounds: 3 x 8. Six: 2 in pairs, then 4 + 2. A ring adds the whole.
          new Textbook(EXACT, 24, 16, 44),
          // Stokes with the handbook's viscosity 1.0016 and 1.3059 mPa s (CRC Handbook).
          new Textbook(
              0.003,
              0.1 * 18 * 1.0016e-3 / ((2650 - 998.2) * GRAVITY * 4e-12) / 3600,
              0.1 * 18 * 1.3059e-3 / ((2650 - 999.7) * GRAVITY * 4e-10) / 60,
              1000 * Math.sqrt(18 * 1.0016e-3 * 0.1 / ((2650 - 998.2) * GRAVITY * 60))),
          // Dilution: 0.30 / 0.15 - 1; 125/100 - 1; 100 kg dry with 8 % more water.
          new Textbook(1e-9, 1, 25, 8),
          // Area of eight triangles a2/(4 tan) x 50 mm x 1900; x 1900/1300; 650/1365 m3 a trip.
          new Textbook(
              1e-9,
              8 * 1.9 * 1.9 / (4 * Math.tan(Math.PI / 8)) * 0.05 * 1900,
              30 * 0.05 * 1900 / 1300,
              Math.ceil(2.2 * 1365 / 650)),
          // 0.6 x 1 % - 0.1 %; gap over mould; 2 L on each square metre and 15 %.
          new Textbook(1e-9, 5, 2, 46));

  @Test
  void thereAreTwelveWithTitlesOfTheirOwn() {
    assertThat(LESSONS).hasSize(12).hasSameSizeAs(TEXTBOOK);
    assertThat(LESSONS.stream().map(Lesson::title).distinct()).hasSize(12);
  }

  @TestFactory
  List<DynamicTest> exercisesAgreeWithTheTextbook() {
    return LESSONS.stream()
        .map(
            lesson ->
                DynamicTest.dynamicTest(
                    lesson.title(),
                    () -> {
                      Textbook book = TEXTBOOK.get(LESSONS.indexOf(lesson));
                      double[] expected = {book.first(), book.second(), book.third()};
                      List<Exercise> exercises = lesson.exercises();
                      assertThat(exercises).hasSize(3);
                      for (int i = 0; i < 3; i++) {
                        assertThat(exercises.get(i).answer())
                            .as(exercises.get(i).question())
                            .isCloseTo(expected[i], within(book.limit() * Math.abs(expected[i])));
                        assertThat(exercises.get(i).shownAnswer()).doesNotContain("NaN");
                      }
                    }))
        .toList();
  }

  @TestFactory
  List<DynamicTest> everyWorkedAnswerFollows() {
    return LESSONS.stream()
        .map(
            lesson ->
                DynamicTest.dynamicTest(
                    lesson.title(), () -> DerivationChecks.assertFollows(lesson.worked())))
        .toList();
  }

  @Test
  void theAnswersSayWhatTheSumsGive() {
    assertThat(LESSONS.get(0).answer()).contains("17.43 m²");
    assertThat(LESSONS.get(1).answer()).contains("1.857 m");
    assertThat(LESSONS.get(5).answer()).contains("B2-B4").contains("0.099 m");
    assertThat(LESSONS.get(7).answer()).startsWith("Yes: 34 kg").contains("54 kg");
    assertThat(LESSONS.get(9).answer()).startsWith("1.8 parts");
  }

  @Test
  void pairsInPairsHandleThirtySix() {
    List<Double> groups = new ArrayList<>(Collections.nCopies(10, 1.0));
    double handled = 0;
    while (groups.size() > 1) {
      List<Double> next = new ArrayList<>();
      for (int i = 0; i + 1 < groups.size(); i += 2) {
        next.add(groups.get(i) + groups.get(i + 1));
        handled += groups.get(i) + groups.get(i + 1);
      }
      if (groups.size() % 2 == 1) {
        next.add(groups.get(groups.size() - 1));
      }
      groups = next;
    }
    assertThat(handled).isEqualTo(36);
    assertThat(LESSONS.get(7).question()).contains("36 kg");
  }

  @Test
  void thePageLoadsNothing() {
    String html = LessonPage.html(LESSONS);
    assertThat(html).doesNotContain("NaN").doesNotContain("<script").doesNotContain("@import");
    assertThat(Pattern.compile("(?:src|href)=\"(?!#)").matcher(html).find()).isFalse();
    assertThat(html).doesNotContainPattern("url\\((?!#)");
    for (Lesson lesson : LESSONS) {
      assertThat(html).contains(lesson.picture().title());
    }
  }

  @Test
  void aLessonReadsAsText() {
    assertThat(LESSONS.get(0).text()).contains("Answer: 10.39 m²").contains("1. A six-sided");
  }

  private static double square(double x) {
    return x * x;
  }
}

package io.github.seamstead.examples.lessons;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.github.seamstead.api.page.Markup;
import io.github.seamstead.geometry.bars.BarCutting;
import io.github.seamstead.geometry.bars.BarPiece;
import io.github.seamstead.geometry.bars.BarStock;
import io.github.seamstead.geometry.frame.FrameSolution;
import io.github.seamstead.geometry.frame.FrameSolver;
import io.github.seamstead.geometry.frame.PyramidMeasure;
import io.github.seamstead.geometry.frame.RegularPyramid;
import io.github.seamstead.materials.soil.Stokes;
import io.github.seamstead.shared.derivation.Step;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.testing.DerivationChecks;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.objecthunter.exp4j.ExpressionBuilder;
import net.objecthunter.exp4j.function.Function;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class LessonsTest {

  private static final List<Lesson> LESSONS = Lessons.all();
  private static final int SEEDS = 40;
  private static final Pattern NUMBER = Pattern.compile("(?<![A-Za-z\\d])\\d+(?:\\.\\d+)?");

  /** Every task that a sheet may hold: each kind, with the shelter's numbers and from seeds. */
  private static List<DynamicTest> ofEveryTask(Consumer<Task> check) {
    List<DynamicTest> tests = new ArrayList<>();
    for (Lesson lesson : LESSONS) {
      for (int kind = 0; kind < lesson.problems().size(); kind++) {
        Problem problem = lesson.problems().get(kind);
        tests.add(
            DynamicTest.dynamicTest(
                lesson.title() + ", kind " + (kind + 1),
                () -> {
                  check.accept(problem.ofShelter());
                  for (long seed = 0; seed < SEEDS; seed++) {
                    check.accept(problem.ofSeed(seed));
                  }
                }));
      }
    }
    return tests;
  }

  /** Only what stands in the question, read back from its text, may be used. */
  @TestFactory
  List<DynamicTest> theQuestionAloneIsEnough() {
    return ofEveryTask(
        task -> {
          Set<String> printed = new HashSet<>();
          Matcher numbers = NUMBER.matcher(task.question());
          while (numbers.find()) {
            printed.add(numbers.group());
          }
          Map<String, Double> known = new HashMap<>();
          for (Given given : task.givens()) {
            String number = Numbers.fixed(given.printed(), given.decimals());
            assertThat(printed).as("%s in: %s", given, task.question()).contains(number);
            double read = Double.parseDouble(number);
            known.put(given.symbol(), given.unit().equals("°") ? Math.toRadians(read) : read);
          }
          for (Step step : task.solution().steps()) {
            String formula = step.formula().orElseThrow().text();
            assertThat(known.keySet()).containsAll(step.formula().orElseThrow().symbols());
            double value = evaluated(formula, known);
            assertThat(step.value())
                .as("%s = %s in: %s", step.symbol(), formula, task.question())
                .isCloseTo(value, within(1e-9 * Math.max(1, Math.abs(value))));
            known.put(step.symbol(), value);
          }
          assertThat(task.question()).doesNotContain("{");
        });
  }

  @TestFactory
  List<DynamicTest> stepsFollow() {
    return ofEveryTask(task -> DerivationChecks.assertFollows(task.solution()));
  }

  @TestFactory
  List<DynamicTest> estimatesHoldTheAnswer() {
    return ofEveryTask(
        task -> {
          assertThat(task.answer()).as(task.question()).isBetween(task.low(), task.high());
          assertThat(task.estimate()).isNotBlank().doesNotContain("{");
        });
  }

  @TestFactory
  List<DynamicTest> noMistakeGivesTheAnswer() {
    return ofEveryTask(
        task -> {
          Map<String, Double> known = new HashMap<>();
          task.givens().forEach(given -> known.put(given.symbol(), given.value()));
          task.solution().steps().forEach(step -> known.put(step.symbol(), step.value()));
          for (Slip slip : task.slips()) {
            double wrong = evaluated(slip.formula(), known);
            assertThat(slip.wrong()).isCloseTo(wrong, within(1e-9 * Math.max(1, Math.abs(wrong))));
            assertThat(Math.abs(wrong - task.answer()))
                .as("%s in: %s", slip.mistake(), task.question())
                .isGreaterThan(0.01 * Math.abs(task.answer()));
          }
        });
  }

  @TestFactory
  List<DynamicTest> everyLessonHasItsParts() {
    return LESSONS.stream()
        .map(
            lesson ->
                DynamicTest.dynamicTest(
                    lesson.title(),
                    () -> {
                      assertThat(lesson.aim()).isNotBlank();
                      assertThat(lesson.needs()).isNotEmpty();
                      assertThat(lesson.materials()).isNotEmpty();
                      assertThat(lesson.proof()).hasSizeBetween(3, 5);
                      assertThat(lesson.whys()).hasSize(2);
                      assertThat(lesson.problems()).hasSizeGreaterThanOrEqualTo(2);
                      assertThat(lesson.example().slips()).isNotEmpty();
                      assertThat(lesson.example().fill(lesson.scene())).doesNotContain("{");
                      for (String text : List.of(lesson.build(), lesson.check(), lesson.onSite())) {
                        assertThat(text).isNotBlank().doesNotContain("{").doesNotContain("NaN");
                      }
                    }))
        .toList();
  }

  /** The figure carries the very numbers of the worked example. */
  @TestFactory
  List<DynamicTest> figuresCarryTheNumbersOfTheExample() {
    return LESSONS.stream()
        .map(
            lesson ->
                DynamicTest.dynamicTest(
                    lesson.title(),
                    () -> {
                      Task task = lesson.example();
                      String drawn = lesson.figure().body() + lesson.figure().description();
                      long shown =
                          task.givens().stream().filter(g -> drawn.contains(g.shown())).count();
                      assertThat(shown).isPositive();
                    }))
        .toList();
  }

  @Test
  void theShelterIsTenTimesTheClassModel() throws IOException {
    JsonNode frame =
        new ObjectMapper().readTree(Path.of("jobs", "class-model.json").toFile()).path("frame");
    assertThat(frame.path("sides").asInt()).isEqualTo(Shelter.SIDES);
    assertThat(frame.path("measures").path("baseSide").asText())
        .isEqualTo(Shelter.modelMillimetres(Shelter.SIDE) + " mm");
    assertThat(frame.path("measures").path("height").asText())
        .isEqualTo(Shelter.modelMillimetres(Shelter.HEIGHT) + " mm");
  }

  /** The two pyramids of the second lesson by the library's own solver. */
  @Test
  void twoPyramidsShareHipAndVolume() {
    Task task = LESSONS.get(1).problems().get(2).ofShelter();
    double hip = task.value("e");
    RegularPyramid low =
        FrameSolver.solve(6, Map.of(PyramidMeasure.HIP_EDGE, hip, PyramidMeasure.HEIGHT, 1.1))
            .single();
    List<RegularPyramid> both =
        FrameSolver.solve(
                6,
                Map.of(
                    PyramidMeasure.HIP_EDGE, hip, PyramidMeasure.VOLUME, low.measures().volume()))
            .candidates()
            .stream()
            .map(FrameSolution.Candidate::pyramid)
            .toList();
    assertThat(both).hasSize(2);
    assertThat(both.stream().mapToDouble(RegularPyramid::apexHeight).max().orElse(0))
        .isCloseTo(task.answer(), within(1e-6));
  }

  /** The jar with printed constants against the library with its own, at the example's water. */
  @Test
  void theJarAgreesWithTheLibrary() {
    Task task = LESSONS.get(8).example();
    double seconds = Stokes.settlingTime(task.value("h") / 1000, task.value("d") / 1000, 20, 2650);
    assertThat(task.answer() * 60).isCloseTo(seconds, within(1e-3 * seconds));
  }

  @Test
  void theLeastOfTenIsThirtyFour() {
    assertThat(LESSONS.get(7).example().answer()).isCloseTo(34, within(1e-9));
  }

  /** What lesson 14 says of the model's sticks, where the bound is out of reach. */
  @Test
  void theModelNeedsOneStickMoreThanItsBound() {
    Task bound = LESSONS.get(13).problems().get(1).ofShelter();
    assertThat(bound.answer()).isEqualTo(3);
    int sticks =
        BarCutting.plan(
                List.of(new BarPiece("pole", 0.363, 5), new BarPiece("ring", 0.232, 5)),
                List.of(BarStock.unlimited("stick", 1)),
                0.001)
            .barCount();
    assertThat(sticks).isEqualTo(4);
    assertThat(LESSONS.get(13).onSite()).contains("four sticks").contains("363").contains("232");
  }

  @Test
  void pupilsHaveNumbersOfTheirOwnAndTheSameKinds() {
    for (int lesson = 0; lesson < LESSONS.size(); lesson++) {
      LessonTasks first = LessonTasks.of(lesson, 1, 1);
      LessonTasks second = LessonTasks.of(lesson, 1, 2);
      assertThat(first.oneBlank().question()).isNotEqualTo(second.oneBlank().question());
      for (int i = 0; i < first.exercises().size(); i++) {
        List<String> symbols = symbols(first.exercises().get(i).task());
        assertThat(symbols).isEqualTo(symbols(second.exercises().get(i).task()));
      }
      assertThat(LessonTasks.of(lesson, 1, 1).oneBlank().question())
          .isEqualTo(first.oneBlank().question());
    }
  }

  @Test
  void answersStandInTheTeachersBookOnly() {
    Map<String, String> files = LessonFiles.of(3, 2, Paper.LETTER);
    assertThat(files).hasSize(LESSONS.size() + 1);
    String teacher = files.get("teacher.html");
    assertThat(teacher).contains("Usual wrong answers").contains("double lesson");
    for (int lesson = 0; lesson < LESSONS.size(); lesson++) {
      String sheets = files.get(Parts.file(lesson, "sheets"));
      assertThat(sheets).contains("size:letter").contains("Sheet 2").doesNotContain("NaN");
      String[] exercises = sheets.split("<h3>Exercises</h3>", -1);
      assertThat(exercises).hasSize(3);
      for (String below : List.of(exercises).subList(1, 3)) {
        String upToNextSheet = below.substring(0, below.indexOf("</section>"));
        assertThat(upToNextSheet).doesNotContainPattern("Answer: [\\d−-]");
      }
      for (int pupil = 1; pupil <= 2; pupil++) {
        for (LessonTasks.Exercise exercise : LessonTasks.of(lesson, 3, pupil).exercises()) {
          Task task = exercise.task();
          assertThat(teacher).contains(">" + task.shownAnswer() + "<");
          assertThat(sheets).contains(task.question().replace("\"", "&quot;"));
        }
      }
    }
  }

  @Test
  void figuresKeepTrailingZeros() {
    assertThat(Figures.significant(1.95, 4)).isEqualTo("1.950");
    assertThat(Figures.significant(9.9999, 3)).isEqualTo("10.0");
    assertThat(Figures.significant(1234.6, 3)).isEqualTo("1230");
    assertThat(Figures.result(Math.PI / 5, "rad", 4)).isEqualTo("36.00°");
    assertThat(Figures.quantity("5", "m")).isEqualTo("5\u00a0m");
  }

  private static List<String> symbols(Task task) {
    return task.solution().steps().stream().map(Step::symbol).toList();
  }

  private static double evaluated(String formula, Map<String, Double> numbers) {
    Map<String, Double> used = new HashMap<>(numbers);
    return new ExpressionBuilder(formula)
        .functions(
            new Function("min", 2) {
              @Override
              public double apply(double... x) {
                return Math.min(x[0], x[1]);
              }
            },
            new Function("max", 2) {
              @Override
              public double apply(double... x) {
                return Math.max(x[0], x[1]);
              }
            })
        .variables(used.keySet())
        .implicitMultiplication(false)
        .build()
        .setVariables(used)
        .evaluate();
  }

  /** No sign of a program's spelling is left in what a pupil reads. */
  @Test
  void symbolsStandBelowTheLine() {
    for (Lesson lesson : LESSONS) {
      Markup m = new Markup();
      Parts.givens(m, lesson.problems().get(0).ofShelter());
      Parts.figure(m, lesson, "");
      Parts.choices(m, lesson, 0);
      String read = m.toString().replaceAll("<(title|desc)[^>]*>[^<]*</\\1>|<[^>]*>", " ");
      assertThat(read).as(lesson.title()).doesNotContainPattern("\\p{L}_");
    }
  }
}

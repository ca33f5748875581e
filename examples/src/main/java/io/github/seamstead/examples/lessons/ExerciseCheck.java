package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.page.Markup;
import io.github.seamstead.api.page.Page;
import io.github.seamstead.shared.derivation.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An answer to an exercise of a lesson, checked.
 *
 * @param right whether it is the answer, within what rounding between may move it
 * @param wrongStep what went wrong, if the number tells
 * @param solution the worked sum, as an HTML document
 */
public record ExerciseCheck(boolean right, Optional<String> wrongStep, String solution) {

  /** Four figures kept between move the answer by less than this part of it. */
  private static final double ROUNDING = 0.005;

  /**
   * Lists the questions of a lesson.
   *
   * @param lesson its place in {@link Lessons#all()}, from 0
   * @param seed draws the numbers
   * @return the questions in their order
   */
  public static List<String> questions(int lesson, long seed) {
    List<String> questions = new ArrayList<>();
    LessonTasks.of(lesson, seed, 0)
        .exercises()
        .forEach(exercise -> questions.add(exercise.task().question()));
    return questions;
  }

  /**
   * Checks an answer.
   *
   * @param lesson its place in {@link Lessons#all()}, from 0
   * @param exercise the exercise's place, from 0
   * @param seed draws the numbers
   * @param given the answer as typed, angles in degrees; a unit behind is left aside
   * @param paper gives the look of the solution
   * @return the check
   */
  public static ExerciseCheck of(int lesson, int exercise, long seed, String given, Paper paper) {
    Task task = LessonTasks.of(lesson, seed, 0).exercises().get(exercise).task();
    Optional<Double> number = LiveLesson.number(given).map(n -> inSum(n, task.unit()));
    boolean right = number.isPresent() && answers(number.get(), task);
    Optional<String> wrong =
        right
            ? Optional.empty()
            : number.flatMap(n -> mistake(task, n)).or(() -> notRead(number.isPresent(), given));
    return new ExerciseCheck(right, wrong, solution(task, paper));
  }

  private static Optional<String> notRead(boolean read, String given) {
    return read
        ? Optional.empty()
        : Optional.of("\u201c" + given.strip() + "\u201d is no number, like 12.3.");
  }

  private static double inSum(double number, String unit) {
    return unit.equals("rad") ? Math.toRadians(number) : number;
  }

  /** Also a number rounded to the digits that are asked for answers. */
  private static boolean answers(double given, Task task) {
    double answer = inDegrees(task.answer(), task.unit());
    double digit =
        StrictMath.pow(10, Math.floor(StrictMath.log10(Math.abs(answer))) + 1 - task.digits());
    double off = Math.abs(inDegrees(given, task.unit()) - answer);
    return off <= digit / 2 * (1 + ROUNDING) || meets(given, task.answer());
  }

  private static double inDegrees(double number, String unit) {
    return unit.equals("rad") ? Math.toDegrees(number) : number;
  }

  private static boolean meets(double given, double expected) {
    return Math.abs(given - expected) <= ROUNDING * Math.abs(expected);
  }

  private static Optional<String> mistake(Task task, double given) {
    for (Slip slip : task.slips()) {
      if (meets(given, slip.wrong())) {
        return Optional.of(slip.mistake());
      }
    }
    List<Step> steps = task.solution().steps();
    for (Step step : steps.subList(0, steps.size() - 1)) {
      if (meets(given, step.value())) {
        return Optional.of("That is a step on the way: " + step.name() + ". Go on from there.");
      }
    }
    return Optional.empty();
  }

  private static String solution(Task task, Paper paper) {
    Markup body = new Markup();
    Parts.question(body, task);
    Parts.sum(body, task, 0);
    body.open("p").element("strong", "Answer: " + task.shownAnswer() + ".").closeLine();
    Page page = new Page("Solution", "en");
    page.style(paper.style("Solution"));
    page.chapter("Solution", body);
    return page.html();
  }
}

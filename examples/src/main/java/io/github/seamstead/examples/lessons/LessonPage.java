package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.page.Markup;
import io.github.seamstead.api.page.Page;

/**
 * All lessons as one self-contained page to read and to show; it holds no answer to an exercise.
 */
public final class LessonPage {

  private LessonPage() {}

  /**
   * Writes the page.
   *
   * @param seed draws the numbers of the exercises
   * @param paper what it is printed on
   * @return an HTML document without script or network
   */
  public static String html(long seed, Paper paper) {
    int count = Lessons.all().size();
    Page page = new Page("The sums of a shelter: " + count + " lessons", "en");
    page.style(paper.style("The sums of a shelter"));
    page.lead(
        new Markup()
            .element(
                "p",
                "One shelter from its floor plan to its cracks, in the order of the work, and as a"
                    + " model one to ten in cardboard: "
                    + Shelter.SIDES
                    + " sides of "
                    + Figures.quantity(Figures.significant(Shelter.SIDE, 3), "m")
                    + ", "
                    + Figures.quantity(Figures.significant(Shelter.HEIGHT, 3), "m")
                    + " high. Every number is computed by the library.")
            .element(
                "p",
                "Keep in the calculator what it holds and write four figures; round the answer"
                    + " alone. Angles are in degrees; where an angle is meant, π stands for 180°."
                    + " Answers to the exercises stand in the teacher's book."));
    for (int i = 0; i < count; i++) {
      page.chapter(Parts.title(i), body(i, LessonTasks.of(i, seed, 0)));
    }
    return page.html();
  }

  private static Markup body(int number, LessonTasks tasks) {
    Lesson lesson = Lessons.all().get(number);
    Markup body = new Markup();
    Parts.facts(body, lesson);
    opening(body, lesson, "");
    body.element("h3", "Complete the last step");
    Parts.question(body, tasks.oneBlank());
    Parts.sum(body, tasks.oneBlank(), 1);
    body.element("h3", "Complete the last two steps");
    Parts.question(body, tasks.twoBlanks());
    Parts.sum(body, tasks.twoBlanks(), 2);
    body.element("h3", "Why?");
    Parts.choices(body, lesson, number);
    body.element("h3", "Find the mistake");
    Parts.mistake(body, tasks.mistake());
    body.element("h3", "Build and check").element("p", lesson.build());
    body.element("p", lesson.check());
    body.element("h3", "Exercises").open("ol");
    for (LessonTasks.Exercise exercise : tasks.exercises()) {
      body.open("li", "class", "task").element("p", exercise.task().question());
      body.element("p", exercise.level(), "class", "src").closeLine();
    }
    body.closeLine();
    return body;
  }

  /** Scene, question, estimate, figure with derivation, worked example: the same for all. */
  static void opening(Markup body, Lesson lesson, String copy) {
    Task example = lesson.example();
    body.element("p", example.fill(lesson.scene()));
    Parts.question(body, example);
    Parts.givens(body, example);
    Parts.estimateBlank(body, example);
    body.open("div", "class", "figure-beside");
    Parts.figure(body, lesson, copy);
    body.open("div").element("h3", "Why the formula holds");
    Parts.proof(body, lesson);
    body.close().closeLine();
    body.element("h3", "Worked example");
    Parts.sum(body, example, 0);
    body.open("p").element("strong", "Answer: " + example.shownAnswer() + ". ");
    body.text(lesson.onSite()).closeLine();
  }
}

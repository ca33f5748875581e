package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.page.Markup;
import io.github.seamstead.api.page.Page;

/** The pupils' sheets of one lesson: other numbers for each, room to write, no answers. */
public final class PupilSheets {

  private PupilSheets() {}

  /**
   * Writes the sheets of a lesson.
   *
   * @param lesson its place, from 0
   * @param seed draws the numbers
   * @param pupils how many sheets, 1 or more
   * @param paper what they are printed on
   * @return an HTML document that starts a new page for each pupil
   */
  public static String html(int lesson, long seed, int pupils, Paper paper) {
    Page page = new Page(Parts.title(lesson), "en");
    page.style(paper.style(Parts.title(lesson)) + Paper.HAND_OUT);
    page.lead(
        new Markup()
            .element(
                "p",
                "One sheet for each pupil, all with numbers of their own. Angles in degrees; π"
                    + " stands for 180° in them. Keep in the calculator what it holds, write four"
                    + " figures, round the answer alone."));
    for (int pupil = 1; pupil <= pupils; pupil++) {
      page.chapter("Sheet " + pupil, body(lesson, LessonTasks.of(lesson, seed, pupil), pupil));
    }
    return page.html();
  }

  private static Markup body(int number, LessonTasks tasks, int pupil) {
    Lesson lesson = Lessons.all().get(number);
    Markup body = new Markup();
    String title = Parts.title(number);
    body.open("p").text(title + (title.endsWith("?") ? " Name: " : ". Name: "));
    body.element("span", "", "class", "blank");
    body.text(" Date: ").element("span", "", "class", "blank").closeLine();
    LessonPage.opening(body, lesson, "-" + pupil);
    body.element("h3", "Complete the last step");
    Parts.question(body, tasks.oneBlank());
    Parts.estimateBlank(body, tasks.oneBlank());
    Parts.sum(body, tasks.oneBlank(), 1);
    body.element("h3", "Complete the last two steps");
    Parts.question(body, tasks.twoBlanks());
    Parts.sum(body, tasks.twoBlanks(), 2);
    body.element("h3", "Why? Tick one.");
    Parts.choices(body, lesson, pupil);
    body.element("h3", "Find the mistake");
    Parts.mistake(body, tasks.mistake());
    Parts.room(body, tasks.mistake());
    body.element("h3", "Exercises").open("ol");
    for (LessonTasks.Exercise exercise : tasks.exercises()) {
      body.open("li", "class", "task");
      body.element("p", exercise.task().question() + " (" + exercise.level() + ")");
      Parts.estimateBlank(body, exercise.task());
      Parts.room(body, exercise.task());
      Parts.answerBlank(body, exercise.task());
      body.closeLine();
    }
    body.closeLine();
    body.element("h3", "Build and check").element("p", lesson.build());
    body.element("p", lesson.check());
    return body;
  }
}

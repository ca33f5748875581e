package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.book.WorkedChapter;
import io.github.seamstead.api.page.Markup;
import io.github.seamstead.api.page.Page;
import java.util.List;

/** Builds all lessons as one self-contained HTML page. */
public final class LessonPage {

  private LessonPage() {}

  /**
   * Writes the page.
   *
   * @param lessons the lessons in the order of the work
   * @return an HTML document without script or network
   */
  public static String html(List<Lesson> lessons) {
    Page page = new Page("The sums of a shelter: " + lessons.size() + " lessons", "en");
    page.lead(
        new Markup()
            .element(
                "p",
                "From the first regular polygon to a floor that dries without cracks, in the order"
                    + " of the work. Each lesson has a question from the building site, the sum"
                    + " worked step by step by the library itself, and three exercises. Answers"
                    + " stand at the end of each lesson."));
    for (int i = 0; i < lessons.size(); i++) {
      String place = "Lesson " + (i + 1) + " of " + lessons.size();
      page.chapter(lessons.get(i).title(), body(place, lessons.get(i)));
    }
    return page.html();
  }

  private static Markup body(String place, Lesson lesson) {
    Markup body = new Markup();
    body.element("p", place, "class", "src");
    body.element("p", lesson.question(), "class", "note");
    body.open("figure").raw(lesson.picture().inline());
    body.element("figcaption", lesson.picture().description()).closeLine();
    body.element("h3", "Worked");
    WorkedChapter.write(body, lesson.worked());
    body.element("h3", "Answer").element("p", lesson.answer());
    body.element("h3", "Exercises").open("ol");
    lesson.exercises().forEach(exercise -> body.element("li", exercise.question()));
    body.closeLine();
    body.open("details").element("summary", "Answers").open("ol");
    lesson.exercises().forEach(exercise -> body.element("li", exercise.shownAnswer()));
    body.close().closeLine();
    return body;
  }
}

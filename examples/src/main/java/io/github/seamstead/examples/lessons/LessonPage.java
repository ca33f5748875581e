package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.page.Markup;
import io.github.seamstead.api.page.Page;
import io.github.seamstead.shared.derivation.Derivation;
import io.github.seamstead.shared.derivation.Step;
import io.github.seamstead.shared.derivation.Typeset;
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
      page.chapter(i + 1 + ". " + lessons.get(i).title(), body(lessons.get(i)));
    }
    return page.html();
  }

  private static Markup body(Lesson lesson) {
    Markup body = new Markup();
    body.element("p", lesson.question(), "class", "note");
    body.open("figure").raw(lesson.picture().inline());
    body.element("figcaption", lesson.picture().description()).closeLine();
    body.element("h3", "Worked");
    worked(body, lesson.worked());
    body.element("h3", "Answer").element("p", lesson.answer());
    body.element("h3", "Exercises").open("ol");
    lesson.exercises().forEach(exercise -> body.element("li", exercise.question()));
    body.closeLine();
    body.open("details").element("summary", "Answers").open("ol");
    lesson.exercises().forEach(exercise -> body.element("li", exercise.shownAnswer()));
    body.close().closeLine();
    return body;
  }

  private static void worked(Markup body, Derivation derivation) {
    String section = "";
    for (Step step : derivation.steps()) {
      if (!step.section().equals(section)) {
        section = step.section();
        body.element("h4", section);
      }
      body.open("div", "class", "step").element("p", step.name() + ":");
      body.open("div", "class", "chain");
      Typeset.mathMlLinks(step).forEach(body::raw);
      body.close();
      step.source().ifPresent(s -> body.element("p", s.citation(), "class", "src"));
      if (!step.note().isEmpty()) {
        body.element("p", step.note(), "class", "src");
      }
      body.closeLine();
    }
  }
}

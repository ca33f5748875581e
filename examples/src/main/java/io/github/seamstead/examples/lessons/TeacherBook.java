package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.page.Markup;
import io.github.seamstead.api.page.Page;
import io.github.seamstead.api.page.Table;
import java.util.ArrayList;
import java.util.List;

/** The teacher's book: plans, materials, full solutions and usual wrong answers of all sheets. */
public final class TeacherBook {

  private static final String[][] SHORT = {
    {"5", "question and estimate, everybody writes two numbers"},
    {"10", "figure and worked example, line by line"},
    {"10", "complete the last step, then the last two, in pairs"},
    {"12", "exercises 1 to 3 alone"},
    {"5", "find the mistake"},
    {"3", "estimate against answer: whose was nearest, and why?"}
  };

  private static final String[][] DOUBLE = {
    {"5", "question and estimate, everybody writes two numbers"},
    {"15", "figure and derivation; each line is explained by another pupil"},
    {"10", "worked example"},
    {"10", "complete the last step, then the last two"},
    {"5", "why? ticked alone, then argued in pairs"},
    {"25", "build and check"},
    {"5", "find the mistake"},
    {"15", "exercises; 5 and 6 bring back earlier lessons"}
  };

  private static final int STEP_DIGITS = 4;

  private TeacherBook() {}

  /**
   * Writes the book.
   *
   * @param seed that of the sheets
   * @param pupils how many sheets there are
   * @param paper what it is printed on
   * @return an HTML document with a chapter for each lesson
   */
  public static String html(long seed, int pupils, Paper paper) {
    Page page = new Page("The sums of a shelter: teacher's book", "en");
    page.style(paper.style("Teacher's book"));
    page.lead(
        new Markup()
            .element(
                "p",
                "Solutions to the sheets 1 to "
                    + pupils
                    + " of seed "
                    + seed
                    + ". Worked on full precision and shown to four figures; accept an answer"
                    + " within 1 %, and whole numbers only if they are right. Where the wrong"
                    + " answers below turn up, the sentence beside them says what to speak"
                    + " about."));
    for (int i = 0; i < Lessons.all().size(); i++) {
      page.chapter(Parts.title(i), body(i, seed, pupils));
    }
    return page.html();
  }

  private static Markup body(int number, long seed, int pupils) {
    Lesson lesson = Lessons.all().get(number);
    List<LessonTasks> sheets = new ArrayList<>();
    for (int pupil = 1; pupil <= pupils; pupil++) {
      sheets.add(LessonTasks.of(number, seed, pupil));
    }
    Markup body = new Markup();
    Parts.facts(body, lesson);
    plan("Plan for 45 minutes", SHORT, body);
    plan("Plan for a double lesson", DOUBLE, body);
    body.element("h3", "Worked example");
    Parts.question(body, lesson.example());
    body.element("p", "Estimate: " + Parts.estimateText(lesson.example()));
    Parts.sum(body, lesson.example(), 0);
    body.element("p", "Answer: " + lesson.example().shownAnswer());
    Parts.slips(body, lesson.example());
    body.element("h3", "Build and check").element("p", lesson.build());
    body.element("p", lesson.check());
    body.element("h3", "Why?");
    for (Why why : lesson.whys()) {
      body.element("p", why.question() + " Right: " + why.right());
    }
    body.element("h3", "Solutions");
    solutions(body, "Last step", sheets.stream().map(LessonTasks::oneBlank).toList());
    solutions(body, "Last two steps", sheets.stream().map(LessonTasks::twoBlanks).toList());
    mistakes(body, sheets);
    for (int i = 0; i < sheets.get(0).exercises().size(); i++) {
      int item = i;
      solutions(
          body,
          "Exercise " + (i + 1) + ", " + sheets.get(0).exercises().get(i).level(),
          sheets.stream().map(sheet -> sheet.exercises().get(item).task()).toList());
    }
    return body;
  }

  private static void plan(String caption, String[][] rows, Markup body) {
    Table table = new Table(caption, "#from minute", "#minutes", "what");
    int from = 0;
    for (String[] row : rows) {
      table.row(Integer.toString(from), row[0], row[1]);
      from += Integer.parseInt(row[0]);
    }
    table.write(body);
  }

  private static void mistakes(Markup body, List<LessonTasks> sheets) {
    Table table =
        new Table("Find the mistake", "#sheet", "what was done wrong", "#shown", "#right");
    for (int i = 0; i < sheets.size(); i++) {
      Task task = sheets.get(i).mistake();
      Slip slip = task.slips().get(0);
      table.row(
          Integer.toString(i + 1), slip.mistake(), task.shown(slip.wrong()), task.shownAnswer());
    }
    table.write(body);
  }

  /** The first sheet's sum in full, then every step of every sheet as a row. */
  private static void solutions(Markup body, String heading, List<Task> tasks) {
    body.element("h4", heading);
    Task first = tasks.get(0);
    Parts.question(body, first);
    body.element("p", "Estimate: " + Parts.estimateText(first));
    Parts.sum(body, first, 0);
    Parts.slips(body, first);
    Table table = new Table(heading + ": every step", "#sheet", "given", "steps", "#answer");
    for (int i = 0; i < tasks.size(); i++) {
      Task task = tasks.get(i);
      table.row(Integer.toString(i + 1), givens(task), steps(task), task.shownAnswer());
    }
    table.write(body);
  }

  private static String givens(Task task) {
    return String.join(
        "; ",
        task.givens().stream().map(given -> equation(given.symbol(), given.shown())).toList());
  }

  private static String steps(Task task) {
    return String.join(
        "; ",
        task.solution().steps().stream()
            .map(
                step ->
                    equation(
                        step.symbol(),
                        Figures.result(step.value(), Parts.raised(step.unit()), STEP_DIGITS)))
            .toList());
  }

  private static String equation(String symbol, String number) {
    return Parts.symbol(symbol) + "\u00a0=\u00a0" + number;
  }
}

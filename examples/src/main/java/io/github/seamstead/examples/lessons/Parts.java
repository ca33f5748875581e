package io.github.seamstead.examples.lessons;

import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Markup;
import io.github.seamstead.shared.derivation.Shown;
import io.github.seamstead.shared.derivation.Step;
import io.github.seamstead.shared.derivation.Typeset;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The pieces from which the lesson page, the pupils' sheets and the teacher's book are made. */
final class Parts {

  private static final Pattern SYMBOL = Pattern.compile("(\\p{L})_(\\p{L}|\\d+)");

  /** The same in a label of a drawing, at its end or with more text after it. */
  private static final Pattern LAST = Pattern.compile(SYMBOL.pattern() + "(?=</text>)");

  private static final Pattern LETTER =
      Pattern.compile(
          SYMBOL.pattern() + "([^<>_]+?)(?=\\p{L}_(?:\\p{L}|\\d)[^<>]*</text>|</text>)");

  /** A letter below the line. */
  private static final String LOWERED = "$1<tspan dy=\"0.25em\" font-size=\"75%\">$2</tspan>";

  /** What follows it is brought up again. */
  private static final String AND_UP = LOWERED + "<tspan dy=\"-0.19em\">$3</tspan>";

  private Parts() {}

  static void facts(Markup to, Lesson lesson) {
    to.open("div", "class", "facts");
    fact(to, "Aim", lesson.aim());
    fact(to, "Time", lesson.minutes() + "\u00a0minutes; with building, a double lesson");
    fact(to, "Known before", String.join("; ", lesson.needs()));
    fact(to, "On the table", String.join("; ", lesson.materials()));
    to.closeLine();
  }

  private static void fact(Markup to, String name, String text) {
    to.open("p").element("strong", name + ": ").text(text).closeLine();
  }

  /** The question with its numbers in a list. */
  static void question(Markup to, Task task) {
    to.element("p", task.question(), "class", "note");
  }

  static void givens(Markup to, Task task) {
    StringBuilder list = new StringBuilder();
    for (Given given : task.givens()) {
      list.append(list.isEmpty() ? "" : "; ")
          .append(symbol(given.symbol()))
          .append("\u00a0=\u00a0");
      list.append(given.shown()).append(" (").append(given.name()).append(')');
    }
    lowered(to.open("p"), "Given: " + list + ".").close();
  }

  static void figure(Markup to, Lesson lesson, String copy) {
    figure(to, lesson.figure(), copy);
  }

  static void figure(Markup to, Drawing drawn, String copy) {
    Drawing named =
        new Drawing(
            drawn.name() + copy,
            drawn.title(),
            drawn.description(),
            drawn.width(),
            drawn.height(),
            drawn.trueSize(),
            LAST.matcher(LETTER.matcher(drawn.body()).replaceAll(AND_UP)).replaceAll(LOWERED));
    to.open("figure").raw(named.inline());
    lowered(to.open("figcaption"), named.description()).close().closeLine();
  }

  /** Writes a text with the second part of its symbols below the line, as in c_s. */
  private static Markup lowered(Markup to, String text) {
    Matcher symbol = SYMBOL.matcher(text);
    int written = 0;
    while (symbol.find()) {
      to.text(text.substring(written, symbol.end(1))).element("sub", symbol.group(2));
      written = symbol.end();
    }
    return to.text(text.substring(written));
  }

  /** The derivation of the formula, three to five lines. */
  static void proof(Markup to, Lesson lesson) {
    to.open("ol");
    for (ProofLine line : lesson.proof()) {
      to.open("li").open("div", "class", "line");
      if (!line.equation().isEmpty()) {
        to.raw(Typeset.mathMlEquation(line.equation())).text(" \u2003");
      }
      to.text(line.reason()).close().closeLine();
    }
    to.closeLine();
  }

  /** A sum with its last steps left to fill in; 0 for a whole worked sum. */
  static void sum(Markup to, Task task, int blanks) {
    List<Step> steps = task.solution().steps();
    for (int i = 0; i < steps.size(); i++) {
      Step step = steps.get(i);
      to.open("div", "class", "step").element("p", step.name() + ":").open("div", "class", "chain");
      List<String> links = Typeset.mathMlLinks(step, Shown.FOR_CLASS);
      if (i < steps.size() - blanks) {
        links.forEach(to::raw);
      } else {
        to.raw(links.get(0)).raw(links.get(1));
        blank(to, step.unit());
      }
      to.close().closeLine();
    }
  }

  private static void blank(Markup to, String unit) {
    to.open("span").text("=\u00a0").element("span", "", "class", "blank").text(" ").close();
    to.open("span").text("=\u00a0").element("span", "", "class", "blank").text("\u00a0");
    to.text(unit(unit)).close();
  }

  /** The unit as a pupil writes it. */
  static String unit(String unit) {
    return unit.equals("rad") ? "°" : raised(unit);
  }

  /** The unit of a number that is still in radians if it is an angle. */
  static String raised(String unit) {
    return unit.replace("m2", "m²").replace("m3", "m³");
  }

  static void estimateBlank(Markup to, Task task) {
    to.open("p").element("strong", "Estimate first. ").text(task.estimate() + " Between ");
    to.element("span", "", "class", "blank").text(" and ").element("span", "", "class", "blank");
    to.text("\u00a0" + unit(task.unit())).closeLine();
  }

  /** The estimate as a pupil might write it, to two digits. */
  static String estimateText(Task task) {
    return task.estimate()
        + " Between "
        + Figures.result(task.low(), raised(task.unit()), 2)
        + " and "
        + Figures.result(task.high(), raised(task.unit()), 2)
        + ".";
  }

  static void answerBlank(Markup to, Task task) {
    to.open("p").text("Answer: ").element("span", "", "class", "blank");
    to.text("\u00a0" + unit(task.unit())).closeLine();
  }

  /** Ruled room for a sum: a line for each step and one more. */
  static void room(Markup to, Task task) {
    to.open("div", "class", "room", "aria-hidden", "true");
    for (int line = 0; line <= task.solution().steps().size(); line++) {
      to.element("div", "", "class", "rule");
    }
    to.closeLine();
  }

  /** The reasons to choose from, the right one first or second by a coin of the seed. */
  static void choices(Markup to, Lesson lesson, long coin) {
    for (int i = 0; i < lesson.whys().size(); i++) {
      Why why = lesson.whys().get(i);
      boolean rightFirst = Math.floorMod(coin + i, 2) == 0;
      lowered(to.open("p"), why.question()).close().open("ul", "class", "choice");
      to.element("li", rightFirst ? why.right() : why.wrong());
      to.element("li", rightFirst ? why.wrong() : why.right()).closeLine();
    }
  }

  /** A pupil's wrong number, to be explained. */
  static void mistake(Markup to, Task task) {
    Slip slip = task.slips().get(0);
    question(to, task);
    to.open("p").text("A pupil wrote ");
    formula(to, task, slip);
    to.text(" and got " + task.shown(slip.wrong()) + ".");
    to.text(" What was done wrong, and what is right?").closeLine();
  }

  /** A wrong formula on a line of its own, which scrolls where the screen is narrow. */
  private static void formula(Markup to, Task task, Slip slip) {
    String equation = task.solution().result().symbol() + " = " + slip.formula();
    to.open("span", "class", "chain").raw(Typeset.mathMlEquation(equation)).close();
  }

  /** The mistakes of a task with the numbers that they give. */
  static void slips(Markup to, Task task) {
    if (task.slips().isEmpty()) {
      return;
    }
    to.element("p", "Usual wrong answers:").open("ul");
    for (Slip slip : task.slips()) {
      to.open("li").text(task.shown(slip.wrong()) + ". " + slip.mistake());
      formula(to, task, slip);
      to.closeLine();
    }
    to.closeLine();
  }

  static String symbol(String symbol) {
    return Typeset.symbol(symbol);
  }

  static String title(int lesson) {
    return "Lesson " + (lesson + 1) + ": " + Lessons.all().get(lesson).title();
  }

  /** A file name of a lesson: its number and the first words of its title. */
  static String file(int lesson, String what) {
    return String.format(Locale.ROOT, "lesson-%02d-%s.html", lesson + 1, what);
  }
}

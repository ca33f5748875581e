package io.github.seamstead.api.book.front;

import io.github.seamstead.api.page.LinkedNumbers;
import io.github.seamstead.api.page.Markup;
import io.github.seamstead.materials.drying.Milestone;
import java.util.Optional;
import java.util.function.Function;

/** Writes the days of the work, each as a card with boxes and blanks. */
final class DaySheets {

  private DaySheets() {}

  static void write(Desk desk, WorkPlan work) {
    for (int i = 0; i < work.days().size(); i++) {
      Day day = work.days().get(i);
      desk.add(
          work.label(i) + ": " + day.title(),
          "Day sheet",
          Sheet.Kind.CARD,
          body(day, work.dateText(i), "d" + (i + 1), desk.sums()));
    }
  }

  private static Markup body(
      Day day, Optional<String> date, String key, Function<String, Optional<String>> sums) {
    Markup m = new Markup();
    if (!day.lead().isEmpty()) {
      m.element("p", day.lead(), "class", "lead");
    }
    m.open("dl", "class", "cond");
    m.open("div").element("dt", "When").open("dd");
    date.ifPresentOrElse(m::text, () -> Ticks.blank(m, key + "date", "date of this sheet"));
    m.close().close();
    fact(m, "Start if", day.startIf());
    fact(m, "Who", who(day));
    fact(m, "Tools", day.tools());
    fact(m, "Material", day.material());
    m.closeLine();
    int pauseAfter = day.pause().isEmpty() ? -1 : pausePlace(day);
    m.open("ol", "class", "steps");
    for (int i = 0; i < day.steps().size(); i++) {
      if (i == pauseAfter) {
        m.close();
        pause(m, day, key);
        m.open("ol", "class", "steps", "start", Integer.toString(i + 1));
      }
      step(m, day.steps().get(i), key + "s" + (i + 1), i + 1, sums);
    }
    m.closeLine();
    if (pauseAfter == day.steps().size()) {
      pause(m, day, key);
    }
    end(m, day, key);
    day.waiting().ifPresent(w -> wait(m, w));
    return m;
  }

  /** The pause stands before the first step that can hurt, or before the last step. */
  private static int pausePlace(Day day) {
    for (int i = 1; i < day.steps().size(); i++) {
      if (!day.steps().get(i).warning().isEmpty()) {
        return i;
      }
    }
    return day.steps().size() - 1;
  }

  private static String who(Day day) {
    String people = day.people() == 1 ? "1 person" : day.people() + " people";
    return day.hands().isEmpty() ? people : people + "; " + day.hands();
  }

  private static void fact(Markup m, String name, String text) {
    if (!text.isEmpty()) {
      boolean isLong = !name.equals("Start if");
      m.open("div", "class", isLong ? "long" : "short")
          .element("dt", name)
          .element("dd", text)
          .close();
    }
  }

  private static void step(
      Markup m, Day.Step step, String key, int number, Function<String, Optional<String>> sums) {
    m.open("li");
    if (!step.warning().isEmpty()) {
      warning(m, step.warning());
    }
    m.open("div", "class", "step-line");
    m.open("label", "class", "tk");
    m.open("input", "type", "checkbox", "data-k", key, "data-step", Integer.toString(number));
    LinkedNumbers.write(m.open("span").element("b", number + ". "), step.text(), sums);
    if (!step.wanted().isEmpty()) {
      LinkedNumbers.write(m.text(" ").open("b", "class", "want"), step.wanted(), sums).close();
    }
    m.close().close();
    Ticks.blank(m, key + "w", "step " + number + ": time and initials");
    m.close().closeLine();
  }

  static void warning(Markup m, String text) {
    m.open("p", "class", "warn").open("a", "href", "#" + SafetySheet.ANCHOR);
    m.element("strong", "WARNING").close().text(" " + text).closeLine();
  }

  private static void pause(Markup m, Day day, String key) {
    m.open("div", "class", "pause list").element("p", "Pause: " + day.pauseTitle(), "class", "ph");
    m.open("ul");
    for (int i = 0; i < day.pause().size(); i++) {
      m.open("li");
      Ticks.box(m, key + "p" + i, day.pause().get(i));
      m.close();
    }
    m.close().closeLine();
  }

  private static void end(Markup m, Day day, String key) {
    m.open("div", "class", "end");
    if (!day.home().isEmpty()) {
      m.open("div", "class", "list").element("p", "Before you go home", "class", "ph").open("ul");
      for (int i = 0; i < day.home().size(); i++) {
        m.open("li");
        Ticks.box(m, key + "h" + i, day.home().get(i));
        m.close();
      }
      m.close().closeLine();
    }
    m.open("p", "class", "stop").element("b", "Hours worked: ");
    Ticks.number(m, key + "hours", "hours worked on this sheet");
    m.close();
    if (!day.stops().isEmpty()) {
      m.open("p", "class", "stop").element("b", "Stops tomorrow: ").text(day.stops()).close();
    }
    m.closeLine();
  }

  private static void wait(Markup m, Milestone w) {
    m.open("p", "class", "ph").text("Then wait until it is " + w.name() + ": likely ");
    m.text(Sizes.days(w.likely(), w.horizon()) + ". ");
    m.element("a", "See the waiting card.", "href", "#" + WaitingCard.ANCHOR).closeLine();
  }
}

package io.github.seamstead.api.book.front;

import io.github.seamstead.api.page.Markup;
import io.github.seamstead.materials.drying.Milestone;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.List;

/** How long each layer dries, and how to tell that it is dry: by weighing, not by the calendar. */
final class WaitingCard {

  static final String TITLE = "Waiting card";
  static final String ANCHOR = "sheet-waiting-card";
  private static final int WEIGHINGS = 4;

  private WaitingCard() {}

  static void write(Desk desk, WorkPlan work) {
    List<Day> days = work.days().stream().filter(d -> d.waiting().isPresent()).toList();
    if (days.isEmpty()) {
      return;
    }
    Markup m = new Markup();
    m.element(
        "p",
        "The calendar only guesses. Cut a small sample to the full depth, weigh it, dry it hot,"
            + " weigh it again: loss by dry mass. Two weighings a week, next to the same place. Not"
            + " there at the latest day: more air, evenly; never a heater with a flame.",
        "class",
        "lead");
    Ticks.table(
        m,
        "Waiting",
        "layer",
        "is",
        "#soonest",
        "#likely",
        "#latest",
        "#water at most",
        "weighed, %");
    for (Day day : days) {
      Milestone w = day.waiting().orElseThrow();
      String layer = day.subject();
      m.open("tr").open("td").element("b", layer).close();
      Ticks.cells(
          m,
          w.name(),
          "#" + Sizes.days(w.soonest(), w.horizon()),
          "#" + Sizes.days(w.likely(), w.horizon()),
          "#" + Sizes.days(w.latest(), w.horizon()),
          "#" + Numbers.fixed(w.moisture() * 100, 1) + "\u00a0%");
      m.open("td", "class", "fields");
      for (int i = 1; i <= WEIGHINGS; i++) {
        Ticks.number(
            m, "dry-" + days.indexOf(day) + "-" + i, layer + ": water found, weighing " + i);
        m.text(" ");
      }
      m.close().closeLine();
    }
    Ticks.endTable(m);
    desk.add(TITLE, "Waiting card", Sheet.Kind.CARD, m);
  }
}

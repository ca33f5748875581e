package io.github.seamstead.api.book.front;

import io.github.seamstead.api.page.Markup;
import java.util.ArrayList;
import java.util.List;

/** What takes weeks to get: needs down, weeks across, a box to tick when a need is met. */
final class LookAhead {

  private static final int WEEKS = 6;

  private LookAhead() {}

  static void write(Desk desk, WorkPlan work) {
    if (desk.sizes().isModel()) {
      return;
    }
    List<String> needs = needs(desk, work);
    if (needs.isEmpty()) {
      return;
    }
    Markup m = new Markup();
    m.element(
        "p",
        "A day starts only when all it needs is here. Tick a need in the week in which it is met;"
            + " write why one was missed.",
        "class",
        "lead");
    List<String> columns = new ArrayList<>();
    columns.add("need");
    for (int week = 1; week <= WEEKS; week++) {
      columns.add(week == 1 ? "this week" : "+" + (week - 1));
    }
    columns.add("why missed");
    Ticks.table(m, "Needs over the weeks", columns.toArray(String[]::new));
    for (int i = 0; i < needs.size(); i++) {
      m.open("tr");
      Ticks.cells(m, needs.get(i));
      for (int week = 1; week <= WEEKS; week++) {
        m.open("td");
        Ticks.bare(m, "need" + i + "w" + week, needs.get(i) + ": met in week " + week);
        m.close();
      }
      m.open("td");
      Ticks.blank(m, "need" + i + "why", needs.get(i) + ": why missed");
      m.close().closeLine();
    }
    Ticks.endTable(m);
    desk.add("Look ahead", "Look ahead", Sheet.Kind.CARD, m);
  }

  private static List<String> needs(Desk desk, WorkPlan work) {
    List<String> needs = new ArrayList<>();
    if (!desk.plan().mixes().isEmpty()) {
      needs.add("tiles dry and read, mix decided");
    }
    if (desk.plan().frame().isPresent()) {
      needs.add("frame taped, job planned again");
    }
    Needs buy = Needs.of(desk);
    if (!buy.lines().isEmpty()) {
      needs.add("all of the order on site");
    }
    if (!desk.sizes().isModel() && desk.plan().handling().isPresent()) {
      needs.add("calm day forecast, enough people for raising");
      needs.add("frame and anchorage checked by a licensed person");
    }
    if (desk.plan().floor().isPresent()) {
      needs.add("buried cables asked for, bed drained");
      needs.add("mixer, barrow, trailer booked");
    }
    work.days().stream()
        .filter(d -> d.waiting().isPresent())
        .forEach(d -> needs.add(d.title().replace("Lay the ", "") + " dry by its check"));
    return needs;
  }
}

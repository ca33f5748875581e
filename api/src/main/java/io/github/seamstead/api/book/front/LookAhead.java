package io.github.seamstead.api.book.front;

import io.github.seamstead.api.page.Markup;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What takes weeks to get: needs down, weeks across, a box to tick when a need is met. */
final class LookAhead {

  private static final int WEEKS = 6;

  /**
   * Something that takes time to get.
   *
   * @param what what has to be there
   * @param before the day sheet that starts only then
   */
  private record Need(String what, String before) {}

  private LookAhead() {}

  static void write(Desk desk, WorkPlan work) {
    if (desk.sizes().isModel()) {
      return;
    }
    List<Need> needs = needs(desk, work);
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
    columns.add("ready for");
    for (int week = 1; week <= WEEKS; week++) {
      columns.add(week == 1 ? "this week" : "+" + (week - 1));
    }
    columns.add("why missed");
    Ticks.table(m, "Needs over the weeks", columns.toArray(String[]::new));
    for (int i = 0; i < needs.size(); i++) {
      m.open("tr");
      String what = needs.get(i).what();
      Ticks.cells(m, what, needs.get(i).before());
      for (int week = 1; week <= WEEKS; week++) {
        m.open("td");
        Ticks.bare(m, "need" + i + "w" + week, what + ": met in week " + week);
        m.close();
      }
      m.open("td");
      Ticks.blank(m, "need" + i + "why", what + ": why missed");
      m.close().closeLine();
    }
    Ticks.endTable(m);
    desk.add("Look ahead", "Look ahead", Sheet.Kind.CARD, m);
  }

  private static List<Need> needs(Desk desk, WorkPlan work) {
    List<Need> needs = new ArrayList<>();
    if (!desk.plan().mixes().isEmpty()) {
      needs.add(new Need("tiles dry and read, mix decided", "the order of sand"));
    }
    if (desk.plan().frame().isPresent()) {
      work.label(Day.Work.CUT)
          .ifPresent(day -> needs.add(new Need("frame taped, job planned again", day)));
    }
    Needs buy = Needs.of(desk);
    if (!buy.lines().isEmpty()) {
      needs.add(new Need("the order on site, sand when its tiles are read", work.firstLabel()));
    }
    work.label(Day.Work.RAISE)
        .ifPresent(
            day -> {
              needs.add(new Need("calm day forecast, enough people for raising", day));
              needs.add(new Need("frame and anchorage checked by a licensed person", day));
              desk.plan()
                  .anchoring()
                  .ifPresent(
                      a -> needs.add(new Need("pegs tested on site, job planned again", day)));
            });
    work.label(Day.Work.DIG)
        .ifPresent(day -> needs.add(new Need("buried cables asked for, bed drained", day)));
    if (desk.plan().floor().isPresent()) {
      work.label(Day.Work.LAYER)
          .ifPresent(
              day -> {
                dug(desk, day).ifPresent(needs::add);
                needs.add(new Need("mixer, barrow, trailer booked", day));
              });
    }
    for (int i = 0; i + 1 < work.days().size(); i++) {
      Day day = work.days().get(i);
      if (day.waiting().isPresent()) {
        needs.add(new Need(day.subject() + " dry by its check", work.label(i + 1)));
      }
    }
    return needs;
  }

  /** The soil that is not bought but dug, sieved and heaped in time. */
  private static Optional<Need> dug(Desk desk, String day) {
    List<String> heaps =
        desk.plan()
            .floor()
            .flatMap(f -> f.orders())
            .map(
                o ->
                    o.lines().stream()
                        .filter(line -> !line.supply().hauled())
                        .map(line -> desk.sizes().mass(line.ordered()) + " of " + line.material())
                        .toList())
            .orElse(List.of());
    return heaps.isEmpty()
        ? Optional.empty()
        : Optional.of(new Need(String.join(", ", heaps) + " dug, sieved, covered", day));
  }
}

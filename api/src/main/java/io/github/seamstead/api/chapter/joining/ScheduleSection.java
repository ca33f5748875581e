package io.github.seamstead.api.chapter.joining;

import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.api.page.Table;
import io.github.seamstead.assembly.merge.MergePlan;
import io.github.seamstead.assembly.merge.TreeLayout;
import io.github.seamstead.assembly.schedule.GanttChart;
import io.github.seamstead.assembly.schedule.WorkCalendar;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The merge tree, and the joining on the teams with its range. */
final class ScheduleSection {

  private static final double HOUR = 3600;

  private ScheduleSection() {}

  static void write(BookContext book, SchedulePart part) {
    Words w = book.words();
    book.heading("How long it takes");
    Table table = new Table("Time for all seams, with the teams stated", "what", "#time");
    table.row("as likely sooner as later", w.duration(part.simulation().p50()));
    table.row("four times out of five done within", w.duration(part.simulation().p80()));
    table.row("nineteen times out of twenty within", w.duration(part.simulation().p95()));
    table.row("every seam in its mean time", w.duration(part.schedule().length()));
    table.row("no schedule is shorter than", w.duration(part.schedule().lowerBound()));
    part.lastDay()
        .ifPresent(
            day ->
                table.row(
                    "by the working hours of the crew, done on working day",
                    day
                        + part.start()
                            .map(start -> " (" + start.plusDays(day - 1L) + ")")
                            .orElse("")));
    book.table(table);
    book.note(
        "From "
            + part.simulation().runs()
            + " runs with seam times drawn between quickest and slowest, independently; a slow day"
            + " slows all seams at once, so the true range is wider.");
    part.learning()
        .ifPresent(
            curve ->
                book.note(
                    "Each doubling of the seams leaves "
                        + w.percent(curve.ratio())
                        + " of the time of one, by the "
                        + curve.rule().label()
                        + "."));
    book.figure(chart(part.chart()));
    part.days().ifPresent(days -> book.figure(days(days, part.start())));
  }

  /** Draws the seams by the clock, one band for each day on which there is work. */
  private static Drawing days(GanttChart chart, Optional<LocalDate> start) {
    // Bars are in the order of their starts, and so are the days that they touch.
    List<Integer> days = new ArrayList<>();
    double from = 24;
    double to = 0;
    for (GanttChart.Bar bar : chart.bars()) {
      for (WorkCalendar.Span span : bar.parts()) {
        int day = day(span);
        if (!days.contains(day)) {
          days.add(day);
        }
        from = Math.min(from, Math.floor(hour(span.startTime(), day)));
        to = Math.max(to, Math.ceil(hour(span.endTime(), day)));
      }
    }
    double row = 15;
    double band = row * (chart.lanes() + 0.6);
    double scale = 290 / Math.max(1, to - from);
    double foot = -band * days.size();
    Canvas canvas = Canvas.fit(-84, foot - row, 306, row * 0.4, 4, row * 2 + 8 - foot);
    for (int i = 0; i < days.size(); i++) {
      int day = days.get(i);
      String name = start.map(s -> s.plusDays(day).toString()).orElse("day " + (day + 1));
      canvas.text(-6, -band * i - band / 2, name, Canvas.TEXT, "end", 0);
      canvas.line(0, -band * (i + 1) + row * 0.3, 290, -band * (i + 1) + row * 0.3, Ink.THIN);
    }
    for (GanttChart.Bar bar : chart.bars()) {
      for (WorkCalendar.Span span : bar.parts()) {
        int day = day(span);
        double x0 = (hour(span.startTime(), day) - from) * scale;
        double x1 = (hour(span.endTime(), day) - from) * scale;
        double y = -band * days.indexOf(day) - row * (bar.lane() - 0.5);
        bar(canvas, x0, x1, y, bar.critical());
        canvas.text((x0 + x1) / 2, y, bar.task().id(), Canvas.TEXT, "middle", 0);
      }
    }
    for (double hour = from; hour <= to + 1e-9; hour++) {
      double x = (hour - from) * scale;
      canvas.text(x, foot - row * 0.5, Long.toString(Math.round(hour)), Canvas.TEXT, "middle", 0);
    }
    return canvas.drawing(
        "join-days",
        "The seams by the clock",
        "Hours of the day; each band is a day with work, each line in it a team. A joint that cures"
            + " keeps its group waiting overnight too.");
  }

  private static int day(WorkCalendar.Span span) {
    return (int) (span.startTime() / WorkCalendar.DAY_SECONDS);
  }

  private static double hour(double seconds, int day) {
    return (seconds - day * WorkCalendar.DAY_SECONDS) / HOUR;
  }

  private static void bar(Canvas canvas, double x0, double x1, double y, boolean critical) {
    canvas.path(
        List.of(
            new double[] {x0, y - 5},
            new double[] {x1, y - 5},
            new double[] {x1, y + 5},
            new double[] {x0, y + 5}),
        true,
        Ink.CUT,
        critical ? Shade.MIDDLE : Shade.PALE);
  }

  /** Draws the groups as a tree, leaves below. */
  static Drawing tree(MergePlan order) {
    TreeLayout layout = TreeLayout.of(order);
    double height = Math.max(1, layout.height());
    Canvas canvas =
        Canvas.fit(-0.5, 0, layout.width() + 0.5, Math.max(1, layout.width()) * 0.7, 14, 330);
    double up = Math.max(1, layout.width()) * 0.66 / height;
    for (TreeLayout.Node node : layout.nodes()) {
      Optional<Integer> parent = node.parent();
      if (parent.isPresent()) {
        TreeLayout.Node above = layout.nodes().get(parent.get());
        double y = up * above.y();
        canvas.path(
            List.of(
                new double[] {node.x(), up * node.y()},
                new double[] {node.x(), y},
                new double[] {above.x(), y}),
            false,
            Ink.CUT,
            Shade.NONE);
      }
    }
    for (TreeLayout.Node node : layout.nodes()) {
      String label =
          node.step().isPresent() ? Integer.toString(node.step().get()) + "." : node.label();
      double y = up * node.y();
      canvas.dot(node.x(), y, node.step().isPresent() ? 10 : 9, Ink.THIN, Shade.PAPER);
      canvas.text(node.x(), y, label, Canvas.SMALL_TEXT, "middle", 0);
    }
    return canvas.drawing(
        "join-tree",
        "The order as a tree",
        "Pieces stand at the bottom. Each number with a point is a step of the order and joins the"
            + " two groups below it; the last step closes the ring and has no place in the tree.");
  }

  private static Drawing chart(GanttChart chart) {
    double end = Math.max(1, chart.endTime()) / 60;
    double row = 15;
    int n = chart.bars().size();
    double scale = 280 / end;
    Canvas canvas = Canvas.fit(-60, -row * (n + 1.2), 292, row * 0.4, 4, row * (n + 1.6) + 8);
    for (int i = 0; i < n; i++) {
      GanttChart.Bar bar = chart.bars().get(i);
      double y = -row * (i + 0.5);
      canvas.text(-6, y, bar.task().id(), Canvas.SMALL_TEXT, "end", 0);
      bar.parts()
          .forEach(
              span ->
                  bar(
                      canvas,
                      span.startTime() / 60 * scale,
                      span.endTime() / 60 * scale,
                      y,
                      bar.critical()));
    }
    double step = end > 240 ? 60 : end > 100 ? 30 : end > 40 ? 10 : 5;
    for (double minute = 0; minute <= end + 1e-9; minute += step) {
      double x = minute * scale;
      canvas.line(x, -row * n - 2, x, -row * n - 6, Ink.THIN);
      canvas.text(
          x, -row * (n + 0.8), Long.toString(Math.round(minute)), Canvas.SMALL_TEXT, "middle", 0);
    }
    return canvas.drawing(
        "join-schedule",
        "The seams in time",
        "Minutes from the start; each bar is a seam in its mean time. Dark bars decide the end:"
            + " a delay there delays all.");
  }
}

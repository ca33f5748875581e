package io.github.seamstead.api.chapter.drying;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.page.Chart;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.api.page.Table;
import io.github.seamstead.materials.drying.DryingCurve;
import io.github.seamstead.materials.drying.DryingForecast;
import io.github.seamstead.materials.drying.Milestone;
import io.github.seamstead.materials.drying.TileCalibration;
import io.github.seamstead.materials.floor.LayerRole;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** How long each wet layer dries, how it cracks, and what mends it. */
final class DryingPages {

  private static final double DAY = 86_400;
  private static final int CHART_POINTS = 60;

  /** In days. */
  private static final double AT_ONCE = 0.01;

  private DryingPages() {}

  static void write(BookContext book, List<DryingPart> parts) {
    for (DryingPart part : parts) {
      book.heading(part.layer().name());
      book.figure(curve(part));
      laid(book, part);
      Table table = new Table("When", "state", "#soonest", "#likely", "#latest");
      for (Milestone m : part.forecast().milestones()) {
        table.row(
            m.name(),
            when(part, m.soonest(), m),
            when(part, m.likely(), m),
            when(part, m.latest(), m));
      }
      book.table(table);
      evidence(book, part);
      part.tile().ifPresent(tile -> tile(book, tile));
      rammed(book, part);
      CrackSection.air(book, part);
      CrackSection.cracks(book, part);
    }
    if (parts.stream().anyMatch(part -> part.tile().isEmpty())) {
      weigh(book);
    }
    book.end(Chapter.DRYING);
  }

  private static void weigh(BookContext book) {
    book.note(
        "Published rates scatter widely, so the range is wide. Weigh a test tile of the same mix on"
            + " a few days: its weighings narrow the forecast more than any table.");
  }

  private static void laid(BookContext book, DryingPart part) {
    if (part.since().isPresent()) {
      return;
    }
    String after =
        part.start() < AT_ONCE
            ? ""
            : BookContext.number(part.start(), part.start() < 10 ? 1 : 0)
                + "\u00a0d after the lowest mixed layer";
    String date = part.laid().map(LocalDate::toString).orElse("");
    if (!after.isEmpty() || !date.isEmpty()) {
      book.paragraph(
          "Laid"
              + (date.isEmpty() ? "" : " on " + date)
              + (after.isEmpty() ? "" : (date.isEmpty() ? " " : ", ") + after)
              + " if all below goes as likely; days count from then.");
    }
  }

  private static void tile(BookContext book, TileCalibration tile) {
    if (!tile.plausible()) {
      book.note("The test tile does not count: it dries as no tile of such earth does.");
      return;
    }
    Words w = book.words();
    Table table = new Table("By the weighed test tile", "what", "#times the published (range)");
    table.row(
        "how fast water moves up", w.range(tile.diffusivity(), f -> BookContext.number(f, 2)));
    table.row("how fast the air takes it", w.range(tile.exchange(), f -> BookContext.number(f, 2)));
    book.table(table);
  }

  /** The days, and the date where the document has one. */
  private static String when(DryingPart part, Optional<Double> days, Milestone milestone) {
    String text = days(days, milestone);
    if (part.laid().isEmpty() || days.isEmpty()) {
      return text;
    }
    return text + ", " + part.laid().get().plusDays((long) Math.ceil(days.get()));
  }

  /** From which day the days count, and what the tile says. */
  private static void evidence(BookContext book, DryingPart part) {
    part.since()
        .ifPresent(
            day ->
                book.paragraph(
                    "It was laid on "
                        + day
                        + ", from which the days count, in the weather seen since: "
                        + part.forecast().milestones().stream()
                            .map(m -> m.name() + " likely on " + date(day, m))
                            .collect(Collectors.joining(", "))
                        + "."));
  }

  private static String date(LocalDate day, Milestone m) {
    return m.likely().isPresent()
        ? day.plusDays((long) Math.ceil(m.likely().get())).toString()
        : "no day forecast";
  }

  /** A dry pack stands by ramming; nobody should wait for it to dry. */
  private static void rammed(BookContext book, DryingPart part) {
    Words w = book.words();
    if (part.layer().role() == LayerRole.DRY_PACK) {
      book.paragraph(
          "It is walked on as soon as it is rammed. Lay the coat the same or the next day, on the"
              + " pack still damp, and keep it under a sheet until then; its water dries out"
              + " through the coat, whose days count it in.");
    }
    if (part.moisture() > part.layer().mix().placingMoisture() + 1e-3) {
      book.note(
          "Its materials are wetter than wanted: reckoned from "
              + w.percent(part.moisture())
              + " of water as it is laid, not from "
              + w.percent(part.layer().mix().placingMoisture())
              + ".");
    }
  }

  private static Drawing curve(DryingPart part) {
    DryingForecast forecast = part.forecast();
    // Past the last state nothing more is decided, so the chart ends soon after it.
    double last =
        forecast.milestones().stream()
            .mapToDouble(m -> m.latest().orElse(m.horizon()))
            .max()
            .orElse(Double.POSITIVE_INFINITY);
    double days = Math.min(forecast.slow().duration() / DAY, last * 1.1);
    double top = forecast.likely().coatMoistureAt(0) * 100;
    Chart chart =
        new Chart(
            Chart.Axis.linear("days after laying", 0, days),
            Chart.Axis.linear("water, % of dry mass", 0, top * 1.05),
            260);
    List<double[]> fast = points(forecast.fast(), days);
    List<double[]> slow = points(forecast.slow(), days);
    chart.band(fast, slow, Shade.LIGHT);
    chart.line(points(forecast.likely(), days), Ink.CUT, "likely", CHART_POINTS / 4);
    // States at one moisture share a line and its words.
    Map<Double, String> states = new LinkedHashMap<>();
    forecast
        .milestones()
        .forEach(m -> states.merge(m.moisture() * 100, m.name(), (a, b) -> a + "; " + b));
    states.forEach(
        (y, names) ->
            chart.line(List.of(new double[] {0, y}, new double[] {days, y}), Ink.SEAM, names, 1));
    return chart.drawing(
        "drying-" + part.layer().name(),
        "Drying of the " + part.layer().name(),
        "Mean moisture of the coat over the days: likely line in a grey band from the fastest to"
            + " the slowest reasonable drying; dashed lines mark the states named.");
  }

  private static List<double[]> points(DryingCurve curve, double days) {
    List<double[]> points = new ArrayList<>();
    for (int i = 0; i <= CHART_POINTS; i++) {
      double day = days * i / CHART_POINTS;
      double time = Math.min(day * DAY, curve.duration());
      points.add(new double[] {day, curve.coatMoistureAt(time) * 100});
    }
    return points;
  }

  /** When a state is likely reached, for a sentence. */
  static String after(Milestone milestone) {
    String days = days(milestone.likely(), milestone);
    return milestone.likely().isPresent() && milestone.likely().get() >= AT_ONCE
        ? "after " + days
        : days;
  }

  static String days(Optional<Double> days, Milestone milestone) {
    if (days.isPresent() && days.get() < AT_ONCE) {
      return "at once";
    }
    return days.isPresent()
        ? BookContext.number(days.get(), days.get() < 10 ? 1 : 0) + "\u00a0d"
        : "not in " + BookContext.number(milestone.horizon(), 0) + "\u00a0d";
  }
}

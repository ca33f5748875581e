package io.github.seamstead.api.chapter.floor;

import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.page.Chart;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.api.page.Table;
import io.github.seamstead.materials.water.CompactionControl;
import io.github.seamstead.materials.water.ProctorCurve;
import io.github.seamstead.materials.water.ProctorPoint;
import java.util.List;

/** Compaction tests of the packs, and the places measured. */
final class PackSection {

  private static final int POINTS = 21;

  /** Room over and under the curve, as a part of its density. */
  private static final double ROOM = 0.05;

  private PackSection() {}

  static void write(BookContext book, FloorPart floor) {
    floor.packs().forEach(pack -> write(book, pack));
  }

  private static void write(BookContext book, PackControl pack) {
    Words w = book.words();
    CompactionControl control = pack.control();
    ProctorCurve curve = control.curve();
    book.heading("Compaction: " + pack.layer());
    book.figure(curve(pack.layer(), curve, w));
    Table test = new Table("Compaction test: " + pack.layer(), "what", "#value");
    test.row("water at which it packs densest", w.range(curve.optimumMoisture(), w::percent));
    test.row("dry density at that", w.range(curve.maximumDryDensity(), w::density));
    test.row(
        control.waterToOptimum() < 0
            ? "water to lose, over the damp mass of the mix as it is placed"
            : "water to add, over the damp mass of the mix as it is placed",
        w.percent(Math.abs(control.waterToOptimum())));
    book.table(test);
    if (!control.places().isEmpty()) {
      Table places =
          new Table(
              "Places measured: " + pack.layer(),
              "place",
              "#dry density",
              "#of the densest",
              "#pores filled with water",
              "dense enough");
      for (int i = 0; i < control.places().size(); i++) {
        CompactionControl.Place place = control.places().get(i);
        places.row(
            Integer.toString(i + 1),
            w.density(place.dryDensity()),
            w.percent(place.relative()),
            w.percent(place.phases().saturation()),
            place.passes() ? "yes" : "no");
      }
      book.table(places);
    }
    control.advice().forEach(advice -> book.note(pack.layer() + ": " + advice + "."));
  }

  private static Drawing curve(String layer, ProctorCurve curve, Words w) {
    List<double[]> dots = points(curve.points(), w);
    double low = dots.stream().mapToDouble(p -> p[1]).min().orElse(0) * (1 - ROOM);
    List<double[]> full = points(curve.zeroAirVoidsLine(POINTS), w);
    // The line without air falls to its end, which is to be seen.
    double high =
        Math.max(dots.stream().mapToDouble(p -> p[1]).max().orElse(1), full.get(full.size() - 1)[1])
            * (1 + ROOM);
    Chart chart =
        new Chart(
            Chart.Axis.linear("water, % of dry mass", dots.get(0)[0], dots.get(dots.size() - 1)[0]),
            Chart.Axis.linear("dry density, " + w.densityUnit(), low, high),
            220);
    chart.line(points(curve.fittedLine(POINTS), w), Ink.CUT, "", 0);
    chart.line(full.stream().filter(p -> p[1] <= high).toList(), Ink.SEAM, "no air", 1);
    chart.dots(dots, Shade.PAPER);
    return chart.drawing(
        "compaction-" + layer,
        "Compaction test of the " + layer,
        "Dry density over moisture: circles are the cylinders, the line is drawn through the"
            + " densest and its neighbours; above the dashed line there would be no air left.");
  }

  private static List<double[]> points(List<ProctorPoint> points, Words w) {
    return points.stream()
        .map(p -> new double[] {100 * p.moisture(), w.inDensityUnit(p.dryDensity())})
        .toList();
  }
}

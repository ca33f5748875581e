package io.github.seamstead.api.chapter.floor;

import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.materials.floor.BuildUp;
import io.github.seamstead.materials.floor.BuildUp.SectionBand;
import io.github.seamstead.materials.floor.Footprint;
import io.github.seamstead.materials.floor.PlanPoint;
import io.github.seamstead.materials.floor.Sector;
import io.github.seamstead.materials.floor.SectorPlan;
import java.util.ArrayList;
import java.util.List;

/** The floor's layers in section and its sectors in plan. */
final class FloorDrawings {

  private static final Shade[] FILLS = {
    Shade.DOTS, Shade.PALE, Shade.HATCH, Shade.LIGHT, Shade.MIDDLE
  };

  private FloorDrawings() {}

  /** Draws the layers, each with its name and thickness. */
  static Drawing section(BuildUp buildUp, Words words) {
    List<SectionBand> bands = buildUp.section();
    double rows = bands.size();
    double total = Math.max(1e-6, buildUp.thickness());
    // Thin coats get a height that can be read; so the drawing is not to scale and says so.
    List<double[]> spans = new ArrayList<>();
    double y = 0;
    for (SectionBand band : bands) {
      double part = (band.top() - band.bottom()) / total;
      double height = Math.max(0.09, 0.8 * part);
      spans.add(new double[] {y, y + height});
      y += height;
    }
    Canvas canvas = Canvas.fit(0, 0, 1.4, y, 10, 60 + 50 * rows);
    StringBuilder spoken = new StringBuilder();
    for (int i = 0; i < bands.size(); i++) {
      SectionBand band = bands.get(i);
      double low = spans.get(i)[0];
      double high = spans.get(i)[1];
      canvas.path(
          List.of(
              new double[] {0, low},
              new double[] {1.4, low},
              new double[] {1.4, high},
              new double[] {0, high}),
          true,
          Ink.CUT,
          FILLS[i % FILLS.length]);
      String thickness = words.small(band.top() - band.bottom());
      boolean sheet = band.top() - band.bottom() <= 0;
      canvas.label(0.7, (low + high) / 2, sheet ? band.name() : band.name() + ", " + thickness);
      spoken.append(spoken.isEmpty() ? "" : ", ").append(band.name());
      spoken.append(sheet ? "" : " " + thickness);
    }
    return canvas.drawing(
        "floor-section",
        "The floor in section",
        "Not to scale. From the ground up: "
            + spoken
            + "; together "
            + words.small(buildUp.thickness())
            + ".");
  }

  /** Draws the sectors with their numbers in the order of laying. */
  static Drawing sectors(SectorPlan plan, Footprint footprint) {
    double minX = Double.POSITIVE_INFINITY;
    double minY = Double.POSITIVE_INFINITY;
    double maxX = Double.NEGATIVE_INFINITY;
    double maxY = Double.NEGATIVE_INFINITY;
    for (PlanPoint p : footprint.corners()) {
      minX = Math.min(minX, p.x());
      minY = Math.min(minY, p.y());
      maxX = Math.max(maxX, p.x());
      maxY = Math.max(maxY, p.y());
    }
    Canvas canvas = Canvas.fit(minX, minY, maxX, maxY, 16, 340);
    for (Sector sector : plan.sectors()) {
      canvas.path(points(sector.outline()), true, Ink.CUT, Shade.NONE);
    }
    footprint.gaps().forEach(gap -> canvas.path(points(gap), true, Ink.CUT, Shade.HATCH));
    for (Sector sector : plan.sectors()) {
      PlanPoint at = sector.labelPoint();
      canvas.text(at.x(), at.y(), Integer.toString(sector.order()), 15, "middle", 0);
    }
    Sector door = plan.sectors().get(plan.door() - 1);
    List<PlanPoint> edge = door.outline().subList(1, door.outline().size());
    for (int i = 0; i + 1 < edge.size(); i++) {
      canvas.line(
          edge.get(i).x(), edge.get(i).y(), edge.get(i + 1).x(), edge.get(i + 1).y(), Ink.HEAVY);
    }
    canvas.dot(plan.centre().x(), plan.centre().y(), 4, Ink.CUT, Shade.MIDDLE);
    return canvas.drawing(
        "floor-sectors",
        "Sectors of the floor in the order of laying",
        plan.sectors().size()
            + " sectors round the middle (dot), with the numbers of the tables. Lay them in the"
            + " order of their numbers, from the far side to the door (heavy line), so that nobody"
            + " is shut in and every joint is wet to wet.");
  }

  private static List<double[]> points(List<PlanPoint> points) {
    return points.stream().map(p -> new double[] {p.x(), p.y()}).toList();
  }
}

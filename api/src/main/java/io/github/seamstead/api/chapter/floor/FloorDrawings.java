package io.github.seamstead.api.chapter.floor;

import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.Labels;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.materials.floor.BuildUp;
import io.github.seamstead.materials.floor.BuildUp.SectionBand;
import io.github.seamstead.materials.floor.Footprint;
import io.github.seamstead.materials.floor.Sector;
import io.github.seamstead.materials.floor.SectorPlan;
import io.github.seamstead.shared.plane.Bounds;
import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

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
  static Drawing sectors(SectorPlan plan, Footprint footprint, Words words) {
    Bounds around = new Outline(footprint.corners().stream().map(plan::doorDown).toList()).bounds();
    Canvas canvas = Canvas.fit(around.minX(), around.minY(), around.maxX(), around.maxY(), 20, 340);
    for (Sector sector : plan.sectors()) {
      canvas.path(doorDown(plan, sector.outline().vertices()), true, Ink.CUT, Shade.NONE);
    }
    footprint
        .gaps()
        .forEach(gap -> canvas.path(doorDown(plan, gap.vertices()), true, Ink.CUT, Shade.HATCH));
    Labels labels = new Labels(canvas);
    for (Sector sector : plan.sectors()) {
      Vector2D at = plan.doorDown(sector.labelPoint());
      labels.beside(at.getX(), at.getY(), Integer.toString(sector.order()));
    }
    Sector door = plan.sectors().get(plan.door() - 1);
    List<double[]> edge =
        doorDown(plan, door.outline().vertices().subList(1, door.outline().size()));
    for (int i = 0; i + 1 < edge.size(); i++) {
      canvas.line(
          edge.get(i)[0], edge.get(i)[1], edge.get(i + 1)[0], edge.get(i + 1)[1], Ink.HEAVY);
    }
    canvas.dot(0, 0, 4, Ink.CUT, Shade.MIDDLE);
    canvas.scaleBar(words.scaleUnit(), words::scale);
    return canvas.drawing(
        "floor-sectors",
        "Sectors of the floor in the order of laying",
        plan.sectors().size()
            + " sectors round the middle (dot), with the numbers of the tables. Lay them in the"
            + " order of their numbers, from the far side to the door (heavy line, at the bottom),"
            + " so that nobody is shut in and every joint is wet to wet.");
  }

  private static List<double[]> doorDown(SectorPlan plan, List<Vector2D> points) {
    return points.stream().map(plan::doorDown).map(p -> new double[] {p.getX(), p.getY()}).toList();
  }
}

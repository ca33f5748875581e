package io.github.seamstead.api.chapter.soil;

import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Chart;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.materials.mix.Recipe;
import io.github.seamstead.materials.soil.GradingCurve;
import io.github.seamstead.materials.soil.SoilFinding;
import io.github.seamstead.materials.soil.Texture;
import io.github.seamstead.materials.soil.TextureClass;
import io.github.seamstead.materials.soil.TexturePosterior;
import io.github.seamstead.shared.quantity.Dimension;
import io.github.seamstead.shared.quantity.QuantityText;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.ArrayList;
import java.util.List;

/** The texture triangle and the grading curve of a soil. */
final class SoilDrawings {

  private static final double FINEST = 1e-6;
  private static final double LARGEST = 0.02;
  private static final double HEIGHT = Math.sqrt(3) / 2;

  private SoilDrawings() {}

  /** Draws the texture triangle with the region in which the soil lies at 95 %. */
  static Drawing triangle(String id, SoilFinding finding) {
    Canvas canvas = Canvas.fit(-0.03, -0.08, 1.03, HEIGHT + 0.02, 12, 350);
    for (List<Texture> outline : finding.texture().region(0.95).outlines()) {
      canvas.path(outline.stream().map(SoilDrawings::at).toList(), true, Ink.HEAVY, Shade.HATCH);
    }
    for (TextureClass kind : TextureClass.values()) {
      List<double[]> corners = kind.corners().stream().map(SoilDrawings::at).toList();
      canvas.path(corners, true, Ink.THIN, Shade.NONE);
      double x = corners.stream().mapToDouble(c -> c[0]).average().orElse(0);
      double y = corners.stream().mapToDouble(c -> c[1]).average().orElse(0);
      canvas.text(x, y, kind.symbol(), Canvas.SMALL_TEXT, "middle", 0);
    }
    Texture mean = finding.texture().mean();
    double[] dot = at(mean);
    canvas.dot(dot[0], dot[1], 4, Ink.CUT, Shade.PAPER);
    canvas.label(0.5, -0.055, "sand % rises to the left");
    canvas.text(0.2, HEIGHT / 2 + 0.07, "clay % rises", Canvas.TEXT, "middle", 60);
    canvas.text(0.8, HEIGHT / 2 + 0.07, "silt % rises", Canvas.TEXT, "middle", -60);
    return canvas.drawing(
        "texture-" + id,
        "Texture of " + id,
        "Texture triangle: clay at the top, sand at the lower left, silt at the lower right. The"
            + " circle is the estimate, "
            + percent(mean.clayRatio())
            + " clay, "
            + percent(mean.siltRatio())
            + " silt, "
            + percent(mean.sandRatio())
            + " sand; the hatched region holds the soil with a probability of 95 %.");
  }

  /** Draws the grading curve on a logarithmic axis, with the band of nine times in ten. */
  static Drawing grading(String id, SoilFinding finding, Words words) {
    TexturePosterior texture = finding.texture();
    double gravel = finding.gravelRatio().map(Uncertain::value).orElse(0.0);
    Chart chart = axes(words);
    chart.band(
        edge(words, texture.clayRange().low(), texture.sandRange().high(), gravel),
        edge(words, texture.clayRange().high(), texture.sandRange().low(), gravel),
        Shade.HATCH);
    chart.line(points(words, finding.curve(LARGEST)), Ink.CUT, "", 0);
    return chart.drawing(
        "grading-" + id,
        "Grading of " + id,
        "Share of dry mass finer than each grain size; the hatched band holds clay and sand nine"
            + " times in ten.");
  }

  /** Draws the grading of a mix beside those of its parts. */
  static Drawing mixGrading(String id, Recipe recipe, Words words) {
    Chart chart = axes(words);
    for (Recipe.Portion portion : recipe.portions()) {
      List<double[]> points = points(words, portion.component().grading());
      chart.line(points, Ink.THIN, portion.component().name(), points.size() / 2);
    }
    List<double[]> mix = points(words, recipe.grading());
    chart.line(mix, Ink.CUT, "mix", mix.size() / 2);
    return chart.drawing(
        "grading-mix-" + id,
        "Grading of the mix " + id,
        "Share of dry mass finer than each grain size; thin lines are the parts, the heavy line the"
            + " mix. A curve that rises evenly packs well.");
  }

  private static Chart axes(Words words) {
    return new Chart(
        Chart.Axis.logarithmic(
            "grain size (" + words.errorUnit() + ")", size(words, FINEST), size(words, LARGEST)),
        Chart.Axis.linear("finer by dry mass (%)", 0, 100),
        250);
  }

  /** A grain size in the unit of the axis. */
  private static double size(Words words, double metres) {
    return QuantityText.toUnit(metres, Dimension.LENGTH, words.errorUnit());
  }

  /** One edge of the band: the curve of a clay and a sand share. */
  private static List<double[]> edge(Words words, double clay, double sand, double gravel) {
    Texture texture = Texture.ofClayAndSand(clay, Math.min(sand, 1 - clay));
    return points(words, GradingCurve.ofTexture(texture, gravel, LARGEST));
  }

  private static List<double[]> points(Words words, GradingCurve curve) {
    List<double[]> points = new ArrayList<>();
    points.add(new double[] {size(words, FINEST), 100 * curve.finer(FINEST)});
    curve.points().stream()
        .filter(p -> p.diameter() > FINEST && p.diameter() < LARGEST)
        .map(p -> new double[] {size(words, p.diameter()), p.finerRatio() * 100})
        .forEach(points::add);
    points.add(new double[] {size(words, LARGEST), 100 * curve.finer(LARGEST)});
    return points;
  }

  private static double[] at(Texture t) {
    return new double[] {t.siltRatio() + t.clayRatio() / 2, t.clayRatio() * HEIGHT};
  }

  private static String percent(double ratio) {
    return Math.round(ratio * 100) + " %";
  }
}

package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.source.Source;
import java.util.ArrayList;
import java.util.List;

/**
 * A published chart that turns the length of a ribbon into a texture. Charts disagree, by a factor
 * of two in length for the same clay, so a chart is always named; with several the spread between
 * them is part of the doubt.
 *
 * @param label the chart's name; not blank
 * @param source where it stands
 * @param marks clay share and ribbon length at the middles of the chart's bands, leanest first,
 *     starting at no clay and ending at pure clay; straight lines join them; two or more, clay
 *     strictly rising from 0 to 1, lengths never falling
 */
public record RibbonChart(String label, Source source, List<Mark> marks) {

  /** Australian practice: 15 to 25 mm sandy loam, 40 to 50 mm clay loam, 75 mm medium clay. */
  public static final RibbonChart AUSTRALIAN =
      of(
          "Australian field texture",
          Source.found(
              "Northcote; Australian Soil and Land Survey Field Handbook",
              "Field texture grades",
              "1979",
              "ribbon length and approximate clay"),
          0,
          0,
          5,
          5,
          10,
          15,
          20,
          25,
          30,
          40,
          35,
          50,
          40,
          75,
          100,
          200);

  /** Thien's flow diagram: loams to 1 inch, clay loams to 2 inches, clays beyond. */
  public static final RibbonChart THIEN =
      of(
          "Thien flow diagram",
          Source.found(
              "Thien",
              "A flow diagram for teaching texture-by-feel analysis",
              "1979",
              "1 in and 2 in branches"),
          0,
          0,
          24,
          25.4,
          38,
          50.8,
          100,
          160);

  /** A reprint of the same diagram with the branches at 2 and 3 inches. */
  public static final RibbonChart THIEN_REPRINT =
      of(
          "Thien flow diagram, reprint with longer ribbons",
          Source.found("", "Wetland Techniques, texture by feel", "", "2 in and 3 in branches"),
          0,
          0,
          24,
          50.8,
          38,
          76.2,
          100,
          190);

  /** Short form for irrigators: 25 mm loam, 25 to 40 mm clay loam, 50 mm and more clay. */
  public static final RibbonChart IRRIGATION =
      of(
          "irrigation short form",
          Source.found("", "Soil texture by feel, irrigation short form", "", "ribbon lengths"),
          0,
          0,
          10,
          15,
          20,
          25,
          27,
          30,
          40,
          50,
          100,
          150);

  /** All charts named here. */
  public static final List<RibbonChart> ALL = List.of(AUSTRALIAN, THIEN, THIEN_REPRINT, IRRIGATION);

  /**
   * A point of a chart.
   *
   * @param clayRatio share of clay, 0 to 1
   * @param length length of the ribbon, in metres
   */
  public record Mark(double clayRatio, double length) {}

  public RibbonChart {
    Args.notBlank("ribbon chart", label);
    marks = List.copyOf(marks);
    Args.require(
        marks.size() >= 2
            && marks.get(0).clayRatio == 0
            && marks.get(marks.size() - 1).clayRatio == 1,
        "ribbon chart " + label + ": marks must start at clay 0 and end at clay 1");
    for (int i = 1; i < marks.size(); i++) {
      Args.require(
          marks.get(i).clayRatio > marks.get(i - 1).clayRatio
              && marks.get(i).length >= marks.get(i - 1).length,
          "ribbon chart "
              + label
              + ": mark "
              + (i + 1)
              + " must have more clay and not less length");
    }
  }

  /**
   * Reads the chart backwards: the ribbon that a soil with this much clay makes.
   *
   * @param clayRatio share of clay, 0 to 1
   * @return length in metres
   */
  public double expectedLength(double clayRatio) {
    Args.within("clay ratio", clayRatio, 0, 1, "");
    int i = 1;
    while (clayRatio > marks.get(i).clayRatio) {
      i++;
    }
    Mark a = marks.get(i - 1);
    Mark b = marks.get(i);
    return a.length
        + (b.length - a.length) * (clayRatio - a.clayRatio) / (b.clayRatio - a.clayRatio);
  }

  /** Pairs of clay in per cent and length in millimetres. */
  private static RibbonChart of(String label, Source source, double... pairs) {
    ArrayList<Mark> list = new ArrayList<>();
    for (int i = 0; i < pairs.length; i += 2) {
      list.add(new Mark(pairs[i] / 100, pairs[i + 1] / 1000));
    }
    return new RibbonChart(label, source, list);
  }
}

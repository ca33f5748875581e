package io.github.seamstead.api.chapter.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.testing.EarthJob;
import io.github.seamstead.api.testing.Fixture;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Where the drawings of a soil and of its mix show their shares. */
class SoilDrawingsByHandTest {

  private static final Pattern PATH = Pattern.compile("<path d=\"M([^\"Z]*)Z?\"([^>]*)>");

  private static List<double[]> points(String path) {
    List<double[]> points = new ArrayList<>();
    for (String pair : path.split("L", -1)) {
      String[] xy = pair.strip().split(" ", -1);
      points.add(new double[] {Double.parseDouble(xy[0]), Double.parseDouble(xy[1])});
    }
    return points;
  }

  /** Clay is at the top of the triangle: a third of the way up is a third of clay. */
  @Test
  void theTriangleShowsTheSoil() {
    Fixture f = Fixture.of(EarthJob.TEXT, Chapter.SOIL, Chapter.MIX);
    String drawing = f.book().drawings().get("texture-pit").replaceFirst("<defs>.*</defs>", "");
    List<List<double[]>> paths = new ArrayList<>();
    Matcher matcher = PATH.matcher(drawing);
    while (matcher.find()) {
      paths.add(points(matcher.group(1)));
    }
    // The region and the twelve classes; the corners of all classes span the triangle.
    assertThat(paths).hasSize(13);
    double left = Double.MAX_VALUE;
    double right = 0;
    double top = Double.MAX_VALUE;
    double bottom = 0;
    for (List<double[]> one : paths.subList(1, 13)) {
      for (double[] p : one) {
        left = Math.min(left, p[0]);
        right = Math.max(right, p[0]);
        top = Math.min(top, p[1]);
        bottom = Math.max(bottom, p[1]);
      }
    }
    double side = right - left;
    assertThat(bottom - top).isCloseTo(side * Math.sqrt(0.75), within(0.05));
    double clay = f.number("/soils/0/clayRatio/value");
    double silt = f.number("/soils/0/siltRatio/value");
    double x = left + (silt + clay / 2) * side;
    double y = bottom - clay * (bottom - top);
    Matcher circle =
        Pattern.compile("<circle cx=\"([0-9.]+)\" cy=\"([0-9.]+)\" r=\"4\"").matcher(drawing);
    assertThat(circle.find()).isTrue();
    assertThat(Double.parseDouble(circle.group(1))).isCloseTo(x, within(0.05));
    assertThat(Double.parseDouble(circle.group(2))).isCloseTo(y, within(0.05));
    // The region lies round the circle.
    assertThat(paths.get(0)).anyMatch(p -> p[0] < x).anyMatch(p -> p[0] > x);
    assertThat(paths.get(0)).anyMatch(p -> p[1] < y).anyMatch(p -> p[1] > y);
    // Each class has its symbol in the middle of its corners; that of clay is the last.
    double[] middle = new double[2];
    for (double[] p : paths.get(12)) {
      middle[0] += p[0] / paths.get(12).size();
      middle[1] += p[1] / paths.get(12).size();
    }
    Matcher symbol = Pattern.compile("translate\\(([0-9.]+) ([0-9.]+)\\)[^>]*>C<").matcher(drawing);
    assertThat(symbol.find()).isTrue();
    assertThat(Double.parseDouble(symbol.group(1))).isCloseTo(middle[0], within(0.02));
    assertThat(Double.parseDouble(symbol.group(2))).isCloseTo(middle[1], within(0.02));
    assertThat(f.read(Chapter.SOIL))
        .anyMatch(
            l ->
                l.contains(
                    "The circle is the estimate, 42 % clay, 30 % silt, 28 % sand; the hatched"));
  }

  /** Finer than 2 µm is the clay, finer than 50 µm clay and silt; of a mix 5/12 of the soil's. */
  @Test
  void theGradingOfTheMixIsThatOfItsParts() {
    Fixture f = Fixture.of(EarthJob.TEXT, Chapter.SOIL, Chapter.MIX);
    double clay = 100 * f.number("/soils/0/clayRatio/value");
    double silt = 100 * f.number("/soils/0/siltRatio/value");
    String drawing =
        f.book().drawings().get("grading-mix-pack").replaceFirst("<defs>.*</defs>", "");
    Matcher matcher = PATH.matcher(drawing);
    List<List<double[]>> lines = new ArrayList<>();
    while (matcher.find()) {
      lines.add(points(matcher.group(1)));
    }
    assertThat(lines).hasSize(3);
    // The axis from 0.001 to 20 mm is 4.3 decades long; 100 % is its top.
    double left = lines.get(0).get(0)[0];
    double decade = (lines.get(0).get(lines.get(0).size() - 1)[0] - left) / Math.log10(20_000);
    double top = lines.get(0).get(lines.get(0).size() - 1)[1];
    double bottom = lines.get(1).get(0)[1];
    double up = (bottom - top) / 100;
    double[] fine = lines.get(0).get(1);
    assertThat(fine[0]).isCloseTo(left + Math.log10(2) * decade, within(0.05));
    assertThat(fine[1]).isCloseTo(bottom - clay * up, within(0.05));
    double[] coarse = lines.get(0).get(2);
    assertThat(coarse[0]).isCloseTo(left + Math.log10(50) * decade, within(0.05));
    assertThat(coarse[1]).isCloseTo(bottom - (clay + silt) * up, within(0.05));
    double[] mixed = lines.get(2).get(1);
    assertThat(mixed[1]).isCloseTo(bottom - clay * 5 / 12 * up, within(0.05));
    assertThat(lines.get(2).get(0)[1])
        .isCloseTo(bottom - (bottom - lines.get(0).get(0)[1]) * 5 / 12, within(0.05));
    assertThat(drawing)
        .contains(">pit<")
        .contains(">sand<")
        .contains(">mix<")
        .contains("grain size (mm)");
    // The band of the soil lies about its curve: less clay with more sand below, the rest above.
    String soil = f.book().drawings().get("grading-pit").replaceFirst("<defs>.*</defs>", "");
    Matcher of = PATH.matcher(soil);
    assertThat(of.find()).isTrue();
    List<double[]> band = points(of.group(1));
    assertThat(of.find()).isTrue();
    List<double[]> curve = points(of.group(1));
    double low = 100 * f.number("/soils/0/clayRange/low");
    double high = 100 * f.number("/soils/0/clayRange/high");
    assertThat(band).anyMatch(p -> Math.abs(p[1] - (bottom - low * up)) < 0.05);
    assertThat(band).anyMatch(p -> Math.abs(p[1] - (bottom - high * up)) < 0.05);
    assertThat(curve).anyMatch(p -> Math.abs(p[1] - (bottom - clay * up)) < 0.05);
  }
}

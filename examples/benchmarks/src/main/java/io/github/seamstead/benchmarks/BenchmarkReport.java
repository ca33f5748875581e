package io.github.seamstead.benchmarks;

import io.github.seamstead.api.page.Chart;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.shared.quantity.Numbers;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Turns JMH's JSON into a page of results with their conditions and draws how times grow.
 *
 * <p>Arguments: the JSON file, the folder for {@code RESULTS.md} and {@code growth/}, and one line
 * on the conditions, such as what else the machine did.
 */
public final class BenchmarkReport {

  private BenchmarkReport() {}

  /**
   * Writes the page.
   *
   * @param args JSON file, output folder, conditions
   * @throws IOException if a file cannot be read or written
   */
  public static void main(String[] args) throws IOException {
    if (args.length != 3) {
      throw new IllegalArgumentException(
          "given " + args.length + " arguments, needs JSON file, output folder and conditions");
    }
    List<Measured> all = Measured.read(Path.of(args[0]));
    Path folder = Path.of(args[1]);
    Path growth = Files.createDirectories(folder.resolve("growth"));
    List<Drawing> curves = curves(all);
    for (Drawing curve : curves) {
      Files.writeString(growth.resolve(curve.name() + ".svg"), curve.file());
    }
    Files.writeString(folder.resolve("RESULTS.md"), page(all, curves, args[2]));
  }

  private static String page(List<Measured> all, List<Drawing> curves, String conditions) {
    StringBuilder page = new StringBuilder("# Measured speed\n\n");
    page.append(
        "Mean time of one call with the half-width of its 99.9 % interval, and the fastest");
    page.append(" iteration. Made by `examples/benchmark --report`; do not edit.\n\n");
    page.append("Conditions: ").append(conditions).append(' ');
    page.append(machine()).append(' ').append(all.get(0).settings()).append("\n\n");
    page.append("| benchmark | size | mean | ± | fastest |\n| --- | --- | ---: | ---: | ---: |\n");
    for (Measured one : all) {
      page.append("| ").append(one.name()).append(" | ").append(one.sizes()).append(" | ");
      page.append(Numbers.significant(one.score(), 3)).append(' ').append(one.unit());
      page.append(" | ");
      page.append(one.error().isPresent() ? Numbers.significant(one.error().getAsDouble(), 2) : "");
      page.append(" | ").append(Numbers.significant(one.fastest(), 3)).append(' ');
      page.append(one.unit()).append(" |\n");
    }
    if (!curves.isEmpty()) {
      page.append("\n## How times grow\n\n");
      for (Drawing curve : curves) {
        page.append("![").append(curve.description()).append("](growth/").append(curve.name());
        page.append(".svg)\n\n");
      }
    }
    return page.toString().stripTrailing() + "\n";
  }

  private static String machine() {
    return System.getProperty("os.name")
        + " on "
        + System.getProperty("os.arch")
        + ", "
        + Runtime.getRuntime().availableProcessors()
        + " virtual cores.";
  }

  private static List<Drawing> curves(List<Measured> all) {
    Map<String, List<Measured>> byName =
        all.stream()
            .filter(m -> m.number().isPresent())
            // Of two sizes a curve could follow only one.
            .filter(m -> m.sizes().indexOf(',') < 0)
            .collect(Collectors.groupingBy(Measured::name, TreeMap::new, Collectors.toList()));
    List<Drawing> curves = new ArrayList<>();
    for (Map.Entry<String, List<Measured>> entry : byName.entrySet()) {
      List<double[]> points =
          entry.getValue().stream()
              .map(m -> new double[] {m.number().getAsDouble(), m.fastest()})
              .sorted(Comparator.comparingDouble(p -> p[0]))
              .toList();
      if (points.size() > 2) {
        curves.add(curve(entry.getKey(), entry.getValue().get(0), points));
      }
    }
    return curves;
  }

  private static Drawing curve(String name, Measured any, List<double[]> points) {
    double[] first = points.get(0);
    double[] last = points.get(points.size() - 1);
    double slowest = points.stream().mapToDouble(p -> p[1]).max().orElseThrow();
    double fastest = points.stream().mapToDouble(p -> p[1]).min().orElseThrow();
    double exponent = Math.log(last[1] / first[1]) / Math.log(last[0] / first[0]);
    Chart chart =
        new Chart(
            Chart.Axis.logarithmic(any.parameter(), decade(first[0], false), decade(last[0], true)),
            Chart.Axis.logarithmic(
                "time, " + any.unit(), decade(fastest, false), decade(slowest, true)),
            230);
    chart.line(points, Ink.CUT, "", 0).dots(points, Shade.MIDDLE);
    return chart.drawing(
        name.replace('.', '-'),
        name,
        name
            + ": from "
            + Numbers.plain(first[0])
            + " to "
            + Numbers.plain(last[0])
            + " "
            + any.parameter()
            + " the time grows as the power "
            + Numbers.fixed(exponent, 2));
  }

  private static double decade(double value, boolean up) {
    double power = Math.log10(value);
    return Math.pow(10, up ? Math.ceil(power) : Math.floor(power));
  }
}

package io.github.seamstead.benchmarks;

import io.github.seamstead.geometry.survey.BlunderReport;
import io.github.seamstead.geometry.survey.Node;
import io.github.seamstead.geometry.survey.Reading;
import io.github.seamstead.geometry.survey.Survey;
import io.github.seamstead.geometry.survey.SurveyOutcome;
import io.github.seamstead.geometry.survey.SurveyShape;
import io.github.seamstead.geometry.templates.AsBuilt;
import io.github.seamstead.geometry.templates.TemplatePlan;
import io.github.seamstead.geometry.templates.Templates;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Adjusting a taped frame and fitting templates, by the number of sides. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class SurveyBenchmark {

  private static final double RADIUS = 3;
  private static final double HEIGHT = 2.4;
  private static final double DOUBT = 0.003;

  /** Sides of the frame; five readings to a side and the spokes. */
  @Param({"6", "12", "24", "48", "64"})
  public int sides;

  private Survey survey = Survey.of(SurveyShape.whole(3), readings(3, false));
  private Survey wrong = survey;
  private AsBuilt built = AsBuilt.of(survey.adjust().orThrow());

  /** Tapes the frame once. */
  @Setup
  public void tape() {
    SurveyShape shape = SurveyShape.whole(sides).meant(new SurveyShape.Ideal(RADIUS, HEIGHT, 0));
    survey = Survey.of(shape, readings(sides, false));
    wrong = Survey.of(shape, readings(sides, true));
    built = AsBuilt.of(survey.adjust().orThrow());
  }

  /** Least squares with redundancy numbers and tests of all readings. */
  @Benchmark
  public SurveyOutcome adjust() {
    return survey.adjust();
  }

  /** One reading 10 cm wrong, found. */
  @Benchmark
  public BlunderReport blunder() {
    return wrong.findBlunders();
  }

  /** The fewest templates within 4 mm. */
  @Benchmark
  public TemplatePlan templates() {
    return Templates.plan(built, 0.004);
  }

  private static List<Reading> readings(int n, boolean slip) {
    Random random = new Random(7);
    List<Reading> readings = new ArrayList<>();
    for (int i = 1; i <= n; i++) {
      readings.add(distance(random, "B" + i, "A", Math.hypot(RADIUS, HEIGHT), 0));
      readings.add(distance(random, "B" + i, "C", RADIUS, 0));
      for (int apart = 1; apart <= Math.min(3, (n - 1) / 2); apart++) {
        double chord = 2 * RADIUS * Math.sin(Math.PI * apart / n);
        double error = slip && i == 2 && apart == 2 ? 0.1 : 0;
        readings.add(distance(random, "B" + i, "B" + ((i + apart - 1) % n + 1), chord, error));
      }
    }
    readings.add(distance(random, "A", "C", HEIGHT, 0));
    return readings;
  }

  private static Reading distance(
      Random random, String from, String to, double length, double error) {
    double read = length + DOUBT * random.nextGaussian() + error;
    return Reading.distance(Node.parse(from), Node.parse(to), read, DOUBT);
  }
}

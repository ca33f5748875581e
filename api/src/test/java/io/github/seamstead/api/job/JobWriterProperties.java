package io.github.seamstead.api.job;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.api.results.ResultsJson;
import io.github.seamstead.api.testing.DemoJobs;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.statistics.Statistics;

class JobWriterProperties {

  private static List<Path> demos() {
    try (Stream<Path> files = Files.list(DemoJobs.FOLDER)) {
      return files.filter(f -> f.toString().endsWith(".json")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A demo job put together anew in code, with some values changed and some left open. */
  @Provide
  Arbitrary<Optional<Job>> jobs() {
    return Combinators.combine(Arbitraries.of(demos()), Arbitraries.longs())
        .as((file, seed) -> altered(JobReader.read(file), new Random(seed)));
  }

  private static Optional<Job> altered(Job job, Random random) {
    Json.Obj tree = Shapes.DOCUMENT.write(job.document(), "$", pick(job.assumedPaths(), random));
    try {
      return Optional.of(Job.ofTree((Json.Obj) changed(tree, random)));
    } catch (JobFaultsException contradictory) {
      return Optional.empty();
    }
  }

  private static Set<String> pick(Set<String> paths, Random random) {
    return Set.copyOf(paths.stream().sorted().filter(path -> random.nextBoolean()).toList());
  }

  /** Scales some quantities by a factor near one, to values with all their binary digits. */
  private static Json changed(Json json, Random random) {
    UnaryOperator<Json> change = inner -> changed(inner, random);
    if (json instanceof Json.Obj object) {
      List<Json.Member> members = new ArrayList<>();
      for (Json.Member member : object.members()) {
        members.add(new Json.Member(member.key(), 0, change.apply(member.value())));
      }
      return new Json.Obj(0, members);
    }
    if (json instanceof Json.Arr array) {
      return new Json.Arr(0, array.items().stream().map(change).toList());
    }
    if (json instanceof Json.Text text && random.nextInt(4) == 0) {
      String[] words = text.text().split(" ");
      if (words.length == 2 && words[0].matches("-?[0-9.]+")) {
        double number = Double.parseDouble(words[0]) * (1 + 1e-3 * random.nextDouble());
        return new Json.Text(0, Double.toString(number) + " " + words[1]);
      }
    }
    return json;
  }

  @Property(tries = 300, seed = "20261128")
  void aJobInCodeIsWrittenAndReadAsItself(@ForAll("jobs") Optional<Job> made) {
    Statistics.label("free of contradictions").collect(made.isPresent());
    made.ifPresent(
        job -> {
          String text = JobWriter.text(job);
          Job read = JobReader.parse(text);
          assertThat(read.document()).isEqualTo(job.document());
          assertThat(read).isEqualTo(job);
          assertThat(read.digest()).isEqualTo(job.digest());
          assertThat(JobWriter.text(read)).isEqualTo(text);
          assertThat(read.toBuilder().build()).isEqualTo(job);
        });
  }

  @Property(tries = 3, seed = "20261129", shrinking = ShrinkingMode.OFF)
  void aJobInCodeIsPlannedLikeTheOneThatIsRead(@ForAll("jobs") Optional<Job> made) {
    made.ifPresent(
        job -> {
          Job read = JobReader.parse(JobWriter.text(job));
          assertThat(results(read)).isEqualTo(results(job));
        });
  }

  private static Map<String, String> results(Job job) {
    try {
      return Map.of(
          "results", withoutLines(ResultsJson.text(JobPlanner.plan(job, PlanOptions.defaults()))));
    } catch (JobFaultsException e) {
      return Map.of("faults", withoutLines(e.getMessage()));
    }
  }

  /** A job that was never a text has no lines to name. */
  private static String withoutLines(String text) {
    return text.replaceAll(" \\(line \\d+\\)", "");
  }
}

package io.github.seamstead.api.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.plan.JobPlanner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each bad job has a text beside it with all its faults, one on each line, in order. */
class BadJobsTest {

  private static final Path FOLDER = Path.of("src/test/resources/bad-jobs");

  static Stream<Path> jobs() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.filter(f -> f.toString().endsWith(".json")).sorted().toList().stream();
    }
  }

  @Test
  void thereAreAtLeastForty() throws IOException {
    assertThat(jobs()).hasSizeGreaterThanOrEqualTo(40);
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void aBadJobGivesAllItsFaults(Path file) throws IOException {
    Path beside = Path.of(file.toString().replaceAll("\\.json$", ".faults.txt"));
    List<String> expected = Files.readAllLines(beside);
    JobFaultsException thrown =
        catchThrowableOfType(
            JobFaultsException.class,
            () -> JobPlanner.plan(JobReader.read(file), PlanOptions.defaults()));
    assertThat(thrown).as("faults of %s", file.getFileName()).isNotNull();
    assertThat(thrown.faults().stream().map(JobFault::text)).isEqualTo(expected);
  }
}

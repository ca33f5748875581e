package io.github.seamstead.api.plan;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.NotPlanned;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.chapter.Unmet;
import io.github.seamstead.api.job.JobReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A stage that cannot be met takes down what builds on it, and nothing else. */
class UnmetJobsTest {

  private static final Path FOLDER = Path.of("src/test/resources/unmet-jobs");

  static Stream<Path> jobs() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.filter(f -> f.toString().endsWith(".json")).sorted().toList().stream();
    }
  }

  private static JobPlan plan(String name) {
    return JobPlanner.plan(JobReader.read(FOLDER.resolve(name)), PlanOptions.defaults());
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void whatCannotBeMetIsNamedWithItsValueAndTheRestIsPlanned(Path file) throws IOException {
    Path beside = Path.of(file.toString().replaceAll("\\.json$", ".unmet.txt"));
    JobPlan plan = plan(file.getFileName().toString());
    assertThat(plan.unmet().stream().map(Unmet::what)).containsAll(Files.readAllLines(beside));
    assertThat(plan.unmet().stream().flatMap(u -> u.fault().stream())).isNotEmpty();
    assertThat(plan.frame()).isPresent();
  }

  @Test
  void aDoorOffItsFaceLeavesFrameFloorAndSoilPlanned() {
    JobPlan plan = plan("door-off-the-face.json");
    assertThat(plan.cover()).isEmpty();
    assertThat(plan.layout()).isEmpty();
    List<Chapter> left = plan.notPlanned().stream().map(NotPlanned::chapter).toList();
    assertThat(left).contains(Chapter.MARKOUT, Chapter.LAYOUT, Chapter.JOINING);
    assertThat(plan.notPlanned().stream().map(NotPlanned::reason))
        .anyMatch(reason -> reason.contains("builds on the chapter \"The panels\""));
  }
}

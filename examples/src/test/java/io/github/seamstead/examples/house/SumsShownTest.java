package io.github.seamstead.examples.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaCodeUnit;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Derivation;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every published calculation is recorded by a job with worked steps, or the list says why not. */
class SumsShownTest {

  private static Set<String> recorded() throws IOException {
    List<Path> demos;
    try (Stream<Path> files = Files.list(Path.of("jobs"))) {
      demos = files.filter(file -> file.toString().endsWith(".json")).sorted().toList();
    }
    PlanOptions worked = PlanOptions.defaults().withWorkedSteps();
    return demos.stream()
        .flatMap(demo -> JobPlanner.plan(JobReader.read(demo), worked).derivations().stream())
        .map(Derivation::id)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void everyPublishedCalculationIsRecorded() throws IOException {
    Set<String> published =
        House.CLASSES.stream()
            .flatMap(type -> type.getCodeUnits().stream())
            .filter(unit -> unit.isAnnotatedWith(Calculation.class))
            .map(unit -> unit.getAnnotationOfType(Calculation.class).value())
            .collect(Collectors.toCollection(TreeSet::new));
    Set<String> recorded = recorded();
    assertThat(published).containsAll(recorded);
    Set<String> lost = new TreeSet<>(published);
    lost.removeAll(recorded);
    assertThat(lost).isEqualTo(House.exceptions("sums-not-shown.txt").keySet());
  }

  /** Whoever reads an id in a book finds the class by it. */
  @Test
  void everyIdNamesThePackageOfItsClass() {
    Set<String> elsewhere =
        House.CLASSES.stream()
            .flatMap(type -> type.getCodeUnits().stream())
            .filter(unit -> unit.isAnnotatedWith(Calculation.class))
            .filter(
                unit ->
                    !unit.getAnnotationOfType(Calculation.class)
                        .value()
                        .startsWith(
                            unit.getOwner().getPackageName().substring(House.ROOT.length()) + "."))
            .map(JavaCodeUnit::getFullName)
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(elsewhere).isEmpty();
  }
}

package io.github.seamstead.examples.derivations;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.testing.DerivationChecks;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Walks the derivations of all demos and samples step by step with an expression library that
 * shares no code with the recorder, and lets no published calculation go without one.
 */
class EveryCalculationTest {

  private static final Path JOBS = Path.of("jobs");

  @Test
  void everyPublishedCalculationHasASampleThatIsWalked() {
    List<JavaMethod> published = published();
    List<String> ids =
        published.stream().map(m -> m.getAnnotationOfType(Calculation.class).value()).toList();
    assertThat(ids).hasSizeGreaterThan(50).doesNotHaveDuplicates();
    assertThat(new TreeSet<>(ids))
        .as("published calculations, each with a line in Samples")
        .isEqualTo(new TreeSet<>(Samples.all().keySet()));
    assertThat(published)
        .as("a published calculation takes its steps last")
        .allMatch(
            m ->
                m.getRawParameterTypes()
                    .get(m.getRawParameterTypes().size() - 1)
                    .isEquivalentTo(Steps.class));
  }

  @TestFactory
  List<DynamicTest> samplesFollowToTheValueOfThePlainCall() {
    List<DynamicTest> tests = new ArrayList<>();
    for (Map.Entry<String, ToDoubleFunction<Steps>> sample : Samples.all().entrySet()) {
      tests.add(
          DynamicTest.dynamicTest(
              sample.getKey(),
              () -> {
                StepRecorder steps = new StepRecorder();
                double worked = sample.getValue().applyAsDouble(steps);
                assertThat(sample.getValue().applyAsDouble(Steps.none())).isEqualTo(worked);
                DerivationChecks.assertFollowsTo(
                    steps.derivation(sample.getKey(), sample.getKey()), worked);
              }));
    }
    return tests;
  }

  @TestFactory
  List<DynamicTest> demosFollow() throws IOException {
    List<DynamicTest> tests = new ArrayList<>();
    try (DirectoryStream<Path> jobs = Files.newDirectoryStream(JOBS, "*.json")) {
      for (Path job : jobs) {
        tests.add(
            DynamicTest.dynamicTest(
                job.getFileName().toString(),
                () -> {
                  JobPlan plan =
                      JobPlanner.plan(
                          JobReader.read(job), PlanOptions.defaults().withWorkedSteps());
                  assertThat(plan.derivations()).isNotEmpty();
                  plan.derivations().forEach(DerivationChecks::assertFollows);
                }));
      }
    }
    assertThat(tests).hasSizeGreaterThanOrEqualTo(3);
    return tests;
  }

  /** A calculation is published where callers can reach it; others are walked in their module. */
  private static List<JavaMethod> published() {
    return new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages(
                "io.github.seamstead.shared",
                "io.github.seamstead.geometry",
                "io.github.seamstead.materials",
                "io.github.seamstead.assembly")
            .stream()
            .flatMap(c -> c.getMethods().stream())
            .filter(m -> m.isAnnotatedWith(Calculation.class))
            .filter(m -> isPublic(m.getModifiers()) && isPublic(m.getOwner().getModifiers()))
            .toList();
  }

  private static boolean isPublic(Set<JavaModifier> modifiers) {
    return modifiers.contains(JavaModifier.PUBLIC);
  }
}

package io.github.seamstead.api.plan;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.api.chapter.joining.JoiningPart;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.testing.DemoJobs;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is equal is said to be equal: two plans of one job agree part by part. */
class EqualPlansTest {

  private static final Set<Class<?>> HOLDERS = Set.of(Optional.class, List.class);

  /** These hold the switch of their run and where its search stands, which are no other's. */
  private static final Set<String> OF_THE_RUN = Set.of("joining", "cover");

  @ParameterizedTest
  @ValueSource(strings = {"class-model.json", "clay-bank.json", "hill-hide.json"})
  void twoPlansOfAJobAgreePartByPart(String demo) throws ReflectiveOperationException {
    Job job = JobReader.read(DemoJobs.FOLDER.resolve(demo));
    JobPlan one = JobPlanner.plan(job, PlanOptions.defaults());
    JobPlan other = JobPlanner.plan(job, PlanOptions.defaults());
    List<Method> parts =
        Arrays.stream(JobPlan.class.getMethods())
            .filter(method -> method.getParameterCount() == 0)
            .filter(method -> HOLDERS.contains(method.getReturnType()))
            .filter(method -> !OF_THE_RUN.contains(method.getName()))
            .toList();
    assertThat(parts).hasSizeGreaterThan(10);
    assertThat(other.joining().flatMap(JoiningPart::order))
        .isEqualTo(one.joining().flatMap(JoiningPart::order));
    assertThat(other.cover().map(CoverPart::panels)).isEqualTo(one.cover().map(CoverPart::panels));
    for (Method part : parts) {
      assertThat(part.invoke(other)).as(part.getName()).isEqualTo(part.invoke(one));
    }
  }
}

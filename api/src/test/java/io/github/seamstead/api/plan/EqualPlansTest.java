package io.github.seamstead.api.plan;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.chapter.joining.JoiningPart;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.testing.DemoJobs;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is equal is said to be equal: two plans of one job agree part by part. */
class EqualPlansTest {

  @ParameterizedTest
  @ValueSource(strings = {"class-model.json", "clay-bank.json", "hill-hide.json"})
  void twoPlansOfAJobAgreePartByPart(String demo) throws ReflectiveOperationException {
    Job job = JobReader.read(DemoJobs.FOLDER.resolve(demo));
    JobPlan one = JobPlanner.plan(job, PlanOptions.defaults());
    JobPlan other = JobPlanner.plan(job, PlanOptions.defaults());
    List<Method> parts =
        Arrays.stream(JobPlan.class.getMethods())
            .filter(method -> method.getParameterCount() == 0)
            .filter(method -> method.getReturnType() == Optional.class)
            // It holds the switch of its run, which is no other's.
            .filter(method -> !method.getName().equals("joining"))
            .toList();
    assertThat(parts).hasSizeGreaterThan(10);
    assertThat(other.joining().flatMap(JoiningPart::order))
        .isEqualTo(one.joining().flatMap(JoiningPart::order));
    for (Method part : parts) {
      assertThat(part.invoke(other)).as(part.getName()).isEqualTo(part.invoke(one));
    }
  }
}

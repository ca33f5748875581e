package io.github.seamstead.examples.cookbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.jackson.SeamsteadModule;
import io.github.seamstead.api.job.Frame;
import io.github.seamstead.api.job.FrameMeasure;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobFault;
import io.github.seamstead.api.job.JobFaultsException;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.job.JobSchema;
import io.github.seamstead.api.job.JobWriter;
import io.github.seamstead.api.job.Plant;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.api.results.Results;
import io.github.seamstead.api.results.ResultsJson;
import io.github.seamstead.shared.quantity.Dimension;
import io.github.seamstead.shared.quantity.QuantityText;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The recipes about jobs and results; {@link CookbookTest} holds the page to them. */
class JobRecipes {

  @TempDir private Path folder;

  @Test
  void planAJobFromAFile() {
    // recipe 1
    Job job = JobReader.read(Path.of("jobs/class-model.json"));
    JobPlan plan = JobPlanner.plan(job, PlanOptions.defaults());
    double area = plan.frame().orElseThrow().measures().coverArea(); // in square metres
    // end
    assertThat(area).isBetween(0.2, 0.22);
  }

  @Test
  void showAllFaultsOfADocument() {
    // recipe 2
    List<String> shown = new ArrayList<>();
    try {
      JobReader.parse(
          "{\"seamstead\": 2, \"frame\": {\"sides\": 2, \"measures\": {\"height\": 3}}}");
    } catch (JobFaultsException e) {
      for (JobFault fault : e.faults()) {
        shown.add(fault.path() + ": " + fault.given() + "; " + fault.allowed());
      }
    }
    // end
    assertThat(shown).containsExactly("$.frame.sides: 2; must be a whole number from 3 to 64");
  }

  private static Job made() {
    // recipe 3
    Job job =
        Job.builder()
            .frame(
                Frame.builder()
                    .sides(12)
                    .measures(Map.of(FrameMeasure.BASE_SIDE, 1.2, FrameMeasure.HEIGHT, 2.6)))
            .plant(Plant.builder())
            .build();
    // end
    return job;
  }

  @Test
  void makeAJobInCodeAndSeeWhatIsAssumed() {
    Job job = made();
    // recipe 4
    List<String> assumed =
        job.assumptions().stream().map(a -> a.path() + " = " + a.value()).toList();
    // end
    assertThat(assumed).containsExactly("$.plant.bucket = 12 l");
  }

  @Test
  void writeAJobAsADocument() throws Exception {
    Job job = made();
    Path file = folder.resolve("job.json");
    // recipe 5
    Files.writeString(file, JobWriter.text(job));
    Job again = JobReader.read(file); // equals job
    // end
    assertThat(again).isEqualTo(job);
  }

  @Test
  void sweepOverDesigns() {
    Job job = made();
    // recipe 6
    Map<Integer, Double> areas = new TreeMap<>();
    for (int sides = 6; sides <= 16; sides++) {
      Frame.Builder frame = job.document().frame().orElseThrow().toBuilder().sides(sides);
      Job other = job.toBuilder().frame(frame).build();
      JobPlan plan = JobPlanner.plan(other, PlanOptions.defaults().only(Chapter.FRAME));
      areas.put(sides, plan.frame().orElseThrow().measures().coverArea());
    }
    // end
    assertThat(areas).hasSize(11);
    assertThat(new ArrayList<>(areas.values())).isSorted();
  }

  @Test
  void readResultsBack() throws Exception {
    JobPlan plan = JobPlanner.plan(made(), PlanOptions.defaults());
    Path file = folder.resolve("results.json");
    Files.writeString(file, ResultsJson.text(plan));
    // recipe 7
    Results results = Results.read(file);
    double hip = results.root().one("frame").one("measures").number("hipEdge_m");
    boolean floor = results.root().findOne("floor").isPresent(); // not asked for: not there
    // end
    double radius = 1.2 / (2 * Math.sin(Math.PI / 12));
    assertThat(hip).isCloseTo(Math.hypot(radius, 2.6), within(1e-9));
    assertThat(floor).isFalse();
  }

  @Test
  void tellWhetherResultsAreOfAJob() {
    Job job = made();
    Results results = Results.of(JobPlanner.plan(job, PlanOptions.defaults()));
    // recipe 8
    boolean fresh = results.jobDigest().equals(job.digest());
    // end
    assertThat(fresh).isTrue();
    Job other = job.toBuilder().plant(Plant.builder().bucket(0.01)).build();
    assertThat(results.jobDigest()).isNotEqualTo(other.digest());
  }

  @Test
  void bindJobsInAnObjectMapper() throws Exception {
    String json = Files.readString(Path.of("jobs/class-model.json"));
    // recipe 9
    ObjectMapper mapper = new ObjectMapper().registerModule(new SeamsteadModule());
    Job job = mapper.readValue(json, Job.class);
    String text = mapper.writeValueAsString(job);
    // end
    assertThat(JobReader.parse(text)).isEqualTo(job);
  }

  @Test
  void readASizeAsItIsWritten() {
    // recipe 10
    double metres = QuantityText.parse("7 ft 6 in", Dimension.LENGTH);
    String tape = QuantityText.feetAndInches(metres, 16);
    // end
    assertThat(metres).isCloseTo(2.286, within(1e-12));
    assertThat(tape).isEqualTo("7 ft 6 in");
  }

  @Test
  void giveAnEditorTheSchemas() throws Exception {
    // recipe 11
    Files.writeString(folder.resolve("job.schema.json"), JobSchema.text());
    Files.writeString(folder.resolve("results.schema.json"), ResultsJson.schemaText());
    // end
    assertThat(folder.resolve("results.schema.json")).content().contains(ResultsJson.SCHEMA_ID);
  }
}

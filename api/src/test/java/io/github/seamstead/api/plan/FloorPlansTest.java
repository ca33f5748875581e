package io.github.seamstead.api.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.github.seamstead.api.book.Book;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.chapter.drying.DryingPart;
import io.github.seamstead.api.chapter.floor.FloorPart;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.testing.DemoJobs;
import io.github.seamstead.materials.floor.OrderLine;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FloorPlansTest {

  private @TempDir Path folder;

  private JobPlan plan(Consumer<ObjectNode> change) throws IOException {
    ObjectMapper json = new ObjectMapper();
    Path demo = DemoJobs.FOLDER.resolve("seed-loft.json");
    ObjectNode job = (ObjectNode) json.readTree(demo.toFile());
    change.accept(job);
    Path file = folder.resolve("job.json");
    Files.writeString(file, json.writeValueAsString(job));
    return JobPlanner.plan(JobReader.read(file), PlanOptions.defaults());
  }

  @Test
  void aRoundFloorIsMixedOnATarpaulinWithoutPlant() throws IOException {
    JobPlan plan =
        plan(
            job -> {
              job.remove("plant");
              ObjectNode floor = (ObjectNode) job.get("floor");
              floor.remove("gaps");
              floor.putObject("outline").put("diameter", "5 m");
              floor.put("edging", "0 mm");
            });
    FloorPart floor = plan.floor().orElseThrow();
    assertThat(floor.buildUp().footprint().area()).isCloseTo(Math.PI * 6.25, within(1e-9));
    assertThat(floor.drum()).isFalse();
    assertThat(floor.batches()).isNotEmpty();
    assertThat(floor.orders().orElseThrow().lines())
        .extracting(OrderLine::material)
        .contains("chopped straw");
    assertThat(floor.work()).isPresent();
    String html = Book.of(plan).html();
    assertThat(html)
        .contains("On the tarpaulin: ")
        .contains("chopped straw, last, by handfuls")
        .contains("The work, step by step")
        .doesNotContain("A turning drum takes sleeves");
  }

  @Test
  void wetHeapsGetNoWaterAndAreReckonedAsWetAsTheyAre() throws IOException {
    JobPlan plan =
        plan(
            job -> {
              ((ObjectNode) job.at("/soils/0")).put("moisture", "22 %");
              ((ObjectNode) job.at("/aggregates/0")).put("moisture", "7 %");
            });
    assertThat(plan.unmet()).anyMatch(u -> u.what().contains("dry bank-soil to "));
    DryingPart pack = plan.drying().get(0);
    assertThat(pack.moisture()).isBetween(0.11, 0.12);
    String html = Book.of(plan).html();
    assertThat(html).contains("The parts are too wet: add no water.").contains("no water</strong>");
    assertThat(html).doesNotContain("Add the last of the water by feel");
  }

  @Test
  void aBucketTooLargeForTheDrumIsNotOnTheCard() throws IOException {
    JobPlan plan =
        plan(
            job -> {
              ObjectNode plant = (ObjectNode) job.get("plant");
              plant.put("bucket", "20 l");
              ((ObjectNode) plant.get("mixer")).put("workingVolume", "25 l");
            });
    assertThat(plan.unmet()).anyMatch(u -> u.what().contains("measure in quarter buckets"));
    assertThat(Book.of(plan).html()).contains("Do not mix it so: ");
  }
}

package io.github.seamstead.examples.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobFaultsException;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.job.JobSchema;
import io.github.seamstead.api.job.JobWriter;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.api.results.ResultsJson;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Whatever a job says comes back as it was, key by key of the schema, and is planned alike. */
class RoundTripTest {

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final JobKeys KEYS = new JobKeys();
  private static final List<String> DEMOS =
      List.of(
          "class-model", "seed-loft", "hill-hide", "clay-bank", "orchard-tent", "orchard-floor");

  /** How often a value is drawn for a key before the key is left to another document. */
  private static final int DRAWS = 25;

  /** A key of the first form of the job, which the reader renews: see the tests of renewal. */
  private static final String FORMER = "fall";

  private final Set<String> seen = new TreeSet<>();

  @Test
  void everyKeyOfTheSchemaIsWrittenAndReadBack() throws IOException {
    Draw draw = new Draw(20261129, 1);
    assertThat(comesBack(newest())).isTrue();
    assertThat(comesBack(paired())).isTrue();
    ObjectNode cut = Bases.read("class-model");
    ((ObjectNode) cut.get("frame")).putObject("opening").put("cutHeight", "0.2 m");
    assertThat(comesBack(cut)).isTrue();
    for (String demo : DEMOS) {
      assertThat(comesBack(Bases.read(demo))).isTrue();
    }
    // In rounds, as a key of what the first round puts in is met in the second.
    for (int round = 0; round < 3; round++) {
      for (String demo : DEMOS) {
        ObjectNode document = Bases.read(demo);
        for (JobKeys.Place place : KEYS.places(document)) {
          if (place.value().isEmpty() && !place.key().isEmpty() && !seen.contains(place.key())) {
            fill(document, place, draw);
          }
        }
      }
    }
    Set<String> missing = new TreeSet<>();
    keysOf(JSON.readTree(JobSchema.text()), missing);
    assertThat(missing).hasSizeGreaterThan(200);
    missing.removeAll(seen);
    missing.remove(FORMER);
    assertThat(missing).isEmpty();
  }

  /** Puts in what the reader takes, or nothing; a key that contradicts others goes out again. */
  private void fill(ObjectNode document, JobKeys.Place place, Draw draw) throws IOException {
    for (int i = 0; i < DRAWS; i++) {
      place.put(KEYS.make(place.form(), place.key(), draw));
      if (comesBack(document)) {
        return;
      }
    }
    place.remove();
  }

  /** Whether the reader takes the document; one that it takes must come back equal. */
  private boolean comesBack(JsonNode document) throws IOException {
    Job job;
    try {
      job = JobReader.parse(document.toString().getBytes(StandardCharsets.UTF_8));
    } catch (JobFaultsException e) {
      return false;
    }
    String text = JobWriter.text(job);
    Job back = JobReader.parse(text);
    assertThat(back.document()).isEqualTo(job.document());
    assertThat(back).isEqualTo(job);
    assertThat(back.digest()).isEqualTo(job.digest());
    assertThat(job.toBuilder().build()).isEqualTo(job);
    gather(JSON.readTree(text), seen);
    return true;
  }

  private static void gather(JsonNode node, Set<String> keys) {
    node.properties().forEach(member -> keys.add(member.getKey()));
    node.forEach(inner -> gather(inner, keys));
  }

  /** The names of all members of all shapes. */
  private static void keysOf(JsonNode schema, Set<String> keys) {
    schema.path("properties").properties().forEach(key -> keys.add(key.getKey()));
    schema.forEach(inner -> keysOf(inner, keys));
  }

  @Test
  void theNewestKeysArePlannedAlike() {
    ObjectNode document = newest();
    Job job = JobReader.parse(document.toString());
    Job back = JobReader.parse(JobWriter.text(job));
    assertThat(results(back)).isEqualTo(results(job));
  }

  /** The model with the keys that came last, and with those that only fit each other. */
  private static ObjectNode newest() {
    ObjectNode document = Bases.read("class-model");
    ObjectNode cover = (ObjectNode) document.get("cover");
    cover.put("keepTogether", true).putArray("moreSplices").add(2);
    ((ObjectNode) cover.get("hem"))
        .putArray("faces")
        .addObject()
        .put("face", 1)
        .put("kind", "turned")
        .put("allowance", "12 mm");
    ObjectNode board = (ObjectNode) document.get("stock").get("sheets").get(0);
    board.remove("count");
    ArrayNode outline = board.putArray("outline");
    outline.addObject().put("x", "0 mm").put("y", "0 mm");
    outline.addObject().put("x", "700 mm").put("y", "0 mm");
    outline.addObject().put("x", "700 mm").put("y", "500 mm");
    outline.addObject().put("x", "0 mm").put("y", "500 mm");
    ArrayNode copies = board.putArray("copies");
    for (int i = 1; i <= 6; i++) {
      copies.addObject().put("id", "board-" + i);
    }
    ((ObjectNode) copies.get(0))
        .putArray("flaws")
        .addObject()
        .put("x", "10 mm")
        .put("y", "10 mm")
        .put("width", "5 mm")
        .put("height", "5 mm");
    board.putArray("bands").add(2);
    ArrayNode doubts = document.putArray("doubts");
    doubts.addObject().put("of", "frame.measures.height").put("standard", "2 mm");
    doubts
        .addObject()
        .put("of", "cover.fabric.massPerArea")
        .put("low", "380 g/m2")
        .put("high", "420 g/m2");
    return document;
  }

  /** A floor with keys that come in pairs, or in place of one another. */
  private static ObjectNode paired() {
    ObjectNode document = Bases.read("orchard-floor");
    ObjectNode floor = (ObjectNode) document.get("floor");
    ArrayNode corners = floor.putObject("outline").putArray("corners");
    corners.addObject().put("x", "0 m").put("y", "0 m");
    corners.addObject().put("x", "5 m").put("y", "0 m");
    corners.addObject().put("x", "0 m").put("y", "4 m");
    ((ObjectNode) floor.get("mixes").get(1)).put("leastClay", "8 %").put("greatestClay", "14 %");
    ((ObjectNode) document.get("soils").get(0))
        .putObject("laboratory")
        .put("clay", "30 %")
        .put("silt", "30 %")
        .put("sand", "40 %")
        .put("limits", "iso")
        .put("organicMatter", "1 %")
        .put("solubleSalts", "0.1 %");
    return document;
  }

  private static String results(Job job) {
    return ResultsJson.text(JobPlanner.plan(job, PlanOptions.defaults()))
        .replaceAll(" \\(line \\d+\\)|\"line\": \\d+", "");
  }
}

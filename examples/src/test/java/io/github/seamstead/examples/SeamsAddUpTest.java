package io.github.seamstead.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.github.seamstead.api.book.BookWriter;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlanner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The metres of seam that the written results and book of a demo give for each kind are those of
 * the edges that they draw, measured here corner by corner.
 */
class SeamsAddUpTest {

  @TempDir static Path folder;

  private static JsonNode results;
  private static String book;

  @BeforeAll
  static void plan() throws IOException {
    BookWriter.write(
        JobPlanner.plan(JobReader.read(Path.of("jobs", "seed-loft.json")), PlanOptions.defaults()),
        folder);
    results = new ObjectMapper().readTree(folder.resolve("results.json").toFile());
    book = Files.readString(folder.resolve("book.html"));
  }

  private static Map<String, Double> stated() {
    Map<String, Double> metres = new LinkedHashMap<>();
    for (JsonNode run : results.path("joining").path("seams")) {
      metres.merge(
          run.path("kind").asText(),
          run.path("length_m").asDouble() * run.path("count").asInt(),
          Double::sum);
    }
    return metres;
  }

  private static double edge(JsonNode corners, int index) {
    JsonNode a = corners.get(Math.floorMod(index, corners.size()));
    JsonNode b = corners.get(Math.floorMod(index + 1, corners.size()));
    return Math.hypot(
        b.get(0).asDouble() - a.get(0).asDouble(), b.get(1).asDouble() - a.get(1).asDouble());
  }

  private static double perimeter(JsonNode corners) {
    double sum = 0;
    for (int i = 0; i < corners.size(); i++) {
      sum += edge(corners, i);
    }
    return sum;
  }

  /** The finished faces of the panels, each of one face with base, right hip, top and left hip. */
  private static double faces(ToDoubleFunction<JsonNode> measure) {
    double sum = 0;
    for (JsonNode panel : results.path("cover").path("panels")) {
      assertThat(panel.path("faces").asInt()).isEqualTo(1);
      sum += measure.applyAsDouble(panel.path("face_m"));
    }
    return sum;
  }

  private static double shapes(String kind, ToDoubleFunction<JsonNode> measure) {
    double sum = 0;
    for (JsonNode shape : results.path("cover").path("shapes")) {
      if (shape.path("kind").asText().equals(kind)) {
        sum += shape.path("count").asInt() * measure.applyAsDouble(shape.path("stitch_m"));
      }
    }
    return sum;
  }

  /** Where the splices of a panel lie: the horizontal edges inside its face. */
  private static double splices() {
    Map<String, List<JsonNode>> parts = new LinkedHashMap<>();
    for (JsonNode shape : results.path("cover").path("shapes")) {
      if (shape.path("kind").asText().equals("panel_part")) {
        for (JsonNode label : shape.path("labels")) {
          parts
              .computeIfAbsent(label.asText().split("-")[0], key -> new ArrayList<>())
              .add(shape.path("stitch_m"));
        }
      }
    }
    double sum = 0;
    for (List<JsonNode> ofOne : parts.values()) {
      assertThat(ofOne).hasSize(2);
      // Finished parts meet in one line, the top of the lower and the base of the upper.
      ofOne.sort(Comparator.comparingDouble(part -> height(part, false)));
      double top = level(ofOne.get(0), height(ofOne.get(0), true));
      double base = level(ofOne.get(1), height(ofOne.get(1), false));
      assertThat(top).isCloseTo(base, within(1e-9));
      sum += top;
    }
    return sum;
  }

  /** The greatest height of a corner, or the least. */
  private static double height(JsonNode corners, boolean greatest) {
    double height = corners.get(0).get(1).asDouble();
    for (JsonNode corner : corners) {
      double y = corner.get(1).asDouble();
      height = greatest ? Math.max(height, y) : Math.min(height, y);
    }
    return height;
  }

  /** The length of the edges at one height. */
  private static double level(JsonNode corners, double height) {
    double sum = 0;
    for (int i = 0; i < corners.size(); i++) {
      double from = corners.get(i).get(1).asDouble();
      double to = corners.get((i + 1) % corners.size()).get(1).asDouble();
      if (Math.max(Math.abs(from - height), Math.abs(to - height)) < 1e-9) {
        sum += edge(corners, i);
      }
    }
    return sum;
  }

  /** Straight sides of a cap's sector, and its curved rim: many short edges of one length. */
  private static double sector(JsonNode corners, boolean straight) {
    double longest = 0;
    for (int i = 0; i < corners.size(); i++) {
      longest = Math.max(longest, edge(corners, i));
    }
    double sum = 0;
    for (int i = 0; i < corners.size(); i++) {
      if (edge(corners, i) > longest / 2 == straight) {
        sum += edge(corners, i);
      }
    }
    return sum;
  }

  @Test
  void metresOfEachKindAreThoseOfTheDrawnEdges() {
    Map<String, Double> drawn = new LinkedHashMap<>();
    drawn.put("splices in panels", splices());
    drawn.put("patches round openings", shapes("patch", SeamsAddUpTest::perimeter));
    drawn.put("flaps over openings", shapes("flap", flap -> edge(flap, 2)));
    drawn.put("panel to panel", faces(face -> edge(face, 1)));
    drawn.put("turn-in at the top", faces(face -> edge(face, 2)));
    drawn.put("ends of the skirt's strips", shapes("skirt", strip -> edge(strip, 1)));
    drawn.put("skirt to cover", faces(face -> edge(face, 0)));
    drawn.put("joints of the cap", shapes("cap", cap -> sector(cap, true) / 2));
    drawn.put("cap or apron to cover, after turning", shapes("cap", cap -> sector(cap, false)));
    JsonNode lining = results.path("cover").path("lining");
    drawn.put("lining", lining.path("count").asInt() * liningHip(lining.path("cut_m")));
    Map<String, Double> stated = stated();
    assertThat(stated.keySet()).isEqualTo(drawn.keySet());
    drawn.forEach(
        (kind, metres) -> assertThat(stated.get(kind)).as(kind).isCloseTo(metres, within(1e-6)));
    // Both edges of a ring seam are drawn: the left hips come to the same.
    assertThat(faces(face -> edge(face, 3))).isCloseTo(stated.get("panel to panel"), within(1e-6));
    assertThat(results.path("joining").path("seams_m").asDouble())
        .isCloseTo(drawn.values().stream().mapToDouble(m -> m).sum(), within(1e-6));
  }

  /** Cut parallel to its hips, so that raw ends at base and top leave the hip's own length. */
  private static double liningHip(JsonNode cut) {
    return edge(cut, 1);
  }

  @Test
  void theBookGivesTheSameMetres() {
    String table = book.substring(book.indexOf("All seams, in the order of the work"));
    stated()
        .forEach(
            (kind, metres) -> {
              String row = Pattern.quote(kind.replace("'", "&#39;")) + "</td>[^0-9]*([0-9.]+)";
              String plain = Pattern.quote(kind) + "</td>[^0-9]*([0-9.]+)";
              Matcher found = Pattern.compile("(?:" + row + "|" + plain + ")").matcher(table);
              assertThat(found.find()).as(kind).isTrue();
              String written = found.group(1) == null ? found.group(2) : found.group(1);
              assertThat(written).as(kind).isEqualTo(String.format(Locale.ROOT, "%.3f", metres));
            });
  }
}

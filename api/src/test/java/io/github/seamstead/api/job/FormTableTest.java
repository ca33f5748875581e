package io.github.seamstead.api.job;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Holds the table for forms to the shapes and the schema that it must follow. */
class FormTableTest {

  private static final ObjectMapper JSON = new ObjectMapper();

  private final JsonNode table = read(FormTable.text());

  private static JsonNode read(String text) {
    try {
      return JSON.readTree(text);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void everyKeyOfEveryShapeStandsInItInOrder() {
    int keys = 0;
    for (Shape<?> shape : Shapes.DOCUMENT.reachable()) {
      if (shape.type().isRecord()) {
        List<String> found = new ArrayList<>();
        table
            .path("shapes")
            .path(shape.type().getSimpleName())
            .path("keys")
            .forEach(key -> found.add(key.path("key").asText()));
        assertThat(found).as(shape.type().getSimpleName()).isEqualTo(shape.names());
        keys += found.size();
      }
    }
    assertThat(keys).isGreaterThan(300);
  }

  @Test
  void whatIsWrittenOnASheetIsCalledANameAndNotAnId() {
    assertThat(table.findValuesAsText("label")).contains("short name").doesNotContain("id");
  }

  @Test
  void everyNamedShapeIsThere() {
    Set<String> named = new TreeSet<>(table.findValuesAsText("shape"));
    named.add(table.path("root").asText());
    named.add(table.path("diary").asText());
    for (String name : named) {
      assertThat(table.path("shapes").has(name)).as(name).isTrue();
    }
  }

  @Test
  void everyKeyHasAKindALabelAndHelp() {
    table
        .path("shapes")
        .forEach(
            shape ->
                shape
                    .path("keys")
                    .forEach(
                        key -> {
                          String name = key.toString();
                          assertThat(key.path("kind").asText()).as(name).isNotBlank();
                          assertThat(key.path("label").asText()).as(name).isNotBlank();
                          assertThat(key.path("help").asText()).as(name).isNotBlank();
                        }));
  }

  @Test
  void whatIsRequiredAndWhatIsAssumedIsThatOfTheShapes() {
    for (Shape<?> shape : Shapes.DOCUMENT.reachable()) {
      JsonNode keys = table.path("shapes").path(shape.type().getSimpleName()).path("keys");
      for (JsonNode key : keys) {
        Key<?> of =
            shape.entries().stream()
                .filter(entry -> entry.name().equals(key.path("key").asText()))
                .findFirst()
                .orElseThrow();
        assertThat(key.path("required").asBoolean()).as(of.name()).isEqualTo(of.must());
        assertThat(key.path("assumed").path("text").asText()).as(of.name()).isEqualTo(of.shown());
      }
    }
  }

  @Test
  void quantitiesHaveTheirUnitsAndLimits() {
    JsonNode site = table.path("shapes").path("Frame").path("keys");
    assertThat(site.isEmpty()).isFalse();
    List<JsonNode> quantities = new ArrayList<>();
    collect(table, quantities);
    assertThat(quantities).hasSizeGreaterThan(100);
    for (JsonNode quantity : quantities) {
      String name = quantity.toString();
      assertThat(quantity.path("dimension").asText()).as(name).isNotBlank();
      assertThat(quantity.has("range") || quantity.has("least")).as(name).isTrue();
      assertThat(quantity.has("range")).as(name).isNotEqualTo(quantity.has("bare"));
    }
  }

  @Test
  void aKeyThatIsAddedAppears() {
    Shape<Point> shape = Shape.of(Point.class, "a point");
    shape.required("x", Quantities.length("m", 0, 1), "how far along");
    shape.optional("hasTwoWords", Kinds.flag(), "whether it has");
    JsonNode keys = read(FormTable.text(shape)).path("keys");
    assertThat(keys.path(1).path("key").asText()).isEqualTo("hasTwoWords");
    assertThat(keys.path(1).path("label").asText()).isEqualTo("has two words");
    assertThat(keys.path(1).path("kind").asText()).isEqualTo("yesno");
    assertThat(keys.path(0).path("dimension").asText()).isEqualTo("length");
  }

  @Test
  void recordsAreThoseThatDocumentsAreReadAs() {
    assertThat(FormTable.records())
        .contains(JobDocument.class, Frame.class, DiaryRow.class)
        .doesNotHaveDuplicates();
  }

  private static void collect(JsonNode node, List<JsonNode> quantities) {
    if (node.path("kind").asText().equals("quantity")) {
      quantities.add(node);
    }
    node.forEach(child -> collect(child, quantities));
  }
}

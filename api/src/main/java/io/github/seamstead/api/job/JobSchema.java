package io.github.seamstead.api.job;

import io.github.seamstead.api.json.JsonWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The JSON Schema (draft 2020-12) of the job document, made from the shapes that read it. */
public final class JobSchema {

  /** The name of the published schema in the jar, beside this class. */
  public static final String RESOURCE = "job.schema.json";

  private JobSchema() {}

  /**
   * Makes the schema.
   *
   * @return the schema as indented JSON text that ends with a line break
   */
  public static String text() {
    Map<String, Object> definitions = new LinkedHashMap<>();
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    schema.put("title", "Seamstead job document, version " + Forms.NEWEST);
    Shapes.DOCUMENT.describe(schema, definitions);
    schema.put(
        "anyOf",
        Stream.of("frame", "floor", "soils").map(key -> Map.of("required", List.of(key))).toList());
    schema.put("$defs", definitions);
    return JsonWriter.text(schema);
  }
}

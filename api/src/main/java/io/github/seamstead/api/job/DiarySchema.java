package io.github.seamstead.api.job;

import io.github.seamstead.api.json.JsonWriter;
import java.util.LinkedHashMap;
import java.util.Map;

/** The JSON Schema (draft 2020-12) of the diary, made from the shapes that read it. */
public final class DiarySchema {

  /** The name of the published schema in the jar, beside this class. */
  public static final String RESOURCE = "diary.schema.json";

  private DiarySchema() {}

  /**
   * Makes the schema.
   *
   * @return the schema as indented JSON text that ends with a line break
   */
  public static String text() {
    Map<String, Object> definitions = new LinkedHashMap<>();
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    schema.put("title", "Seamstead diary of a job, version 1");
    DiaryShapes.diaryDocument().describe(schema, definitions);
    schema.put("$defs", definitions);
    return JsonWriter.text(schema);
  }
}

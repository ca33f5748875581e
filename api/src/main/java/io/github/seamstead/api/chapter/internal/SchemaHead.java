package io.github.seamstead.api.chapter.internal;

import io.github.seamstead.api.json.JsonWriter;
import java.util.LinkedHashMap;
import java.util.Map;

/** The JSON Schema (draft 2020-12) of data that the library writes. */
public final class SchemaHead {

  private SchemaHead() {}

  /**
   * Makes a schema.
   *
   * @param id the name by which it is known; it does not change within a version
   * @param title what the data is, with its version
   * @param root the keys
   * @return the schema as indented JSON text
   */
  public static String text(String id, String title, Facts<?> root) {
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    schema.put("$id", id);
    schema.put("title", title);
    schema.put(
        "$comment",
        "Later releases add keys under the same version: leave unknown keys aside. A key that is"
            + " taken away or means something else gives a new version.");
    schema.putAll(SchemaParts.shared(root.schema()));
    return JsonWriter.text(schema);
  }
}

package io.github.seamstead.api.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads JSON text as plain data: the inverse of {@link JsonWriter}. Costs time linear in the text.
 */
public final class JsonReader {

  private static final int DEEPEST = 64;

  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .streamReadConstraints(StreamReadConstraints.builder().maxNestingDepth(DEEPEST).build())
          .build();

  private JsonReader() {}

  /**
   * Reads a text.
   *
   * @param text JSON text with one value
   * @return maps in the order of the text, lists, texts, numbers (all as {@code Double}) and
   *     booleans
   * @throws IOException if the text is not JSON, holds a null, repeats a key or nests too deep
   */
  public static Object read(String text) throws IOException {
    try (JsonParser parser = FACTORY.createParser(text)) {
      parser.nextToken();
      Object value = value(parser);
      if (parser.nextToken() != null) {
        throw new IOException("the text goes on after its end");
      }
      return value;
    }
  }

  private static Object value(JsonParser parser) throws IOException {
    JsonToken token = parser.currentToken();
    if (token == null) {
      throw new IOException("the text is empty");
    }
    return switch (token) {
      case START_OBJECT -> object(parser);
      case START_ARRAY -> array(parser);
      case VALUE_STRING -> parser.getText();
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> Double.valueOf(parser.getText());
      case VALUE_TRUE -> true;
      case VALUE_FALSE -> false;
      default -> throw new IOException("a value that is no data: " + token);
    };
  }

  private static Map<String, Object> object(JsonParser parser) throws IOException {
    Map<String, Object> members = new LinkedHashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String key = parser.currentName();
      parser.nextToken();
      members.put(key, value(parser));
    }
    return members;
  }

  private static List<Object> array(JsonParser parser) throws IOException {
    List<Object> items = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      items.add(value(parser));
    }
    return items;
  }
}

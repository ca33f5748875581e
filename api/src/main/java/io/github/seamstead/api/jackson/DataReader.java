package io.github.seamstead.api.jackson;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonMappingException;
import java.io.IOException;
import java.util.function.Function;

/** Reads a value by its own reader, which checks it and names all faults at once. */
final class DataReader<T> extends JsonDeserializer<T> {

  private final Function<String, T> parse;

  DataReader(Function<String, T> parse) {
    this.parse = parse;
  }

  @Override
  public T deserialize(JsonParser in, DeserializationContext context) throws IOException {
    String text = context.readTree(in).toString();
    try {
      return parse.apply(text);
    } catch (IllegalArgumentException e) {
      throw JsonMappingException.from(in, e.getMessage(), e);
    }
  }
}

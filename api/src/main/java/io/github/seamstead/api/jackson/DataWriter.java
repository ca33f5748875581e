package io.github.seamstead.api.jackson;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.SerializerProvider;
import io.github.seamstead.api.json.JsonReader;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Writes a value as the data that its own writer gives, whatever the generator writes to. */
final class DataWriter<T> extends JsonSerializer<T> {

  private static final double MOST_EXACT = 1L << 53;

  private final Class<T> type;
  private final Function<T, String> text;

  DataWriter(Class<T> type, Function<T, String> text) {
    this.type = type;
    this.text = text;
  }

  @Override
  public Class<T> handledType() {
    return type;
  }

  @Override
  public void serialize(T value, JsonGenerator out, SerializerProvider provider)
      throws IOException {
    write(JsonReader.read(text.apply(value)), out);
  }

  private static void write(Object data, JsonGenerator out) throws IOException {
    if (data instanceof Map<?, ?> map) {
      out.writeStartObject();
      for (Map.Entry<?, ?> member : map.entrySet()) {
        out.writeFieldName(String.valueOf(member.getKey()));
        write(member.getValue(), out);
      }
      out.writeEndObject();
    } else if (data instanceof List<?> list) {
      out.writeStartArray();
      for (Object item : list) {
        write(item, out);
      }
      out.writeEndArray();
    } else if (data instanceof Double number) {
      if (number == Math.rint(number) && Math.abs(number) < MOST_EXACT) {
        out.writeNumber(number.longValue());
      } else {
        out.writeNumber(number);
      }
    } else if (data instanceof Boolean flag) {
      out.writeBoolean(flag);
    } else {
      out.writeString(String.valueOf(data));
    }
  }
}

package io.github.seamstead.api.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class JsonWriterTest {

  @Test
  void writesInOrderAndLeavesOutWhatIsAbsent() {
    Map<String, Object> map = new LinkedHashMap<>();
    map.put("b", 0.1);
    map.put("a", List.of(1, 2));
    map.put("none", Optional.empty());
    map.put("some", Optional.of(true));
    map.put("empty", Map.of());
    assertThat(JsonWriter.text(map))
        .isEqualTo("{\n  \"b\": 0.1,\n  \"a\": [1, 2],\n  \"some\": true,\n  \"empty\": {}\n}\n");
  }

  @Test
  void escapesWhatJsonAndScriptsCannotHold() {
    assertThat(JsonWriter.text("\"\\\n\t\r\u0001\u2028é"))
        .isEqualTo("\"\\\"\\\\\\n\\t\\r\\u0001\\u2028é\"\n");
  }

  @Test
  void refusesWhatIsNoJson() {
    assertThatThrownBy(() -> JsonWriter.text(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> JsonWriter.text(new Object()))
        .isInstanceOf(IllegalArgumentException.class);
  }
}

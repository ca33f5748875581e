package io.github.seamstead.examples.fuzz;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Changes documents: what people get wrong in the sense, and what editors break in the form. */
final class Mutator {

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final Pattern QUANTITY = Pattern.compile("^(-?[0-9]+(?:\\.[0-9]+)?)(.*)$");
  private static final List<String> REFERENCES = List.of("soil", "sand", "material", "mix");

  /** Texts that have broken readers, pages, tables or terminals somewhere. */
  private static final List<String> HOSTILE =
      List.of(
          "",
          " ",
          "\u0000",
          "\u001b[2J",
          "\u202Eabc",
          "\uFFFE",
          "\uD800",
          "e\u0301",
          "\u0130\u0131",
          "<script>x</script>",
          "\"><img onerror=x>",
          "]]>",
          "\\input{x}\\write18{y}",
          "%n%s",
          "${x}",
          "=1+1",
          "-2+3",
          "../../x",
          "CON",
          "\r\nx",
          "`x`",
          "$(x)",
          "1e999 mm",
          "-1e308",
          "1e-320 m",
          "0x10 m",
          "1,5 m",
          "1 m 2",
          "\u0661\u0662 m",
          "1/0 m",
          "5'6\"",
          "1e5",
          "+ 3 m",
          "12 12 12");

  private static final List<Double> FACTORS =
      List.of(0.0, -1.0, 0.001, 0.01, 0.1, 0.3, 0.5, 0.8, 0.95, 1.05, 1.3, 2.0, 3.0, 10.0, 100.0);

  private final JobKeys keys;
  private final Draw draw;

  Mutator(JobKeys keys, Draw draw) {
    this.keys = keys;
    this.draw = draw;
  }

  /** Changes the sense: the document still has the form of a job. */
  void sense(ObjectNode document) {
    int changes = 1 + draw.below(draw.one(1, 2, 5));
    for (int i = 0; i < changes; i++) {
      JobKeys.Place place = draw.one(keys.places(document));
      if (place.value().isPresent()) {
        change(place, place.value().get());
      } else if (draw.chance(0.5)) {
        place.put(keys.make(place.form(), place.key(), draw));
      }
    }
    mendReferences(document);
  }

  private void change(JobKeys.Place place, JsonNode value) {
    if (value instanceof ArrayNode array && !array.isEmpty()) {
      list(place, array);
    } else if (value.isNumber() && place.form().path("type").asText().equals("integer")) {
      place.put(NODES.numberNode(JobKeys.whole(place.form(), draw)));
    } else if (value.isNumber()) {
      place.put(NODES.numberNode(scaled(value.asDouble())));
    } else if (value.isBoolean()) {
      place.put(NODES.booleanNode(!value.asBoolean()));
    } else if (value.isTextual() && place.form().has("$comment") && draw.chance(0.8)) {
      Matcher quantity = QUANTITY.matcher(value.asText());
      if (quantity.matches()) {
        place.put(
            NODES.textNode(
                plain(scaled(Double.parseDouble(quantity.group(1)))) + quantity.group(2)));
      }
    } else if (value.isObject() && draw.chance(0.5)) {
      place.remove();
    } else {
      place.put(keys.make(place.form(), place.key(), draw));
    }
  }

  private void list(JobKeys.Place place, ArrayNode array) {
    switch (draw.below(4)) {
      case 0 -> array.remove(draw.below(array.size()));
      case 1 -> array.add(array.get(draw.below(array.size())).deepCopy());
      case 2 -> array.insert(0, array.remove(draw.below(array.size())));
      default -> array.add(keys.make(place.form().path("items"), place.key(), draw));
    }
  }

  private double scaled(double value) {
    if (draw.chance(0.6)) {
      return Draw.rounded(value * draw.between(0.4, 2.2));
    }
    return Draw.rounded(value * draw.one(FACTORS));
  }

  private static String plain(double value) {
    return new BigDecimal(Double.toString(value)).toPlainString();
  }

  /** What is called by a name that nothing has would be refused before it could do any harm. */
  private void mendReferences(JsonNode document) {
    if (draw.chance(0.1)) {
      return;
    }
    mend(document, document);
  }

  private void mend(JsonNode node, JsonNode document) {
    if (node instanceof ObjectNode object) {
      for (String key : REFERENCES) {
        String list =
            switch (key) {
              case "soil" -> "/soils";
              case "mix" -> "/floor/mixes";
              default -> "/aggregates";
            };
        JsonNode named = document.at(list);
        if (object.path(key).isTextual() && named.isArray() && !named.isEmpty()) {
          boolean known = false;
          for (JsonNode one : named) {
            known |= one.path("id").equals(object.get(key));
          }
          if (!known) {
            object.set(key, named.get(draw.below(named.size())).path("id"));
          }
        }
      }
    }
    node.forEach(child -> mend(child, document));
  }

  /** Changes the form: what stands where it must not. */
  void form(ObjectNode document) {
    int changes = 1 + draw.below(3);
    for (int i = 0; i < changes; i++) {
      JobKeys.Place place = draw.one(keys.places(document));
      switch (draw.below(8)) {
        case 0 -> place.remove();
        case 1 -> place.put(NODES.nullNode());
        case 2 -> place.put(NODES.textNode(draw.one(HOSTILE)));
        case 3 -> place.put(draw.chance(0.5) ? NODES.objectNode() : NODES.arrayNode());
        case 4 -> place.put(number());
        case 5 -> place.put(document.deepCopy());
        case 6 -> swap(place, draw.one(keys.places(document)));
        default -> rename(place);
      }
    }
  }

  private JsonNode number() {
    return NODES.numberNode(
        draw.one(
            new BigDecimal("1e400"),
            new BigDecimal("-1e308"),
            new BigDecimal("1e308"),
            new BigDecimal("1e-320"),
            BigDecimal.valueOf(-0.0),
            BigDecimal.valueOf(Long.MAX_VALUE),
            BigDecimal.valueOf(Integer.MIN_VALUE),
            BigDecimal.valueOf(2.5),
            BigDecimal.ZERO));
  }

  private static void swap(JobKeys.Place one, JobKeys.Place other) {
    JsonNode first = one.value().orElse(NODES.nullNode()).deepCopy();
    JsonNode second = other.value().orElse(NODES.nullNode()).deepCopy();
    one.put(second);
    other.put(first);
  }

  private void rename(JobKeys.Place place) {
    if (place.holder() instanceof ObjectNode object && place.value().isPresent()) {
      object.set(draw.one(HOSTILE) + place.key(), object.remove(place.key()));
    }
  }

  /** Breaks the text itself. */
  byte[] bytes(byte[] text) {
    byte[] broken = text.clone();
    int at = draw.below(broken.length);
    return switch (draw.below(6)) {
      case 0 -> Arrays.copyOf(broken, at);
      case 1 -> {
        broken[at] = (byte) draw.below(256);
        yield broken;
      }
      case 2 -> (new String(text, StandardCharsets.UTF_8) + "}").getBytes(StandardCharsets.UTF_8);
      case 3 -> new String(text, StandardCharsets.UTF_8).getBytes(StandardCharsets.UTF_16);
      case 4 ->
          ("\uFEFF" + new String(text, StandardCharsets.UTF_8)).getBytes(StandardCharsets.UTF_8);
      default ->
          new String(text, StandardCharsets.UTF_8)
              .replaceFirst("\\{", "{" + "\"x\":[".repeat(draw.one(3, 40, 4000)))
              .getBytes(StandardCharsets.UTF_8);
    };
  }
}

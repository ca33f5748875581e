package io.github.seamstead.benchmarks;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** One result of JMH, flattened to paths such as {@code primaryMetric.score}. */
record Measured(Map<String, String> facts) {

  private static final String PARAMETERS = "params.";

  static List<Measured> read(Path file) throws IOException {
    List<Measured> all = new ArrayList<>();
    try (JsonParser parser = new JsonFactory().createParser(Files.readString(file))) {
      if (parser.nextToken() != JsonToken.START_ARRAY) {
        throw new IOException(file + ": must hold a list, as JMH writes it");
      }
      while (parser.nextToken() == JsonToken.START_OBJECT) {
        Map<String, String> facts = new LinkedHashMap<>();
        flatten(parser, "", facts);
        all.add(new Measured(facts));
      }
    }
    if (all.isEmpty()) {
      throw new IOException(file + ": holds no result");
    }
    return all;
  }

  private static void flatten(JsonParser parser, String path, Map<String, String> facts)
      throws IOException {
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String key = path + parser.currentName();
      JsonToken value = parser.nextToken();
      if (value == JsonToken.START_OBJECT) {
        flatten(parser, key + ".", facts);
      } else if (value == JsonToken.START_ARRAY) {
        parser.skipChildren();
      } else {
        facts.put(key, parser.getText());
      }
    }
  }

  /** Class and method without their package. */
  String name() {
    String[] parts = fact("benchmark").split("\\.", -1);
    return parts[parts.length - 2].replace("Benchmark", "") + "." + parts[parts.length - 1];
  }

  String sizes() {
    Map<String, String> sizes = new TreeMap<>();
    facts.forEach(
        (key, value) -> {
          if (key.startsWith(PARAMETERS)) {
            sizes.put(key.substring(PARAMETERS.length()), value);
          }
        });
    StringBuilder text = new StringBuilder();
    sizes.forEach(
        (key, value) ->
            text.append(text.isEmpty() ? "" : ", ").append(key).append(' ').append(value));
    return text.toString();
  }

  /** The first parameter's name, empty if there is none. */
  String parameter() {
    return facts.keySet().stream()
        .filter(key -> key.startsWith(PARAMETERS))
        .map(key -> key.substring(PARAMETERS.length()))
        .findFirst()
        .orElse("");
  }

  /** The parameter as a number, empty if it is none. */
  OptionalDouble number() {
    String text = facts.getOrDefault(PARAMETERS + parameter(), "");
    return text.matches("[0-9]+")
        ? OptionalDouble.of(Double.parseDouble(text))
        : OptionalDouble.empty();
  }

  double score() {
    return Double.parseDouble(fact("primaryMetric.score"));
  }

  /** The fastest iteration, which other work on the machine disturbs least. */
  double fastest() {
    return Double.parseDouble(fact("primaryMetric.scorePercentiles.0.0"));
  }

  OptionalDouble error() {
    double error = Double.parseDouble(fact("primaryMetric.scoreError"));
    return Double.isFinite(error) ? OptionalDouble.of(error) : OptionalDouble.empty();
  }

  String unit() {
    return fact("primaryMetric.scoreUnit").replace("/op", "");
  }

  String settings() {
    return "JMH "
        + fact("jmhVersion")
        + ", "
        + fact("vmName")
        + " "
        + fact("jdkVersion")
        + ", "
        + fact("forks")
        + " fork(s), warm-up "
        + fact("warmupIterations")
        + " x "
        + fact("warmupTime")
        + ", measured "
        + fact("measurementIterations")
        + " x "
        + fact("measurementTime")
        + ".";
  }

  private String fact(String key) {
    String value = facts.get(key);
    if (value == null) {
      throw new IllegalArgumentException(key + ": missing in the results of JMH");
    }
    return value;
  }
}

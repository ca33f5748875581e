package io.github.seamstead.api.diary;

import io.github.seamstead.api.job.Floor;
import java.util.ArrayList;
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
    Map<String, Integer> met = new HashMap<>();
    List<String> names = new ArrayList<>();
    floor
        .layers()
        .forEach(
            layer -> {
              String name = layer.name().orElse(layer.kind().word());
              int number = met.merge(name, 1, Integer::sum);
              names.add(number == 1 ? name : name + " " + number);
            });
    return names;
  }
}

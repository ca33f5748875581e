package io.github.seamstead.examples.fuzz;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The documents that cases start from: the demo jobs, whole and in part. */
final class Bases {

  /** Seen from the module of the examples or from one inside it. */
  private static final Path FOLDER =
      Path.of("jobs").toFile().isDirectory() ? Path.of("jobs") : Path.of("../jobs");

  private static final ObjectMapper JSON = new ObjectMapper();

  private static final List<ObjectNode> ALL = all();

  /** The first ones are small: a case of theirs takes a tenth of the time. */
  private static final int SMALL = 7;

  private Bases() {}

  static ObjectNode one(Draw draw) {
    return draw.one(draw.chance(0.65) ? ALL.subList(0, SMALL) : ALL).deepCopy();
  }

  private static List<ObjectNode> all() {
    List<ObjectNode> bases = new ArrayList<>();
    ObjectNode model = read("class-model");
    ObjectNode loft = read("seed-loft");
    ObjectNode bank = read("clay-bank");
    ObjectNode hide = read("hill-hide");
    bases.add(model);
    bases.add(model.deepCopy().without(List.of("site")));
    bases.add(withSiteOf(loft, model));
    bases.add(bank);
    bases.add(bank.deepCopy().without(List.of("frame")));
    bases.add(loft.deepCopy().without(List.of("cover", "stock")));
    bases.add(loft.deepCopy().without(List.of("cover", "stock", "trialMixes", "weather")));
    bases.add(loft.deepCopy().without(List.of("stock", "floor", "trialMixes", "weather")));
    bases.add(loft.deepCopy().without(List.of("floor", "trialMixes", "weather", "soils")));
    bases.add(loft);
    bases.add(hide);
    bases.add(hide.deepCopy().without(List.of("cover", "stock")));
    bases.add(read("hill-hide-blunder").without(List.of("cover", "stock")));
    return bases;
  }

  private static ObjectNode withSiteOf(ObjectNode loft, ObjectNode model) {
    ObjectNode windy = model.deepCopy();
    windy.set("site", loft.get("site"));
    windy.set("plant", loft.get("plant"));
    windy.set("weather", loft.get("weather"));
    return windy;
  }

  static ObjectNode read(String name) {
    try {
      return (ObjectNode) JSON.readTree(FOLDER.resolve(name + ".json").toFile());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

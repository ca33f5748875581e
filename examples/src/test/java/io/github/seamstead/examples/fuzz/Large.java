package io.github.seamstead.examples.fuzz;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobReader;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Documents near the limits of what is read, one or two for each chapter that takes its time. */
enum Large {
  SIXTY_FOUR_SIDES {
    @Override
    ObjectNode document() {
      ObjectNode loft = Bases.read("seed-loft");
      ((ObjectNode) loft.get("frame")).put("sides", 64);
      ObjectNode measures = (ObjectNode) loft.get("frame").get("measures");
      measures.put("baseSide", "0.6 m").put("height", "4 m");
      ((ObjectNode) loft.get("cover")).remove("door");
      return loft;
    }
  },
  A_HUNDRED_PARTS {
    @Override
    ObjectNode document() {
      ObjectNode loft = SIXTY_FOUR_SIDES.document();
      ((ObjectNode) loft.get("cover").get("hem")).put("kind", "raw");
      ArrayNode sheets = noCloth(loft).putArray("sheets");
      for (int i = 0; i < 5; i++) {
        sheets
            .addObject()
            .put("id", "s" + i)
            .put("length", (1000 + 100 * i) + " mm")
            .put("width", (1200 + 50 * i) + " mm")
            .put("count", 400);
      }
      return loft;
    }
  },
  /** As many kinds of sheet and roll as are read, each with its own size and its holes. */
  A_THOUSAND_KINDS_OF_CLOTH {
    @Override
    ObjectNode document() {
      ObjectNode loft = Bases.read("seed-loft");
      ObjectNode stock = noCloth(loft);
      ArrayNode sheets = stock.putArray("sheets");
      ArrayNode rolls = stock.putArray("rolls");
      for (int i = 0; i < 500; i++) {
        ObjectNode sheet = sheets.addObject().put("id", "s" + i);
        sheet.put("length", (3000 + 7 * i) + " mm").put("width", (1800 + 3 * i) + " mm");
        ArrayNode flaws = sheet.putArray("flaws");
        for (int k = 0; k < 30; k++) {
          flaws
              .addObject()
              .put("x", 100 * k + " mm")
              .put("y", (37 * k + i) % 1500 + " mm")
              .put("width", "20 mm")
              .put("height", "15 mm");
        }
        ObjectNode roll = rolls.addObject().put("id", "r" + i);
        roll.put("width", (1400 + i) + " mm").put("length", (5 + i % 7) + " m");
      }
      return loft;
    }
  },
  FIFTY_SOILS {
    @Override
    ObjectNode document() {
      ObjectNode loft = Bases.read("seed-loft").without(List.of("cover", "stock"));
      ArrayNode soils = (ArrayNode) loft.get("soils");
      for (int i = 1; i < 50; i++) {
        ObjectNode soil = soils.get(0).deepCopy();
        soils.add(soil.put("id", "s" + i));
      }
      return loft;
    }
  },
  /** A floor of many corners, posts, layers and mixes. */
  TWENTY_LAYERS {
    @Override
    ObjectNode document() {
      ObjectNode loft = Bases.read("seed-loft").without(List.of("cover", "stock"));
      ObjectNode floor = (ObjectNode) loft.get("floor");
      ArrayNode corners = floor.putObject("outline").putArray("corners");
      for (int i = 0; i < 64; i++) {
        double angle = 2 * Math.PI * i / 64;
        double radius = i % 2 == 0 ? 6 : 5.8;
        corners
            .addObject()
            .put("x", Math.round(1000 * radius * Math.cos(angle)) + " mm")
            .put("y", Math.round(1000 * radius * Math.sin(angle)) + " mm");
      }
      ArrayNode gaps = floor.putArray("gaps");
      for (int i = 0; i < 50; i++) {
        gaps.addObject()
            .put("x", (-2400 + 500 * (i % 10)) + " mm")
            .put("y", (-1200 + 500 * (i / 10)) + " mm")
            .put("diameter", "120 mm");
      }
      ArrayNode mixes = (ArrayNode) floor.get("mixes");
      ArrayNode layers = (ArrayNode) floor.get("layers");
      for (int i = 0; mixes.size() < 20; i++) {
        ObjectNode mix = mixes.get(1).deepCopy();
        mixes.add(mix.put("id", "m" + i).put("placingMoisture", (16 + i % 4) + " %"));
      }
      for (int i = 0; layers.size() < 20; i++) {
        ObjectNode coat = layers.get(4).deepCopy();
        layers.insert(5, coat.put("name", "coat " + i).put("mix", "m" + i));
      }
      return loft;
    }
  },
  /** Bars of fifty lengths for poles and purlins at fifty heights. */
  FIFTY_PURLINS {
    @Override
    ObjectNode document() {
      ObjectNode loft = SIXTY_FOUR_SIDES.document().without(List.of("cover", "stock"));
      ObjectNode frame = (ObjectNode) loft.get("frame");
      ArrayNode purlins = frame.putArray("purlins");
      ArrayNode bars = ((ObjectNode) frame.get("poles")).putArray("bars");
      for (int i = 0; i < 50; i++) {
        purlins.add(500 + 60 * i + " mm");
        bars.addObject().put("length", (6000 + 13 * i) + " mm").put("count", 40);
      }
      return loft;
    }
  },
  THOUSANDS_OF_READINGS {
    @Override
    ObjectNode document() {
      return Readings.all(48, 4000, 100);
    }
  },
  /** As many readings as are read, between as many corners as a frame can have. */
  THE_MOST_READINGS {
    @Override
    ObjectNode document() {
      return Readings.all(64, 5000, 100);
    }
  };

  abstract ObjectNode document();

  private static ObjectNode noCloth(ObjectNode job) {
    ObjectNode stock = (ObjectNode) job.get("stock");
    stock.remove("rolls");
    stock.remove("sheets");
    return stock;
  }

  Job job() {
    try {
      return JobReader.parse(
          new ObjectMapper().writeValueAsString(document()).getBytes(StandardCharsets.UTF_8));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }
}

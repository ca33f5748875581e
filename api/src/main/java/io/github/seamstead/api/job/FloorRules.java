package io.github.seamstead.api.job;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What must hold between soils, aggregates, mixes and layers. */
final class FloorRules {

  private FloorRules() {}

  /** A layer states what its kind needs and nothing that it cannot use. */
  static void layer(
      LayerKind kind,
      boolean thickness,
      boolean material,
      boolean mix,
      boolean roll,
      Shape.Faults faults) {
    boolean laid = kind == LayerKind.LEVELLING || kind == LayerKind.CAPILLARY_BREAK;
    boolean mixed = kind == LayerKind.DRY_PACK || kind == LayerKind.EARTH_COAT;
    need(laid || mixed, thickness, "thickness", kind, faults);
    need(laid, material, "material", kind, faults);
    need(mixed, mix, "mix", kind, faults);
    if (kind == LayerKind.MEMBRANE && !roll) {
      faults.note("", "a membrane without its roll", "must state rollWidth and rollLength");
    }
  }

  private static void need(
      boolean needed, boolean given, String key, LayerKind kind, Shape.Faults faults) {
    if (needed && !given) {
      faults.note(key, "nothing", "must be there for a layer of kind " + kind.word());
    } else if (!needed && given) {
      faults.note(key, key + " of a layer of kind " + kind.word(), "must be left out");
    }
  }

  /** Mixes have names of their own and layers call mixes that are there. */
  static void mixes(List<FloorLayer> layers, List<MixSpec> mixes, Shape.Faults faults) {
    Set<String> names = new HashSet<>();
    for (int i = 0; i < mixes.size(); i++) {
      StockRules.once("mixes[" + i + "].id", mixes.get(i).id(), names, faults);
    }
    for (int i = 0; i < layers.size(); i++) {
      String key = "layers[" + i + "].mix";
      layers.get(i).mix().ifPresent(mix -> known(key, mix, names, "mix", faults));
    }
  }

  /** Materials have names of their own, and mixes and layers call materials that are there. */
  static void materials(
      List<SoilSample> soils,
      List<Aggregate> aggregates,
      Optional<Floor> floor,
      Shape.Faults faults) {
    Set<String> names = new HashSet<>();
    for (int i = 0; i < soils.size(); i++) {
      StockRules.once("soils[" + i + "].id", soils.get(i).id(), names, faults);
    }
    for (int i = 0; i < aggregates.size(); i++) {
      StockRules.once("aggregates[" + i + "].id", aggregates.get(i).id(), names, faults);
    }
    Set<String> soilNames = soils.stream().map(SoilSample::id).collect(Collectors.toSet());
    Set<String> bought = aggregates.stream().map(Aggregate::id).collect(Collectors.toSet());
    floor.ifPresent(f -> uses(f, soilNames, bought, faults));
  }

  /** Trials call mixes that are there, each once. */
  static void trials(List<TrialMix> trials, Optional<Floor> floor, Shape.Faults faults) {
    Set<String> mixes =
        floor.map(Floor::mixes).orElse(List.of()).stream()
            .map(MixSpec::id)
            .collect(Collectors.toSet());
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < trials.size(); i++) {
      String key = "trialMixes[" + i + "].mix";
      known(key, trials.get(i).mix(), mixes, "mix", faults);
      StockRules.once(key, trials.get(i).mix(), seen, faults);
    }
  }

  /** Test tiles are of mixes that are there. */
  static void tiles(List<TileTest> tiles, Optional<Floor> floor, Shape.Faults faults) {
    Set<String> mixes =
        floor.map(Floor::mixes).orElse(List.of()).stream()
            .map(MixSpec::id)
            .collect(Collectors.toSet());
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < tiles.size(); i++) {
      String key = "weather.tiles[" + i + "].mix";
      known(key, tiles.get(i).mix(), mixes, "mix", faults);
      StockRules.once(key, tiles.get(i).mix(), seen, faults);
    }
  }

  private static void uses(
      Floor floor, Set<String> soils, Set<String> aggregates, Shape.Faults faults) {
    for (int i = 0; i < floor.mixes().size(); i++) {
      MixSpec mix = floor.mixes().get(i);
      known("floor.mixes[" + i + "].soil", mix.soil(), soils, "soil", faults);
      known("floor.mixes[" + i + "].sand", mix.sand(), aggregates, "aggregate", faults);
      List<String> others = mix.design().map(MixDesignSpec::with).orElse(List.of());
      Set<String> parts = new HashSet<>(Set.of(mix.sand()));
      for (int k = 0; k < others.size(); k++) {
        String key = "floor.mixes[" + i + "].design.with[" + k + "]";
        known(key, others.get(k), aggregates, "aggregate", faults);
        StockRules.once(key, others.get(k), parts, faults);
      }
    }
    for (int i = 0; i < floor.layers().size(); i++) {
      String key = "floor.layers[" + i + "].material";
      floor
          .layers()
          .get(i)
          .material()
          .ifPresent(material -> known(key, material, aggregates, "aggregate", faults));
    }
  }

  private static void known(
      String key, String name, Set<String> names, String what, Shape.Faults faults) {
    if (!names.contains(name)) {
      String hint =
          Nearest.to(name, names).map(near -> "did you mean \"" + near + "\"? ").orElse("");
      String list =
          names.isEmpty() ? "none" : names.stream().sorted().collect(Collectors.joining(", "));
      faults.note(key, "\"" + name + "\"", hint + "must be the id of one " + what + " of: " + list);
    }
  }

  /** The door's face is one of the frame's, or of the floor's own outline. */
  static void door(Floor floor, Optional<Frame> frame, Shape.Faults faults) {
    if (frame.isEmpty() && floor.outline().isEmpty()) {
      faults.note(
          "floor.outline",
          "no outline of the floor, and no frame over it",
          "must be there: state the floor's outline, or a frame");
      return;
    }
    int sides =
        floor
            .outline()
            .map(FloorOutline::doorSides)
            .orElseGet(() -> frame.map(Frame::sides).orElseThrow());
    floor
        .doorFace()
        .filter(face -> face > sides)
        .ifPresent(
            face ->
                faults.note(
                    "floor.doorFace",
                    "face " + face,
                    "must be from 1 to " + sides + ", the number of sides"));
  }
}

package io.github.seamstead.api.diary.internal;

import io.github.seamstead.api.diary.LaidWork;
import io.github.seamstead.api.diary.LayerNames;
import io.github.seamstead.api.diary.TileLog;
import io.github.seamstead.api.job.DiaryEntry;
import io.github.seamstead.api.job.JobDocument;
import io.github.seamstead.materials.drying.TestTile;
import io.github.seamstead.shared.quantity.Numbers;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What is laid of the floor, what came for it, the test tiles and the weather. */
final class FloorLedger {

  /** More than this many times the loads that a sector takes cannot have gone into it. */
  private static final double TWICE = 2;

  private final Contradictions faults;
  private final List<String> layers;
  private final List<String> materials;
  private final List<LaidWork> laid = new ArrayList<>();
  private final Map<String, TileLog> tiles = new LinkedHashMap<>();
  private final Map<LocalDate, DiaryEntry.WeatherSeen> weather = new LinkedHashMap<>();
  private final Map<String, Double> delivered = new LinkedHashMap<>();

  FloorLedger(Contradictions faults, JobDocument job) {
    this.faults = faults;
    this.layers = job.floor().map(LayerNames::of).orElse(List.of());
    this.materials =
        Stream.concat(
                job.soils().stream().map(s -> s.id()), job.aggregates().stream().map(a -> a.id()))
            .toList();
  }

  void laid(LocalDate date, DiaryEntry.Laid entry, PlanThen then) {
    if (!layers.contains(entry.layer())) {
      faults.unknown("laid.layer", "layer", entry.layer(), layers);
      return;
    }
    int sectors = then.sectors();
    if (entry.sector().isPresent() && entry.sector().get() > sectors) {
      faults.note(
          "laid.sector",
          "sector " + entry.sector().get(),
          "must be from 1 to " + sectors + ", as many as the floor has");
      return;
    }
    List<Integer> these =
        entry.sector().map(List::of).orElse(IntStream.rangeClosed(1, sectors).boxed().toList());
    boolean good = true;
    for (int sector : these) {
      good = good && isFree(entry, sector, then) && isCarried(entry.layer(), sector);
    }
    if (good) {
      laid.add(new LaidWork(date, entry.layer(), entry.sector(), entry.loads()));
    }
  }

  /** Notes a sector that is laid already, or that took more loads than it can hold. */
  private boolean isFree(DiaryEntry.Laid entry, int sector, PlanThen then) {
    Optional<LaidWork> whole =
        of(entry.layer(), sector).filter(w -> w.loads().isEmpty()).findFirst();
    if (whole.isPresent()) {
      faults.note(
          "laid",
          entry.layer() + " in sector " + sector + ", which was laid on " + whole.get().date(),
          "must be laid once");
      return false;
    }
    Optional<Double> loads = then.loads(entry.layer(), sector);
    if (entry.loads().isEmpty()) {
      return true;
    }
    if (loads.isEmpty()) {
      faults.note(
          "laid.loads",
          "loads of " + entry.layer(),
          "must be left out: this layer is not laid by loads");
      return false;
    }
    double sum =
        entry.loads().get()
            + of(entry.layer(), sector).mapToDouble(w -> w.loads().orElse(0.0)).sum();
    if (sum <= TWICE * Math.max(1, loads.get())) {
      return true;
    }
    faults.note(
        "laid.loads",
        Numbers.significant(sum, 3) + " loads in sector " + sector + " of " + entry.layer(),
        "must be at most twice the "
            + Numbers.significant(loads.get(), 2)
            + " loads that the sector takes");
    return false;
  }

  private Stream<LaidWork> of(String layer, int sector) {
    return laid.stream()
        .filter(w -> w.layer().equals(layer))
        .filter(w -> w.sector().isEmpty() || w.sector().get() == sector);
  }

  /** Notes a layer that is laid over one that is not. */
  private boolean isCarried(String layer, int sector) {
    for (String below : layers.subList(0, layers.indexOf(layer))) {
      if (of(below, sector).findAny().isEmpty()) {
        faults.note(
            "laid.layer",
            layer + " in sector " + sector + ", where " + below + " is not laid",
            "must lie on the layer below it; write that one as laid before");
        return false;
      }
    }
    return true;
  }

  void tileMade(LocalDateTime when, DiaryEntry.TileMade entry) {
    if (!layers.contains(entry.layer())) {
      faults.unknown("tileMade.layer", "layer", entry.layer(), layers);
    } else if (tiles.containsKey(entry.tile())) {
      faults.note(
          "tileMade.tile",
          "\"" + entry.tile() + "\" a second time",
          "must be a name that no other has");
    } else {
      tiles.put(
          entry.tile(),
          new TileLog(
              entry.tile(),
              entry.layer(),
              when,
              entry.thickness(),
              entry.area(),
              entry.scale(),
              List.of(),
              Optional.empty()));
    }
  }

  void tileWeighed(LocalDateTime when, DiaryEntry.TileWeighed entry) {
    tile("tileWeighed.tile", entry.tile())
        .filter(t -> t.crack().isEmpty())
        .ifPresent(t -> weighed(when, entry, t));
  }

  private void weighed(LocalDateTime when, DiaryEntry.TileWeighed entry, TileLog t) {
    double time = Duration.between(t.made(), when).toMillis() / 1e3;
    List<TestTile.Weighing> all = new ArrayList<>(t.weighings());
    double before = all.isEmpty() ? -1 : all.get(all.size() - 1).time();
    if (time < 0 || time <= before) {
      faults.note(
          "tileWeighed",
          "a weighing of " + t.name() + " on " + when.toLocalDate() + " at " + when.toLocalTime(),
          "must be later than "
              + (all.isEmpty() ? "the filling of the tile" : "the weighing before")
              + "; state the time of each");
      return;
    }
    all.add(new TestTile.Weighing(time, entry.mass()));
    tiles.put(t.name(), with(t, all, t.crack()));
  }

  void tileCracked(DiaryEntry.TileCracked entry) {
    tile("tileCracked.tile", entry.tile())
        .ifPresent(t -> tiles.put(t.name(), with(t, t.weighings(), Optional.of(entry.crack()))));
  }

  private static TileLog with(
      TileLog t, List<TestTile.Weighing> weighings, Optional<Double> crack) {
    return new TileLog(
        t.name(), t.layer(), t.made(), t.thickness(), t.area(), t.scale(), weighings, crack);
  }

  private Optional<TileLog> tile(String key, String name) {
    Optional<TileLog> tile = Optional.ofNullable(tiles.get(name));
    if (tile.isEmpty()) {
      faults.note(
          key,
          "\"" + name + "\"",
          tiles.isEmpty()
              ? "must be a tile that was made; write its making before"
              : "must be a tile that was made: " + String.join(", ", tiles.keySet()));
    }
    return tile;
  }

  void delivered(DiaryEntry.Delivered entry) {
    if (materials.contains(entry.material())) {
      delivered.merge(entry.material(), entry.mass(), Double::sum);
    } else {
      faults.unknown("delivered.material", "material", entry.material(), materials);
    }
  }

  void weather(LocalDate date, DiaryEntry.WeatherSeen entry) {
    for (int back = entry.days() - 1; back >= 0; back--) {
      LocalDate day = date.minusDays(back);
      if (weather.putIfAbsent(day, entry) != null) {
        faults.note("weather", "a second weather of " + day, "must be one line for each day");
        return;
      }
    }
  }

  List<LaidWork> laid() {
    return laid;
  }

  List<TileLog> tiles() {
    return List.copyOf(tiles.values());
  }

  Map<LocalDate, DiaryEntry.WeatherSeen> weather() {
    return weather;
  }

  Map<String, Double> delivered() {
    return delivered;
  }
}

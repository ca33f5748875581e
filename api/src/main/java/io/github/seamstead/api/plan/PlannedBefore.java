package io.github.seamstead.api.plan;

import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.api.chapter.floor.FloorPart;
import io.github.seamstead.api.chapter.joining.JoiningPart;
import io.github.seamstead.api.chapter.layout.LayoutPart;
import io.github.seamstead.api.chapter.pieces.PieceNames;
import io.github.seamstead.api.diary.LayerNames;
import io.github.seamstead.api.diary.Place;
import io.github.seamstead.api.diary.internal.PlanThen;
import io.github.seamstead.assembly.ring.PieceRing;
import io.github.seamstead.geometry.layout.LaidPiece;
import io.github.seamstead.geometry.layout.Placement;
import io.github.seamstead.geometry.layout.StockUse;
import io.github.seamstead.geometry.pattern.Panel;
import io.github.seamstead.geometry.pattern.PatternPiece;
import io.github.seamstead.materials.floor.BatchPlan;
import io.github.seamstead.materials.floor.SectorBatches;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A plan as a diary looks at it: pieces and places by name, the ring, the sectors. */
final class PlannedBefore implements PlanThen {

  private final JobPlan plan;
  private final Map<String, Piece> pieces = new LinkedHashMap<>();
  private final Map<Integer, Panel> panels = new LinkedHashMap<>();

  PlannedBefore(JobPlan plan) {
    this.plan = plan;
    List<Panel> all = plan.cover().map(CoverPart::panels).orElse(List.of());
    for (int face = 1; face <= all.size(); face++) {
      panels.put(face, all.get(face - 1));
    }
    Map<String, Place> places = places();
    plan.cover()
        .ifPresent(
            cover ->
                PieceNames.of(cover.cuts())
                    .all()
                    .forEach(
                        (name, named) ->
                            pieces.put(
                                name,
                                new Piece(
                                    named.piece(),
                                    face(named.piece()),
                                    Optional.ofNullable(places.get(name))))));
  }

  private Map<String, Place> places() {
    Map<String, Place> places = new HashMap<>();
    if (plan.cover().isEmpty()) {
      return places;
    }
    PieceNames names = PieceNames.of(plan.cover().get().cuts());
    List<StockUse> used =
        plan.layout().map(LayoutPart::result).map(r -> r.used()).orElse(List.of());
    for (StockUse use : used) {
      for (Placement p : use.placements()) {
        places.put(
            names.name(p.pieceId(), p.copy()),
            Place.of(new LaidPiece(use.stockId(), use.copy(), p)));
      }
    }
    return places;
  }

  private Optional<Integer> face(PatternPiece piece) {
    return panels.entrySet().stream()
        .filter(panel -> panel.getValue().pieces().contains(piece))
        .map(Map.Entry::getKey)
        .findFirst();
  }

  @Override
  public Map<String, Piece> pieces() {
    return pieces;
  }

  @Override
  public Map<Integer, Panel> panels() {
    return panels;
  }

  @Override
  public Set<String> partsOf(int face) {
    Panel panel = panels.get(face);
    Set<String> parts = new LinkedHashSet<>();
    if (panel != null) {
      panel.parts().forEach(part -> parts.add(part.label()));
    }
    return parts;
  }

  @Override
  public Optional<PieceRing> ring() {
    return plan.joining().map(JoiningPart::ring);
  }

  @Override
  public Optional<Double> loads(String layer, int sector) {
    Optional<FloorPart> floor = plan.floor();
    if (floor.isEmpty()) {
      return Optional.empty();
    }
    int index = plan.job().document().floor().map(LayerNames::of).orElse(List.of()).indexOf(layer);
    for (BatchPlan batch : floor.get().batches()) {
      if (index >= 0
          && batch.quantity().layer().equals(floor.get().buildUp().layers().get(index))) {
        return floor.get().sectors().batches(batch).stream()
            .filter(row -> row.sector().order() == sector)
            .map(SectorBatches::loads)
            .findFirst();
      }
    }
    return Optional.empty();
  }

  @Override
  public int sectors() {
    return plan.floor().map(f -> f.sectors().sectors().size()).orElse(0);
  }
}

package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.layout.internal.Poses;
import io.github.seamstead.geometry.stock.StockItem;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Turns the best state of a run into the result that the caller reads. */
final class Reporter {

  private final LayoutRequest request;
  private final NestSetup setup;
  private final Poses best;

  Reporter(LayoutRequest request, NestSetup setup, Poses best) {
    this.request = request;
    this.setup = setup;
    this.best = best;
  }

  /** How many copies of each kind have a place. */
  static int[] placed(NestSetup setup, Poses poses) {
    int[] placed = new int[setup.pieces.size()];
    for (int i = 0; i < poses.x.length; i++) {
      if (poses.region[i] != Poses.PARKED) {
        placed[setup.kind[i]]++;
      }
    }
    return placed;
  }

  LayoutResult result(
      Shortfalls lacks,
      LayoutResult.Method method,
      long work,
      Optional<LayoutResult.Stop> stopped) {
    double[] reach = Score.reach(setup, best);
    List<StockUse> used = new ArrayList<>();
    double length = 0;
    double cost = 0;
    double stockArea = 0;
    List<Bin> usedBins = new ArrayList<>();
    for (int b = 0; b < reach.length; b++) {
      if (reach[b] <= 0) {
        continue;
      }
      Bin bin = setup.bins.get(b);
      usedBins.add(bin);
      double itsCost = bin.item().costOf(reach[b]);
      List<Placement> placements = placements(b);
      used.add(
          new StockUse(
              bin.item().id(),
              bin.copy(),
              placements,
              reach[b],
              itsCost,
              Remnants.of(bin, reach[b], outlines(placements))));
      length += reach[b];
      cost += itsCost;
    }
    used.sort(Comparator.comparingInt(u -> preference(u.stockId())));
    for (StockUse use : used) {
      stockArea += LayoutSums.areaOf(item(use.stockId()), use.usedLength());
    }
    int[] placed = placed(setup, best);
    double placedArea = StripLayout.area(counted(placed));
    double value =
        switch (request.objective()) {
          case FEWEST_ITEMS -> used.size();
          case LEAST_COST -> cost;
          case LEAST_LENGTH -> length;
        };
    double lengthBound = Math.min(length, lengthBound(usedBins, placed, placedArea));
    double bound = StockBounds.of(request.objective(), setup.bins, placedArea);
    if (request.objective() != Objective.LEAST_LENGTH) {
      int items = itemsNeeded(placed);
      double needed =
          request.objective() == Objective.FEWEST_ITEMS
              ? items
              : StockBounds.costOf(setup.bins, items);
      bound = Math.max(bound, needed);
    }
    bound = Math.min(value, bound);
    if (request.objective() == Objective.LEAST_LENGTH && setup.bins.size() == 1) {
      bound = lengthBound;
    }
    return new LayoutResult(
        used,
        lacks.shortfalls(),
        lacks.furtherStock(),
        stockArea > 0
            ? Math.min(1, LayoutMeasures.density(placedArea, stockArea, Steps.none()))
            : 0,
        length,
        cost,
        value,
        bound,
        lengthBound,
        value > 0 ? (value - bound) / value : 0,
        method,
        work,
        stopped);
  }

  private int preference(String stockId) {
    return item(stockId).preference();
  }

  private StockItem item(String stockId) {
    return request.stock().stream().filter(s -> s.id().equals(stockId)).findFirst().orElseThrow();
  }

  private List<Placement> placements(int bin) {
    List<Placement> out = new ArrayList<>();
    for (int i = 0; i < best.x.length; i++) {
      int r = best.region[i];
      if (r != Poses.PARKED && setup.regions.bin[r] == bin) {
        Placement p = setup.placement(i, best);
        Piece piece = setup.pieces.get(setup.kind[i]);
        out.add(Hems.marked(p, piece, setup.bins.get(bin).item()));
      }
    }
    return out;
  }

  private List<Outline> outlines(List<Placement> placements) {
    List<Outline> out = new ArrayList<>();
    for (Placement p : placements) {
      for (Piece piece : setup.pieces) {
        if (piece.id().equals(p.pieceId())) {
          out.add(p.place(piece.outline()));
        }
      }
    }
    return out;
  }

  /** How many items any layout of the placed pieces takes at least. */
  private int itemsNeeded(int[] placed) {
    List<Piece> pieces = counted(placed);
    double spacing = request.spacing();
    double margin = request.edgeMargin();
    return Math.max(
        SectionBounds.items(pieces, setup.bins, spacing, margin),
        GrownArea.items(pieces, setup.bins, spacing, margin));
  }

  private double lengthBound(List<Bin> usedBins, int[] placed, double placedArea) {
    if (usedBins.isEmpty()) {
      return 0;
    }
    List<Piece> counted = counted(placed);
    List<StockItem> items = usedBins.stream().map(Bin::item).toList();
    return LayoutSums.lengthBound(request, items, counted, placedArea, Steps.none());
  }

  /** The pieces that have a place, with their counts. */
  private List<Piece> counted(int[] placed) {
    List<Piece> counted = new ArrayList<>();
    for (int k = 0; k < placed.length; k++) {
      if (placed[k] > 0) {
        counted.add(setup.pieces.get(k).withCount(placed[k]));
      }
    }
    return counted;
  }
}

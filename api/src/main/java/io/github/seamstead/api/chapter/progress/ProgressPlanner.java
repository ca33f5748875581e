package io.github.seamstead.api.chapter.progress;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.api.chapter.floor.FloorPart;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.chapter.joining.JoiningPart;
import io.github.seamstead.api.chapter.layout.LayoutPart;
import io.github.seamstead.api.chapter.pieces.PieceNames;
import io.github.seamstead.api.chapter.progress.ProgressPart.PieceState;
import io.github.seamstead.api.chapter.progress.ProgressPart.TileState;
import io.github.seamstead.api.diary.Done;
import io.github.seamstead.assembly.ring.Joint;
import io.github.seamstead.geometry.layout.Placement;
import io.github.seamstead.geometry.layout.StockUse;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Sums up what is done and what is next. */
final class ProgressPlanner {

  private ProgressPlanner() {}

  static Optional<ProgressPart> plan(Run run) {
    Done done = run.done();
    if (done.isNothing()) {
      return Optional.empty();
    }
    Optional<CoverPart> cover = run.part(CoverPart.class);
    Optional<LayoutPart> layout = run.part(LayoutPart.class);
    Optional<JoiningPart> joining = run.part(JoiningPart.class);
    Optional<FloorPart> floor = run.part(FloorPart.class);
    List<PieceState> pieces = cover.map(c -> pieces(done, c, layout)).orElse(List.of());
    orphans(run, pieces);
    List<String> made =
        joining.flatMap(JoiningPart::log).map(l -> names(l.kept())).orElse(List.of());
    List<String> open =
        joining
            .map(j -> j.log().map(l -> names(l.open())).orElse(names(j.ring().joints())))
            .orElse(List.of());
    return Optional.of(
        new ProgressPart(
            done.last().orElseThrow(),
            pieces,
            made,
            open,
            done.tiles().stream()
                .map(
                    t ->
                        new TileState(
                            t.name(), t.layer(), t.weighings().size(), t.crack().orElse(0.0)))
                .toList(),
            NextDay.of(pieces, joining, floor)));
  }

  /** A piece that is cut and that the job as it is now does not have. */
  private static void orphans(Run run, List<PieceState> pieces) {
    for (String name : run.done().cut().keySet()) {
      if (pieces.stream().noneMatch(p -> p.name().equals(name))) {
        run.unmet(
            Chapter.PATTERN,
            "the piece " + name + " is cut, but the job has no piece of that name");
      }
    }
  }

  private static List<String> names(List<Joint> joints) {
    return joints.stream().map(Joint::text).toList();
  }

  private static List<PieceState> pieces(Done done, CoverPart cover, Optional<LayoutPart> layout) {
    PieceNames names = PieceNames.of(cover.cuts());
    Map<String, StockUse> places = new HashMap<>();
    List<StockUse> used = layout.map(l -> l.result().used()).orElse(List.of());
    for (StockUse use : used) {
      for (Placement p : use.placements()) {
        places.put(names.name(p.pieceId(), p.copy()), use);
      }
    }
    List<PieceState> states = new ArrayList<>();
    for (String name : names.all().keySet()) {
      Optional<StockUse> use = Optional.ofNullable(places.get(name));
      states.add(
          new PieceState(
              name,
              done.cut().containsKey(name),
              done.spoiled().getOrDefault(name, ""),
              use.map(StockUse::stockId).orElse(""),
              use.map(StockUse::copy).orElse(0)));
    }
    return states;
  }
}

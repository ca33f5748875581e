package io.github.seamstead.api.chapter.layout;

import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.api.chapter.pieces.PieceNames;
import io.github.seamstead.api.diary.CutPiece;
import io.github.seamstead.api.diary.Done;
import io.github.seamstead.geometry.internal.SameCut;
import io.github.seamstead.geometry.layout.ContinuedLayout;
import io.github.seamstead.geometry.layout.LaidPiece;
import io.github.seamstead.geometry.layout.LayoutRequest;
import io.github.seamstead.geometry.layout.LayoutResult;
import io.github.seamstead.geometry.layout.LostCloth;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.work.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lays the rest of the pieces out when some are cut. */
final class RestLayout {

  private final Done done;
  private final PieceNames names;

  RestLayout(Done done, CoverPart cover) {
    this.done = done;
    this.names = PieceNames.of(cover.cuts());
  }

  LayoutResult plan(LayoutRequest request, Work work) {
    List<LaidPiece> cut = new ArrayList<>();
    List<LostCloth> lost = new ArrayList<>(done.lost());
    done.cut().values().stream()
        .filter(piece -> piece.place().isPresent())
        .forEach(piece -> cut(piece, cut, lost));
    List<LaidPiece> planned = new ArrayList<>();
    done.planned()
        .forEach(
            (name, before) ->
                names
                    .find(name)
                    .filter(now -> SameCut.sameOutline(now.piece().cut(), before.cut()))
                    .ifPresent(
                        now -> planned.add(before.place().laid(now.shape().id(), now.copy()))));
    return ContinuedLayout.plan(request, cut, planned, lost, work);
  }

  /** A piece that the cover no longer has leaves a hole all the same. */
  private void cut(CutPiece piece, List<LaidPiece> cut, List<LostCloth> lost) {
    Optional<PieceNames.Named> now = names.find(piece.name());
    var place = piece.place().orElseThrow();
    if (now.isPresent() && SameCut.sameOutline(now.get().piece().cut(), piece.drawn().cut())) {
      cut.add(place.laid(now.get().shape().id(), now.get().copy()));
    } else {
      LaidPiece there = place.laid(piece.name(), 1);
      Outline hole = there.placement().place(piece.drawn().cut());
      lost.add(new LostCloth(place.stock(), place.copy(), hole, true));
    }
  }
}

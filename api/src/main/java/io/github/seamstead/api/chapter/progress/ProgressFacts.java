package io.github.seamstead.api.chapter.progress;

import io.github.seamstead.api.chapter.internal.Facts;
import io.github.seamstead.api.chapter.progress.ProgressPart.PieceState;
import io.github.seamstead.api.chapter.progress.ProgressPart.TileState;
import java.util.Optional;

/** How far the job is, as data. */
final class ProgressFacts {

  private ProgressFacts() {}

  static Facts<ProgressPart> progress() {
    return new Facts<ProgressPart>()
        .text("last", "the last day of the diary, year-month-day", p -> p.last().toString())
        .many("pieces", "every piece to cut", piece(), ProgressPart::pieces)
        .texts("seamsMade", "joints of the ring that are made", ProgressPart::seamsMade)
        .texts("seamsOpen", "joints of the ring that are open", ProgressPart::seamsOpen)
        .many("tiles", "the test tiles", tile(), ProgressPart::tiles)
        .texts("nextDay", "what to do next", ProgressPart::nextDay);
  }

  private static Facts<PieceState> piece() {
    return new Facts<PieceState>()
        .text("name", "its name", PieceState::name)
        .flag("cut", "whether it is cut", PieceState::cut)
        .maybeText(
            "spoiled",
            "why one was written off",
            p -> Optional.of(p.spoiled()).filter(s -> !s.isEmpty()))
        .maybeText(
            "stock",
            "the sheet or roll on which it lies",
            p -> Optional.of(p.stock()).filter(s -> !s.isEmpty()))
        .whole("copy", "which of several alike; 0 without a place", PieceState::copy);
  }

  private static Facts<TileState> tile() {
    return new Facts<TileState>()
        .text("name", "its name", TileState::name)
        .text("layer", "the layer whose mix it is of", TileState::layer)
        .whole("weighings", "how many weighings count", TileState::weighings)
        .number("crack_m", "width of its cracks; 0 for none", TileState::crack);
  }
}

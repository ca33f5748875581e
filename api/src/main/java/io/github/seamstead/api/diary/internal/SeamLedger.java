package io.github.seamstead.api.diary.internal;

import io.github.seamstead.api.diary.CutPiece;
import io.github.seamstead.api.job.DiaryEntry;
import io.github.seamstead.assembly.ring.Edge;
import io.github.seamstead.assembly.ring.JoinLog;
import io.github.seamstead.assembly.ring.LogEntry;
import io.github.seamstead.assembly.ring.PieceRing;
import io.github.seamstead.assembly.ring.Seam;
import io.github.seamstead.assembly.ring.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The seams joined and undone. */
final class SeamLedger {

  private final Contradictions faults;
  private final List<LogEntry> log = new ArrayList<>();

  SeamLedger(Contradictions faults) {
    this.faults = faults;
  }

  void joined(DiaryEntry.Joined entry, Map<String, CutPiece> cut, PlanThen then) {
    boolean whole = true;
    for (int i = 0; i < entry.edges().size(); i++) {
      String key = "joined.edges[" + i + "]";
      Optional<Edge> edge = edge(key, entry.edges().get(i), then);
      whole &= edge.isPresent() && isCut(key, edge.get(), cut, then);
    }
    if (whole) {
      log.add(entry.log());
    }
  }

  void undone(DiaryEntry.Undone entry, PlanThen then) {
    boolean known = true;
    for (int i = 0; i < entry.edges().size(); i++) {
      known &= edge("undone.edges[" + i + "]", entry.edges().get(i), then).isPresent();
    }
    if (known) {
      log.add(entry.log());
    }
  }

  private Optional<Edge> edge(String key, String label, PlanThen then) {
    Optional<PieceRing> ring = then.ring();
    Optional<Edge> edge = ring.flatMap(r -> r.edge(label));
    if (edge.isEmpty()) {
      faults.note(
          key,
          "\"" + label + "\"",
          ring.isEmpty()
              ? "must be left out: the job has no panels to join"
              : "must be an edge of a panel, from "
                  + ring.get().edge(1, Side.LEFT).label()
                  + " to "
                  + ring.get().edge(ring.get().size(), Side.RIGHT).label());
    }
    return edge;
  }

  private boolean isCut(String key, Edge edge, Map<String, CutPiece> cut, PlanThen then) {
    List<String> missing =
        then.partsOf(edge.piece()).stream().filter(name -> !cut.containsKey(name)).toList();
    if (!missing.isEmpty()) {
      faults.note(
          key,
          "a seam of panel "
              + edge.piece()
              + ", of which is not cut: "
              + String.join(", ", missing),
          "must be a seam of panels that are cut; write the cut before the seam");
    }
    return missing.isEmpty();
  }

  /** Notes a piece that is joined still, so that it cannot have been thrown away. */
  boolean holds(String key, CutPiece piece, PlanThen then) {
    Optional<PieceRing> ring = then.ring();
    if (ring.isEmpty() || piece.face().isEmpty() || log.isEmpty()) {
      return false;
    }
    int face = piece.face().get();
    if (!then.partsOf(face).contains(piece.name())) {
      return false;
    }
    List<String> seams =
        JoinLog.verify(ring.get(), log).present().stream()
            .filter(s -> s.first().piece() == face || s.second().piece() == face)
            .map(Seam::text)
            .toList();
    if (seams.isEmpty()) {
      return false;
    }
    faults.note(
        key,
        "the piece " + piece.name() + ", which is joined: " + String.join("; ", seams),
        "must be free: write its seams as undone before");
    return true;
  }

  List<LogEntry> log() {
    return log;
  }
}

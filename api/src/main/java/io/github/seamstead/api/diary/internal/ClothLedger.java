package io.github.seamstead.api.diary.internal;

import io.github.seamstead.api.diary.CutPiece;
import io.github.seamstead.api.diary.Place;
import io.github.seamstead.api.job.DiaryEntry;
import io.github.seamstead.api.job.Stock;
import io.github.seamstead.geometry.layout.LostCloth;
import io.github.seamstead.geometry.pattern.Panel;
import io.github.seamstead.geometry.pattern.PatternPiece;
import io.github.seamstead.shared.plane.Outline;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Which pieces are cut, and what of the cloth is gone. */
final class ClothLedger {

  private final Contradictions faults;
  private final StockSizes stock;
  private final Map<String, CutPiece> cut = new LinkedHashMap<>();
  private final Map<String, CutPiece> writtenOff = new LinkedHashMap<>();
  private final Map<String, String> spoiled = new LinkedHashMap<>();
  private final Map<Integer, Panel> panels = new HashMap<>();
  private final List<LostCloth> gone = new ArrayList<>();
  private final List<LostCloth> used = new ArrayList<>();
  private final Set<String> spoiledSincePlan = new HashSet<>();
  private boolean moved;

  ClothLedger(Contradictions faults, Optional<Stock> stock) {
    this.faults = faults;
    this.stock = new StockSizes(faults, stock);
  }

  void cut(LocalDate date, DiaryEntry.Cut entry, PlanThen then) {
    for (int i = 0; i < entry.pieces().size(); i++) {
      String key = "cut.pieces[" + i + "]";
      String name = entry.pieces().get(i);
      Optional<PlanThen.Piece> piece = Optional.ofNullable(then.pieces().get(name));
      if (piece.isEmpty()) {
        faults.unknown(key, "piece", name, then.pieces().keySet());
      } else if (cut.containsKey(name)) {
        faults.note(
            key,
            "the piece " + name + " a second time: it was cut on " + cut.get(name).date(),
            "must be cut once; if the first is of no use, write it as spoiled before");
      } else {
        place(key, name, entry, piece.get())
            .ifPresent(place -> keep(piece.get().cut(name, date, place), then));
      }
    }
  }

  /** The stated place, or none for the planned one; nothing at all if neither is good. */
  private Optional<Optional<Place>> place(
      String key, String name, DiaryEntry.Cut entry, PlanThen.Piece piece) {
    if (entry.place().isPresent()) {
      Place place = stated(entry.place().get());
      moved = true;
      return stock.isThere("cut.place", place.stock(), place.copy())
              && lies("cut.place", name, place, piece.drawn())
          ? Optional.of(Optional.of(place))
          : Optional.empty();
    }
    if (!stock.isStated()) {
      return Optional.of(Optional.empty());
    }
    if (piece.place().isEmpty() || spoiledSincePlan.contains(name)) {
      faults.note(
          key,
          "the piece " + name + ", for which the plan of the evening before has no place",
          "must state place: the stock, its copy, x, y and turn");
      return Optional.empty();
    }
    return Optional.of(Optional.empty());
  }

  private static Place stated(DiaryEntry.CutPlace p) {
    return new Place(p.stock(), p.copy(), p.turnedOver(), p.turn(), Vector2D.of(p.x(), p.y()));
  }

  private boolean lies(String key, String name, Place place, PatternPiece drawn) {
    Outline outline = outline(place, drawn);
    if (!stock.holds(key, "the piece " + name, place.stock(), place.copy(), outline)) {
      return false;
    }
    for (CutPiece other : cut.values()) {
      if (other.place().filter(p -> onSame(p, place)).isPresent()
          && stock.overlap(key, "the piece " + name, outline, hole(other), other.name())) {
        return false;
      }
    }
    return true;
  }

  private static boolean onSame(Place a, Place b) {
    return a.stock().equals(b.stock()) && a.copy() == b.copy();
  }

  private static Outline outline(Place place, PatternPiece drawn) {
    return place.laid(drawn.id(), 1).placement().place(drawn.cut());
  }

  private static LostCloth hole(CutPiece piece) {
    Place place = piece.place().orElseThrow();
    return new LostCloth(place.stock(), place.copy(), outline(place, piece.drawn()), true);
  }

  private void keep(CutPiece piece, PlanThen then) {
    cut.put(piece.name(), piece);
    piece
        .face()
        .flatMap(face -> Optional.ofNullable(then.panels().get(face)))
        .ifPresent(panel -> panels.putIfAbsent(piece.face().orElseThrow(), panel));
  }

  void spoiled(DiaryEntry.Spoiled entry, SeamLedger seams, PlanThen then) {
    for (int i = 0; i < entry.pieces().size(); i++) {
      String key = "spoiled.pieces[" + i + "]";
      String name = entry.pieces().get(i);
      Optional<CutPiece> piece = cut(key, name, then);
      if (piece.isPresent() && !seams.holds(key, piece.get(), then)) {
        cut.remove(name);
        writtenOff.put(name, piece.get());
        spoiled.put(name, entry.why().orElse("spoiled"));
        spoiledSincePlan.add(name);
        piece.filter(p -> p.place().isPresent()).ifPresent(p -> gone.add(hole(p)));
        piece.get().face().filter(this::isUncut).ifPresent(panels::remove);
        moved = true;
      }
    }
  }

  private Optional<CutPiece> cut(String key, String name, PlanThen then) {
    Optional<CutPiece> piece = Optional.ofNullable(cut.get(name));
    if (piece.isEmpty() && !then.pieces().containsKey(name)) {
      faults.unknown(key, "piece", name, then.pieces().keySet());
    } else if (piece.isEmpty()) {
      faults.note(key, "the piece " + name + ", which is not cut", "must be a piece that is cut");
    }
    return piece;
  }

  private boolean isUncut(int face) {
    return cut.values().stream().noneMatch(c -> c.face().equals(Optional.of(face)));
  }

  void found(DiaryEntry.Found entry, PlanThen then) {
    for (int i = 0; i < entry.pieces().size(); i++) {
      String name = entry.pieces().get(i);
      Optional<CutPiece> piece = Optional.ofNullable(writtenOff.get(name));
      if (piece.isEmpty() || cut.containsKey(name)) {
        faults.note(
            "found.pieces[" + i + "]",
            "the piece "
                + name
                + (piece.isEmpty() ? ", which was never written off" : ", which was cut again"),
            "must be a piece that was written as spoiled and not cut again");
        continue;
      }
      writtenOff.remove(name);
      spoiled.remove(name);
      spoiledSincePlan.remove(name);
      piece
          .filter(p -> p.place().isPresent())
          .ifPresent(p -> gone.removeIf(lost -> lost.equals(hole(p))));
      keep(piece.get(), then);
      moved = true;
    }
  }

  void part(String key, DiaryEntry.ClothPart p, boolean torn) {
    if (!stock.isThere(key, p.stock(), p.copy())) {
      return;
    }
    Outline outline = Outline.rectangle(p.width(), p.height()).placed(0, Vector2D.of(p.x(), p.y()));
    if (!stock.holds(key, "the part", p.stock(), p.copy(), outline)) {
      return;
    }
    LostCloth part = new LostCloth(p.stock(), p.copy(), outline, !torn);
    for (CutPiece piece : cut.values()) {
      boolean same =
          piece
              .place()
              .filter(c -> c.stock().equals(p.stock()) && c.copy() == p.copy())
              .isPresent();
      if (same && stock.overlap(key, "the part", outline, hole(piece), piece.name())) {
        return;
      }
    }
    if (!torn && used.stream().anyMatch(u -> sameCloth(u, part) && overlaps(u, outline))) {
      faults.note(
          key, "cloth that was used before", "must be cloth that is there: it was used already");
      return;
    }
    gone.add(part);
    if (!torn) {
      used.add(part);
    }
    moved = true;
  }

  private static boolean sameCloth(LostCloth a, LostCloth b) {
    return a.stockId().equals(b.stockId()) && a.copy() == b.copy();
  }

  private static boolean overlaps(LostCloth part, Outline outline) {
    return part.depthOf(outline) > StockSizes.CLOSE;
  }

  void bought(DiaryEntry.ClothBought entry) {
    stock.bought(entry);
    moved = true;
  }

  /** Notes that the drawing of the pieces may have changed. */
  void redrawn() {
    moved = true;
  }

  /** Whether pieces may lie elsewhere than in the plan before. */
  boolean isMoved() {
    return moved;
  }

  /** Takes note that a plan was made of all this. */
  void planned() {
    moved = false;
    spoiledSincePlan.clear();
  }

  Map<String, CutPiece> cut() {
    return cut;
  }

  Map<Integer, Panel> panels() {
    return panels;
  }

  List<LostCloth> lost() {
    return gone;
  }

  Map<String, String> spoiled() {
    return spoiled;
  }
}

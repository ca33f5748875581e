package io.github.seamstead.api.diary.internal;

import io.github.seamstead.api.job.DiaryEntry;
import io.github.seamstead.api.job.Stock;
import io.github.seamstead.geometry.layout.LostCloth;
import io.github.seamstead.shared.plane.Bounds;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** How large the sheets and rolls are, and whether what is said to come out of them is there. */
final class StockSizes {

  /** How far a place written down may be off, in metres; common practice of chalk and tape. */
  static final double CLOSE = 0.005;

  /** One kind of stock. */
  private record Size(double length, double width, int count) {}

  private final Contradictions faults;
  private final boolean stated;
  private final Map<String, Size> sizes = new LinkedHashMap<>();

  StockSizes(Contradictions faults, Optional<Stock> stock) {
    this.faults = faults;
    this.stated = stock.isPresent();
    stock.ifPresent(
        all -> {
          all.sheets().stream()
              .flatMap(s -> s.named().stream())
              .forEach(s -> sizes.put(s.id(), new Size(s.length(), s.width(), s.count())));
          all.rolls().forEach(r -> sizes.put(r.id(), new Size(r.length(), r.width(), r.count())));
        });
  }

  boolean isStated() {
    return stated;
  }

  void bought(DiaryEntry.ClothBought entry) {
    if (!stated) {
      faults.note("clothBought", "cloth", "must be left out: the job states no stock to add it to");
      return;
    }
    entry
        .sheet()
        .ifPresent(
            sheet ->
                sheet
                    .named()
                    .forEach(
                        s -> add("sheet.id", s.id(), new Size(s.length(), s.width(), s.count()))));
    entry.roll().ifPresent(r -> add("roll.id", r.id(), new Size(r.length(), r.width(), r.count())));
  }

  private void add(String key, String id, Size size) {
    if (sizes.putIfAbsent(id, size) != null) {
      faults.note(
          "clothBought." + key, "\"" + id + "\" a second time", "must be a name that no other has");
    }
  }

  boolean isThere(String key, String id, int copy) {
    Size size = sizes.get(id);
    if (size == null) {
      faults.unknown(key + ".stock", "sheet or roll", id, sizes.keySet());
      return false;
    }
    if (copy > size.count) {
      faults.note(
          key + ".copy",
          "number " + copy + " of " + id,
          "must be from 1 to " + size.count + ", as many as there are");
      return false;
    }
    return true;
  }

  /** Notes what sticks out of its sheet. */
  boolean holds(String key, String what, String id, int copy, Outline outline) {
    Size size = Optional.ofNullable(sizes.get(id)).orElseThrow();
    Bounds b = outline.bounds();
    if (b.minX() >= -CLOSE
        && b.minY() >= -CLOSE
        && b.maxX() <= size.length + CLOSE
        && b.maxY() <= size.width + CLOSE) {
      return true;
    }
    faults.note(
        key,
        what + " from " + at(b.minX(), b.minY()) + " to " + at(b.maxX(), b.maxY()),
        "must lie on "
            + id
            + " number "
            + copy
            + ", which is "
            + Numbers.significant(size.length, 4)
            + " m by "
            + Numbers.significant(size.width, 4)
            + " m: there is no more cloth");
    return false;
  }

  private static String at(double x, double y) {
    return Numbers.fixed(x, 3) + " m, " + Numbers.fixed(y, 3) + " m";
  }

  /** Notes cloth that is asked for where a piece was cut before. */
  boolean overlap(String key, String what, Outline outline, LostCloth hole, String piece) {
    double depth = hole.depthOf(outline);
    if (depth <= CLOSE) {
      return false;
    }
    faults.note(
        key,
        what + " over the piece " + piece + ", which was cut there, by " + millimetres(depth),
        "must be cloth that is there; if that piece is of no use, write it as spoiled");
    return true;
  }

  private static String millimetres(double metres) {
    return Numbers.fixed(metres * 1000, 0) + " mm";
  }
}

package io.github.seamstead.api.book.front;

import io.github.seamstead.api.chapter.cover.CutShape;
import io.github.seamstead.api.json.JsonWriter;
import io.github.seamstead.assembly.ring.Joint;
import io.github.seamstead.geometry.pattern.PatternPiece;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a tick stands for in the diary of a job, as JSON without its day. */
final class DiaryLines {

  private DiaryLines() {}

  /**
   * The name of a copy of a piece: its label, with the number of the copy where copies share it.
   */
  static String name(CutShape shape, int copy) {
    List<PatternPiece> pieces = shape.pieces();
    String label = pieces.get(copy - 1).label();
    boolean shared = pieces.stream().filter(p -> p.label().equals(label)).count() > 1;
    return shared ? label + " " + copy : label;
  }

  static String cut(String piece) {
    return line("cut", Map.of("pieces", List.of(piece)));
  }

  static String joined(Joint joint) {
    String mark = joint.mark().text();
    Map<String, Object> seam = new LinkedHashMap<>();
    seam.put("edges", List.of(joint.first().label(), joint.second().label()));
    seam.put("marks", List.of(mark, mark));
    return line("joined", seam);
  }

  /** One load tipped into a sector, which the diary counts round the floor from the door. */
  static String laid(String layer, int sector) {
    Map<String, Object> load = new LinkedHashMap<>();
    load.put("layer", layer);
    load.put("sector", sector);
    load.put("loads", 1);
    return line("laid", load);
  }

  private static String line(String what, Map<String, ?> how) {
    return JsonWriter.text(Map.of(what, how)).strip();
  }
}

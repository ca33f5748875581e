package io.github.seamstead.api.chapter.layout;

import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.api.chapter.cover.CutShape;
import io.github.seamstead.geometry.layout.Placement;
import io.github.seamstead.geometry.pattern.PatternPiece;
import io.github.seamstead.geometry.pattern.PieceKind;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The faces whose panels found no place on the stock, wholly or in part. */
final class LackingFaces {

  /** A panel over one face, or a part of one; a fan is called by two numbers. */
  private static final Pattern ONE_FACE = Pattern.compile("(\\d{1,6})(-\\d+)?");

  private LackingFaces() {}

  /** The faces counted from 1, in order; none for what lacks beside the panels. */
  static List<Integer> of(CoverPart cover, LayoutPart layout) {
    Set<String> placed = new HashSet<>();
    layout
        .result()
        .used()
        .forEach(use -> use.placements().forEach(p -> placed.add(key(p.pieceId(), p.copy()))));
    Set<Integer> faces = new TreeSet<>();
    for (CutShape shape : cover.cuts()) {
      for (int copy = 1; copy <= shape.pieces().size(); copy++) {
        PatternPiece piece = shape.pieces().get(copy - 1);
        Matcher label = ONE_FACE.matcher(piece.label());
        boolean isPanel = piece.kind() == PieceKind.PANEL || piece.kind() == PieceKind.PANEL_PART;
        if (isPanel && !placed.contains(key(shape.id(), copy)) && label.matches()) {
          faces.add(Integer.parseInt(label.group(1)));
        }
      }
    }
    return List.copyOf(faces);
  }

  /** As {@link Placement} names a piece. */
  private static String key(String shape, int copy) {
    return shape + '/' + copy;
  }
}

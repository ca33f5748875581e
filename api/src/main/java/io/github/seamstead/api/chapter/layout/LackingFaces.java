package io.github.seamstead.api.chapter.layout;

import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.api.chapter.pieces.PieceNames;
import io.github.seamstead.geometry.layout.Placement;
import io.github.seamstead.geometry.pattern.Panel;
import io.github.seamstead.geometry.pattern.PatternPiece;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The faces whose panels found no place on the stock, wholly or in part. */
final class LackingFaces {

  private LackingFaces() {}

  /** The faces counted from 1, in order, of panels over one face; none for what lacks beside. */
  static List<Integer> of(CoverPart cover, LayoutPart layout) {
    Set<String> lacking = lacking(cover, layout);
    List<Integer> faces = new ArrayList<>();
    int face = 1;
    for (Panel panel : cover.panels()) {
      if (panel.faces() == 1
          && panel.parts().stream().map(PatternPiece::id).anyMatch(lacking::contains)) {
        faces.add(face);
      }
      face += panel.faces();
    }
    return faces;
  }

  /** The ids of the pieces without a place. */
  private static Set<String> lacking(CoverPart cover, LayoutPart layout) {
    PieceNames names = PieceNames.of(cover.cuts());
    Set<String> lacking = new HashSet<>(names.all().keySet());
    layout.result().used().stream()
        .flatMap(use -> use.placements().stream())
        .forEach((Placement p) -> lacking.remove(names.name(p.pieceId(), p.copy())));
    Set<String> ids = new HashSet<>();
    lacking.forEach(name -> names.find(name).ifPresent(named -> ids.add(named.piece().id())));
    return ids;
  }
}

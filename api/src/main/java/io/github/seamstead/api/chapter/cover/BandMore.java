package io.github.seamstead.api.chapter.cover;

import io.github.seamstead.api.job.Cover;
import io.github.seamstead.geometry.pattern.Panel;
import io.github.seamstead.shared.check.ArgumentFault;
import java.util.Optional;

/**
 * Puts a panel together from a band more than the cloth asks for: its parts are lower, so that they
 * find places that the panel does not.
 */
final class BandMore {

  /** Heights of a part that are tried, from bands of one height up to what the cloth yields. */
  private static final int HEIGHTS = 12;

  private final Cover cover;
  private final PanelDrawer drawer;

  BandMore(Cover cover, PanelDrawer drawer) {
    this.cover = cover;
    this.drawer = drawer;
  }

  /** Draws the panel of a face with the fewest splices that are more than it has without. */
  Panel panel(int face, ClothKind cloth) {
    int without = of(face, cloth).splices().size();
    double lap = cover.spliceLap();
    double whole =
        drawer.panel(face, Optional.empty()).parts().get(0).cut().bounds().height() - lap;
    double most = Math.min(cloth.height() - lap, whole);
    int bands = (int) Math.ceil(whole / most - 1e-9);
    double least = whole / (bands + 1);
    Optional<Panel> best = Optional.empty();
    for (int i = 0; i < HEIGHTS; i++) {
      Optional<Panel> panel = tried(face, cloth.lower(lap + least + (most - least) * i / HEIGHTS));
      int splices = panel.map(p -> p.splices().size()).orElse(0);
      if (splices > without
          && splices < best.map(p -> p.splices().size()).orElse(Integer.MAX_VALUE)) {
        best = panel;
      }
    }
    return best.orElseThrow(
        () ->
            ArgumentFault.of(
                "panel of face " + face,
                "a splice more than the cloth asks for",
                "must be left out of moreSplices: no splice more keeps off its corners and"
                    + " openings",
                "",
                ""));
  }

  private Panel of(int face, ClothKind cloth) {
    return drawer.panel(face, Optional.of(cloth.rule(cover, face, drawer.faces())));
  }

  private Optional<Panel> tried(int face, ClothKind lower) {
    try {
      return Optional.of(of(face, lower));
    } catch (IllegalArgumentException refused) {
      // A splice there would meet a corner or an opening; another height may not.
      return Optional.empty();
    }
  }
}

package io.github.seamstead.api.chapter.cover;

import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.job.Cover;
import io.github.seamstead.api.job.Stock;
import io.github.seamstead.geometry.layout.CuttingLayout;
import io.github.seamstead.geometry.layout.LayoutResult;
import io.github.seamstead.geometry.layout.Shortfall;
import io.github.seamstead.geometry.pattern.Panel;
import io.github.seamstead.geometry.pattern.PatternPiece;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Chooses for each face the kind of cloth that its panel is put together for, by laying the pieces
 * out: whole panels from large sheets, spliced ones from narrow ones.
 *
 * <p>First every panel is drawn for one kind, each kind in turn. From the best of these, faces are
 * given another kind one at a time: those whose parts find no place, else those with the most
 * splices; a change that is better stays. Better is less cloth without a place, then fewer splices,
 * then fewer sheets and rolls. The number of layouts tried is bounded, and each is a first fill
 * without a long search, so the cost is a fixed number of fills.
 */
final class ClothChoice {

  private static final int MOST_KINDS = 6;
  private static final int MOST_CHANGES = 18;
  private static final long FILL = 150;

  private final Run run;
  private final Cover cover;
  private final Stock stock;
  private final PanelDrawer drawer;
  private final List<PatternPiece> trims;
  private final List<ClothKind> kinds;
  private final Map<Integer, Optional<Panel>> drawn = new HashMap<>();

  private ClothChoice(
      Run run, Cover cover, Stock stock, PanelDrawer drawer, List<PatternPiece> trims) {
    this.run = run;
    this.cover = cover;
    this.stock = stock;
    this.drawer = drawer;
    this.trims = trims;
    List<ClothKind> all = ClothKind.of(cover, stock);
    kinds = all.subList(0, Math.min(MOST_KINDS, all.size()));
  }

  /**
   * What a choice comes to.
   *
   * @param kindOfFace the kind of each face, by its place in the list of kinds
   * @param panels the panels
   * @param unplaced cloth of the pieces without a place, in square metres
   * @param splices how many splices there are
   * @param value the layout's objective
   * @param wanting the faces with pieces without a place
   */
  private record Trial(
      List<Integer> kindOfFace,
      List<Panel> panels,
      double unplaced,
      int splices,
      double value,
      Set<Integer> wanting) {

    static final Comparator<Trial> BETTER =
        Comparator.comparingDouble((Trial t) -> Math.round(t.unplaced * 1e6))
            .thenComparingInt(Trial::splices)
            .thenComparingDouble(t -> Math.round(t.value * 1e6));

    boolean beats(Trial other) {
      return BETTER.compare(this, other) < 0;
    }

    boolean isIdeal() {
      return unplaced == 0 && splices == 0;
    }
  }

  /** Draws the panels; a face that cannot be drawn is noted and missing. */
  static List<Panel> panels(Run run, Cover cover, PanelDrawer drawer, List<PatternPiece> trims) {
    Optional<Stock> stock = run.document().stock();
    if (stock.isEmpty()) {
      return all(run, cover, drawer, face -> drawer.panel(face, Optional.empty()));
    }
    Optional<ClothChoice> choice =
        run.attempt("$.stock", () -> new ClothChoice(run, cover, stock.get(), drawer, trims));
    if (choice.isEmpty()) {
      return List.of();
    }
    Optional<Trial> best = choice.get().search();
    return best.map(Trial::panels)
        .orElseGet(() -> all(run, cover, drawer, face -> choice.get().draw(face, 0)));
  }

  private interface Drawing {
    Panel of(int face);
  }

  private static List<Panel> all(Run run, Cover cover, PanelDrawer drawer, Drawing drawing) {
    List<Panel> panels = new ArrayList<>();
    for (int face = 1; face <= drawer.faces(); face++) {
      int number = face;
      run.attempt(path(cover, face), () -> drawing.of(number)).ifPresent(panels::add);
    }
    return panels;
  }

  private Optional<Trial> search() {
    Optional<Trial> best = Optional.empty();
    for (int kind = 0; kind < kinds.size(); kind++) {
      List<Integer> choice = Collections.nCopies(drawer.faces(), kind);
      best = better(best, kinds.size() == 1 ? drawnOnly(choice) : lay(choice, best));
    }
    return kinds.size() == 1 ? best : best.map(this::improve);
  }

  private static Optional<Trial> better(Optional<Trial> best, Optional<Trial> trial) {
    return trial.isPresent() && (best.isEmpty() || trial.get().beats(best.get())) ? trial : best;
  }

  /** Gives faces another kind, one at a time, as long as the trials last. */
  private Trial improve(Trial from) {
    Trial best = from;
    Set<List<Integer>> tried = new HashSet<>();
    int changes = 0;
    boolean better = true;
    while (better && changes < MOST_CHANGES && !best.isIdeal()) {
      better = false;
      for (int face : mostWanting(best)) {
        for (int kind = 0; kind < kinds.size() && changes < MOST_CHANGES; kind++) {
          List<Integer> choice = new ArrayList<>(best.kindOfFace);
          choice.set(face - 1, kind);
          if (choice.equals(best.kindOfFace) || !tried.add(choice)) {
            continue;
          }
          Optional<Trial> trial = lay(choice, Optional.of(best));
          if (trial.isPresent()) {
            changes++;
          }
          if (trial.isPresent() && trial.get().beats(best)) {
            best = trial.get();
            better = true;
          }
        }
        if (better) {
          break;
        }
      }
    }
    return best;
  }

  /** The faces whose parts find no place first, then those with the most splices. */
  private List<Integer> mostWanting(Trial trial) {
    List<Integer> faces = new ArrayList<>();
    for (int face = 1; face <= drawer.faces(); face++) {
      if (trial.wanting.contains(face)
          || (trial.wanting.isEmpty() && !trial.panels.get(face - 1).splices().isEmpty())) {
        faces.add(face);
      }
    }
    faces.sort(
        Comparator.comparingInt((Integer face) -> -trial.panels.get(face - 1).splices().size()));
    return faces;
  }

  private Optional<Trial> drawnOnly(List<Integer> choice) {
    return draw(choice).map(panels -> new Trial(choice, panels, 0, 0, 0, Set.of()));
  }

  /** Lays a choice out, unless it cannot beat the best one. */
  private Optional<Trial> lay(List<Integer> choice, Optional<Trial> best) {
    Optional<Trial> complete = best.filter(trial -> trial.unplaced == 0);
    return draw(choice)
        .filter(panels -> complete.isEmpty() || splices(panels) < complete.get().splices)
        .map(panels -> laid(choice, panels));
  }

  private static int splices(List<Panel> panels) {
    return panels.stream().mapToInt(panel -> panel.splices().size()).sum();
  }

  private Trial laid(List<Integer> choice, List<Panel> panels) {
    List<CutShape> shapes = CutShape.of(panels, trims);
    // A fill that was stopped half-way tells nothing of the choice.
    run.goOn();
    LayoutResult result = CuttingLayout.plan(StockCloth.request(shapes, stock), run.work(FILL));
    run.goOn();
    double unplaced = 0;
    Set<Integer> wanting = new HashSet<>();
    for (Shortfall missing : result.unplaced()) {
      CutShape shape =
          shapes.stream().filter(s -> s.id().equals(missing.pieceId())).findFirst().orElseThrow();
      unplaced += missing.count() * shape.pattern().clothArea();
      for (int face = 1; face <= panels.size(); face++) {
        if (panels.get(face - 1).pieces().stream().anyMatch(shape.pieces()::contains)) {
          wanting.add(face);
        }
      }
    }
    return new Trial(choice, panels, unplaced, splices(panels), result.objectiveValue(), wanting);
  }

  /** Draws all faces for their kinds; empty if one of them cannot be drawn so. */
  private Optional<List<Panel>> draw(List<Integer> choice) {
    List<Panel> panels = new ArrayList<>();
    for (int face = 1; face <= choice.size(); face++) {
      int number = face;
      int kind = choice.get(face - 1);
      Optional<Panel> panel =
          drawn.computeIfAbsent(
              kind * (choice.size() + 1) + face,
              key -> {
                try {
                  return Optional.of(draw(number, kind));
                } catch (IllegalArgumentException refused) {
                  // Another kind of cloth may do; if none does, the first one's refusal is told.
                  return Optional.empty();
                }
              });
      if (panel.isEmpty()) {
        return Optional.empty();
      }
      panels.add(panel.get());
    }
    return Optional.of(panels);
  }

  private Panel draw(int face, int kind) {
    return drawer.panel(face, Optional.of(kinds.get(kind).rule(cover, face, drawer.faces())));
  }

  /** The value that a refused panel most likely comes from. */
  private static String path(Cover cover, int face) {
    if (cover.door().filter(door -> door.face() == face).isPresent()) {
      return "$.cover.door";
    }
    for (int i = 0; i < cover.vents().size(); i++) {
      if (cover.vents().get(i).face() == face) {
        return "$.cover.vents[" + i + "]";
      }
    }
    return "$.cover";
  }
}

package io.github.seamstead.api.chapter.cover;

import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.job.Cover;
import io.github.seamstead.api.job.Stock;
import io.github.seamstead.geometry.layout.LayoutChoice;
import io.github.seamstead.geometry.pattern.Panel;
import io.github.seamstead.geometry.pattern.PatternPiece;
import io.github.seamstead.shared.check.ArgumentFault;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Chooses for each face the kind of cloth that its panel is put together for, by laying the pieces
 * out: whole panels from large sheets, spliced ones from narrow ones.
 *
 * <p>The ways looked at are every face for one kind, and a quarter, half and three quarters of the
 * faces for one kind and the rest for another; those with the fewest splices first. What a heap
 * offers, a larger heap offers too, so that with {@link LayoutChoice} more cloth never makes a
 * worse plan: no more pieces without a place, then no more splices, then no more sheets and rolls.
 */
final class ClothChoice {

  private static final int QUARTERS = 4;

  private final Run run;
  private final Cover cover;
  private final Stock stock;
  private final PanelDrawer drawer;
  private final List<PatternPiece> trims;
  private final List<ClothKind> kinds = new ArrayList<>();
  private final List<Group> groups = new ArrayList<>();
  private final Map<Integer, Optional<Panel>> drawn = new HashMap<>();

  private ClothChoice(
      Run run, Cover cover, Stock stock, PanelDrawer drawer, List<PatternPiece> trims) {
    this.run = run;
    this.cover = cover;
    this.stock = stock;
    this.drawer = drawer;
    this.trims = trims;
    group(false);
    group(true);
  }

  /**
   * Faces that the same kinds of cloth come into question for.
   *
   * @param faces the faces, the largest first
   * @param first the first of their kinds
   * @param count how many kinds
   */
  private record Group(List<Integer> faces, int first, int count) {}

  /** Gathers the faces whose hem is the band of a sheet, or the others. */
  private void group(boolean onBand) {
    List<Integer> faces =
        IntStream.rangeClosed(1, drawer.faces())
            .filter(face -> drawer.isOnBand(face) == onBand)
            .boxed()
            .sorted(Comparator.comparingDouble(face -> -drawer.area(face)))
            .toList();
    if (!faces.isEmpty()) {
      List<ClothKind> more = ClothKind.of(cover, stock, onBand, drawer.largest());
      groups.add(new Group(faces, kinds.size(), more.size()));
      kinds.addAll(more);
    }
  }

  /**
   * What was chosen.
   *
   * @param panels the panels; a face that cannot be drawn is missing
   * @param layout the layout begun for them; empty if there was no choice
   */
  record Chosen(List<Panel> panels, Optional<LayoutChoice> layout) {}

  /** Panels that were put together for kinds of cloth, and how many splices they have. */
  private record Way(List<Panel> panels, int splices) {}

  /** Draws the panels; a face that cannot be drawn is noted and missing. */
  static Chosen panels(
      Run run,
      Cover cover,
      PanelDrawer drawer,
      List<PatternPiece> trims,
      Optional<List<Integer>> cut) {
    if (cut.isPresent() && cut.get().size() < drawer.faces()) {
      // What is cut in one piece stays so; the rest keeps the names that are written on it.
      return new Chosen(
          run.attempt("$.cover", () -> asCut(drawer, cut.get())).orElse(List.of()),
          Optional.empty());
    }
    Optional<Stock> stock = run.document().stock();
    if (stock.isEmpty()) {
      return new Chosen(
          all(run, cover, drawer, face -> drawer.panel(face, Optional.empty())), Optional.empty());
    }
    return run.attempt("$.stock", () -> new ClothChoice(run, cover, stock.get(), drawer, trims))
        .map(choice -> cut.isPresent() ? choice.chosen() : choice.together())
        .orElseGet(() -> new Chosen(List.of(), Optional.empty()));
  }

  private static List<Panel> asCut(PanelDrawer drawer, List<Integer> spans) {
    return drawer
        .together(spans)
        .orElseThrow(
            () ->
                ArgumentFault.of(
                    "faces that are cut in one piece",
                    "unlike lower edges, or too wide to lie flat beside each other",
                    "must stay as they were, or the piece be written as spoiled",
                    "",
                    ""));
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

  private Chosen chosen() {
    List<Way> ways = ways();
    if (ways.isEmpty()) {
      return new Chosen(all(run, cover, drawer, this::drawFirst), Optional.empty());
    }
    if (ways.size() == 1) {
      return new Chosen(ways.get(0).panels, Optional.empty());
    }
    Optional<LayoutChoice> layout =
        LayoutChoice.among(ways.stream().map(this::asked).iterator(), run.work(1));
    int index = layout.map(LayoutChoice::index).orElse(0);
    return new Chosen(ways.get(index).panels, layout);
  }

  /** What was chosen, or panels over several faces if they need no more cloth. */
  private Chosen together() {
    Chosen apart = chosen();
    if (!cover.keepTogether()
        || !cover.moreSplices().isEmpty()
        || stock.keepGrain()
        || apart.panels.size() < drawer.faces()) {
      return apart;
    }
    return new FanChoice(run, drawer, trims, stock).instead(apart);
  }

  private LayoutChoice.Way asked(Way way) {
    List<CutShape> shapes = CutShape.of(way.panels, trims);
    return new LayoutChoice.Way(StockCloth.request(shapes, stock), way.splices);
  }

  /** The ways, those with the fewest splices first; a way some face of which is refused is none. */
  private List<Way> ways() {
    List<Way> ways = new ArrayList<>();
    for (List<Integer> choice : choices()) {
      draw(choice)
          .map(panels -> new Way(panels, splices(panels)))
          .filter(way -> ways.stream().noneMatch(known -> isLike(known, way)))
          .ifPresent(ways::add);
    }
    ways.sort(Comparator.comparingInt(Way::splices));
    return ways;
  }

  /** Whether two ways come to the same panels. */
  private static boolean isLike(Way a, Way b) {
    return a.splices == 0 && b.splices == 0;
  }

  /** Every choice for one group of faces with every choice for the other. */
  private List<List<Integer>> choices() {
    List<List<Integer>> choices = List.of(Collections.nCopies(drawer.faces(), 0));
    for (Group group : groups) {
      List<List<Integer>> more = new ArrayList<>();
      choices.forEach(choice -> more.addAll(choices(group, choice)));
      choices = more;
    }
    return choices;
  }

  private static List<List<Integer>> choices(Group group, List<Integer> others) {
    int end = group.first + group.count;
    int count = group.faces.size();
    List<List<Integer>> choices = new ArrayList<>();
    for (int kind = group.first; kind < end; kind++) {
      choices.add(mixed(group, others, kind, kind, count));
    }
    for (int one = group.first; one < end; one++) {
      for (int other = one + 1; other < end; other++) {
        for (int part = 1; part < QUARTERS; part++) {
          choices.add(mixed(group, others, one, other, (part * count + QUARTERS / 2) / QUARTERS));
        }
      }
    }
    return choices;
  }

  /** The largest faces of a group for one kind, its others for another. */
  private static List<Integer> mixed(
      Group group, List<Integer> others, int one, int other, int ofOne) {
    List<Integer> choice = new ArrayList<>(others);
    for (int i = 0; i < group.faces.size(); i++) {
      choice.set(group.faces.get(i) - 1, i < ofOne ? one : other);
    }
    return choice;
  }

  private static int splices(List<Panel> panels) {
    return panels.stream().mapToInt(panel -> panel.splices().size()).sum();
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

  /** Draws a face for the first kind that comes into question for it. */
  private Panel drawFirst(int face) {
    return groups.stream()
        .filter(group -> group.faces.contains(face) && group.count > 0)
        .findFirst()
        .map(group -> draw(face, group.first))
        .orElseThrow();
  }

  private Panel draw(int face, int kind) {
    ClothKind cloth = kinds.get(kind);
    return cover.moreSplices().contains(face)
        ? new BandMore(cover, drawer).panel(face, cloth)
        : drawer.panel(face, Optional.of(cloth.rule(cover, face, drawer.faces())));
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

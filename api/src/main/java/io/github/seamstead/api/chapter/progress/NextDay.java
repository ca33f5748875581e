package io.github.seamstead.api.chapter.progress;

import io.github.seamstead.api.chapter.floor.FloorPart;
import io.github.seamstead.api.chapter.floor.LayerRest;
import io.github.seamstead.api.chapter.joining.JoiningPart;
import io.github.seamstead.api.chapter.progress.ProgressPart.PieceState;
import io.github.seamstead.assembly.merge.JoinStep;
import io.github.seamstead.assembly.ring.Edge;
import io.github.seamstead.assembly.ring.LogReport;
import io.github.seamstead.assembly.ring.PieceRing;
import io.github.seamstead.assembly.ring.Relabelling;
import io.github.seamstead.assembly.ring.Seam;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** What a crew does next: undo what is wrong, cut what is left, join on, lay the next layer. */
final class NextDay {

  private static final int SECTORS_SHOWN = 4;

  private final List<String> lines = new ArrayList<>();

  private NextDay() {}

  static List<String> of(
      List<PieceState> pieces, Optional<JoiningPart> joining, Optional<FloorPart> floor) {
    NextDay day = new NextDay();
    joining.ifPresent(day::undo);
    day.cut(pieces);
    joining.ifPresent(j -> day.join(j, pieces));
    floor.ifPresent(day::lay);
    if (day.lines.isEmpty()) {
      day.lines.add("Nothing of this plan is left to cut, to join or to lay.");
    }
    return List.copyOf(day.lines);
  }

  private void undo(JoiningPart joining) {
    Optional<LogReport> log = joining.log();
    List<String> undo =
        log.map(l -> l.undo().stream().map(NextDay::edges).toList()).orElse(List.of());
    if (undo.isEmpty()) {
      return;
    }
    lines.add("Undo first: " + String.join("; ", undo) + ".");
    joining.renaming().map(r -> words(r, joining.ring())).ifPresent(lines::add);
  }

  private static String edges(Seam seam) {
    return seam.first().label() + " from " + seam.second().label();
  }

  private static String words(Relabelling renaming, PieceRing ring) {
    return "Or undo "
        + (renaming.undo().isEmpty()
            ? "nothing"
            : renaming.undo().stream().map(NextDay::edges).collect(Collectors.joining("; ")))
        + " and write new names on pieces alike: "
        + String.join(", ", renaming.texts(ring))
        + ".";
  }

  /** By sheet, what is begun first: the layout's own order. */
  private void cut(List<PieceState> pieces) {
    Map<String, List<String>> bySheet = new LinkedHashMap<>();
    for (PieceState piece : pieces) {
      if (!piece.cut()) {
        String sheet = piece.stock().isEmpty() ? "" : piece.stock() + " number " + piece.copy();
        bySheet.computeIfAbsent(sheet, s -> new ArrayList<>()).add(piece.name());
      }
    }
    bySheet.forEach(
        (sheet, names) ->
            lines.add(
                sheet.isEmpty()
                    ? "Without a place yet: " + String.join(", ", names) + "."
                    : "Cut from " + sheet + ": " + String.join(", ", names) + "."));
  }

  /** The first seams of the order whose panels are cut. */
  private void join(JoiningPart joining, List<PieceState> pieces) {
    Optional<List<JoinStep>> steps = joining.order().map(order -> order.steps());
    if (steps.isEmpty()) {
      return;
    }
    List<String> now =
        steps.get().stream()
            .filter(s -> s.wave() == steps.get().get(0).wave())
            .filter(s -> isCut(joining, s.joint().first(), pieces))
            .filter(s -> isCut(joining, s.joint().second(), pieces))
            .map(s -> s.joint().text())
            .toList();
    if (!now.isEmpty()) {
      lines.add("Join: " + String.join("; ", now) + ".");
    }
  }

  /** Whether the panel of an edge is cut with all of its parts, which carry its name. */
  private static boolean isCut(JoiningPart joining, Edge edge, List<PieceState> pieces) {
    Pattern part =
        Pattern.compile(Pattern.quote(joining.ring().piece(edge.piece()).name()) + "(-\\d+)?");
    return pieces.stream().filter(p -> part.matcher(p.name()).matches()).allMatch(PieceState::cut);
  }

  /** The lowest layer of which something is left; the order of laying is that of its sectors. */
  private void lay(FloorPart floor) {
    Optional<LayerRest> next = floor.rest().stream().filter(r -> !r.isDone()).findFirst();
    if (next.isEmpty()) {
      return;
    }
    LayerRest rest = next.get();
    List<String> sectors =
        rest.sectorsLeft().stream().limit(SECTORS_SHOWN).map(String::valueOf).toList();
    boolean whole = rest.sectorsLeft().size() == floor.sectors().sectors().size();
    String where =
        whole && rest.loadsLeft().likely() == 0
            ? "the whole floor"
            : "sectors "
                + String.join(", ", sectors)
                + (rest.sectorsLeft().size() > SECTORS_SHOWN ? " and on" : "");
    lines.add(
        "Lay "
            + rest.layer()
            + ": "
            + where
            + (rest.loadsLeft().likely() > 0
                ? ", " + Numbers.fixed(rest.loadsLeft().likely(), 0) + " loads in all"
                : "")
            + ".");
  }
}

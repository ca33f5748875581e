package io.github.seamstead.api.chapter.cover;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.diary.Done;
import io.github.seamstead.api.job.SurveyReadings;
import io.github.seamstead.geometry.internal.SameCut;
import io.github.seamstead.geometry.markout.MarkOut;
import io.github.seamstead.geometry.pattern.FaceDifference;
import io.github.seamstead.geometry.pattern.Fan;
import io.github.seamstead.geometry.pattern.Panel;
import io.github.seamstead.geometry.pattern.PatternPiece;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Keeps pieces that are cut as they were drawn then, and says which of them no longer fit. What is
 * not cut stays as it was drawn before while its face is the same.
 */
final class KeptPieces {

  private final Run run;
  private final Done done;
  private final double tolerance;
  private final List<Misfit> misfits = new ArrayList<>();

  KeptPieces(Run run) {
    this.run = run;
    this.done = run.done();
    this.tolerance =
        run.document()
            .frame()
            .flatMap(f -> f.survey())
            .map(SurveyReadings::tolerance)
            .orElse(MarkOut.HAND_TOLERANCE);
  }

  /** Over how many faces each panel goes once pieces are cut; empty before. */
  Optional<List<Integer>> spans() {
    List<Integer> spans = new ArrayList<>();
    for (int panel = 1; done.earlier().containsKey(panel); panel++) {
      spans.add(Objects.requireNonNull(done.earlier().get(panel)).faces());
    }
    return spans.isEmpty() ? Optional.empty() : Optional.of(spans);
  }

  /** Whether every panel that is cut goes over the faces of one of these, and by its number. */
  boolean isAgreed(List<Panel> drawn) {
    int face = 1;
    for (int panel = 1; panel <= drawn.size(); panel++) {
      int faces = drawn.get(panel - 1).faces();
      Optional<Panel> there = Optional.ofNullable(done.panels().get(panel));
      if (there.isPresent() && !isAt(there.get(), face, faces)) {
        return false;
      }
      face += faces;
    }
    return done.panels().keySet().stream().allMatch(panel -> panel <= drawn.size());
  }

  private static boolean isAt(Panel cut, int face, int faces) {
    return PanelDrawer.firstFace(cut) == face && cut.faces() == faces;
  }

  /**
   * Parts faces so that the panels that are cut keep theirs and their numbers, also where another
   * document would part them otherwise. What has no such place any more is left out.
   */
  List<Integer> spansOfCut(int faces) {
    List<Integer> spans = new ArrayList<>();
    int face = 1;
    for (Map.Entry<Integer, Panel> cut : new TreeMap<>(done.panels()).entrySet()) {
      int first = PanelDrawer.firstFace(cut.getValue());
      int before = cut.getKey() - 1 - spans.size();
      int end = first + cut.getValue().faces();
      if (end - 1 <= faces && first - face >= before) {
        for (int i = 0; i < before; i++) {
          spans.add(i == 0 ? first - face - before + 1 : 1);
        }
        spans.add(cut.getValue().faces());
        face = end;
      }
    }
    spans.addAll(Collections.nCopies(faces - face + 1, 1));
    return spans;
  }

  /** The panels if every one stays; empty if one must be drawn. */
  Optional<List<Panel>> all(List<Outline> faces) {
    List<Panel> panels = new ArrayList<>();
    for (int face = 1; face <= faces.size(); ) {
      Optional<Panel> kept = kept(panels.size() + 1, face, faces);
      if (kept.isEmpty()) {
        return Optional.empty();
      }
      panels.add(kept.get());
      face += kept.get().faces();
    }
    return Optional.of(panels);
  }

  /** Puts the panels that stay in the place of those drawn anew. */
  List<Panel> settle(List<Panel> drawn, List<Outline> faces) {
    List<Panel> panels = new ArrayList<>();
    int face = 1;
    for (Panel fresh : drawn) {
      panels.add(
          kept(panels.size() + 1, face, faces)
              .filter(panel -> panel.faces() == fresh.faces())
              .orElse(fresh));
      face += fresh.faces();
    }
    return panels;
  }

  private Optional<Panel> kept(int panel, int face, List<Outline> faces) {
    Optional<Panel> cut =
        Optional.ofNullable(done.panels().get(panel))
            .filter(p -> isAt(p, face, p.faces()) && face + p.faces() - 1 <= faces.size());
    return cut.isPresent()
        ? cut
        : Optional.ofNullable(done.earlier().get(panel))
            .filter(p -> SameCut.sameOutline(p.face(), wanted(p, face, faces)));
  }

  /** The face, or the faces side by side, as they are to be now. */
  private static Outline wanted(Panel panel, int face, List<Outline> faces) {
    return panel.faces() == 1
        ? faces.get(face - 1)
        : Fan.of(faces.subList(face - 1, face - 1 + panel.faces()))
            .map(Fan::outline)
            .orElse(faces.get(face - 1));
  }

  /** Keeps a piece beside the panels of which one is cut, for all that are alike. */
  List<PatternPiece> trims(List<PatternPiece> drawn) {
    List<PatternPiece> trims = new ArrayList<>();
    for (PatternPiece piece : drawn) {
      Optional<PatternPiece> cut = Optional.ofNullable(done.trims().get(piece.label()));
      cut.ifPresent(
          old -> compare(piece.label(), old.stitch(), piece.stitch(), edges(old.stitch().size())));
      trims.add(cut.orElse(piece));
    }
    return trims;
  }

  /** What no longer fits of the panels, said in words as something that cannot be met. */
  List<Misfit> misfits(List<Panel> panels, List<Outline> faces) {
    int face = 1;
    for (int panel = 1; panel <= panels.size(); panel++) {
      Panel there = panels.get(panel - 1);
      if (there.equals(done.panels().get(panel))) {
        compare(
            name(face, there),
            there.face(),
            wanted(there, face, faces),
            edges(face, there.faces(), there.face().size()));
      }
      face += there.faces();
    }
    misfits.forEach(m -> run.unmet(Chapter.PATTERN, m.text()));
    return List.copyOf(misfits);
  }

  private static String name(int face, Panel panel) {
    return panel.faces() == 1
        ? "panel " + face
        : "panel " + face + " to " + (face + panel.faces() - 1);
  }

  private void compare(String name, Outline made, Outline wanted, List<String> edges) {
    if (made.size() != wanted.size()) {
      FaceDifference none = new FaceDifference(List.of(), List.of());
      misfits.add(
          new Misfit(
              name,
              none,
              tolerance,
              name
                  + " is cut and no longer fits: it has "
                  + made.size()
                  + " corners and should have "
                  + wanted.size()));
      return;
    }
    FaceDifference difference = FaceDifference.of(made, wanted);
    if (difference.greatest() > tolerance) {
      misfits.add(new Misfit(name, difference, tolerance, text(name, difference, made, edges)));
    }
  }

  private String text(String name, FaceDifference d, Outline made, List<String> edges) {
    StringBuilder text = new StringBuilder(name + " is cut and no longer fits:");
    for (int i = 0; i < made.size(); i++) {
      double off = d.edges().get(i);
      if (Math.abs(off) > tolerance) {
        text.append(' ')
            .append(edges.get(i))
            .append(" is ")
            .append(millimetres(Math.abs(off)))
            .append(off > 0 ? " short of " : " longer than ")
            .append(Numbers.fixed(made.edgeLength(i) + off, 3))
            .append(" m;");
      }
    }
    double corner = d.corners().stream().mapToDouble(Double::doubleValue).max().orElse(0);
    return text
        + " laid on the face as well as it goes, corner "
        + (d.corners().indexOf(corner) + 1)
        + " is "
        + millimetres(corner)
        + " off; ease it in the seams, or write it as spoiled to have it drawn anew";
  }

  /** A piece beside the panels of more than four sides has its edges counted from the lower. */
  private static List<String> edges(int count) {
    return count <= 4
        ? edges(1, 1, count)
        : IntStream.rangeClosed(1, count).mapToObj(number -> "edge " + number).toList();
  }

  /**
   * The edges run counter-clockwise from the base of the first face. A panel over several faces has
   * a base for each and, unless it ends in a point, a top for each.
   */
  private static List<String> edges(int first, int faces, int count) {
    List<String> edges = new ArrayList<>();
    for (int face = first; face < first + faces; face++) {
      edges.add("the lower edge" + (faces == 1 ? "" : " of face " + face));
    }
    edges.add("the right edge");
    for (int face = first + faces - 1; edges.size() < count - 1; face--) {
      edges.add("the upper edge" + (faces == 1 ? "" : " of face " + face));
    }
    edges.add("the left edge");
    return edges;
  }

  private static String millimetres(double metres) {
    return Numbers.fixed(metres * 1000, 0) + " mm";
  }
}

package io.github.seamstead.api.chapter.joining;

import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.api.job.Cover;
import io.github.seamstead.api.job.HemKind;
import io.github.seamstead.assembly.fixings.SeamBill;
import io.github.seamstead.assembly.fixings.SeamKind;
import io.github.seamstead.assembly.fixings.SeamRun;
import io.github.seamstead.assembly.ring.Joint;
import io.github.seamstead.assembly.ring.LogReport;
import io.github.seamstead.assembly.ring.PieceRing;
import io.github.seamstead.geometry.pattern.EdgeRole;
import io.github.seamstead.geometry.pattern.Panel;
import io.github.seamstead.geometry.pattern.PatternPiece;
import io.github.seamstead.geometry.pattern.PieceKind;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Lists every seam of the cover: on the panels, round the ring, at foot and top, in the lining. */
final class SeamPlanner {

  private SeamPlanner() {}

  static SeamBill bill(CoverPart cover, Cover stated, PieceRing ring) {
    List<SeamRun> runs = new ArrayList<>();
    for (int panel = 1; panel <= cover.panels().size(); panel++) {
      onPanel(runs, cover.panels().get(panel - 1), cover.firstFace(panel), stated);
    }
    ring.joints().forEach(joint -> runs.add(ring(joint)));
    cover.trims().forEach(trim -> trim(runs, trim));
    if (stated.skirt().isPresent()) {
      cover.panels().forEach(p -> add(runs, SeamKind.SKIRT, p, p.baseLength()));
    }
    cover
        .lining()
        .ifPresent(
            lining ->
                runs.add(
                    new SeamRun(
                        SeamKind.LINING,
                        "lining",
                        lining.panel().face().edgeLength(1),
                        lining.count())));
    return new SeamBill(runs);
  }

  /**
   * The seams that are made: joints that may stay, and the splices of every panel that hangs on
   * another, for its parts are joined before it meets its neighbours.
   */
  static List<SeamRun> made(CoverPart cover, LogReport log) {
    List<SeamRun> made = new ArrayList<>();
    log.kept().forEach(joint -> made.add(ring(joint)));
    log.present().stream()
        .flatMap(seam -> Stream.of(seam.first().piece(), seam.second().piece()))
        .distinct()
        .forEach(piece -> splices(made, cover.panels().get(piece - 1)));
    return made;
  }

  private static SeamRun ring(Joint joint) {
    return new SeamRun(SeamKind.RING, joint.mark().text(), joint.lengthMetres(), 1);
  }

  private static void splices(List<SeamRun> runs, Panel panel) {
    panel
        .splices()
        .forEach(
            s ->
                runs.add(
                    new SeamRun(
                        SeamKind.SPLICE,
                        s.over() + (s.upright() ? " beside " : " over ") + s.under(),
                        s.length(),
                        1)));
  }

  private static void onPanel(List<SeamRun> runs, Panel panel, int face, Cover stated) {
    splices(runs, panel);
    for (PatternPiece extra : panel.extras()) {
      if (extra.kind() == PieceKind.PATCH) {
        runs.add(
            new SeamRun(SeamKind.PATCH, extra.label(), extra.stitch().perimeter(), extra.count()));
      } else if (extra.kind() == PieceKind.FLAP) {
        runs.add(new SeamRun(SeamKind.FLAP, extra.label(), extra.upperEdgeLength(), extra.count()));
      }
    }
    if (stated.hem().of(face).kind() == HemKind.TURNED) {
      add(runs, SeamKind.HEM, panel, panel.baseLength());
    }
    if (stated.topTurnIn() > 0 && panel.topLength() > 0) {
      add(runs, SeamKind.TOP, panel, panel.topLength());
    }
  }

  private static void add(List<SeamRun> runs, SeamKind kind, Panel panel, double metres) {
    runs.add(new SeamRun(kind, panel.id(), metres, 1));
  }

  /** The joints of the cap and the ends of the skirt: every joint has an edge on two pieces. */
  private static void trim(List<SeamRun> runs, PatternPiece trim) {
    SeamKind kind = trim.kind() == PieceKind.SKIRT ? SeamKind.SKIRT_ENDS : SeamKind.CAP_JOINTS;
    double joined =
        trim.edges().stream()
            .filter(edge -> edge.allowance().role().isJoined())
            .mapToDouble(edge -> edge.finishedLength())
            .sum();
    if (joined > 0) {
      runs.add(new SeamRun(kind, trim.label(), joined / 2, trim.count()));
    }
    double rim =
        trim.edges().stream()
            .filter(edge -> edge.allowance().role() == EdgeRole.RAW)
            .mapToDouble(edge -> edge.finishedLength())
            .sum();
    if (trim.kind() != PieceKind.SKIRT && rim > 0) {
      runs.add(new SeamRun(SeamKind.CAP, trim.label() + " rim", rim, trim.count()));
    }
  }
}

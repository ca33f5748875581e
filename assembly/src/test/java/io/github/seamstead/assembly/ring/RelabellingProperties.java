package io.github.seamstead.assembly.ring;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.shared.work.Cancellation;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class RelabellingProperties {

  private static PieceRing ring(Random random, int n, boolean closed) {
    List<Piece> pieces = new ArrayList<>();
    for (int i = 1; i <= n; i++) {
      pieces.add(
          Piece.of(Integer.toString(i), Load.ofMass(5)).cutBy(random.nextInt(3) == 0 ? "b" : "a"));
    }
    return closed
        ? PieceRing.ring(pieces, Collections.nCopies(n, 3.0))
        : PieceRing.line(pieces, Collections.nCopies(n - 1, 3.0));
  }

  /** Joins right edges to left edges at random, each edge once, sometimes two of one side. */
  private static List<LogEntry> log(Random random, int n) {
    List<String> rights = new ArrayList<>();
    List<String> lefts = new ArrayList<>();
    for (int i = 1; i <= n; i++) {
      rights.add(i + "R");
      lefts.add(i + "L");
    }
    Collections.shuffle(rights, random);
    if (random.nextBoolean()) {
      Collections.shuffle(lefts, random);
    } else {
      // Mostly right: each right edge meets the left edge of the piece two names on.
      lefts.clear();
      for (String right : rights) {
        int piece = Integer.parseInt(right.substring(0, right.length() - 1));
        lefts.add((piece + 1) % n + 1 + "L");
      }
    }
    List<LogEntry> log = new ArrayList<>();
    int seams = 1 + random.nextInt(n);
    for (int i = 0; i < seams; i++) {
      log.add(
          LogEntry.joined(
              rights.get(i),
              lefts.get(i),
              random.nextInt(6) == 0 ? Facing.GOOD_TO_PLAIN : Facing.GOOD_TOGETHER));
    }
    return log;
  }

  private static int least(PieceRing ring, List<LogEntry> log) {
    List<Integer> names = new ArrayList<>();
    for (int i = 1; i <= ring.size(); i++) {
      names.add(i);
    }
    int[] best = {Integer.MAX_VALUE};
    permute(ring, log, names, 0, best);
    return best[0];
  }

  private static void permute(
      PieceRing ring, List<LogEntry> log, List<Integer> names, int from, int[] best) {
    if (from == names.size()) {
      best[0] = Math.min(best[0], wrong(ring, log, names));
      return;
    }
    for (int i = from; i < names.size(); i++) {
      Collections.swap(names, from, i);
      String own = ring.piece(from + 1).template();
      if (ring.piece(names.get(from)).template().equals(own)) {
        permute(ring, log, names, from + 1, best);
      }
      Collections.swap(names, from, i);
    }
  }

  /** Counts the seams that cannot stay when piece i is called names(i). */
  private static int wrong(PieceRing ring, List<LogEntry> log, List<Integer> names) {
    List<LogEntry> renamed = new ArrayList<>();
    for (LogEntry entry : log) {
      renamed.add(
          LogEntry.joined(
              renamed(ring, names, entry.firstEdge()),
              renamed(ring, names, entry.secondEdge()),
              entry.facing()));
    }
    return JoinLog.verify(ring, renamed).undo().size();
  }

  private static String renamed(PieceRing ring, List<Integer> names, String label) {
    Edge edge = ring.edge(label).orElseThrow();
    return ring.edge(names.get(edge.piece() - 1), edge.side()).label();
  }

  @Property(tries = 80, seed = "44337")
  void noNamesNeedFewer(@ForAll long seed) {
    Random random = new Random(seed);
    int n = 3 + random.nextInt(3);
    PieceRing ring = ring(random, n, random.nextBoolean());
    List<LogEntry> log = log(random, n);
    LogReport report = JoinLog.verify(ring, log);
    Optional<Relabelling> cure = Relabelling.of(ring, report);
    int least = least(ring, log);
    assertThat(cure.map(c -> c.undo().size()).orElse(report.undo().size())).isEqualTo(least);
    cure.ifPresent(c -> checkCure(ring, log, c));
  }

  /** Once the seams are undone and the names changed, the log is clean. */
  private static void checkCure(PieceRing ring, List<LogEntry> log, Relabelling cure) {
    Set<Integer> undone = new HashSet<>();
    cure.undo().forEach(seam -> undone.add(seam.entry()));
    List<Integer> names = new ArrayList<>();
    Map<Integer, Integer> places = new HashMap<>(cure.newNames());
    for (int i = 1; i <= ring.size(); i++) {
      names.add(places.getOrDefault(i, i));
      assertThat(ring.piece(i).template()).isEqualTo(ring.piece(names.get(i - 1)).template());
    }
    assertThat(new HashSet<>(names)).hasSize(ring.size());
    List<LogEntry> left = new ArrayList<>();
    for (int i = 0; i < log.size(); i++) {
      if (!undone.contains(i + 1)) {
        left.add(log.get(i));
      }
    }
    assertThat(wrong(ring, left, names)).isZero();
  }

  @Example
  void newNamesAreThoseThatAreWrittenOnThePieces() {
    Load load = Load.ofMass(5);
    PieceRing fans =
        PieceRing.ring(
            List.of(Piece.of("1 to 3", load), Piece.of("4 to 6", load), Piece.of("7", load)),
            Collections.nCopies(3, 3.0));
    assertThat(new Relabelling(List.of(), Map.of(2, 1)).texts(fans))
        .containsExactly("4 to 6 becomes 1 to 3");
    assertThat(new Relabelling(List.of(), Map.of()).texts(fans)).isEmpty();
  }

  @Example
  void twoAlikePiecesInEachOthersPlaceOnlySwapNames() {
    PieceRing ring = PieceRing.ofEqualPieces(12, 5, 3);
    List<LogEntry> log =
        List.of(
            LogEntry.joined("1R", "2L"),
            LogEntry.joined("2R", "4L"),
            LogEntry.joined("4R", "3L"),
            LogEntry.joined("3R", "5L"));
    LogReport report = JoinLog.verify(ring, log);
    assertThat(report.undo()).hasSize(3);
    Relabelling cure = Relabelling.of(ring, report).orElseThrow();
    assertThat(cure.undo()).isEmpty();
    assertThat(cure.newNames()).isEqualTo(Map.of(3, 4, 4, 3));
    Cancellation told = new Cancellation();
    told.finish();
    assertThat(Relabelling.of(ring, report, told)).as("told to stop before").isEmpty();
  }

  @Example
  void piecesOfTheirOwnTemplatesKeepTheirNames() {
    List<Piece> pieces = new ArrayList<>();
    for (int i = 1; i <= 6; i++) {
      pieces.add(Piece.of(Integer.toString(i), Load.ofMass(5)));
    }
    PieceRing ring = PieceRing.ring(pieces, Collections.nCopies(6, 3.0));
    LogReport report = JoinLog.verify(ring, List.of(LogEntry.joined("1R", "3L")));
    assertThat(Relabelling.of(ring, report)).isEmpty();
  }
}

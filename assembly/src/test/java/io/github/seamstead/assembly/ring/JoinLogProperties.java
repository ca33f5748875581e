package io.github.seamstead.assembly.ring;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class JoinLogProperties {

  private static PieceRing ring(int n, boolean closed) {
    PieceRing ring = PieceRing.ofEqualPieces(n, 5, 3);
    return closed ? ring : PieceRing.line(ring.pieces(), java.util.Collections.nCopies(n - 1, 3.0));
  }

  private static String label(Random random, PieceRing ring) {
    Side side = random.nextBoolean() ? Side.LEFT : Side.RIGHT;
    return ring.edge(1 + random.nextInt(ring.size()), side).label();
  }

  private static List<LogEntry> log(Random random, PieceRing ring, int entries) {
    List<LogEntry> log = new ArrayList<>();
    while (log.size() < entries) {
      if (random.nextInt(3) > 0 && !ring.joints().isEmpty()) {
        Joint joint = ring.joints().get(random.nextInt(ring.joints().size()));
        log.add(
            LogEntry.joined(
                joint.second().label(),
                joint.first().label(),
                random.nextInt(4) == 0 ? Facing.GOOD_TO_PLAIN : Facing.GOOD_TOGETHER));
      } else {
        String a = label(random, ring);
        String b = label(random, ring);
        if (!a.equals(b)) {
          log.add(LogEntry.joined(a, b));
        }
      }
    }
    return log;
  }

  /** Tells whether seams can all stand in one finished cover, by its definition. */
  private static boolean fitFinishedCover(PieceRing ring, List<LogEntry> seams) {
    Set<Set<String>> joints = new HashSet<>();
    for (Joint joint : ring.joints()) {
      joints.add(Set.of(joint.first().label(), joint.second().label()));
    }
    Set<Set<String>> used = new HashSet<>();
    for (LogEntry seam : seams) {
      Set<String> pair = Set.of(seam.firstEdge(), seam.secondEdge());
      if (!joints.contains(pair) || seam.facing() != Facing.GOOD_TOGETHER || !used.add(pair)) {
        return false;
      }
    }
    return true;
  }

  /** Every way to undo some seams is tried: none with fewer leaves a cover that can be finished. */
  @Property(tries = 120, seed = "81087")
  void noFewerSeamsWillDo(@ForAll long seed) {
    Random random = new Random(seed);
    PieceRing ring = ring(2 + random.nextInt(6), random.nextBoolean());
    List<LogEntry> log = log(random, ring, 1 + random.nextInt(9));
    LogReport report = JoinLog.verify(ring, log);
    int least = Integer.MAX_VALUE;
    for (int kept = 0; kept < 1 << log.size(); kept++) {
      List<LogEntry> left = new ArrayList<>();
      for (int i = 0; i < log.size(); i++) {
        if ((kept >> i & 1) != 0) {
          left.add(log.get(i));
        }
      }
      if (fitFinishedCover(ring, left)) {
        least = Math.min(least, log.size() - left.size());
      }
    }
    assertThat(report.undo()).hasSize(least);
    Set<Integer> undone = new HashSet<>();
    report.undo().forEach(seam -> undone.add(seam.entry()));
    List<LogEntry> left = new ArrayList<>();
    for (int i = 0; i < log.size(); i++) {
      if (!undone.contains(i + 1)) {
        left.add(log.get(i));
      }
    }
    assertThat(fitFinishedCover(ring, left)).isTrue();
    assertThat(JoinLog.verify(ring, left).isClean()).isTrue();
  }

  /** A fault is found exactly when something is to undo. */
  @Property(tries = 120, seed = "8447")
  void everyWrongLogIsCaught(@ForAll long seed) {
    Random random = new Random(seed);
    PieceRing ring = ring(2 + random.nextInt(20), random.nextBoolean());
    LogReport report = JoinLog.verify(ring, log(random, ring, 1 + random.nextInt(30)));
    assertThat(report.faults().isEmpty()).isEqualTo(report.undo().isEmpty());
    Set<Integer> faulty = new HashSet<>();
    report.faults().forEach(fault -> faulty.add(fault.entry()));
    for (Seam seam : report.undo()) {
      boolean named = faulty.contains(seam.entry());
      assertThat(named).as(seam.text()).isTrue();
    }
    int pieces = report.groups().stream().mapToInt(Arc::count).sum();
    assertThat(pieces).isEqualTo(ring.size());
    assertThat(report.kept().size() + report.open().size()).isEqualTo(ring.joints().size());
  }

  /** Each single wrong pair of edges in an otherwise right log is named and nothing else undone. */
  @Property(tries = 60, seed = "5814")
  void onePlantedWrongSeamIsTheOnlyOneToUndo(@ForAll long seed) {
    Random random = new Random(seed);
    PieceRing ring = ring(4 + random.nextInt(12), true);
    List<LogEntry> log = new ArrayList<>();
    int wrong = 2 + random.nextInt(ring.size() - 3);
    for (int i = 1; i < wrong; i++) {
      Joint joint = ring.joint(i);
      log.add(LogEntry.joined(joint.first().label(), joint.second().label()));
    }
    Joint joint = ring.joint(wrong);
    String other = ring.edge((wrong + 1) % ring.size() + 1, Side.LEFT).label();
    log.add(LogEntry.joined(joint.first().label(), other));
    LogReport report = JoinLog.verify(ring, log);
    assertThat(report.undo()).extracting(Seam::entry).containsExactly(log.size());
    assertThat(report.faults()).extracting(Fault::entry).containsOnly(log.size());
    assertThat(report.kept()).hasSize(wrong - 1);
  }
}

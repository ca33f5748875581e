package io.github.seamstead.assembly.ring;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Reads the log of what was joined, names each fault and the fewest seams to undo.
 *
 * <p>Why the count is the least. The finished cover holds each joint once, good sides together, and
 * nothing else. Every seam that is no such joint, and every further seam over a joint that is made
 * already, is therefore missing from every finished cover, and each must be undone by itself.
 * Undoing exactly these leaves only right joints, which stand side by side in the finished cover.
 * So the bound is reached.
 *
 * <p>Costs O(e + n) for e entries and n pieces, and O(n) more for each wrong pair of edges.
 */
public final class JoinLog {

  private static final String REST =
      "what is left are joints of the finished cover, so no more need be.";

  private final PieceRing ring;
  private final List<Fault> faults = new ArrayList<>();
  private final Set<Seam> present = new LinkedHashSet<>();
  private final Map<Edge, List<Seam>> byEdge = new HashMap<>();
  private boolean readable = true;

  private JoinLog(PieceRing ring) {
    this.ring = ring;
  }

  /**
   * Verifies a log.
   *
   * @param ring the pieces
   * @param entries the log, first entry first
   * @return what is there, what is wrong, what to undo and what is open
   */
  public static LogReport verify(PieceRing ring, List<LogEntry> entries) {
    JoinLog log = new JoinLog(ring);
    for (int i = 0; i < entries.size(); i++) {
      log.read(i + 1, entries.get(i));
    }
    return log.report();
  }

  private void read(int number, LogEntry entry) {
    Optional<Edge> first = find(number, entry.firstEdge());
    Optional<Edge> second = find(number, entry.secondEdge());
    if (first.isEmpty() || second.isEmpty()) {
      readable = false;
      return;
    }
    entry.firstMark().ifPresent(mark -> compare(number, first.get(), mark));
    entry.secondMark().ifPresent(mark -> compare(number, second.get(), mark));
    if (first.get().equals(second.get())) {
      readable = false;
      fault(
          Fault.Kind.UNKNOWN_EDGE,
          number,
          first.get().label() + " is named twice: a seam needs two edges");
      return;
    }
    Seam seam = seam(number, first.get(), second.get(), entry.facing());
    if (entry.action() == LogEntry.Action.UNDONE) {
      undo(seam);
    } else {
      present.add(seam);
      keep(seam);
    }
  }

  private void keep(Seam seam) {
    byEdge.computeIfAbsent(seam.first(), e -> new ArrayList<>(1)).add(seam);
    byEdge.computeIfAbsent(seam.second(), e -> new ArrayList<>(1)).add(seam);
  }

  private Seam seam(int number, Edge first, Edge second, Facing facing) {
    Optional<Joint> joint =
        ring.jointAt(first).filter(j -> j.equals(ring.jointAt(second).orElse(null)));
    return new Seam(number, first, second, facing, joint);
  }

  private Optional<Edge> find(int number, String label) {
    Optional<Edge> edge = ring.edge(label);
    if (edge.isEmpty()) {
      fault(
          Fault.Kind.UNKNOWN_EDGE,
          number,
          "no piece has an edge "
              + label.strip()
              + "; edges run from "
              + ring.edge(1, Side.LEFT).label()
              + " to "
              + ring.edge(ring.size(), Side.RIGHT).label());
    }
    return edge;
  }

  private void compare(int number, Edge edge, String typed) {
    Optional<Joint> joint = ring.jointAt(edge);
    String right = joint.map(j -> j.mark().text()).orElse("no mark, for it stays free");
    Optional<JointMark> mark = JointMark.read(typed);
    if (joint.isPresent() && mark.equals(joint.map(Joint::mark))) {
      return;
    }
    boolean inUse =
        mark.isPresent() && ring.joints().stream().anyMatch(j -> j.mark().equals(mark.get()));
    String why = inUse ? " is the mark of another joint" : " is no mark in use";
    fault(
        Fault.Kind.MISREAD_MARK,
        number,
        typed.strip() + why + ": " + edge.label() + " carries " + right + "; look again");
  }

  private void note(Seam seam) {
    List<Seam> at = new ArrayList<>(seamsAt(seam.first()));
    seamsAt(seam.second()).stream().filter(other -> !at.contains(other)).forEach(at::add);
    if (seam.joint().isPresent() && at.stream().anyMatch(s -> s.joint().equals(seam.joint()))) {
      fault(
          Fault.Kind.DONE_TWICE,
          seam.entry(),
          "joint " + seam.joint().get().text() + " had been made before");
    } else {
      for (Seam other : at) {
        Edge taken = shares(other, seam.first()) ? seam.first() : seam.second();
        fault(
            Fault.Kind.EDGE_TAKEN,
            seam.entry(),
            taken.label() + " was used before in " + other.text());
      }
    }
    if (seam.joint().isPresent() && seam.facing() != Facing.GOOD_TOGETHER) {
      faultOfSide(seam);
    }
  }

  private List<Seam> seamsAt(Edge edge) {
    return byEdge.getOrDefault(edge, List.of());
  }

  private void faultOfSide(Seam seam) {
    fault(
        Fault.Kind.WRONG_SIDE,
        seam.entry(),
        seam.first().label()
            + " and "
            + seam.second().label()
            + " belong together, but were joined "
            + seam.facing().label()
            + "; undo and join with "
            + Facing.GOOD_TOGETHER.label());
  }

  private static boolean shares(Seam seam, Edge edge) {
    return seam.first().equals(edge) || seam.second().equals(edge);
  }

  private void undo(Seam gone) {
    List<Seam> at = seamsAt(gone.first());
    for (int i = at.size() - 1; i >= 0; i--) {
      Seam seam = at.get(i);
      if (shares(seam, gone.second())) {
        present.remove(seam);
        at.remove(i);
        seamsAt(gone.second()).remove(seam);
        return;
      }
    }
    fault(
        Fault.Kind.NOTHING_TO_UNDO,
        gone.entry(),
        gone.first().label() + " and " + gone.second().label() + " were not joined");
  }

  private LogReport report() {
    List<Joint> kept = new ArrayList<>();
    List<Seam> undo = new ArrayList<>();
    Set<Integer> made = new HashSet<>();
    // Only what is still there is a fault: a wrong seam that was undone is none.
    byEdge.clear();
    Components components = new Components(ring, List.copyOf(present));
    for (Seam seam : present) {
      note(seam);
      keep(seam);
      if (seam.isRight() && made.add(seam.joint().get().number())) {
        kept.add(seam.joint().get());
      } else {
        undo.add(seam);
      }
      if (seam.joint().isEmpty()) {
        faults.add(components.wrongPair(seam));
      }
    }
    Collections.reverse(undo);
    faults.sort(Comparator.comparingInt(Fault::entry));
    return new LogReport(
        faults,
        List.copyOf(present),
        kept,
        undo,
        proof(undo.size()),
        Components.groups(ring, made),
        ring.joints().stream().filter(joint -> !made.contains(joint.number())).toList(),
        readable);
  }

  private static String proof(int count) {
    return switch (count) {
      case 0 -> "Nothing is to undo: every seam is a joint of the finished cover.";
      case 1 -> "This one is not in the finished cover, so it must be undone; " + REST;
      default ->
          "None of these " + count + " is in the finished cover, so each must be undone; " + REST;
    };
  }

  private void fault(Fault.Kind kind, int entry, String message) {
    faults.add(new Fault(kind, entry, message));
  }
}

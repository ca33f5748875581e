package io.github.seamstead.assembly.merge;

import io.github.seamstead.assembly.ring.Arc;
import io.github.seamstead.assembly.ring.Load;
import io.github.seamstead.assembly.ring.PieceRing;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The groups that are still to be joined: the pieces at first, larger runs once joints are made.
 * Spans are given by the index of their first group, from 0, and a count, going round.
 */
final class Groups {

  final PieceRing ring;
  final int size;
  final boolean closed;
  private final List<Arc> arcs;
  private final double[] mass;
  private final double[] bulk;
  private final double[] bunch;
  private final double[] floor;
  private final int[] pieces;

  Groups(PieceRing ring, Set<Integer> made) {
    this.ring = ring;
    this.arcs = new ArrayList<>(ring.groups(made));
    this.size = arcs.size();
    this.closed = ring.isRing() && made.size() < ring.size();
    this.mass = new double[2 * size + 1];
    this.bulk = new double[2 * size + 1];
    this.bunch = new double[2 * size + 1];
    this.floor = new double[2 * size + 1];
    this.pieces = new int[2 * size + 1];
    for (int i = 0; i < 2 * size; i++) {
      Load load = ring.load(arcs.get(i % size));
      mass[i + 1] = mass[i] + load.mass();
      bulk[i + 1] = bulk[i] + load.bulkVolume();
      bunch[i + 1] = bunch[i] + load.bunch();
      floor[i + 1] = floor[i] + load.laidArea();
      pieces[i + 1] = pieces[i] + arcs.get(i % size).count();
    }
  }

  /** Gives the mass of a span, in kilograms. */
  double mass(int first, int count) {
    return mass[first + count] - mass[first];
  }

  /** Gives the load of a span. */
  Load load(int first, int count) {
    return new Load(
        difference(mass, first, count),
        difference(bulk, first, count),
        difference(bunch, first, count),
        difference(floor, first, count));
  }

  private static double difference(double[] sums, int first, int count) {
    return Math.max(0, sums[first + count] - sums[first]);
  }

  /** Gives the run of pieces of a span. */
  Arc arc(int first, int count) {
    return new Arc(arcs.get(first % size).first(), pieces(first, count));
  }

  /** Gives the number of pieces of a span. */
  int pieces(int first, int count) {
    return pieces[first + count] - pieces[first];
  }

  /** Gives the number of the joint on the right of a group. */
  int jointAfter(int group) {
    return arcs.get(group % size).last(ring.size());
  }

  /** Gives the length of the joint on the right of a group, in metres. */
  double lengthAfter(int group) {
    return ring.joint(jointAfter(group)).length();
  }

  /** Gives how many spans may be the whole: every cut of a ring, one of a line. */
  int cuts() {
    return closed ? size : 1;
  }

  /** Gives the closing joint when the whole starts with this group. */
  int closingJoint(int cut) {
    return jointAfter((cut + size - 1) % size);
  }

  /** Gives the length of that joint, in metres. */
  double closingLength(int cut) {
    return lengthAfter((cut + size - 1) % size);
  }

  /** Tells whether a piece of a group belongs to a run of pieces. */
  boolean within(int group, Arc run) {
    Arc arc = arcs.get(group % size);
    int piece = arc.first();
    for (int i = 0; i < arc.count(); i++) {
      if (!run.contains(piece, ring.size())) {
        return false;
      }
      piece = ring.after(piece);
    }
    return true;
  }

  /** Tells whether no piece of a group belongs to a run of pieces. */
  boolean outside(int group, Arc run) {
    Arc arc = arcs.get(group % size);
    int piece = arc.first();
    for (int i = 0; i < arc.count(); i++) {
      if (run.contains(piece, ring.size())) {
        return false;
      }
      piece = ring.after(piece);
    }
    return true;
  }
}

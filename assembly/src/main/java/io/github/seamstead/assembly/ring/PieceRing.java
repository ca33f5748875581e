package io.github.seamstead.assembly.ring;

import io.github.seamstead.shared.check.Args;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * The pieces of a cover in their order, seen from outside from left to right, and their joints.
 *
 * <pre>{@code
 * PieceRing ring = PieceRing.ofEqualPieces(8, 5.5, 3.2);
 * ring.count().text();            // 8 pieces: 8 joints, 16 edges to prepare, none free
 * ring.joint(3).text();           // C-32: 3R to 4L
 * }</pre>
 *
 * <p>Immutable. Building costs O(n), each question O(1).
 */
public final class PieceRing {

  private final Closure closure;
  private final List<Piece> pieces;
  private final List<Joint> joints;
  private final Map<String, Edge> edges;

  private PieceRing(Closure closure, List<Piece> pieces, List<Double> jointLengths) {
    this.closure = closure;
    this.pieces = Args.notEmpty("pieces", pieces);
    int n = pieces.size();
    int jointCount = closure == Closure.RING ? n : n - 1;
    Args.within("number of joints", jointCount, 0, JointMark.MOST_JOINTS);
    Args.require(
        jointLengths.size() == jointCount,
        "joint lengths",
        String.valueOf(jointLengths.size()),
        "must be "
            + jointCount
            + " for a "
            + closure.name().toLowerCase(Locale.ROOT)
            + " of "
            + n
            + " pieces");
    this.edges = labels(this.pieces);
    List<Joint> all = new ArrayList<>(jointCount);
    for (int i = 1; i <= jointCount; i++) {
      double length = Args.positive("length of joint " + i, jointLengths.get(i - 1), "m");
      all.add(
          new Joint(
              i,
              JointMark.of(i, jointCount),
              edge(i, Side.RIGHT),
              edge(after(i), Side.LEFT),
              length));
    }
    this.joints = List.copyOf(all);
  }

  private static Map<String, Edge> labels(List<Piece> pieces) {
    Map<String, Edge> edges = new HashMap<>();
    for (int i = 1; i <= pieces.size(); i++) {
      for (Side side : Side.values()) {
        String label = pieces.get(i - 1).edgeLabel(side);
        Edge before = edges.put(key(label), new Edge(i, side, label));
        Args.require(
            before == null,
            "edge label: given " + label + " for two edges, every edge must have its own");
      }
    }
    return edges;
  }

  private static String key(String label) {
    return label.replaceAll("\\s", "").toUpperCase(Locale.ROOT);
  }

  /**
   * Makes a ring.
   *
   * @param pieces in their order, at least one; edge labels (name and letter) must all differ
   * @param jointLengths length of joint i between piece i and the next, in metres, greater than 0;
   *     as many as pieces
   * @return the ring
   * @throws IllegalArgumentException if the counts differ, a length is not positive, two edges have
   *     one label, or there are more than {@link JointMark#MOST_JOINTS} joints
   */
  public static PieceRing ring(List<Piece> pieces, List<Double> jointLengths) {
    return new PieceRing(Closure.RING, pieces, jointLengths);
  }

  /**
   * Makes a line whose outer edges stay free.
   *
   * @param pieces in their order, at least one; edge labels (name and letter) must all differ
   * @param jointLengths length of joint i between piece i and the next, in metres, greater than 0;
   *     one fewer than pieces
   * @return the line
   * @throws IllegalArgumentException as for {@link #ring}
   */
  public static PieceRing line(List<Piece> pieces, List<Double> jointLengths) {
    return new PieceRing(Closure.LINE, pieces, jointLengths);
  }

  /**
   * Makes a ring of alike pieces called 1 to n.
   *
   * @param n how many pieces, 1 or more
   * @param mass mass of each, in kilograms, 0 or more
   * @param jointLength length of each joint, in metres, greater than 0
   * @return the ring
   * @throws IllegalArgumentException if a number is out of its range
   */
  public static PieceRing ofEqualPieces(int n, double mass, double jointLength) {
    Args.within("number of pieces", n, 1, JointMark.MOST_JOINTS);
    List<Piece> pieces = new ArrayList<>(n);
    List<Double> lengths = new ArrayList<>(n);
    for (int i = 1; i <= n; i++) {
      pieces.add(Piece.of(Integer.toString(i), Load.ofMass(mass)).cutBy("one template"));
      lengths.add(jointLength);
    }
    return ring(pieces, lengths);
  }

  /**
   * Tells whether the pieces close to a ring.
   *
   * @return ring or line
   */
  public Closure closure() {
    return closure;
  }

  /**
   * Tells whether this is a ring.
   *
   * @return true for a ring, false for a line
   */
  public boolean isRing() {
    return closure == Closure.RING;
  }

  /**
   * Gives the number of pieces.
   *
   * @return 1 or more
   */
  public int size() {
    return pieces.size();
  }

  /**
   * Lists the pieces.
   *
   * @return in their order, piece 1 first
   */
  public List<Piece> pieces() {
    return pieces;
  }

  /**
   * Gives a piece.
   *
   * @param number from 1
   * @return the piece
   * @throws IllegalArgumentException if there is no such piece
   */
  public Piece piece(int number) {
    return pieces.get(Args.within("piece number", number, 1, size()) - 1);
  }

  /**
   * Lists the joints.
   *
   * @return in their order, joint 1 first; empty for a line of one piece
   */
  public List<Joint> joints() {
    return joints;
  }

  /**
   * Gives a joint.
   *
   * @param number from 1
   * @return the joint between piece {@code number} and the next
   * @throws IllegalArgumentException if there is no such joint
   */
  public Joint joint(int number) {
    return joints.get(Args.within("joint number", number, 1, joints.size()) - 1);
  }

  /**
   * Gives an edge.
   *
   * @param piece the piece's number, from 1
   * @param side which side edge
   * @return the edge
   * @throws IllegalArgumentException if there is no such piece
   */
  public Edge edge(int piece, Side side) {
    return new Edge(piece, side, piece(piece).edgeLabel(side));
  }

  /**
   * Finds an edge by what is written on it, capitals and blanks aside.
   *
   * @param label such as {@code 3R} or {@code 3 r}
   * @return the edge, or empty if no piece has such an edge
   */
  public Optional<Edge> edge(String label) {
    return Optional.ofNullable(edges.get(key(label)));
  }

  /**
   * Finds the joint that an edge belongs to.
   *
   * @param edge an edge of this ring
   * @return the joint, or empty for a free edge of a line
   */
  public Optional<Joint> jointAt(Edge edge) {
    int number =
        edge.side() == Side.RIGHT ? edge.piece() : Math.floorMod(edge.piece() - 2, size()) + 1;
    return number <= joints.size() && (isRing() || edge.piece() > 1 || edge.side() == Side.RIGHT)
        ? Optional.of(joint(number))
        : Optional.empty();
  }

  /**
   * Counts joints and edges.
   *
   * @return the count, each joint once
   */
  public JointCount count() {
    return new JointCount(
        size(),
        joints.size(),
        2 * joints.size(),
        2 * size() - 2 * joints.size(),
        joints.stream().mapToDouble(Joint::length).sum());
  }

  /**
   * Adds up the load of a run of pieces. Costs O(length of the run).
   *
   * @param arc a run of at most all pieces
   * @return the sum
   * @throws IllegalArgumentException if the run does not fit
   */
  public Load load(Arc arc) {
    Args.within("count of pieces", arc.count(), 1, size());
    Load sum = Load.NONE;
    int piece = arc.first();
    for (int i = 0; i < arc.count(); i++) {
      sum = sum.plus(piece(piece).load());
      piece = after(piece);
    }
    return sum;
  }

  /**
   * Lists what hangs together once some joints are made. Costs O(n).
   *
   * @param made the numbers of the joints made, from 1
   * @return runs of pieces from left to right, the one that starts with the least number first; a
   *     single run starting at piece 1 if all joints of a ring are made
   */
  public List<Arc> groups(Set<Integer> made) {
    return Components.groups(this, made);
  }

  /**
   * Gives the piece to the right, seen from outside.
   *
   * @param piece a piece's number, from 1
   * @return the next number; 1 after the last
   */
  public int after(int piece) {
    return piece % size() + 1;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof PieceRing ring
        && ring.closure == closure
        && ring.pieces.equals(pieces)
        && ring.joints.equals(joints);
  }

  @Override
  public int hashCode() {
    return Objects.hash(closure, pieces, joints);
  }

  @Override
  public String toString() {
    return count().text();
  }
}

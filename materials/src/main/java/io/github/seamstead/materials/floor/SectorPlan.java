package io.github.seamstead.materials.floor;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * The floor cut into sectors round a centre post that is set to level, and the order of laying.
 *
 * <p>Laying starts at the sector farthest from the door and goes to and fro on both sides of it, so
 * that what is not yet laid always hangs together and reaches the door, and every joint waits only
 * for about two sectors. The sector at the door comes last and is laid from outside.
 *
 * @param centre the centre post
 * @param sectors by number
 * @param door the number of the sector at the door
 */
public record SectorPlan(Vector2D centre, List<Sector> sectors, int door) {

  public SectorPlan {
    sectors = List.copyOf(sectors);
  }

  /** More sectors than this are too narrow to lay (common practice). */
  private static final int MOST_SECTORS = 24;

  /** Sectors made of an outline with more edges than {@link #MOST_SECTORS}, at most. */
  private static final int JOINED_SECTORS = 16;

  /**
   * Cuts one sector for each edge round the middle of the area, or round the place from which all
   * of the edge can be seen. Of an outline with more than 24 edges, such as a round one, each
   * sector takes several edges in a row.
   *
   * @param footprint the floor
   * @param doorEdge the edge with the door, 0 to n − 1
   * @return the plan
   * @throws IllegalArgumentException if the edge does not exist, or no place sees the whole edge
   */
  public static SectorPlan of(Footprint footprint, int doorEdge) {
    int edges = footprint.corners().size();
    Args.within("door edge", doorEdge, 0, edges - 1);
    Vector2D centre = footprint.screedCentre().orElseGet(footprint::centroid);
    if (edges <= MOST_SECTORS) {
      return of(footprint, centre, doorEdge, 1);
    }
    int joined = 1;
    while (edges > joined * JOINED_SECTORS || (edges % joined != 0 && joined < edges / 8)) {
      joined++;
    }
    return joined(footprint, centre, doorEdge, joined);
  }

  private static SectorPlan joined(Footprint footprint, Vector2D centre, int doorEdge, int joined) {
    List<Vector2D> corners = footprint.corners();
    int edges = corners.size();
    int count = (edges + joined - 1) / joined;
    int door = doorEdge / joined;
    int[] order = orderOfLaying(count, door);
    List<Sector> sectors = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      List<Vector2D> around = new ArrayList<>();
      around.add(centre);
      for (int edge = i * joined; edge <= Math.min(edges, (i + 1) * joined); edge++) {
        around.add(corners.get(edge % edges));
      }
      for (int k = 1; k + 1 < around.size(); k++) {
        requireSeen(centre, around.get(k), around.get(k + 1), i * joined + k);
      }
      Outline outline = new Outline(around);
      sectors.add(new Sector(i + 1, outline, areaToLay(footprint, outline), order[i]));
    }
    return new SectorPlan(centre, sectors, door + 1);
  }

  private static void requireSeen(Vector2D centre, Vector2D a, Vector2D b, int edge) {
    Args.agree(
        Footprint.seesEdge(centre, a, b),
        "centre post: edge " + edge + " cannot be screeded from it",
        "must see the whole edge; move the post or floor the plan in two parts");
  }

  private static double areaToLay(Footprint footprint, Outline outline) {
    double area = outline.area();
    for (Outline gap : footprint.gaps()) {
      for (int k = 1; k + 1 < outline.size(); k++) {
        area -=
            gap.areaWithin(Outline.of(outline.vertex(0), outline.vertex(k), outline.vertex(k + 1)));
      }
    }
    return Math.max(0, area);
  }

  /**
   * Turns a point about the centre so that the door lies at the bottom, as every drawing shows it.
   *
   * @param point of the plan, in metres
   * @return the point from the centre, x to the right and y away from the door, in metres
   */
  public Vector2D doorDown(Vector2D point) {
    Vector2D toDoor = sectors.get(door - 1).labelPoint().subtract(centre);
    double turn = -Math.PI / 2 - StrictMath.atan2(toDoor.getY(), toDoor.getX());
    Vector2D from = point.subtract(centre);
    return Vector2D.of(
        from.getX() * StrictMath.cos(turn) - from.getY() * StrictMath.sin(turn),
        from.getX() * StrictMath.sin(turn) + from.getY() * StrictMath.cos(turn));
  }

  /**
   * Cuts sectors round a centre. Costs O(n m) for n sectors and m corners of gaps.
   *
   * @param footprint the floor
   * @param centre the centre post, from which all of the edge can be seen
   * @param doorEdge the edge with the door, 0 to n − 1; the middle one of its sectors is the door's
   * @param perEdge sectors for each edge, 1 to 20
   * @return the plan
   * @throws IllegalArgumentException if the edge does not exist, the count is out of range, or an
   *     edge cannot be seen from the centre
   */
  public static SectorPlan of(Footprint footprint, Vector2D centre, int doorEdge, int perEdge) {
    List<Vector2D> corners = footprint.corners();
    int edges = corners.size();
    Args.within("door edge", doorEdge, 0, edges - 1);
    Args.within("sectors for each edge", perEdge, 1, 20);
    int count = edges * perEdge;
    int door = doorEdge * perEdge + perEdge / 2;
    int[] order = orderOfLaying(count, door);
    List<Sector> sectors = new ArrayList<>();
    for (int edge = 0; edge < edges; edge++) {
      Vector2D a = corners.get(edge);
      Vector2D b = corners.get((edge + 1) % edges);
      requireSeen(centre, a, b, edge + 1);
      for (int k = 0; k < perEdge; k++) {
        Outline outline =
            Outline.of(
                centre,
                k == 0 ? a : a.lerp(b, (double) k / perEdge),
                k == perEdge - 1 ? b : a.lerp(b, (double) (k + 1) / perEdge));
        int index = edge * perEdge + k;
        sectors.add(new Sector(index + 1, outline, areaToLay(footprint, outline), order[index]));
      }
    }
    return new SectorPlan(centre, sectors, door + 1);
  }

  /** Farthest first, then one on each side in turn, so that the door is left over at last. */
  private static int[] orderOfLaying(int count, int door) {
    int[] order = new int[count];
    int far = door + count / 2;
    for (int turn = 0; turn < count; turn++) {
      int step = turn % 2 == 1 ? (turn + 1) / 2 : -turn / 2;
      order[(far + step + count) % count] = turn + 1;
    }
    return order;
  }

  /**
   * Gives the sectors in the order of laying.
   *
   * @return first to last
   */
  public List<Sector> inOrder() {
    return sectors.stream().sorted(Comparator.comparingInt(Sector::order)).toList();
  }

  /**
   * Gives the area of all sectors.
   *
   * @return in square metres; the footprint's area
   */
  public double area() {
    return sectors.stream().mapToDouble(Sector::area).sum();
  }

  /**
   * Shares out the loads: which load goes into which sector, in the order of laying.
   *
   * @param plan the loads of the layer
   * @return one row a sector, in the order of laying
   */
  public List<SectorBatches> batches(BatchPlan plan) {
    double all = plan.quantity().dryMass().likely() / plan.batch().dryMass();
    double area = area();
    List<SectorBatches> rows = new ArrayList<>();
    double done = 0;
    double laid = 0;
    for (Sector sector : inOrder()) {
      laid += sector.area();
      double until = all * (laid / area);
      int first = (int) Math.floor(done + 1e-9) + 1;
      int last = Math.max(first, (int) Math.ceil(until - 1e-9));
      rows.add(new SectorBatches(sector, first, last, until - done, done, until));
      done = until;
    }
    return List.copyOf(rows);
  }
}

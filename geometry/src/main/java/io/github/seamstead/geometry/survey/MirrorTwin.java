package io.github.seamstead.geometry.survey;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;

/**
 * A second place of a node that fits its readings as well as the first: the mirror image in the
 * plane through the nodes from which it was taped. By convention the apex stands above the base and
 * corners go counter-clockwise seen from above; a twin nearer to the first place than the eye can
 * tell apart deserves a reading that decides.
 *
 * @param node the node
 * @param chosen the place the adjustment gives, in metres
 * @param twin the other place, in metres
 * @param taped the nodes from which it was taped
 */
public record MirrorTwin(Node node, Vector3D chosen, Vector3D twin, List<Node> taped) {

  /** The twin fits if each reading then misses by less than this many standard uncertainties. */
  private static final double FITS = 3;

  public MirrorTwin {
    taped = List.copyOf(taped);
  }

  /**
   * Gives the distance of the twins.
   *
   * @return in metres
   */
  public double apart() {
    return chosen.distance(twin);
  }

  static List<MirrorTwin> of(Adjustment adjustment) {
    List<MirrorTwin> twins = new ArrayList<>();
    for (Node node : adjustment.nodeNames()) {
      twinOf(node, adjustment, twins);
    }
    return List.copyOf(twins);
  }

  private static void twinOf(Node node, Adjustment adjustment, List<MirrorTwin> twins) {
    List<Reading> own = new ArrayList<>();
    Set<Node> taped = new LinkedHashSet<>();
    for (Reading reading : adjustment.survey().readings()) {
      if (reading.nodes().contains(node)) {
        if (!(reading instanceof Reading.Distance)) {
          return;
        }
        own.add(reading);
        taped.addAll(reading.nodes());
      }
    }
    taped.remove(node);
    if (taped.size() < 3) {
      return;
    }
    List<Vector3D> places = taped.stream().map(adjustment::position).toList();
    Vector3D middle = Vector3D.centroid(places);
    Vector3D normal = flattest(places, middle);
    Vector3D chosen = adjustment.position(node);
    double height = chosen.subtract(middle).dot(normal);
    Vector3D twin = chosen.subtract(normal.multiply(2 * height));
    boolean fits = true;
    boolean apart = false;
    for (Reading reading : own) {
      Node other =
          reading.nodes().get(0).equals(node) ? reading.nodes().get(1) : reading.nodes().get(0);
      Vector3D place = adjustment.position(other);
      double changed = Math.abs(twin.distance(place) - chosen.distance(place));
      fits &= changed < FITS * reading.standardUncertainty();
      apart |= chosen.distance(twin) > FITS * reading.standardUncertainty();
    }
    if (fits && apart) {
      twins.add(new MirrorTwin(node, chosen, twin, List.copyOf(taped)));
    }
  }

  private static Vector3D flattest(List<Vector3D> places, Vector3D middle) {
    double[][] scatter = new double[3][3];
    for (Vector3D place : places) {
      double[] d = place.subtract(middle).toArray();
      for (int i = 0; i < 3; i++) {
        for (int j = 0; j < 3; j++) {
          scatter[i][j] += d[i] * d[j];
        }
      }
    }
    // Eigenvalues come in falling order.
    double[] axis =
        new EigenDecomposition(new Array2DRowRealMatrix(scatter, false))
            .getEigenvector(2)
            .toArray();
    return Vector3D.of(axis);
  }
}

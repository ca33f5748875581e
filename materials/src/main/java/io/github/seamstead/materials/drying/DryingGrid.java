package io.github.seamstead.materials.drying;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Cell sizes from the surface down: fine where moisture changes fast. */
final class DryingGrid {

  private final double[] sizes;
  private final int coatCells;

  private DryingGrid(double[] sizes, int coatCells) {
    this.sizes = sizes;
    this.coatCells = coatCells;
  }

  /**
   * Makes the grid.
   *
   * @param slab coat and base
   * @param detail how fine
   * @param refinement 1 for use; 2 halves every cell
   */
  static DryingGrid of(DryingSlab slab, DryingDetail detail, int refinement) {
    double growth = detail.growth();
    double middle = slab.thickness() / detail.middleCells();
    double first = Math.min(detail.largestAtSurface(), slab.thickness() / detail.surfaceCells());
    List<Double> sizes = new ArrayList<>();
    if (slab.baseThickness() == 0) {
      sizes.addAll(graded(slab.thickness(), first, growth));
    } else {
      sizes.addAll(graded(slab.thickness() / 2, first, growth));
      List<Double> lower = graded(slab.thickness() / 2, middle, growth);
      Collections.reverse(lower);
      sizes.addAll(lower);
    }
    int coat = sizes.size();
    if (slab.baseThickness() > 0) {
      sizes.addAll(graded(slab.baseThickness(), middle, growth));
    }
    double[] cells = new double[sizes.size() * refinement];
    for (int i = 0; i < cells.length; i++) {
      cells[i] = sizes.get(i / refinement) / refinement;
    }
    return new DryingGrid(cells, coat * refinement);
  }

  /** Cells that grow evenly from a first size, scaled to fill a thickness. */
  private static List<Double> graded(double thickness, double first, double growth) {
    List<Double> sizes = new ArrayList<>();
    double size = Math.min(first, thickness / 4);
    double sum = 0;
    while (sum < thickness) {
      sizes.add(size);
      sum += size;
      size *= growth;
    }
    double scale = thickness / sum;
    sizes.replaceAll(s -> s * scale);
    return sizes;
  }

  int cells() {
    return sizes.length;
  }

  int coatCells() {
    return coatCells;
  }

  double size(int cell) {
    return sizes[cell];
  }
}

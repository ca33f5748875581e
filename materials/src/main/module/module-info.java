/**
 * From tests of a soil to a dry floor. Stands alone; what is exported to our own modules alone may
 * change with any release.
 */
module io.github.seamstead.materials {
  requires transitive io.github.seamstead.shared;
  requires transitive org.apache.commons.geometry.euclidean;
  requires commons.math3;
  requires static org.jspecify;

  exports io.github.seamstead.materials.drying;
  exports io.github.seamstead.materials.floor;
  exports io.github.seamstead.materials.internal to
      io.github.seamstead.api;
  exports io.github.seamstead.materials.mix;
  exports io.github.seamstead.materials.soil;
  exports io.github.seamstead.materials.water;
}

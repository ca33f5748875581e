/**
 * From named pieces to a cover that stands in the wind. Stands alone; what is exported to our own
 * modules alone may change with any release.
 */
module io.github.seamstead.assembly {
  requires transitive io.github.seamstead.shared;
  requires commons.math3;
  requires static org.jspecify;

  exports io.github.seamstead.assembly.anchor;
  exports io.github.seamstead.assembly.fixings;
  exports io.github.seamstead.assembly.handling;
  exports io.github.seamstead.assembly.internal to
      io.github.seamstead.api;
  exports io.github.seamstead.assembly.merge;
  exports io.github.seamstead.assembly.ring;
  exports io.github.seamstead.assembly.schedule;
}

/**
 * What every module of the library speaks in: checked arguments, quantities, doubts, worked steps,
 * sources, cautions, budgets. What is exported to our own modules alone may change with any release.
 */
module io.github.seamstead.shared {
  requires transitive org.apache.commons.geometry.euclidean;
  requires static org.jspecify;

  exports io.github.seamstead.shared.caution;
  exports io.github.seamstead.shared.check;
  exports io.github.seamstead.shared.derivation;
  exports io.github.seamstead.shared.plane;
  exports io.github.seamstead.shared.quantity;
  exports io.github.seamstead.shared.sensitivity;
  exports io.github.seamstead.shared.sensitivity.internal to
      io.github.seamstead.geometry,
      io.github.seamstead.materials,
      io.github.seamstead.assembly,
      io.github.seamstead.api;
  exports io.github.seamstead.shared.source;
  exports io.github.seamstead.shared.text to
      io.github.seamstead.api;
  exports io.github.seamstead.shared.uncertainty;
  exports io.github.seamstead.shared.work;
  exports io.github.seamstead.shared.work.internal to
      io.github.seamstead.api;
}

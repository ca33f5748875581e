/**
 * From a frame's measures or its survey to pieces laid on the cloth at hand and marked out. Stands
 * alone; what is exported to our own modules alone may change with any release.
 */
module io.github.seamstead.geometry {
  requires transitive io.github.seamstead.shared;
  requires transitive org.apache.commons.geometry.euclidean;
  requires commons.math3;
  requires static org.jspecify;

  exports io.github.seamstead.geometry.bars;
  exports io.github.seamstead.geometry.drawing to
      io.github.seamstead.api;
  exports io.github.seamstead.geometry.frame;
  exports io.github.seamstead.geometry.internal to
      io.github.seamstead.api;
  exports io.github.seamstead.geometry.layout;
  exports io.github.seamstead.geometry.markout;
  exports io.github.seamstead.geometry.members;
  exports io.github.seamstead.geometry.pattern;
  exports io.github.seamstead.geometry.stock;
  exports io.github.seamstead.geometry.survey;
  exports io.github.seamstead.geometry.tape;
  exports io.github.seamstead.geometry.templates;
}

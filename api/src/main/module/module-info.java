/**
 * The front door of the library. Whoever requires this module reads the modules behind it as well,
 * since their values are in its results. Pages, drawings and what the chapters share on their way
 * are not exported.
 */
module io.github.seamstead.api {
  requires transitive io.github.seamstead.shared;
  requires transitive io.github.seamstead.geometry;
  requires transitive io.github.seamstead.materials;
  requires transitive io.github.seamstead.assembly;
  requires transitive org.apache.commons.geometry.euclidean;
  requires com.fasterxml.jackson.core;
  // For SeamsteadModule alone: whoever binds data brings it.
  requires static com.fasterxml.jackson.databind;
  requires static org.jspecify;

  exports io.github.seamstead.api;
  exports io.github.seamstead.api.book;
  exports io.github.seamstead.api.chapter;
  exports io.github.seamstead.api.chapter.cover;
  exports io.github.seamstead.api.chapter.drying;
  exports io.github.seamstead.api.chapter.floor;
  exports io.github.seamstead.api.chapter.frame;
  exports io.github.seamstead.api.chapter.joining;
  exports io.github.seamstead.api.chapter.layout;
  exports io.github.seamstead.api.chapter.markout;
  exports io.github.seamstead.api.chapter.progress;
  exports io.github.seamstead.api.chapter.rigging;
  exports io.github.seamstead.api.chapter.soil;
  exports io.github.seamstead.api.chapter.survey;
  exports io.github.seamstead.api.compare;
  exports io.github.seamstead.api.diary;
  exports io.github.seamstead.api.doubt;
  exports io.github.seamstead.api.jackson;
  exports io.github.seamstead.api.job;
  exports io.github.seamstead.api.plan;
  exports io.github.seamstead.api.results;
}

/**
 * Benchmarks of the layout search's inner loop, in the package of the layout because its setup is
 * not public. Not part of the geometry module.
 */
package io.github.seamstead.geometry.layout;

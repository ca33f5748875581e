/**
 * Benchmarks of the layout search's inner loop, in its package because that is not public. Not part
 * of the geometry module.
 */
package io.github.seamstead.geometry.layout;

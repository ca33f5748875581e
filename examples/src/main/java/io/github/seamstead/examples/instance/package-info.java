/**
 * Strip instances in the plain form of the public cutting benchmarks: reading, solving, writing and
 * the table that compares densities with published ones.
 */
@NullMarked
package io.github.seamstead.examples.instance;

import org.jspecify.annotations.NullMarked;

/** JMH benchmarks, one class for each package of the library that has a cost worth knowing. */
@NullMarked
package io.github.seamstead.benchmarks;

import org.jspecify.annotations.NullMarked;

/** The command line: one small class for each command over the library's own entry points. */
@NullMarked
package io.github.seamstead.examples.cli;

import org.jspecify.annotations.NullMarked;

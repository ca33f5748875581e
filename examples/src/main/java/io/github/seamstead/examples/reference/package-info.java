/**
 * The reference page: every comparison with a value from outside the project, as the tests made it.
 */
@NullMarked
package io.github.seamstead.examples.reference;

import org.jspecify.annotations.NullMarked;

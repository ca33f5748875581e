/**
 * Checked arguments: one line per argument, one clear message per fault.
 *
 * <p>Every message has the same shape: the argument's name, what was given, what is allowed, and
 * the unit. Not-a-number always fails. First class to open: {@link
 * io.github.seamstead.shared.check.Args}.
 */
@NullMarked
package io.github.seamstead.shared.check;

import org.jspecify.annotations.NullMarked;

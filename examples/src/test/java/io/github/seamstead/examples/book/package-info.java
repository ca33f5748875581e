/** Holds the job book and the lessons to their promises in a real browser. */
@NullMarked
package io.github.seamstead.examples.book;

import org.jspecify.annotations.NullMarked;

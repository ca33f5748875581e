/**
 * Markup, drawings and charts that the book and the lessons are made of.
 *
 * <p>Own classes and not a template or chart library: the book is one self-contained file that must
 * be written in a fraction of a second by a fresh Java process, and a chart library's window
 * toolkit and fonts would cost more than the whole run.
 */
@NullMarked
package io.github.seamstead.api.page;

import org.jspecify.annotations.NullMarked;

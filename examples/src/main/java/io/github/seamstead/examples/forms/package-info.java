/**
 * Field forms: what is read at the frame, at the heap of cloth and at the pegs, on paper and as
 * tables that a spreadsheet opens, and the way back of what was filled in into the job document.
 *
 * <p>First classes to open: {@link io.github.seamstead.examples.forms.FieldForms} and {@link
 * io.github.seamstead.examples.forms.FilledForms}.
 */
@NullMarked
package io.github.seamstead.examples.forms;

import org.jspecify.annotations.NullMarked;

/**
 * Lessons in the order of the work on one shelter: a question with every number, an estimate, a
 * derivation with its figure, a worked example, faded ones, reasons, a mistake to find, a check and
 * exercises with other numbers for each pupil. Printed as a page, as pupils' sheets and as a
 * teacher's book.
 *
 * <p>First classes to open: {@link io.github.seamstead.examples.lessons.Lesson} for the form,
 * {@link io.github.seamstead.examples.lessons.Lessons} for the list, {@link
 * io.github.seamstead.examples.lessons.Task} for a question with its sum.
 */
@NullMarked
package io.github.seamstead.examples.lessons;

import org.jspecify.annotations.NullMarked;

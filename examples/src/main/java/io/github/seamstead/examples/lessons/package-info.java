/**
 * Twelve short lessons in the order of the work, each a runnable program: a question, a picture,
 * the worked answer and three exercises whose answers the library checks.
 *
 * <p>First classes to open: {@link io.github.seamstead.examples.lessons.Lesson} for the form,
 * {@link io.github.seamstead.examples.lessons.Lessons} for the list.
 */
@NullMarked
package io.github.seamstead.examples.lessons;

import org.jspecify.annotations.NullMarked;

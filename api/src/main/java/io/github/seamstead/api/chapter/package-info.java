/**
 * The chapters of a plan: one room a stage of the work, from the document to the reader.
 *
 * <p>Open {@link io.github.seamstead.api.chapter.Chapter} for the stages, and {@link
 * io.github.seamstead.api.chapter.PlanOptions} for the terms of a run. Each sub-package holds what
 * belongs to one stage: how it is planned, its typed part, its facts for the results, its pages in
 * the book. The contract that they share is {@code internal.ChapterOf}.
 *
 * <p>First class to open: {@link io.github.seamstead.api.chapter.PlanOptions}.
 */
@NullMarked
package io.github.seamstead.api.chapter;

import org.jspecify.annotations.NullMarked;

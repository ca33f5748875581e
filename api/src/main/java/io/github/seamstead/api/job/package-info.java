/**
 * The job document: what a builder writes down, read and checked.
 *
 * <p>A document is one JSON file whose sections follow the work: {@code site}, {@code frame},
 * {@code cover}, {@code stock}, {@code soils}, {@code trialMixes}, {@code floor}, {@code plant} and
 * {@code weather}. Only {@code frame} is required; a section that is absent is not planned. Every
 * quantity is text with its unit, such as {@code "5.2 m"} or {@code "17 ft 3 in"}, or a bare number
 * in the unit that the schema states for it.
 *
 * <p>{@link io.github.seamstead.api.job.JobReader} gives either a {@link
 * io.github.seamstead.api.job.Job} or all faults of the document together, each with the path of
 * the value, what it says and what is allowed. A value that the document leaves out and the plan
 * needs is taken from common practice and listed in {@link
 * io.github.seamstead.api.job.Job#assumptions()}, never silently.
 *
 * <p>Reading and schema come from one description: a package-private shape for each record, whose
 * keys a test holds equal to the record's components.
 *
 * <p>First class to open: {@link io.github.seamstead.api.job.JobReader}.
 */
@NullMarked
package io.github.seamstead.api.job;

import org.jspecify.annotations.NullMarked;

/**
 * The front door of the library, package by package.
 *
 * <ul>
 *   <li>{@code job}: a job as a document ({@code JobReader}, {@code JobWriter}) or in code ({@code
 *       Job.builder()});
 *   <li>{@code plan}: from a job to a plan ({@code JobPlanner}, {@code JobPlan});
 *   <li>{@code results}: a plan as data, written and read ({@code ResultsJson}, {@code Results});
 *   <li>{@code book}: a plan as pages for a crew ({@code Book});
 *   <li>{@code chapter}: the terms of a run ({@code PlanOptions}) and what each stage found;
 *   <li>{@code jackson}: jobs and results in an {@code ObjectMapper} ({@code SeamsteadModule}).
 * </ul>
 *
 * <p><b>Threads.</b> All values here are immutable and may be shared. The readers, writers and the
 * planner hold no state: any number of threads may plan at once, and equal jobs on equal terms give
 * equal results. A builder belongs to one thread, and a switch ({@code Cancellation}) to the runs
 * that it was given to.
 *
 * <p><b>Numbers</b> are SI, angles in radians, temperatures in degrees Celsius. <b>A lack</b> is an
 * {@code Optional} or an empty list, never null. <b>Exceptions:</b> {@code JobFaultsException} with
 * every fault of a document at once; {@code JobFileException} with its cause where a file cannot be
 * read; {@code IllegalArgumentException} for an argument out of its range.
 */
@NullMarked
package io.github.seamstead.api;

import org.jspecify.annotations.NullMarked;

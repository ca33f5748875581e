/**
 * The run: a job goes through frame, panels, layout, joining, fixings, raising, soil, mix, floor
 * and drying in the order of the work.
 *
 * <p>This package computes nothing itself. It hands the document's values to the modules, keeps
 * what they give in one {@link io.github.seamstead.api.plan.JobPlan}, and gathers cautions,
 * assumptions, worked steps and what was not planned and why.
 *
 * <p>First class to open: {@link io.github.seamstead.api.plan.JobPlanner}.
 */
@NullMarked
package io.github.seamstead.api.plan;

import org.jspecify.annotations.NullMarked;

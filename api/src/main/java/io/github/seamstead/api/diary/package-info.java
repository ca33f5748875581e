/**
 * The job goes on: what a diary says is done, as a plan takes it, and what changed between two
 * plans.
 *
 * <p>A diary ({@link io.github.seamstead.api.job.Diary}) stands beside the job document: dated
 * lines of pieces cut, spoiled and found, cloth used, torn and bought, seams joined and undone,
 * layers laid by sector, tiles and their weighings, soil tests, readings taken again, peg pulls and
 * weather. {@code JobPlanner.plan(job, diary, options)} plans on from it:
 *
 * <ul>
 *   <li>pieces that are cut keep their shape and their place on the cloth; the others keep their
 *       planned place while its cloth is there, and are laid on the rest of the cloth else;
 *   <li>tests and readings of the diary replace those that the job states;
 *   <li>the order of joining goes on from the groups that exist, loads and orders are those that
 *       remain, and drying is reckoned from the weighings of the tiles and the weather seen.
 * </ul>
 *
 * <p>A piece cut without a stated place lies where the plan of the evening before puts it. That
 * plan is made again from the same job, diary, effort and seed, so these must stay the same; the
 * head of a diary can state effort and seed, and a plan with others is then refused. Where the job
 * document itself was changed after pieces were cut, the planner takes the document by which they
 * were cut beside the new one.
 *
 * <p>First class to open: {@link io.github.seamstead.api.diary.PlanChanges}; what a folded diary
 * holds is {@link io.github.seamstead.api.diary.Done}.
 */
@NullMarked
package io.github.seamstead.api.diary;

import org.jspecify.annotations.NullMarked;

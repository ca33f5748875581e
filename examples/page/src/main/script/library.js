/*
 * Seamstead for web pages. Plans fabric covers on pyramid frames and the earthen floors under them.
 * Apache License 2.0.
 *
 *   seamstead.check(job)          reads a job document (JSON text)
 *     gives {title, assumed: [{path, text}]} or {faults: [{path, line, given, allowed, text}]}
 *   seamstead.plan(job, options)  plans it; blocks for seconds, so call it in a worker
 *     options, all optional: diary (JSON text), effort (1 to 9: the work of the search, doubled by
 *       each step; equal jobs and efforts give equal plans), seconds (limit of each search), worked
 *       (true: with the steps of each calculation), heard (function that is called with {stage,
 *       share} at most ten times a second; once it returns true, searches end with their best so
 *       far and the rest is planned in full). With a diary the searches are those by which the work
 *       was done: no seconds, and no end before theirs
 *     gives {book: HTML text, results: JSON text, met: boolean, unmet: [text], stopped: boolean}
 *       or {faults: […]}
 * Both throw an Error for an option that is not known, and where the library itself fails. Texts in the book are escaped; still show it
 * in a sandboxed frame. What it says defers to local codes and licensed practice.
 */
const seamstead = (() => {
  /*ENGINE*/
  main([]);
  const engine = globalThis.seamsteadEngine;
  delete globalThis.seamsteadEngine;
  const ask = (request, heard) => {
    let last = null;
    let failure = null;
    let end = false;
    engine(JSON.stringify(request), text => {
      const {id, kind, ...answer} = JSON.parse(text);
      if (kind === 'progress') {
        end = heard(answer) === true;
      } else if (kind === 'failed') {
        failure = new Error(answer.text);
      } else {
        last = answer;
      }
    }, () => end);
    if (failure) {
      throw failure;
    }
    return last;
  };
  return Object.freeze({
    check: job => ask({id: 0, kind: 'check', job}, () => {}),
    plan: (job, {heard = () => {}, ...options} = {}) => ask({...options, id: 0, kind: 'plan', job}, heard),
  });
})();

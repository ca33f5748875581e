/*
 * Seamstead for web pages. Plans fabric covers on pyramid frames and the earthen floors under them.
 * Apache License 2.0.
 *
 *   seamstead.check(job)          reads a job document (JSON text)
 *     gives {title, assumed: [{path, text}]} or {faults: [{path, line, given, allowed, text}]}
 *   seamstead.plan(job, options)  plans it; blocks for seconds, so call it in a worker
 *     options, all optional: diary (JSON text), effort (1 to 9), seconds (limit of each search),
 *       heard (function that is called with {stage, share} at most ten times a second)
 *     gives {book: HTML text, results: JSON text, met: boolean, unmet: [text], stopped: boolean}
 *       or {faults: […]}
 * Both throw an Error where the library itself fails. Texts in the book are escaped; still show it
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
    engine(JSON.stringify(request), text => {
      const {id, kind, ...answer} = JSON.parse(text);
      if (kind === 'progress') {
        heard(answer);
      } else if (kind === 'failed') {
        failure = new Error(answer.text);
      } else {
        last = answer;
      }
    });
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

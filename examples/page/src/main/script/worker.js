// Ties the engine to the messages of a worker. It hears none while it plans, so nothing asks it to end early.
main([]);
if (typeof WorkerGlobalScope !== 'undefined') {
  globalThis.onmessage = event => globalThis.seamsteadEngine(
    JSON.stringify(event.data), answer => globalThis.postMessage(JSON.parse(answer)), () => false);
}

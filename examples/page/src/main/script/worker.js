// Ties the engine to the messages of a worker.
main([]);
if (typeof WorkerGlobalScope !== 'undefined') {
  globalThis.onmessage = event => globalThis.seamsteadEngine(
    JSON.stringify(event.data), answer => globalThis.postMessage(JSON.parse(answer)));
}

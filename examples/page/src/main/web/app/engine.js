// The library, compiled to script: unpacked on the first need, run in workers off the page's thread.

let address = null;

/** The address of the unpacked script, the same for every worker. */
const engineAddress = () => {
  address ||= unpackBeside('engine')
    .then(bytes => URL.createObjectURL(new Blob([bytes], {type: 'text/javascript'})));
  return address;
};

/** One worker with its open questions. */
const newEngine = () => {
  const waiting = new Map();
  let worker = null;
  let next = 0;
  let generation = 0;

  const settle = answer => {
    const question = waiting.get(answer.id);
    if (!question) {
      return;
    }
    if (answer.kind === 'progress') {
      question.heard(answer);
      return;
    }
    waiting.delete(answer.id);
    question.settle(answer);
  };

  const failAll = text => {
    for (const [id] of waiting) {
      settle({id, kind: 'failed', text});
    }
  };

  const start = async () => {
    const mine = generation;
    const url = await engineAddress();
    if (mine !== generation || worker) {
      return;
    }
    worker = new Worker(url);
    worker.onmessage = event => settle(event.data);
    worker.onerror = event => {
      event.preventDefault();
      stop('The planner stopped: ' + (event.message || 'it did not start.'));
    };
  };

  const stop = text => {
    generation++;
    if (worker) {
      worker.terminate();
    }
    worker = null;
    failAll(text);
  };

  /** Asks and gives the last answer; progress goes to `heard`. */
  const call = async (message, heard = () => {}) => {
    const id = ++next;
    const answer = new Promise(settled => waiting.set(id, {settle: settled, heard}));
    try {
      await start();
    } catch (fault) {
      settle({id, kind: 'failed', text: 'The planner could not be unpacked: ' + fault.message});
    }
    if (worker && waiting.has(id)) {
      worker.postMessage({...message, id});
    }
    return answer;
  };

  return {call, stop};
};

/** One worker answers while one types; plans have their own, which can be stopped. */
const helper = newEngine();
const planner = newEngine();

/** Asks for the newest state only: while one question is open, the next waits and replaces others. */
const newest = (ask, use) => {
  let busy = false;
  let again = false;
  const run = async () => {
    if (busy) {
      again = true;
      return;
    }
    busy = true;
    const record = open.record.id;
    const answer = await ask();
    busy = false;
    if (again) {
      again = false;
      run();
    } else if (open.record.id === record) {
      use(answer);
    }
  };
  return run;
};

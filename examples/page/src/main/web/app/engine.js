// The library, compiled to script: unpacked on the first need, run in workers off the page's thread.

const PIECE = 1 << 17;

const LETTERS = [...Array(94).keys()].map(i => String.fromCharCode(33 + i)).filter(c => !'<"\\'.includes(c));

/** Unpacks gzip written as letters to a stream, piece by piece so that the page never stands still. */
const unpackEngine = async text => {
  const packed = text.trim();
  const space = packed.indexOf(' ');
  const bytes = new Uint8Array(Number(packed.slice(0, space)));
  const value = new Uint8Array(128);
  LETTERS.forEach((letter, i) => {
    value[letter.charCodeAt(0)] = i;
  });
  let held = 0;
  let count = 0;
  let at = 0;
  for (let i = space + 1; i < packed.length; i += 2) {
    held |= (value[packed.charCodeAt(i)] + 91 * value[packed.charCodeAt(i + 1)]) << count;
    for (count += 13; count >= 8 && at < bytes.length; count -= 8) {
      bytes[at++] = held & 255;
      held >>>= 8;
    }
    if (i % PIECE < 2) {
      await breath();
    }
  }
  return new Blob([bytes]).stream().pipeThrough(new DecompressionStream('gzip'));
};

/** Unpacks base64 of gzip to a stream, piece by piece so that the page never stands still. */
const unpack = async text => {
  const packed = text.trim();
  const parts = [];
  for (let i = 0; i < packed.length; i += PIECE) {
    const letters = atob(packed.slice(i, i + PIECE));
    const bytes = new Uint8Array(letters.length);
    for (let k = 0; k < letters.length; k++) {
      bytes[k] = letters.charCodeAt(k);
    }
    parts.push(bytes);
    await breath();
  }
  return new Blob(parts).stream().pipeThrough(new DecompressionStream('gzip'));
};

let address = null;

/** The address of the unpacked script, the same for every worker. */
const engineAddress = () => {
  address ||= unpackEngine(byId('engine').textContent)
    .then(stream => new Response(stream).blob())
    .then(blob => URL.createObjectURL(new Blob([blob], {type: 'text/javascript'})));
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

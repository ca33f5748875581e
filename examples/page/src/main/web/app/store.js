// What the device keeps between visits. A convenience: the file is the save.

const STORE = 'seamstead-page-1-';
const store = {refused: false, full: false};

const attempt = work => {
  try {
    return work(localStorage);
  } catch (refusal) {
    store.refused = !(refusal && /quota/i.test(refusal.name + refusal.message));
    store.full = !store.refused;
    return undefined;
  }
};

const readKept = key => {
  const text = attempt(kept => kept.getItem(STORE + key));
  try {
    return text ? JSON.parse(text) : null;
  } catch (broken) {
    return null;
  }
};

const isRecord = record => Boolean(record && typeof record.id === 'string' && record.job
  && typeof record.job === 'object');

/** The jobs on this device, the latest first. */
const keptJobs = () => {
  const list = readKept('jobs');
  return Array.isArray(list) ? list.filter(entry => entry && typeof entry.id === 'string') : [];
};

const keptJob = id => {
  const record = readKept('job-' + id);
  return isRecord(record) ? {...emptyJob(), ...record} : null;
};

const isEmptyJob = record => !record.diary && Object.keys(record.job).length <= 2
  && Object.keys(record.job.site || {}).length === 0;

/** Keeps the open job. Gives whether it is kept. */
const keep = () => {
  const record = open.record;
  if (isEmptyJob(record)) {
    return !store.refused;
  }
  const list = keptJobs().filter(entry => entry.id !== record.id);
  list.unshift({id: record.id, title: jobTitle(record), time: Date.now()});
  const kept = attempt(device => {
    device.setItem(STORE + 'job-' + record.id, JSON.stringify(record));
    device.setItem(STORE + 'jobs', JSON.stringify(list));
    return true;
  });
  if (kept) {
    store.full = false;
    store.refused = false;
  }
  return Boolean(kept);
};

const forget = id => attempt(device => {
  device.removeItem(STORE + 'job-' + id);
  device.removeItem(STORE + 'book-' + id);
  device.setItem(STORE + 'jobs', JSON.stringify(keptJobs().filter(entry => entry.id !== id)));
});

/** Keeps the last book, packed. It is only a convenience: without room it is planned again. */
const keepBook = async plan => {
  const id = open.record.id;
  try {
    const packed = new Blob([JSON.stringify(plan)]).stream().pipeThrough(new CompressionStream('gzip'));
    const bytes = new Uint8Array(await new Response(packed).arrayBuffer());
    const parts = [];
    for (let i = 0; i < bytes.length; i += 8192) {
      parts.push(String.fromCharCode(...bytes.subarray(i, i + 8192)));
    }
    localStorage.setItem(STORE + 'book-' + id, btoa(parts.join('')));
  } catch (refusal) {
    // The book can be planned again at any time.
  }
};

const bytesOf = text => {
  const letters = atob(text);
  const bytes = new Uint8Array(letters.length);
  for (let i = 0; i < letters.length; i++) {
    bytes[i] = letters.charCodeAt(i);
  }
  return bytes;
};

const keptBook = async id => {
  try {
    const text = localStorage.getItem(STORE + 'book-' + id);
    return text ? JSON.parse(await gunzip(bytesOf(text))) : null;
  } catch (refusal) {
    return null;
  }
};

const savedText = (name, changed) => {
  const saved = open.record.saved[name];
  if (!saved) {
    return 'not yet saved to a file';
  }
  const day = dayOf(saved.time) === dayOf(Date.now()) ? '' : ' on ' + dayOf(saved.time);
  return 'last saved to a file at ' + clock(saved.time) + day + (changed ? ', changed since' : '');
};

/** Says when the job was last saved to a file, and whether the device keeps it. */
const showSaved = () => {
  const record = open.record;
  const parts = ['Job ' + savedText('job', record.changedJob)];
  if (hasDiary()) {
    parts.push('diary ' + savedText('diary', record.changedDiary));
  }
  const note = store.refused ? 'This device keeps nothing: save to a file.'
    : store.full ? 'This device is full and keeps no more: save to a file.' : '';
  byId('saved').textContent = parts.join('; ') + (note ? '. ' + note : '.');
  byId('saved').classList.toggle('pressing', Boolean(note));
  byId('save-diary').hidden = !hasDiary();
  if (store.full) {
    warn('There is no room left in the store that this browser gives to pages. What you change '
      + 'now is kept in this page only. Save the job to a file, or remove jobs under “Jobs”.');
  }
};

const keepSoon = later(300, () => {
  keep();
  showSaved();
});

/** Whether leaving would lose what is neither on the device nor in a file. */
const isAtRisk = () => !isEmptyJob(open.record) && (store.refused || store.full)
  && (open.record.changedJob || open.record.changedDiary);

addEventListener('storage', event => {
  if (event.key === STORE + 'job-' + open.record.id && event.newValue !== null) {
    warn('This job is open in another window and was changed there. Each window keeps its own: '
      + 'what is changed last stays on the device. Save to a file before you go on here.');
  }
});

addEventListener('beforeunload', event => {
  keep();
  if (isAtRisk()) {
    event.preventDefault();
    event.returnValue = '';
  }
});

// The open job: its document, its diary, what is ticked, and the way back from every change.

const STEPS_BACK = 100;
const SAME_STROKE = 1500;

const newId = () => [...crypto.getRandomValues(new Uint8Array(8))]
  .map(byte => byte.toString(16).padStart(2, '0')).join('');

const emptyJob = () => ({
  id: newId(),
  job: {seamstead: table.version, site: {}},
  diary: null,
  ticks: {},
  saved: {},
  changedJob: false,
  changedDiary: false,
});

/** What is open. `files` holds what the browser lets us write to again; it is not kept. */
const open = {record: emptyJob(), back: [], forth: [], stroke: {path: '', time: 0}, files: {}};

/** The two documents that a form can be drawn of. */
const JOB = {name: 'job', root: table.root, doc: () => open.record.job};
const DIARY = {name: 'diary', root: table.diary, doc: () => open.record.diary};

/** Called after every change, and after another job was opened. */
const listeners = {changed: [], opened: []};
const tell = (event, detail) => listeners[event].forEach(listener => listener(detail));

const snapshot = () => JSON.stringify([open.record.job, open.record.diary]);

/** Changes a document, so that the change can be undone. Strokes into one field are one change. */
const change = (source, path, work) => {
  const now = Date.now();
  const stroke = source.name + path;
  if (open.stroke.path !== stroke || now - open.stroke.time > SAME_STROKE) {
    open.back.push(snapshot());
    open.back.splice(0, open.back.length - STEPS_BACK);
  }
  open.stroke = {path: stroke, time: now};
  open.forth = [];
  work(source.doc());
  touched(source);
  tell('changed', source);
};

const touched = source => {
  open.record[source === JOB ? 'changedJob' : 'changedDiary'] = true;
};

const travel = (from, to) => {
  if (!from.length) {
    return false;
  }
  const was = snapshot();
  to.push(was);
  const [job, diary] = JSON.parse(from.pop());
  const [wasJob, wasDiary] = JSON.parse(was);
  open.record.changedJob ||= JSON.stringify(job) !== JSON.stringify(wasJob);
  open.record.changedDiary ||= JSON.stringify(diary) !== JSON.stringify(wasDiary);
  open.record.job = job;
  open.record.diary = diary;
  open.stroke = {path: '', time: 0};
  tell('changed', JOB);
  return true;
};

const undo = () => travel(open.back, open.forth);
const redo = () => travel(open.forth, open.back);

/** Puts another record in the place of the open one. */
const show = record => {
  open.record = record;
  open.back = [];
  open.forth = [];
  open.files = {};
  open.stroke = {path: '', time: 0};
  tell('opened', record);
};

const jobTitle = record => {
  const name = record.job.site && record.job.site.name;
  return typeof name === 'string' && name.trim() ? name : 'Job without a name';
};

const textOf = source => JSON.stringify(ordered(source.doc(), rootField(source.root)), null, 2) + '\n';

const jobText = () => textOf(JOB);
const diaryText = () => (hasDiary() ? textOf(DIARY) : undefined);
const hasDiary = () => Boolean(open.record.diary && (open.record.diary.diary || []).length);

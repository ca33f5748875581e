// The book: planned in its own worker, shown in a frame, printed, ticked.

const EFFORTS = [['1', 'a short search'], ['3', 'a longer search'], ['5', 'a long search'],
  ['7', 'a very long search'], ['9', 'the longest search']];

/** The last plan of the open job. `ended` is false while a longer search is to follow it. */
const plan = {last: null, running: false, stopping: false};

const bookTools = () => byId('book-tools');

/** The search by which pieces were cut already, if any were. */
const fixedEffort = () => Number(hasDiary() && open.record.diary.effort) || 0;

const effortOf = () => fixedEffort() || Number(byId('effort').value);

/** The efforts to choose from; one that the command was told stands among them once it is fixed. */
const offerEfforts = () => {
  const select = byId('effort');
  const fixed = fixedEffort();
  const known = EFFORTS.some(([value]) => Number(value) === fixed);
  const chosen = fixed ? String(fixed) : select.value || EFFORTS[0][0];
  replace(select, [...EFFORTS, ...(fixed && !known ? [[String(fixed), 'a search of effort ' + fixed]] : [])]
    .map(([value, text]) => make('option', {value}, text)));
  select.value = chosen;
  select.disabled = fixed > 0;
};

/**
 * The efforts that are planned one after another, each with four times the work of the one before: so a
 * book is there soon, and a stop leaves the best so far. Pieces that are cut keep their own.
 */
const stagesOf = effort => (hasDiary() ? [effort]
  : [...EFFORTS.map(([value]) => Number(value)).filter(value => value < effort), effort]);

const workOf = effort => 2 ** (effort - 1);

const showProgress = (progress, stages, index) => {
  const share = Math.max(0, Math.min(1, Number(progress.share) || 0));
  const sum = list => list.reduce((whole, effort) => whole + workOf(effort), 0);
  byId('progress').value = (sum(stages.slice(0, index)) + workOf(stages[index]) * share) / sum(stages);
  byId('stage').textContent = [stages.length > 1 && `Search ${index + 1} of ${stages.length}`,
    progress.stage && capital(progress.stage), percent(share)].filter(Boolean).join(' · ');
};

const setRunning = running => {
  plan.running = running;
  byId('plan').closest('.row').hidden = running;
  byId('running').hidden = !running;
};

/** Plans once. Gives whether there is a plan; faults are shown in place of a book. */
const planStage = async (record, documents, stages, index) => {
  showProgress({stage: 'starting', share: 0}, stages, index);
  const answer = await planner.call({
    kind: 'plan', job: documents[0], diary: documents[1], effort: stages[index],
  }, progress => showProgress(progress, stages, index));
  if (record !== open.record || plan.stopping) {
    return false;
  }
  if (answer.kind === 'faults') {
    checks.asked = true;
    takeAnswer(answer);
    showSummary(true);
    return false;
  }
  if (answer.kind === 'failed') {
    warn(answer.text);
    return false;
  }
  plan.last = {book: answer.book, results: answer.results, met: answer.met !== false, effort: stages[index],
    ended: index === stages.length - 1, time: Date.now(), of: documents.join('\n')};
  return true;
};

const runPlan = async () => {
  const record = open.record;
  const documents = [jobText(), diaryText()];
  const stages = stagesOf(effortOf());
  plan.stopping = false;
  setRunning(true);
  byId('stop').textContent = 'Stop';
  for (let index = 0; index < stages.length && await planStage(record, documents, stages, index); index++) {
    byId('stop').textContent = 'Stop here and keep this book';
    keepBook(plan.last);
    showBook(index === 0 || plan.last.ended);
  }
  if (record === open.record && !plan.stopping) {
    setRunning(false);
    keepBest();
    showBookState();
  }
};

/** What a shorter search gave stays where the longer one did not end. Gives whether there is such a book. */
const keepBest = () => {
  const kept = Boolean(plan.last) && plan.last.ended === false;
  if (kept) {
    plan.last = {...plan.last, ended: true, stopped: true};
    keepBook(plan.last);
  }
  return kept;
};

const planNow = async () => {
  if (plan.running || !await checkNow()) {
    return;
  }
  location.hash = '#book';
  route();
  await runPlan();
};

const stopPlan = () => {
  plan.stopping = true;
  planner.stop('stopped');
  setRunning(false);
  const kept = keepBest();
  showBookState();
  say(kept ? 'Stopped. The book is the best so far.' : 'Stopped. No new book was made.');
  byId('plan').focus();
};

const isOfNow = () => plan.last.of === [jobText(), diaryText()].join('\n');

const bookText = () => {
  const parts = ['Planned at ' + clock(plan.last.time)];
  if (plan.last.ended === false) {
    parts.push('this is the best so far, a longer search goes on: tick and cut nothing yet');
  } else if (plan.last.stopped) {
    const [, words] = EFFORTS.find(([value]) => Number(value) === plan.last.effort) || [];
    parts.push(`the longer search was stopped: this is the best so far, found by ${words || 'a shorter one'}`);
  }
  if (!plan.last.met) {
    parts.push('it does not meet all that the job asks for: read its first pages');
  }
  if (!isOfNow()) {
    parts.push('the job was changed since: plan again');
  }
  return parts.join('; ') + '.';
};

const showBookState = () => {
  // Pieces that are cut keep the search they were planned by.
  offerEfforts();
  if (plan.last) {
    byId('book-state').textContent = bookText();
  }
};

/** Puts the book into its frame with the ticks that are kept. */
const showBook = announce => {
  const place = byId('book');
  bookTools().hidden = !plan.last;
  if (!plan.last) {
    byId('book-state').textContent = 'No book is planned yet.';
    replace(place);
    return;
  }
  showBookState();
  const before = bookFrame();
  const scrolled = before && before.contentWindow ? before.contentWindow.scrollY : 0;
  replace(place, pageFrame(plan.last.book, 'The book of ' + jobTitle(open.record), (inside, frame) => {
    hearTicks(inside);
    frame.contentWindow.scrollTo(0, scrolled);
  }));
  if (announce) {
    say(plan.last.ended === false ? 'A first book is planned; a longer search goes on.' : 'The book is planned.');
  }
};

const ticksOf = digest => {
  open.record.ticks[digest] ||= {};
  return open.record.ticks[digest];
};

const isBox = field => field.type === 'checkbox';

/** Fills in what is kept and keeps what is ticked and written. */
const hearTicks = inside => {
  const digest = inside.body.dataset.job || '';
  const kept = ticksOf(digest);
  for (const field of inside.querySelectorAll('[data-k]')) {
    const value = kept[field.dataset.k];
    if (value !== undefined) {
      field[isBox(field) ? 'checked' : 'value'] = value;
    }
  }
  inside.addEventListener('change', event => {
    const field = event.target;
    if (field.dataset && field.dataset.k) {
      takeTick(kept, field);
      countTicks(inside);
      keepSoon();
    }
  });
  if (matchMedia('(max-width:40rem)').matches) {
    [...inside.querySelectorAll('details.sheet')].slice(1).forEach(sheet => {
      sheet.open = false;
    });
    const contents = inside.querySelector('nav');
    if (contents) {
      contents.hidden = true;
    }
  }
  countTicks(inside);
};

/** Some browsers tell nothing of what happens in a frame without scripts: then it is looked up. */
const gatherTicks = () => {
  const frame = bookFrame();
  const inside = frame && view.name === 'book' && frame.contentDocument;
  if (!inside || !inside.body) {
    return;
  }
  const kept = ticksOf(inside.body.dataset.job || '');
  const changed = [...inside.querySelectorAll('[data-k]')].filter(field =>
    (isBox(field) ? field.checked : field.value) !== (kept[field.dataset.k] ?? (isBox(field) ? false : '')));
  if (changed.length) {
    changed.forEach(field => takeTick(kept, field));
    countTicks(inside);
    keepSoon();
  }
};

const takeTick = (kept, field) => {
  const key = field.dataset.k;
  kept[key] = isBox(field) ? field.checked : field.value;
  if (field.dataset.diary) {
    if (field.checked) {
      kept['@' + key] = dayOf(Date.now());
      kept['='.concat(key)] = field.dataset.diary;
    } else {
      delete kept['@' + key];
      delete kept['='.concat(key)];
    }
  }
};

/** Says on every day sheet how many of its boxes are ticked. */
const countTicks = inside => {
  for (const sheet of inside.querySelectorAll('details.sheet')) {
    const boxes = [...sheet.querySelectorAll('input[type=checkbox]')];
    const count = sheet.querySelector('.count');
    if (count && boxes.length) {
      count.textContent = boxes.filter(box => box.checked).length + ' of ' + boxes.length;
    }
  }
  showDiaryState();
};

const bookFrame = () => byId('book').querySelector('iframe');

const printBook = () => {
  const frame = bookFrame();
  if (frame) {
    const wasOpen = [...frame.contentDocument.querySelectorAll('details')].map(box => [box, box.open]);
    wasOpen.forEach(([box]) => {
      box.open = true;
    });
    frame.contentWindow.focus();
    frame.contentWindow.print();
    wasOpen.forEach(([box, isOpen]) => {
      box.open = isOpen;
    });
  }
};

const openBookAlone = () => {
  const url = URL.createObjectURL(new Blob([withoutScripts(plan.last.book)], {type: 'text/html'}));
  window.open(url, '_blank', 'noopener');
};

const saveAs = (ending, type, text) =>
  say('Saved ' + download(fileName(JOB).replace(/\.json$/, '') + ending, type, text));

const restoreBook = async () => {
  const record = open.record;
  plan.last = null;
  showBook(false);
  const kept = await keptBook(record.id);
  if (kept && typeof kept.book === 'string' && record === open.record && !plan.last) {
    plan.last = {...kept, ended: true, stopped: Boolean(kept.stopped) || kept.ended === false};
    showBook(false);
  }
};

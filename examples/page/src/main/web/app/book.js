// The book: planned in its own worker, shown in a frame, printed, ticked.

const FINISH_SECONDS = 1;
const EFFORTS = [['1', 'a short search'], ['3', 'a longer search'], ['9', 'a long search']];

/** The last plan of the open job. `digest` is that of the planned document. */
const plan = {last: null, running: false, started: 0, stopping: false};

const bookTools = () => byId('book-tools');

const effortOf = () => {
  const kept = hasDiary() && open.record.diary.effort;
  return Number(kept || byId('effort').value);
};

const showProgress = progress => {
  const share = Math.max(0, Math.min(1, Number(progress.share) || 0));
  byId('progress').value = share;
  byId('stage').textContent = [progress.stage && capital(progress.stage), percent(share),
    progress.best && 'best so far: ' + progress.best].filter(Boolean).join(' · ');
};

const setRunning = running => {
  plan.running = running;
  byId('plan').hidden = running;
  byId('running').hidden = !running;
};

/** Plans the open job; faults are shown in place of a book. */
const runPlan = async extra => {
  const record = open.record;
  const documents = [jobText(), diaryText()];
  setRunning(true);
  showProgress({stage: 'starting', share: 0});
  plan.stopping = false;
  const answer = await planner.call({
    kind: 'plan', job: documents[0], diary: documents[1], effort: effortOf(), ...extra,
  }, showProgress);
  setRunning(false);
  if (record !== open.record || plan.stopping) {
    return;
  }
  if (answer.kind === 'faults') {
    checks.asked = true;
    takeAnswer(answer);
    showSummary(true);
    return;
  }
  if (answer.kind === 'failed') {
    warn(answer.text);
    return;
  }
  plan.last = {book: answer.book, results: answer.results, met: answer.met !== false,
    stopped: Boolean(answer.stopped), time: Date.now(), of: documents.join('\n')};
  keepBook(plan.last);
  showBook(true);
};

const planNow = async () => {
  if (plan.running || !await checkNow()) {
    return;
  }
  location.hash = '#book';
  route();
  await runPlan({});
};

/** Stops. The worker cannot be asked for what it has, so a short search can be made in its place. */
const stopPlan = async finish => {
  plan.stopping = true;
  planner.stop('stopped');
  setRunning(false);
  say('Stopped');
  if (finish) {
    await breath();
    await runPlan({seconds: FINISH_SECONDS, effort: 1});
  } else {
    byId('plan').focus();
  }
};

const bookText = () => {
  const parts = ['Planned at ' + clock(plan.last.time)];
  if (plan.last.stopped) {
    parts.push('the search was cut short: this is the best it had found');
  }
  if (!plan.last.met) {
    parts.push('it does not meet all that the job asks for: read its first pages');
  }
  if (plan.last.of !== [jobText(), diaryText()].join('\n')) {
    parts.push('the job was changed since: plan again');
  }
  return parts.join('; ') + '.';
};

const showBookState = () => {
  // Pieces that are cut keep the search they were planned by.
  byId('effort').disabled = hasDiary() && Boolean(open.record.diary.effort);
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
  replace(place, pageFrame(plan.last.book, 'The book of ' + jobTitle(open.record), hearTicks));
  if (announce) {
    say('The book is planned.');
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
    plan.last = kept;
    showBook(false);
  }
};

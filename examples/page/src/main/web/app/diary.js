// The diary: what was ticked in the book becomes lines, others are written by hand; then plan on.

const MARK = /[\u2066-\u2069]/g;

/** The dated ticks that are not lines of the diary yet: by book, key and line. */
const freshTicks = () => {
  const fresh = [];
  for (const kept of Object.values(open.record.ticks)) {
    for (const [key, line] of Object.entries(kept)) {
      const name = key.slice(1);
      if (key.startsWith('=') && kept[name] === true && !kept['!' + name]) {
        fresh.push({kept, name, day: kept['@' + name], line: parsed(line.replace(MARK, ''))});
      }
    }
  }
  return fresh.filter(tick => tick.line).sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0));
};

const newDiary = () => ({
  seamstead: table.version, job: jobTitle(open.record), effort: (plan.last && plan.last.effort) || effortOf(), diary: [],
});

const ensureDiary = () => {
  if (!open.record.diary) {
    open.record.diary = newDiary();
  }
  open.record.diary.diary ||= [];
};

/** Takes the ticks of the book over as lines, each with its day. */
const takeTicksOver = () => {
  const fresh = freshTicks();
  if (!fresh.length) {
    say('There are no new ticks of cut, joined or laid work in the book.');
    return;
  }
  ensureDiary();
  change(DIARY, '$.diary~ticks' + Date.now(), diary => {
    for (const tick of fresh) {
      diary.diary.push({date: tick.day, ...tick.line});
      tick.kept['!' + tick.name] = true;
    }
    const day = line => line.date || '';
    diary.diary = diary.diary.map((line, i) => [line, i])
      .sort(([a, i], [b, k]) => (day(a) < day(b) ? -1 : day(a) > day(b) ? 1 : i - k))
      .map(([line]) => line);
  });
  showDiary();
  say(fresh.length + ' lines taken over from the book');
};

const showDiaryState = () => {
  const fresh = freshTicks().length;
  byId('fresh').textContent = fresh === 0 ? 'No new ticks wait in the book.'
    : fresh === 1 ? 'One new tick waits in the book.' : fresh + ' new ticks wait in the book.';
  byId('take').disabled = fresh === 0;
};

const addLine = () => {
  ensureDiary();
  const count = open.record.diary.diary.length;
  change(DIARY, '$.diary+' + count, diary => diary.diary.push({date: dayOf(Date.now())}));
  opened.add(idOf(DIARY, `$.diary[${count}]`));
  showDiary();
  const line = nearest(DIARY, `$.diary[${count}]`);
  if (line) {
    const more = line.element.querySelector('details.more');
    if (more) {
      more.open = true;
      (more.querySelector('button') || firstInput(line.element)).focus();
    }
  }
};

/** Draws the lines of the diary from the table. */
const showDiary = () => {
  const place = byId('diary-lines');
  showDiaryState();
  if (view.name === 'diary') {
    drawn.clear();
  }
  if (!open.record.diary) {
    replace(place, make('p', {}, 'The diary is empty. Tick what is done in the book, or add a line.'));
    return;
  }
  const lines = keysOf(rootField(table.diary)).find(key => key.kind === 'list');
  replace(place, drawList(DIARY, '$.' + lines.key, {...lines, label: 'lines', required: false},
    {keepEmpty: true}));
};

const planOn = () => planNow();

// Views and what ties all together.

const LOOKED_UP = 2000;
const VIEWS = ['job', 'book', 'diary', 'lessons', 'jobs'];

/** Shows what the address names. */
const route = () => {
  const [name, part] = location.hash.slice(1).split('/').map(decodeURIComponent);
  view.name = VIEWS.includes(name) ? name : 'job';
  if (view.name === 'job') {
    view.part = sections.some(key => key.key === part) ? part : sections[0].key;
  }
  for (const each of VIEWS) {
    byId('view-' + each).hidden = each !== view.name;
    const link = byId('to-' + each);
    if (each === view.name) {
      link.setAttribute('aria-current', 'page');
    } else {
      link.removeAttribute('aria-current');
    }
  }
  const draw = {
    job: showSection, book: showBookState, diary: showDiary, jobs: showJobs,
    lessons: async () => {
      await showLessonList();
      await showLesson(part);
    },
  };
  draw[view.name]();
  showSections();
  byId('summary').hidden = view.name === 'lessons' || view.name === 'jobs';
};

const showHead = () => {
  byId('title').textContent = jobTitle(open.record);
  if (!document.title.startsWith('To mend')) {
    document.title = jobTitle(open.record);
  }
  byId('undo').disabled = open.back.length === 0;
  byId('redo').disabled = open.forth.length === 0;
  showSaved();
};

const travelTo = (step, words) => {
  if (step()) {
    opened.clear();
    route();
    say(words);
  }
};

const listen = () => {
  const clicks = {
    undo: () => travelTo(undo, 'Undone'), redo: () => travelTo(redo, 'Done again'),
    save: saveAll, 'save-diary': () => save(DIARY), plan: planNow, 'plan-job': planNow,
    'plan-on': planOn, stop: stopPlan,
    print: printBook, alone: openBookAlone,
    'save-book': () => saveAs('-book.html', 'text/html', plan.last.book),
    'save-results': () => saveAs('-results.json', 'application/json', plan.last.results),
    take: takeTicksOver, line: addLine, 'new-job': startJob,
    choose: () => byId('file').click(), projector: toggleProjector,
  };
  for (const [id, work] of Object.entries(clicks)) {
    byId(id).addEventListener('click', work);
  }
  byId('file').addEventListener('change', event => {
    const files = [...event.target.files];
    event.target.value = '';
    openFiles(files);
  });
  byId('view-job').addEventListener('keydown', enterMovesOn);
  byId('view-diary').addEventListener('keydown', enterMovesOn);
  byId('skip').addEventListener('click', event => {
    event.preventDefault();
    byId('main').focus();
  });
  addEventListener('hashchange', () => {
    route();
    if (view.name === 'job' && !byId('section').contains(document.activeElement)) {
      byId('section').focus({preventScroll: true});
      scrollTo(0, 0);
    }
  });
  addEventListener('keydown', event => {
    const key = event.key.toLowerCase();
    if (!(event.ctrlKey || event.metaKey) || event.altKey || /^(input|textarea)$/i.test(event.target.tagName)
        && key !== 's') {
      return;
    }
    const works = {z: event.shiftKey ? clicks.redo : clicks.undo, y: clicks.redo, s: clicks.save};
    if (works[key]) {
      event.preventDefault();
      works[key]();
    }
  });
  addEventListener('pagehide', () => {
    gatherTicks();
    keep();
  });
  setInterval(gatherTicks, LOOKED_UP);
  acceptDrops();
};

listeners.changed.push(() => {
  showHead();
  keepSoon();
  checkSoon();
  sketchSoon();
  showBookState();
});

listeners.opened.push(() => {
  opened.clear();
  Object.assign(checks, {faults: [], understood: new Map(), assumed: null, asked: false, done: false});
  sketches.last = {};
  sketches.old.clear();
  replace(byId('summary'));
  replace(byId('refused'));
  document.title = jobTitle(open.record);
  planner.stop('stopped');
  setRunning(false);
  restoreBook();
  showHead();
  checkSoon();
  sketchSoon();
});

offerEfforts();
listen();
const latest = keptJobs()[0];
const kept = latest && keptJob(latest.id);
attempt(device => device.getItem(STORE));
if (kept) {
  show(kept);
} else {
  showHead();
  // The planner is unpacked once the form stands and the page is idle.
  setTimeout(() => {
    check();
    sketch();
  }, 300);
}
route();
if (!kept) {
  showBook(false);
}
document.documentElement.dataset.ready = 'true';

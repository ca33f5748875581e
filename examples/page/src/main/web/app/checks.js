// What the reader says of the open documents: faults beside their fields, values as understood.

const checks = {faults: [], understood: new Map(), assumed: null, asked: false, done: false};

/** The fields on the page by their place. A later drawing of the same place takes over. */
const drawn = new Map();

const placeOf = (source, path) => source.name + path;

/** The document that a path of the reader belongs to. */
const sourceOf = path => {
  const first = steps(path)[0];
  const isKey = name => keysOf(rootField(name)).some(key => key.key === first);
  return first !== undefined && !isKey(table.root) && isKey(table.diary) ? DIARY : JOB;
};

/** The nearest field on the page at or above a path. */
const nearest = (source, path) => {
  for (let way = path; way.length; way = above(way)) {
    const field = drawn.get(placeOf(source, way));
    if (field && field.element.isConnected) {
      return field;
    }
    if (way === '$') {
      break;
    }
  }
  return null;
};

/** "Stock, sheet 2, length" for a path. */
const trail = (source, path) => {
  const words = [];
  let way = '$';
  for (const step of steps(path)) {
    way = under(way, step);
    const field = fieldAt(source.root, way);
    if (typeof step === 'number') {
      words.push(single(words.pop() || '') + ' ' + (step + 1));
    } else {
      words.push(field && field.label ? field.label : String(step));
    }
  }
  return capital(words.join(', ')) || 'The document';
};

const faultText = fault => `Given: ${fault.given}. `
  + (fault.allowed.startsWith('must') ? 'It ' + fault.allowed : capital(fault.allowed));

/** Faults are shown of values; what is missing only once somebody asked for the plan. */
const shownFaults = () => checks.faults.filter(fault =>
  checks.asked || !/^(nothing$|none of )/.test(fault.given));

const clearMarks = () => {
  for (const [place, field] of drawn) {
    if (!field.element.isConnected) {
      drawn.delete(place);
      continue;
    }
    field.fault.replaceChildren();
    field.element.classList.remove('faulty');
    field.inputs.forEach(input => input.removeAttribute('aria-invalid'));
  }
};

const markFaults = () => {
  clearMarks();
  for (const fault of shownFaults()) {
    const source = sourceOf(fault.path);
    const field = nearest(source, fault.path);
    if (!field) {
      continue;
    }
    const own = field.path === fault.path ? '' : trail(source, fault.path) + '. ';
    field.fault.append(make('span', {class: 'mend'}, 'Mend: '), own + faultText(fault) + ' ');
    field.element.classList.add('faulty');
    field.inputs.forEach(input => input.setAttribute('aria-invalid', 'true'));
  }
};

const markUnderstood = () => {
  for (const field of drawn.values()) {
    if (field.echo) {
      const text = checks.understood.get(field.path);
      const same = field.source !== JOB || !text || text === String(field.inputs[0].value).trim();
      field.echo.textContent = same ? '' : 'Read as ' + text;
    }
    if (field.assumed && checks.assumed) {
      const counts = checks.assumed.has(field.path);
      field.assumed.textContent = counts ? field.assumedText : 'Nothing is assumed here.';
      field.element.classList.toggle('idle', !counts);
    }
  }
};

const markAll = () => {
  markFaults();
  markUnderstood();
  showSections();
};

let marking = false;

/** Marks once after all that is being drawn now. */
const markSoon = () => {
  if (!marking) {
    marking = true;
    queueMicrotask(() => {
      marking = false;
      markAll();
    });
  }
};

const takeAnswer = answer => {
  const list = (entries, text) => new Map((entries || []).map(entry => [entry.path, text(entry)]));
  checks.done = answer.kind === 'done';
  checks.faults = answer.kind === 'faults' ? answer.faults : [];
  if (answer.understood) {
    checks.understood = list(answer.understood, entry => entry.text);
  }
  checks.assumed = checks.done ? list(answer.assumed, entry => entry.text) : null;
  if (answer.kind === 'failed') {
    warn(answer.text);
  }
  markAll();
};

const askCheck = () => helper.call({kind: 'check', job: jobText(), diary: diaryText()});

const check = newest(askCheck, answer => {
  takeAnswer(answer);
  if (byId('summary').childElementCount && checks.asked) {
    showSummary(false);
  }
});

const checkSoon = later(400, check);

/** Lists all faults on top with a link to each field, and takes the focus there. */
const showSummary = focus => {
  const place = byId('summary');
  // A check that was asked before may answer after: the list is drawn anew, and the focus stays in it.
  const held = place.contains(document.activeElement);
  replace(place);
  document.title = (checks.faults.length ? 'To mend: ' : '') + jobTitle(open.record);
  if (!checks.faults.length) {
    return;
  }
  const count = checks.faults.length;
  const items = checks.faults.map(fault => {
    const source = sourceOf(fault.path);
    const link = make('a', {href: '#', click: event => {
      event.preventDefault();
      goTo(source, fault.path);
    }}, trail(source, fault.path));
    return make('li', {}, link, ': ' + faultText(fault));
  });
  place.append(make('div', {class: 'summary', role: 'alert', tabindex: '-1'},
    make('h2', {}, count === 1 ? 'One value to mend' : count + ' values to mend'),
    make('ul', {}, items)));
  if (focus || held) {
    place.firstChild.focus({preventScroll: true});
  }
  if (focus) {
    place.scrollIntoView({block: 'start'});
  }
};

/** Checks now. Gives whether the job can be planned; if not, the summary has the focus. */
const checkNow = async () => {
  say('Checking…');
  checks.asked = true;
  takeAnswer(await askCheck());
  say('');
  showSummary(true);
  return checks.done;
};

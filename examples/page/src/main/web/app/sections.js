// The sections of the job in the order of the work, one at a time.

const sections = keysOf(rootField(table.root)).filter(key => key.key !== 'seamstead');

const sectionPath = key => '$.' + key.key;

const view = {name: 'job', part: sections[0].key};

const sectionState = key => {
  const path = sectionPath(key);
  const wrong = shownFaults().filter(fault =>
    sourceOf(fault.path) === JOB && (fault.path === path || /^[.[]/.test(fault.path.slice(path.length))
      && fault.path.startsWith(path))).length;
  if (wrong) {
    return wrong + ' to mend';
  }
  return isThere(JOB, path) ? (checks.done ? 'sound' : 'begun') : 'not in this job';
};

/** The list of sections with how each stands. */
const showSections = () => {
  const list = byId('sections');
  if (!list.childElementCount) {
    list.append(...sections.map(key => make('li', {}, make('a', {href: '#job/' + key.key},
      make('span', {}, capital(key.label)), ' ', make('small', {})))));
  }
  sections.forEach((key, i) => {
    const link = list.children[i].firstChild;
    const text = sectionState(key);
    link.lastChild.textContent = text;
    link.className = text.endsWith('mend') ? 'wrong' : '';
    if (view.name === 'job' && view.part === key.key) {
      link.setAttribute('aria-current', 'page');
    } else {
      link.removeAttribute('aria-current');
    }
  });
};

const sectionBody = key => {
  const path = sectionPath(key);
  if (key.kind === 'list') {
    return drawList(JOB, path, {...key, help: ''}, {});
  }
  if (!isThere(JOB, path)) {
    return make('div', {class: 'absent'},
      make('p', {}, 'This job has no such part yet. Add it if the work needs it.'),
      button('Add ' + key.label, () => {
        change(JOB, path, doc => put(doc, path, {}));
        showSection();
        firstInput(byId('section')).focus();
      }, {class: 'strong'}));
  }
  return drawRecord(JOB, path, key, {quiet: true});
};

const removeSection = async key => {
  if (!await ask(`Remove “${key.label}” with all that it holds from this job?`, 'Remove it')) {
    return;
  }
  change(JOB, sectionPath(key), doc => drop(doc, sectionPath(key)));
  showSection();
  byId('section').focus();
};

/** Draws the chosen section anew. */
const showSection = () => {
  const index = Math.max(0, sections.findIndex(key => key.key === view.part));
  const key = sections[index];
  const before = sections[index - 1];
  const after = sections[index + 1];
  drawn.clear();
  const removable = !key.required && isThere(JOB, sectionPath(key)) && index > 0;
  replace(byId('section'),
    make('h1', {}, capital(key.label)),
    make('p', {class: 'lead'}, capital(key.help) + '.'),
    index === 0 && isEmptyJob(open.record) && make('p', {class: 'help'},
      'Begin here, or open a file or an example under ', make('a', {href: '#jobs'}, 'Jobs'), '.'),
    make('div', {id: 'picture'}),
    sectionBody(key),
    removable && make('p', {}, button(`Remove ${key.label} from this job`, () => removeSection(key),
      {class: 'quiet'})),
    make('nav', {class: 'row turn', 'aria-label': 'Sections before and after'},
      before && make('a', {class: 'button', href: '#job/' + before.key}, '← ' + capital(before.label)),
      after ? make('a', {class: 'button strong', href: '#job/' + after.key}, capital(after.label) + ' →')
        : make('a', {class: 'button strong', href: '#book'}, 'The book →')));
  markSoon();
  showPictures();
  showCurrent(index);
};

/** Brings the link of the shown section into sight where the list scrolls sideways. */
const showCurrent = index => {
  const list = byId('sections');
  const link = list.children[index];
  if (link) {
    list.scrollLeft = link.offsetLeft - list.offsetLeft - (list.clientWidth - link.clientWidth) / 2;
  }
};

/** Shows the field at a path and puts the focus there. */
const goTo = (source, path) => {
  const way = steps(path);
  for (let place = path; place !== '$' && place; place = above(place)) {
    opened.add(idOf(source, place));
  }
  const target = source === DIARY ? '#diary' : '#job/' + (way[0] || sections[0].key);
  if (location.hash !== target) {
    history.pushState(null, '', target);
  }
  route();
  const field = nearest(source, path);
  if (field) {
    field.element.scrollIntoView({block: 'center'});
    for (let box = field.element.closest('details'); box; box = box.parentElement.closest('details')) {
      box.open = true;
    }
    (field.inputs[0] || firstInput(field.element) || byId('section')).focus();
  } else {
    byId('section').focus();
  }
};

// The jobs on this device, the demo jobs, and the way into and out of files.

const startJob = async () => {
  if (await mayReplace()) {
    show(emptyJob());
    location.hash = '#job/' + sections[0].key;
    route();
    (firstInput(byId('section')) || byId('section')).focus();
  }
};

const openKept = async entry => {
  if (!await mayReplace()) {
    return;
  }
  const record = keptJob(entry.id);
  if (!record) {
    warn(`“${entry.title}” could not be read from this device. If it was saved to a file, open the file.`);
    return;
  }
  show(record);
  keep();
  location.hash = '#job/' + sections[0].key;
  route();
};

const removeKept = async entry => {
  const record = keptJob(entry.id);
  const saved = record && record.saved.job && !record.changedJob;
  const question = `Remove “${entry.title}” from this device? `
    + (saved ? `It was saved to ${record.saved.job.name}.` : 'What is in no file is lost.');
  if (!await ask(question, 'Remove it')) {
    return;
  }
  forget(entry.id);
  if (open.record.id === entry.id) {
    show(emptyJob());
  }
  store.full = false;
  showJobs();
  byId('jobs-title').focus();
};

const jobRow = entry => make('li', {class: 'job'},
  button(entry.title, () => openKept(entry), {
    class: 'name', 'aria-current': entry.id === open.record.id ? 'true' : null}),
  make('small', {}, (entry.id === open.record.id ? 'open now · ' : '') + 'changed ' + dayOf(entry.time)
    + ' ' + clock(entry.time)),
  removeButton(entry.title, () => removeKept(entry)));

const showJobs = () => {
  const list = keptJobs();
  replace(byId('kept'), list.length ? list.map(jobRow)
    : make('li', {}, store.refused ? 'This device keeps nothing for this page.' : 'None yet.'));
  showDemos();
};

const showDemos = async () => {
  const place = byId('demo-list');
  if (!place.childElementCount) {
    const demos = JSON.parse(await textOfPart('demos'));
    replace(place, demos.map(demo => make('li', {class: 'job'},
      button(demo.title, () => openJob(demo.title, demo.job, demo.diary), {class: 'name'}))));
  }
};

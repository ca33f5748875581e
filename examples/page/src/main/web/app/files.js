// Jobs and diaries as files: the same JSON that the command reads.

const LARGEST = 4 * 1024 * 1024;

const fileName = source => {
  const saved = open.record.saved[source.name];
  if (saved) {
    return saved.name;
  }
  const words = jobTitle(open.record).toLowerCase().normalize('NFKD').replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '').slice(0, 60) || 'job';
  return words + (source === DIARY ? '-diary' : '') + '.json';
};

const download = (name, type, text) => {
  const url = URL.createObjectURL(new Blob([text], {type}));
  const link = make('a', {href: url, download: name});
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(url), 60000);
  return name;
};

/** Writes through a handle where the browser gives one. Gives the name, or nothing if refused. */
const writeByHandle = async (source, text) => {
  let handle = open.files[source.name];
  try {
    handle ||= await window.showSaveFilePicker({
      suggestedName: fileName(source),
      types: [{description: 'JSON', accept: {'application/json': ['.json']}}],
    });
    const stream = await handle.createWritable();
    await stream.write(text);
    await stream.close();
    open.files[source.name] = handle;
    return handle.name;
  } catch (refusal) {
    if (refusal.name === 'AbortError') {
      return null;
    }
    return download(fileName(source), 'application/json', text);
  }
};

const save = async source => {
  const text = textOf(source);
  const record = open.record;
  const name = window.showSaveFilePicker ? await writeByHandle(source, text)
    : download(fileName(source), 'application/json', text);
  if (!name || record !== open.record) {
    return;
  }
  record.saved[source.name] = {name, time: Date.now()};
  record[source === JOB ? 'changedJob' : 'changedDiary'] = textOf(source) !== text;
  keep();
  showSaved();
  say(`${capital(source.name)} saved to ${name}`);
};

/** Saves the job, and its diary where that is in no file yet. */
const saveAll = async () => {
  await save(JOB);
  if (hasDiary() && (open.record.changedDiary || !open.record.saved.diary)) {
    await save(DIARY);
  }
};

/** Says why a file was not opened: every fault on its line. */
const refuse = (name, text, faults, mend) => {
  const place = replace(byId('refused'));
  const items = faults.slice(0, 200).map(fault => make('li', {},
    fault.line ? `Line ${fault.line}: ` : '', fault.path ? trail(sourceOf(fault.path), fault.path) + '. ' : '',
    fault.given ? faultText(fault) : fault.text));
  place.append(make('div', {class: 'summary', role: 'alert', tabindex: '-1'},
    make('h2', {}, `“${name}” was not opened`), make('p', {}, text),
    items.length > 0 && make('ul', {}, items),
    make('div', {class: 'row'},
      mend && button('Open it to mend it', () => {
        replace(place);
        mend();
      }),
      button('Close', () => {
        replace(place);
        byId('main').focus();
      }))));
  place.firstChild.focus();
};

const parsed = text => {
  try {
    const value = JSON.parse(text);
    return value && typeof value === 'object' && !Array.isArray(value) ? value : null;
  } catch (fault) {
    return null;
  }
};

/** Opens a file's text as a job. What is open stays with the jobs of this device. */
const openJob = async (name, text, diary) => {
  say('Opening…');
  const answer = await helper.call({kind: 'check', job: text, diary});
  say('');
  const value = parsed(answer.job || text);
  const record = () => ({...emptyJob(), job: value, diary: diary ? parsed(answer.diary || diary) : null});
  const enter = async () => {
    if (!await mayReplace()) {
      return false;
    }
    show(record());
    keep();
    location.hash = '#job/' + sections[0].key;
    route();
    say(`${jobTitle(open.record)} is open`);
    return true;
  };
  if (answer.kind === 'failed') {
    refuse(name, 'The reader failed: ' + answer.text, []);
    return false;
  }
  if (answer.kind === 'faults') {
    const current = value && value.seamstead === table.version;
    const mend = current && isShown(value, rootField(table.root)) ? enter : null;
    refuse(name, mend ? 'These values must be mended before it can be planned:'
      : 'The file is broken here:', answer.faults, mend);
    return false;
  }
  return enter();
};

/** Where the device keeps nothing, opening another job would lose the open one. */
const mayReplace = async () => {
  if (!keep() && !isEmptyJob(open.record)
      && (open.record.changedJob || open.record.changedDiary)) {
    return ask('This device keeps nothing, and the open job has changes that are in no file. '
      + 'Opening another throws them away.', 'Throw them away', 'Go back and save');
  }
  return true;
};

const openDiary = async (name, text) => {
  const answer = await helper.call({kind: 'check', job: jobText(), diary: text});
  const value = parsed(answer.diary || text);
  const faults = (answer.faults || []).filter(fault => sourceOf(fault.path) === DIARY);
  if (!value || faults.length || answer.kind === 'failed') {
    refuse(name, 'The diary is broken here:', faults.length ? faults
      : answer.faults || [{text: answer.text || 'This is no JSON object.'}]);
    return;
  }
  if (value.job && value.job !== jobTitle(open.record)) {
    refuse(name, `It is the diary of another job: ${value.job}. Open that job first.`, []);
    return;
  }
  if (hasDiary() && !await ask('This job has a diary already. Put the file in its place?',
    'Put it in its place')) {
    return;
  }
  open.back.push(snapshot());
  open.record.diary = value;
  open.record.changedDiary = false;
  tell('changed', DIARY);
  location.hash = '#diary';
  route();
};

const openFile = async file => {
  if (file.size > LARGEST) {
    refuse(file.name, 'It is larger than 4 MB; no job is.', []);
    return;
  }
  const text = await file.text();
  const value = parsed(text);
  if (value && value.diary !== undefined && value.site === undefined) {
    await openDiary(file.name, text);
  } else if (await openJob(file.name, text)) {
    open.record.saved.job = {name: file.name, time: file.lastModified};
    keep();
    showSaved();
  }
};

const openFiles = async files => {
  // Jobs first, so that a diary chosen with its job finds it.
  const all = [...files];
  const isDiary = await Promise.all(all.map(async file =>
    file.size <= LARGEST && /"diary"\s*:\s*\[/.test(await file.text())));
  const sorted = [...all.filter((_, i) => !isDiary[i]), ...all.filter((_, i) => isDiary[i])];
  for (const file of sorted) {
    await openFile(file);
  }
};

const acceptDrops = () => {
  addEventListener('dragover', event => event.preventDefault());
  addEventListener('drop', event => {
    event.preventDefault();
    openFiles(event.dataTransfer.files);
  });
};

// A hand at the page: it uses the controls that are there, and nothing else of the page.
const hand = (() => {
  let table = null;
  const read = async () => {
    table ||= JSON.parse(await gunzip(lettersToBytes(document.getElementById('form').textContent)));
  };
  const at = (path, part = '') => document.getElementById('job' + path + (part ? '~' + part : ''));
  const pause = time => new Promise(resume => setTimeout(resume, time));
  const capital = text => text.charAt(0).toUpperCase() + text.slice(1);
  const keysOf = field => field.keys || table.shapes[field.shape].keys;

  const until = async (what, words = String(what), time = 60000) => {
    for (const end = Date.now() + time; Date.now() < end; await pause(20)) {
      const value = await what();
      if (value) return value;
    }
    throw new Error('waited in vain: ' + words);
  };

  const type = (input, text) => {
    if (!input || !input.checkVisibility()) throw new Error('no field to type ' + text);
    input.focus();
    input.value = text;
    input.dispatchEvent(new Event('input', {bubbles: true}));
  };

  const press = (name, within = document) => {
    const found = [...within.querySelectorAll('button,a')].filter(b => b.checkVisibility() && !b.disabled
      && (b.getAttribute('aria-label') || b.textContent).trim() === name);
    if (!found.length) throw new Error('no button ' + name);
    found[0].click();
  };

  const open = (path, key) => {
    const record = at(path);
    const wanted = ['Add ' + key.label, 'State ' + capital(key.label)];
    const button = [...record.querySelectorAll('button')].find(b =>
      wanted.includes(b.getAttribute('aria-label')) && b.closest('fieldset') === record);
    if (!button) throw new Error(`no way to add ${path}.${key.key}`);
    const folded = button.closest('details');
    if (folded) folded.open = true;
    button.click();
  };

  const choose = (path, field, value) => {
    const words = field.kind === 'yesno' ? [true, false] : field.choices.map(c => c.word);
    const place = at(path);
    if (place.tagName === 'SELECT') {
      place.value = value;
      place.dispatchEvent(new Event('change', {bubbles: true}));
    } else {
      at(path, words.indexOf(value) || '').click();
    }
  };

  const fillList = (path, field, values) => {
    if (field.item.kind === 'choice') {
      const words = field.item.choices.map(c => c.word);
      values.forEach(value => at(path, words.indexOf(value) || '').click());
      return;
    }
    values.forEach((value, i) => {
      const place = `${path}[${i}]`;
      if (!at(place)) at(path).querySelector(':scope > .row > .add').click();
      fill(place, field.item, value);
    });
  };

  const fill = (path, field, value) => {
    if (field.kind === 'record') {
      for (const key of keysOf(field).filter(k => value[k.key] !== undefined)) {
        const place = `${path}.${key.key}`;
        if (!at(place)) open(path, key);
        fill(place, key, value[key.key]);
      }
    } else if (field.kind === 'list') {
      fillList(path, field, value);
    } else if (field.kind === 'choice' || field.kind === 'yesno') {
      choose(path, field, value);
    } else {
      type(at(path), String(value));
    }
  };

  /** Fills every section of a job in the order of the form. */
  const fillJob = async job => {
    await read();
    for (const key of keysOf({shape: table.root})) {
      if (key.key === 'seamstead' || job[key.key] === undefined) continue;
      location.hash = '#job/' + key.key;
      await until(() => document.querySelector('#section h1').textContent === capital(key.label), key.key);
      const absent = document.querySelector('#section .absent button');
      if (absent) absent.click();
      fill('$.' + key.key, key, job[key.key]);
    }
  };

  const frame = () => document.querySelector('#book iframe');
  const book = () => until(() => frame() && frame().contentDocument
    && frame().contentDocument.readyState === 'complete' && frame().contentDocument.body
    && frame().contentDocument.body.dataset.job && frame().contentDocument, 'the book');
  const go = async view => {
    location.hash = '#' + view;
    await until(() => !document.getElementById('view-' + view.split('/')[0]).hidden, view);
  };
  const text = id => document.getElementById(id).textContent;

  return {at, type, press, fillJob, until, pause, book, frame, go, text};
})();

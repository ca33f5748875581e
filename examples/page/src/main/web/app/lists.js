// Lists: add, the same again, remove, one up; focus goes where the next value is typed.

const SHOWN = 20;

const emptyOf = field => (field.kind === 'record' ? {} : field.kind === 'list' ? [] : '');

const firstInput = element =>
  element.querySelector('input:not([type=hidden]), select, textarea') || element.querySelector('button');

const isFlat = field => field.kind === 'record' && keysOf(field).length <= 5
  && keysOf(field).every(key => key.kind !== 'record' && key.kind !== 'list');

const BRIEF = 70;

/** What stands in an item, in few words, for a list that is too long to show all of it. */
const brief = (value, field) => {
  const words = [];
  const walk = (part, kind, name) => {
    if (words.join(' ').length > BRIEF || part === '' || part === null || part === undefined) {
      return;
    }
    if (kind.kind === 'list' && Array.isArray(part)) {
      part.forEach(item => walk(item, kind.item, ''));
    } else if (kind.kind === 'record' && typeof part === 'object') {
      for (const key of keysOf(kind).filter(k => part[k.key] !== undefined)) {
        if (typeof part[key.key] === 'object' && kind === field) {
          words.push(key.label + ':');
        }
        walk(part[key.key], key, key.label);
      }
    } else if (kind.kind === 'choice') {
      const choice = kind.choices.find(c => c.word === part);
      words.push(choice ? choice.label : String(part));
    } else if (part !== false) {
      words.push(part === true ? name : String(part));
    }
  };
  walk(value, field, '');
  return words.join(' ') || 'empty';
};

const MOST_OPEN = 4;

/** An item that shows its values in a line and is drawn when it is opened. */
const foldedItem = (source, place, field, name, drawRest) => {
  const line = make('summary', {}, make('b', {}, name), '\u00a0', brief(at(source.doc(), place), field));
  const box = make('details', {class: 'folded', toggle: () => box.open && unfold(box)}, line);
  box.fillIn = () => {
    box.fillIn = null;
    box.append(drawRest());
  };
  if (opened.has(idOf(source, place))) {
    box.open = true;
    unfold(box);
  }
  return box;
};

const unfold = box => {
  if (box && box.fillIn) {
    box.open = true;
    box.fillIn();
  }
};

const drawList = (source, path, field, options = {}) => {
  const label = options.label || labelOf(field, path);
  const item = single(label.toLowerCase());
  const parts = partsOf(source, path, field);
  const rows = make('div', {class: isFlat(field.item) ? 'rows' : 'items'});
  const spoken = make('span', {class: 'count'});
  let first = Math.max(0, (at(source.doc(), path) || []).length - SHOWN);

  const items = () => at(source.doc(), path) || [];

  const redraw = focusOn => {
    const list = items();
    first = Math.min(first, Math.max(0, list.length - 1));
    const shown = list.slice(first, first + SHOWN * 2).map((_, i) => drawItem(first + i));
    replace(rows, first > 0 && button(`Show ${first} before`, () => {
      first = Math.max(0, first - SHOWN);
      redraw(first);
    }), shown, first + shown.length < list.length && button('Show more', () => {
      first += SHOWN;
      redraw(first);
    }));
    spoken.textContent = list.length ? `${list.length}` : 'none yet';
    same.hidden = list.length === 0;
    if (focusOn !== undefined) {
      unfold(shown[focusOn - first]);
      const target = shown[focusOn - first];
      ((target && firstInput(target)) || add).focus();
    }
    markSoon();
  };

  const alter = (work, focusOn, words) => {
    change(source, path + '~' + items().length, doc => {
      if (!Array.isArray(at(doc, path))) {
        put(doc, path, []);
      }
      work(at(doc, path));
      if (!at(doc, path).length && !options.keepEmpty) {
        drop(doc, path);
      }
    });
    first = Math.max(0, Math.min(first, focusOn), focusOn - SHOWN + 1);
    redraw(focusOn);
    say(words);
  };

  const addItem = copy => {
    const count = items().length;
    const value = copy ? structuredClone(items()[count - 1]) : emptyOf(field.item);
    alter(list => list.push(value), count, `${capital(item)} ${count + 1} added`);
  };

  const removeItem = index => alter(list => list.splice(index, 1),
    Math.min(index, Math.max(0, items().length - 2)), `${capital(item)} ${index + 1} removed`);

  const raise = index => alter(list => list.splice(index - 1, 0, list.splice(index, 1)[0]),
    index - 1, `${capital(item)} ${index + 1} moved up`);

  const drawItem = index => {
    const place = under(path, index);
    const name = `${item} ${index + 1}`;
    const tools = [
      index > 0 && button('↑', () => raise(index), {
        class: 'remove', 'aria-label': `Move ${name} up`, title: 'Move up'}),
      removeButton(name, () => removeItem(index)),
    ];
    if (field.item.kind !== 'record') {
      return make('div', {class: 'single'},
        drawField(source, place, field.item, {label: capital(name), cell: true, remove: null}), tools);
    }
    const record = () => drawRecord(source, place, field.item, {
      label: capital(name), tools, flat: isFlat(field.item)});
    return items().length > MOST_OPEN && !isFlat(field.item)
      ? foldedItem(source, place, field.item, capital(name), record) : record();
  };

  const add = button('Add ' + item, () => addItem(false), {class: 'add'});
  const same = button('Same again', () => addItem(true),
    {'aria-label': `Same again: copy the last ${item}`});
  parts.element = make('fieldset', {class: 'list', id: idOf(source, path), 'data-list': path},
    make('legend', {}, label, ' ', spoken, neededMark(field)), parts.help, parts.fault, rows,
    make('div', {class: 'row'}, add, same,
      options.remove && button('Remove all', options.remove, {'aria-label': 'Remove ' + label})));
  parts.element.addEventListener('keydown', event => {
    // Enter in the last field of the last item starts the next item.
    const inputs = [...rows.querySelectorAll('input[type=text], input[type=date]')];
    if (event.key === 'Enter' && event.target === inputs[inputs.length - 1]) {
      event.preventDefault();
      event.stopPropagation();
      addItem(false);
    }
  });
  const element = register(parts);
  redraw();
  return element;
};

// Records and the whole form, drawn from the table alone.

/** Keys that were opened to be filled and hold nothing yet. */
const opened = new Set();

const isThere = (source, path) => at(source.doc(), path) !== undefined;

const drawField = (source, path, field, options = {}) => {
  switch (field.kind) {
    case 'record':
      return drawRecord(source, path, field, options);
    case 'list':
      return field.item.kind === 'choice' ? setField(source, path, field, options)
        : drawList(source, path, field, options);
    case 'choice':
    case 'yesno':
      return choiceField(source, path, field, options);
    default:
      return typedField(source, path, field, options);
  }
};

/** A record: what must be there, what is there, what is assumed, and what may be added. */
const drawRecord = (source, path, field, options = {}) => {
  const parts = partsOf(source, path, {help: options.quiet ? '' : aboutOf(field)});
  const body = make('div', {class: options.flat ? 'cells' : 'body'});

  const redraw = focusOn => {
    const rows = [];
    const more = [];
    for (const key of keysOf(field)) {
      const place = under(path, key.key);
      const shown = key.required || isThere(source, place) || opened.has(idOf(source, place));
      if (shown) {
        rows.push(drawField(source, place, key, {
          cell: options.flat,
          remove: key.required ? null : () => remove(key, place),
        }));
      } else if (key.assumed && !options.flat) {
        rows.push(assumedRow(source, place, key, () => stateIt(key, place)));
      } else {
        more.push(button(key.label, () => start(key, place), {
          class: 'chip', title: key.help, 'aria-label': 'Add ' + key.label}));
      }
    }
    replace(body, rows, more.length && moreBox(more, options));
    if (focusOn) {
      const fresh = drawn.get(placeOf(source, focusOn));
      if (fresh) {
        firstInput(fresh.element).focus();
      }
    }
    markSoon();
  };

  const start = (key, place) => {
    opened.add(idOf(source, place));
    if (key.kind === 'record') {
      change(source, place, doc => put(doc, place, {}));
    } else if (key.kind === 'list' && key.item.kind !== 'choice') {
      change(source, place, doc => put(doc, place, [emptyOf(key.item)]));
    }
    redraw(place);
  };

  const stateIt = (key, place) => {
    const value = assumedValue(key);
    if (value === undefined) {
      start(key, place);
      return;
    }
    change(source, place, doc => put(doc, place, value));
    redraw(place);
    say(`${capital(key.label)} is now stated: ${key.assumed.text}`);
  };

  const remove = async (key, place) => {
    const value = at(source.doc(), place);
    const much = value && typeof value === 'object' && JSON.stringify(value).length > 40;
    if (much && !await ask(`Remove ${key.label} with all that it holds?`, 'Remove')) {
      return;
    }
    opened.delete(idOf(source, place));
    change(source, place, doc => drop(doc, place));
    redraw();
    const chip = [...body.querySelectorAll('button')].find(b =>
      b.getAttribute('aria-label') === 'Add ' + key.label
      || b.getAttribute('aria-label') === 'State ' + labelOf(key, place));
    (chip || body.querySelector('button, input')).focus();
    say(capital(key.label) + ' removed');
  };

  const label = options.label || labelOf(field, path);
  parts.element = make('fieldset', {
    class: 'record' + (options.flat ? ' flat' : '') + (options.quiet ? ' quiet' : ''),
    id: idOf(source, path), 'aria-label': options.quiet ? label : null,
  },
  !options.quiet && make('legend', {}, label),
  options.tools && make('div', {class: 'tools'}, options.tools),
  options.remove && make('div', {class: 'tools'}, removeButton(label, options.remove)),
  parts.help, parts.fault, body);
  const element = register(parts);
  redraw();
  return element;
};

const moreBox = (more, options) => {
  const chips = make('div', {class: 'chips', role: 'group', 'aria-label': 'May be added'}, more);
  if (more.length <= 3 && !options.flat) {
    return make('div', {class: 'more'}, chips);
  }
  return make('details', {class: 'more', open: !options.flat && options.quiet},
    make('summary', {}, options.flat ? `More (${more.length})` : `May be added (${more.length})`),
    chips);
};

/** Enter goes to the next field, as on paper. */
const enterMovesOn = event => {
  if (event.key !== 'Enter' || event.target.tagName !== 'INPUT' || event.defaultPrevented) {
    return;
  }
  const fields = [...event.currentTarget.querySelectorAll('input, select')]
    .filter(field => field.offsetParent);
  const next = fields[fields.indexOf(event.target) + 1];
  if (next) {
    event.preventDefault();
    next.focus();
  }
};

// One field of the form: label, help, entry with its unit, what was understood, and its fault.

const MOST_RADIOS = 4;

const idOf = (source, path, part = '') => `${source.name}${path}${part ? '~' + part : ''}`;

const boundsText = field => {
  if (field.kind === 'quantity') {
    const unit = field.bare && field.bare !== '1' ? ' ' + field.bare : '';
    if (field.bare && typeof field.least === 'number') {
      return `${field.least} to ${field.most}${unit}`;
    }
    return field.range ? `${field.range}; write the unit` : '';
  }
  return field.kind === 'whole' ? `${field.least} to ${field.most}` : '';
};

const helpText = field => {
  const help = field.help && field.help !== field.label ? capital(field.help) : '';
  const bounds = boundsText(field);
  return help + (bounds ? (help ? ' · ' : '') + bounds : '');
};

/** The parts that every field has, ready to be put together. */
const partsOf = (source, path, field) => {
  const parts = {
    source, path, inputs: [],
    help: make('p', {class: 'help', id: idOf(source, path, 'help')}, helpText(field)),
    fault: make('p', {class: 'fault', id: idOf(source, path, 'fault')}),
  };
  return parts;
};

const register = parts => {
  drawn.set(placeOf(parts.source, parts.path), parts);
  return parts.element;
};

const described = (source, path) =>
  `${idOf(source, path, 'help')} ${idOf(source, path, 'echo')} ${idOf(source, path, 'fault')}`;

/** States a value, or takes it away where nothing is typed. */
const state = (source, path, value) => change(source, path, doc => {
  const isItem = typeof lastStep(path) === 'number';
  if (value === '' && !isItem) {
    drop(doc, path);
  } else {
    put(doc, path, value);
  }
});

const labelOf = (field, path) => {
  const last = lastStep(path);
  return typeof last === 'number' ? '' : capital(field.label || String(last));
};

const neededMark = field => field.required && make('span', {class: 'needed'}, ' (needed)');

/** The field's number with the unit that a bare one is read in, or units to choose from. */
const unitPart = (source, path, field, input, label) => {
  if (field.kind !== 'quantity') {
    return null;
  }
  if (field.bare) {
    const unit = make('span', {class: 'unit', 'aria-hidden': 'true'});
    const follow = () => {
      const bare = field.bare !== '1' && typeof typedValue(input.value || '0', field) === 'number';
      unit.textContent = bare ? field.bare : '';
    };
    input.addEventListener('input', follow);
    follow();
    return unit;
  }
  const choose = make('select', {class: 'unit', 'aria-label': 'Unit of ' + label, change: () => {
    const bare = input.value.trim();
    if (choose.value && /^-?[\d.]+$/.test(bare)) {
      input.value = bare + ' ' + choose.value;
      input.dispatchEvent(new Event('input'));
    }
    choose.value = '';
    input.focus();
  }}, make('option', {value: ''}, 'unit'), field.units.map(unit => make('option', {}, unit)));
  return choose;
};

const removeButton = (label, remove) =>
  button('×', remove, {class: 'remove', 'aria-label': 'Remove ' + label, title: 'Remove ' + label});

/** A field for one typed value. */
const typedField = (source, path, field, options) => {
  const label = options.label || labelOf(field, path);
  const parts = partsOf(source, path, field);
  const value = at(source.doc(), path);
  const isDay = field.day && (value === undefined || /^\d{4}-\d\d-\d\d$/.test(value));
  const isName = field.pattern && field.pattern.includes('A-Za-z0-9');
  const input = make('input', {
    id: idOf(source, path), type: isDay ? 'date' : 'text', value: value === undefined ? '' : String(value),
    autocomplete: 'off', spellcheck: field.kind === 'text' && !field.pattern ? 'true' : 'false',
    autocapitalize: 'off', enterkeyhint: 'next', 'aria-describedby': described(source, path),
    inputmode: field.kind === 'whole' ? 'numeric' : null,
    'aria-required': field.required ? 'true' : null,
    maxlength: field.longest || 100, list: isName ? 'names' : null,
    class: field.kind === 'text' && !field.pattern && !field.day ? 'wide' : '',
    input: () => state(source, path, typedValue(input.value, field)),
    focus: isName ? offerNames : null,
  });
  input.value = value === undefined ? '' : String(value);
  parts.inputs = [input];
  parts.echo = make('p', {class: 'echo', id: idOf(source, path, 'echo')});
  parts.element = make('div', {class: 'field' + (options.cell ? ' cell' : '')},
    make('label', {for: idOf(source, path)}, label, !options.cell && neededMark(field)),
    parts.help,
    make('div', {class: 'entry'}, input, unitPart(source, path, field, input, label),
      options.remove && removeButton(label, options.remove)),
    parts.echo, parts.fault);
  return register(parts);
};

/** Names of things in the open job, offered where another section refers to one. */
const offerNames = () => {
  const found = new Set();
  const walk = value => {
    if (value && typeof value === 'object') {
      if (typeof value.id === 'string') {
        found.add(value.id);
      }
      Object.values(value).forEach(walk);
    }
  };
  walk(open.record.job);
  replace(byId('names'), [...found].map(name => make('option', {value: name})));
};

const choicesOf = field => (field.kind === 'yesno'
  ? [{word: true, label: 'yes'}, {word: false, label: 'no'}] : field.choices);

/** A field of words to choose from: few side by side, many in a list. */
const choiceField = (source, path, field, options) => {
  const label = options.label || labelOf(field, path);
  const parts = partsOf(source, path, field);
  const choices = choicesOf(field);
  const given = at(source.doc(), path);
  const remove = options.remove && removeButton(label, options.remove);
  if (choices.length > MOST_RADIOS) {
    const select = make('select', {
      id: idOf(source, path), 'aria-describedby': described(source, path),
      change: () => state(source, path, select.value),
    }, make('option', {value: ''}, 'choose'),
    choices.map(choice => make('option', {value: choice.word}, choice.label)));
    select.value = given === undefined ? '' : given;
    parts.inputs = [select];
    parts.element = make('div', {class: 'field' + (options.cell ? ' cell' : '')},
      make('label', {for: idOf(source, path)}, label, !options.cell && neededMark(field)),
      parts.help, make('div', {class: 'entry'}, select, remove), parts.fault);
    return register(parts);
  }
  const radios = choices.map((choice, i) => {
    const radio = make('input', {
      type: 'radio', name: idOf(source, path), id: idOf(source, path, i || ''),
      change: () => state(source, path, choice.word),
    });
    radio.checked = given === choice.word;
    parts.inputs.push(radio);
    return make('label', {class: 'pill'}, radio, make('span', {}, choice.label));
  });
  parts.element = make('fieldset', {
    class: 'field plain' + (options.cell ? ' cell' : ''),
    'aria-describedby': described(source, path),
  },
  make('legend', {}, label, !options.cell && neededMark(field)), parts.help,
  make('div', {class: 'entry'}, radios, remove), parts.fault);
  return register(parts);
};

/** A set of words to tick. */
const setField = (source, path, field, options) => {
  const label = labelOf(field, path);
  const parts = partsOf(source, path, field);
  const boxes = field.item.choices.map((choice, i) => {
    const box = make('input', {type: 'checkbox', id: idOf(source, path, i || ''), change: () => {
      const ticked = field.item.choices.filter((c, k) => parts.inputs[k].checked).map(c => c.word);
      state(source, path, ticked.length ? ticked : '');
    }});
    box.checked = (at(source.doc(), path) || []).includes(choice.word);
    parts.inputs.push(box);
    return make('label', {class: 'pill'}, box, make('span', {}, choice.label));
  });
  parts.element = make('fieldset', {
    class: 'field plain', 'aria-describedby': described(source, path),
  },
  make('legend', {}, label), parts.help,
  make('div', {class: 'entry'}, boxes, options.remove && removeButton(label, options.remove)),
  parts.fault);
  return register(parts);
};

/** What is assumed, with one tap to state it. */
const assumedRow = (source, path, field, stateIt) => {
  const label = labelOf(field, path);
  const parts = partsOf(source, path, field);
  parts.assumedText = `${field.assumed.text} (${field.assumed.ground})`;
  const assumed = make('span', {}, parts.assumedText);
  parts.assumed = assumed;
  parts.element = make('div', {class: 'assumed'},
    make('p', {}, make('b', {}, label), ' ', make('span', {class: 'tag'}, 'assumed'), ' ', assumed),
    parts.help, parts.fault,
    button('State it', stateIt, {'aria-label': 'State ' + label}));
  return register(parts);
};

// The table of keys that the build puts into the page, and paths into documents.

const table = JSON.parse(await textOfPart('form'));

const keysOf = field => field.keys || table.shapes[field.shape].keys;

const aboutOf = field => (field.shape ? table.shapes[field.shape].about : field.help) || '';

const rootField = name => ({kind: 'record', shape: name});

/** "$.stock.sheets[0].id" gives ["stock", "sheets", 0, "id"]. */
const steps = path => {
  const found = path.match(/[^.[\]]+/g) || [];
  return found.slice(1).map(step => (/^\d+$/.test(step) ? Number(step) : step));
};

const under = (path, step) => (typeof step === 'number' ? `${path}[${step}]` : `${path}.${step}`);

const above = path => path.replace(/(\.[^.[\]]+|\[\d+\])$/, '');

const lastStep = path => steps(path).pop();

const at = (doc, path) => {
  let value = doc;
  for (const step of steps(path)) {
    if (value === null || typeof value !== 'object') {
      return undefined;
    }
    value = value[step];
  }
  return value;
};

/** Puts a value; objects and lists on the way are made. */
const put = (doc, path, value) => {
  const way = steps(path);
  const last = way.pop();
  let place = doc;
  way.forEach((step, i) => {
    if (place[step] === undefined || place[step] === null || typeof place[step] !== 'object') {
      place[step] = typeof (i + 1 < way.length ? way[i + 1] : last) === 'number' ? [] : {};
    }
    place = place[step];
  });
  place[last] = value;
};

/** Takes a value away. */
const drop = (doc, path) => {
  const place = at(doc, above(path));
  const last = lastStep(path);
  if (Array.isArray(place)) {
    place.splice(last, 1);
  } else if (place && typeof place === 'object') {
    delete place[last];
  }
};

/** The entry of the table for a path, if it has one. */
const fieldAt = (root, path) => {
  let field = rootField(root);
  for (const step of steps(path)) {
    if (typeof step === 'number') {
      field = field.kind === 'list' ? field.item : undefined;
    } else {
      field = field.kind === 'record' ? keysOf(field).find(key => key.key === step) : undefined;
    }
    if (!field) {
      return undefined;
    }
  }
  return field;
};

/** A document with its keys in the order of the table, as people write it. */
const ordered = (value, field) => {
  if (field && field.kind === 'list' && Array.isArray(value)) {
    return value.map(item => ordered(item, field.item));
  }
  if (!field || field.kind !== 'record' || value === null || typeof value !== 'object'
      || Array.isArray(value)) {
    return value;
  }
  const sorted = {};
  if (value.seamstead !== undefined) {
    sorted.seamstead = value.seamstead;
  }
  for (const key of keysOf(field)) {
    if (value[key.key] !== undefined) {
      sorted[key.key] = ordered(value[key.key], key);
    }
  }
  return {...sorted, ...Object.fromEntries(Object.entries(value).filter(([k]) => !(k in sorted)))};
};

/** Whether the form can show every part of a document. */
const isShown = (value, field) => {
  if (!field) {
    return false;
  }
  if (field.kind === 'list') {
    return Array.isArray(value) && value.every(item => isShown(item, field.item));
  }
  const object = value !== null && typeof value === 'object';
  if (field.kind !== 'record') {
    return !object && value !== null;
  }
  return object && !Array.isArray(value) && Object.entries(value).every(([name, member]) =>
    name === 'seamstead' || isShown(member, keysOf(field).find(key => key.key === name)));
};

/** The value of what was typed: a bare number as a number, else the text as it stands. */
const typedValue = (text, field) => {
  const plain = text.trim();
  if (field.kind !== 'text' && /^-?\d{1,15}(\.\d{1,15})?$/.test(plain)) {
    return Number(plain);
  }
  return field.kind === 'text' ? text : plain;
};

/** The value that states what was assumed. */
const assumedValue = field => {
  const text = field.assumed.text;
  if (field.kind === 'yesno') {
    return /^(yes|true)$/i.test(text);
  }
  if (field.kind === 'choice') {
    const found = field.choices.find(c => c.word === text || c.label === text);
    return found ? found.word : undefined;
  }
  return field.kind === 'list' || field.kind === 'record' ? undefined : typedValue(text, field);
};

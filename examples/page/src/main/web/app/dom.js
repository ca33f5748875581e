// Elements, spoken notes and questions. Texts become text nodes only, never markup.

const SVG = 'http://www.w3.org/2000/svg';

const fill = (element, attributes, children) => {
  for (const [name, value] of Object.entries(attributes)) {
    if (typeof value === 'function') {
      element.addEventListener(name, value);
    } else if (value === true) {
      element.setAttribute(name, '');
    } else if (value !== false && value !== undefined && value !== null) {
      element.setAttribute(name, String(value));
    }
  }
  for (const child of children.flat(Infinity)) {
    if (child !== null && child !== undefined && child !== false) {
      element.append(child);
    }
  }
  return element;
};

/** Makes an element; a function among the attributes listens to the event of that name. */
const make = (tag, attributes = {}, ...children) =>
  fill(document.createElement(tag), attributes, children);

const draw = (tag, attributes = {}, ...children) =>
  fill(document.createElementNS(SVG, tag), attributes, children);

const button = (text, click, attributes = {}) =>
  make('button', {type: 'button', click, ...attributes}, text);

const byId = id => document.getElementById(id);

const replace = (element, ...children) => {
  element.replaceChildren(...children.flat(Infinity).filter(child => child));
  return element;
};

const SAID_FOR = 5000;
let unsaid = 0;

/** Says something to those who look and to those who listen. */
const say = text => {
  byId('said').textContent = text;
  clearTimeout(unsaid);
  unsaid = setTimeout(() => {
    byId('said').textContent = '';
  }, SAID_FOR);
};

/** A note that stays until it is put away: for what must not be missed. */
const warn = text => {
  const place = byId('notes');
  if ([...place.children].some(note => note.firstChild.textContent === text)) {
    return;
  }
  const note = make('div', {class: 'note'}, make('p', {}, text));
  note.append(button('Put away', () => note.remove()));
  place.append(note);
};

/** Asks before something is lost. Gives whether the answer is yes. */
const ask = (question, yes, no = 'Keep it') => new Promise(answer => {
  const back = document.activeElement;
  const end = value => {
    box.close();
    box.remove();
    if (back && back.isConnected) {
      back.focus();
    }
    answer(value);
  };
  const keep = button(no, () => end(false));
  const box = make('dialog', {'aria-labelledby': 'question', cancel: event => {
    event.preventDefault();
    end(false);
  }},
  make('p', {id: 'question'}, question),
  make('div', {class: 'row'}, keep, button(yes, () => end(true), {class: 'strong'})));
  document.body.append(box);
  box.showModal();
  keep.focus();
});

/** Runs a function once its callers have been quiet for a while. */
const later = (wait, work) => {
  let timer = 0;
  return () => {
    clearTimeout(timer);
    timer = setTimeout(work, wait);
  };
};

const two = number => String(number).padStart(2, '0');

const clock = time => {
  const at = new Date(time);
  return two(at.getHours()) + ':' + two(at.getMinutes());
};

const dayOf = time => {
  const at = new Date(time);
  return at.getFullYear() + '-' + two(at.getMonth() + 1) + '-' + two(at.getDate());
};

const capital = text => text.charAt(0).toUpperCase() + text.slice(1);

/** One of many: "sheets" gives "sheet". */
const single = label =>
  label.replace(/ies$/, 'y').replace(/(x|ch|sh)es$/, '$1').replace(/([^s])s$/, '$1');

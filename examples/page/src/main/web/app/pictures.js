// The pictures of a section: which they are, and how they follow the numbers.

/** By the part of a sketch: where its numbers come from, the sections it is shown in, what draws it. */
const PICTURES = {
  frame: {of: '$.frame', sections: ['frame', 'cover'], paint: framePicture},
  face: {of: '$.frame', sections: ['frame', 'cover'], paint: facePicture},
  sheets: {of: '$.stock', sections: ['stock'], paint: sheetsPicture},
  texture: {of: '$.soils', sections: ['soils', 'trialMixes'], paint: texturePicture},
  sectors: {of: '$.floor', sections: ['floor', 'weather'], paint: sectorsPicture},
  buckets: {of: '$.floor', sections: ['floor', 'trialMixes', 'aggregates', 'plant'], paint: bucketsPicture},
};

/** The last sketch, and which of its parts are older than the numbers in the form. */
const sketches = {last: {}, old: new Set()};

const isEmptyPart = part => !part || (Array.isArray(part) && part.length === 0);

/** Draws the pictures of the shown section from the last sketch. */
const showPictures = () => {
  const place = byId('picture');
  if (!place || view.name !== 'job') {
    return;
  }
  const focused = place.contains(document.activeElement)
    ? [...place.querySelectorAll('button')].indexOf(document.activeElement) : -1;
  const figures = [];
  for (const [part, picture] of Object.entries(PICTURES)) {
    const data = sketches.last[part];
    if (picture.sections.includes(view.part) && !isEmptyPart(data)) {
      const drawing = picture.paint(data);
      if (drawing && sketches.old.has(part)) {
        drawing.classList.add('old');
        drawing.append(make('p', {class: 'help'}, 'As before the last change: a value is to mend.'));
      }
      figures.push(drawing);
    }
  }
  const shown = figures.filter(Boolean);
  place.className = shown.length ? 'has' : '';
  replace(place, shown.length > 0 && make('details', {open: place.dataset.folded !== 'true', toggle: event => {
    place.dataset.folded = String(!event.target.open);
  }}, make('summary', {}, shown.length > 1 ? 'Pictures' : 'Picture'), make('div', {class: 'figures'}, shown)));
  if (focused >= 0) {
    place.querySelectorAll('button')[focused]?.focus();
  }
};

/** A number that is half typed must not make its picture vanish. */
const takeSketch = sketch => {
  const old = new Set();
  for (const [part, picture] of Object.entries(PICTURES)) {
    if (isEmptyPart(sketch[part]) && isThere(JOB, picture.of) && !isEmptyPart(sketches.last[part])) {
      sketch[part] = sketches.last[part];
      old.add(part);
    }
  }
  sketches.last = sketch;
  sketches.old = old;
};

const sketch = newest(() => helper.call({kind: 'sketch', job: jobText()}), answer => {
  if (answer.kind === 'done') {
    takeSketch(answer);
    showPictures();
  }
});

const sketchSoon = later(120, sketch);

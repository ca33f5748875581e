// The pictures of a section: which they are, and how they follow the numbers.

/** By the part of a sketch: the sections it is shown in, and what draws it. */
const PICTURES = {
  frame: {sections: ['frame', 'cover'], paint: framePicture},
  face: {sections: ['frame', 'cover'], paint: facePicture},
  sheets: {sections: ['stock'], paint: sheetsPicture},
  texture: {sections: ['soils', 'trialMixes'], paint: texturePicture},
  sectors: {sections: ['floor', 'weather'], paint: sectorsPicture},
  buckets: {sections: ['floor', 'trialMixes', 'aggregates', 'plant'], paint: bucketsPicture},
};

const sketches = {last: {}};

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
      figures.push(picture.paint(data));
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

const sketch = newest(() => helper.call({kind: 'sketch', job: jobText()}), answer => {
  if (answer.kind === 'done') {
    // A number that is half typed must not make the picture vanish: what is known stays.
    sketches.last = answer;
    showPictures();
  }
});

const sketchSoon = later(120, sketch);

// What the pictures share: a drawing fitted to its points, and letters of one size.

const WIDTH = 340;

/** The box round points with room at the edges, and the scale that fits it to the width. */
const fit = (points, height, room = 24) => {
  const xs = points.map(p => p[0]);
  const ys = points.map(p => p[1]);
  const [x0, x1, y0, y1] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const scale = Math.min((WIDTH - 2 * room) / Math.max(x1 - x0, 1e-9),
    (height - 2 * room) / Math.max(y1 - y0, 1e-9));
  const left = (WIDTH - (x1 - x0) * scale) / 2;
  const low = height - (height - (y1 - y0) * scale) / 2;
  // y goes up in the field and down on the screen.
  return {scale, to: p => [left + (p[0] - x0) * scale, low - (p[1] - y0) * scale]};
};

const pointList = points => points.map(p => p.map(v => v.toFixed(1)).join(',')).join(' ');

const letters = (text, x, y, attributes = {}) =>
  draw('text', {x: x.toFixed(1), y: y.toFixed(1), 'text-anchor': 'middle', ...attributes}, text);

/** A drawing with a title for those who listen. */
const drawing = (title, height, ...children) => draw('svg', {
  viewBox: `0 0 ${WIDTH} ${height}`, role: 'img', 'aria-label': title,
}, ...children);

const figure = (title, picture, caption, ...tools) => make('figure', {},
  make('figcaption', {}, make('b', {}, title), caption ? ' ' + caption : ''), picture, tools);

/** A length as people read it on a picture. */
const metres = value => (value < 0.995 ? Math.round(value * 1000) + ' mm' : value.toFixed(2) + ' m');

const percent = share => Math.round(share * 100) + ' %';

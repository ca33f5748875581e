// Earth: where a soil lies between sand, silt and clay, and a mix counted in buckets.

const MARKS = ['●', '■', '▲', '◆', '✚', '★'];
const MOST_BUCKETS = 40;

/** A triangle of even sides: clay at the top, sand at the left foot, silt at the right one. */
const texturePicture = soils => {
  const [left, right, foot, side] = [40, 300, 250, 260];
  const height = 290;
  const rise = side * Math.sqrt(3) / 2;
  const to = soil => {
    const whole = soil.sand + soil.silt + soil.clay || 1;
    return [left + side * (soil.silt + soil.clay / 2) / whole, foot - rise * soil.clay / whole];
  };
  const line = (a, b) => {
    const [[x1, y1], [x2, y2]] = [to(a), to(b)];
    return draw('line', {class: 'grid', x1, y1, x2, y2});
  };
  const grid = [0.2, 0.4, 0.6, 0.8].flatMap(k => [
    line({clay: k, sand: 1 - k, silt: 0}, {clay: k, sand: 0, silt: 1 - k}),
    line({sand: k, clay: 1 - k, silt: 0}, {sand: k, clay: 0, silt: 1 - k}),
    line({silt: k, clay: 1 - k, sand: 0}, {silt: k, clay: 0, sand: 1 - k})]);
  const words = soil => `${soil.id}: sand ${percent(soil.sand)}, silt ${percent(soil.silt)}, `
    + `clay ${percent(soil.clay)}` + (soil.name ? ` (${soil.name})` : '');
  const marks = soils.map((soil, i) => letters(MARKS[i % MARKS.length], ...to(soil), {class: 'spot', dy: 7}));
  return figure('Texture', drawing('Soils between sand, silt and clay. ' + soils.map(words).join('; '), height,
    draw('polygon', {class: 'earth', points: `${left},${foot} ${right},${foot} ${(left + right) / 2},${foot - rise}`}),
    grid, letters('clay', (left + right) / 2, foot - rise - 8), letters('sand', left, foot + 22),
    letters('silt', right, foot + 22), marks), 'by mass, of the fine part',
  make('ul', {class: 'key'}, soils.map((soil, i) => make('li', {}, MARKS[i % MARKS.length] + ' ' + words(soil)))));
};

const bucketText = count => String(Math.round(count * 10) / 10);

const bucketsPicture = mixes => figure('Mixes in buckets', make('ul', {class: 'mixes'}, mixes.map(mix =>
  make('li', {}, make('b', {}, mix.id), mix.parts.map((part, i) => {
    const whole = Math.min(Math.floor(part.buckets + 1e-9), MOST_BUCKETS);
    const rest = whole < MOST_BUCKETS ? part.buckets - whole : 0;
    const pails = [...Array(whole).fill(1), ...(rest > 0.04 ? [rest] : [])];
    const [across, size] = [10, 30];
    const rows = Math.max(1, Math.ceil(pails.length / across));
    return make('div', {class: 'part'}, make('span', {}, `${part.name}: ${bucketText(part.buckets)}`),
      drawing(`${part.name}: ${bucketText(part.buckets)} buckets`, rows * size + 4, pails.map((share, k) => {
        const [x, y] = [4 + (k % across) * 33, 4 + Math.floor(k / across) * size];
        const level = y + 24 - 24 * share;
        return [draw('polygon', {class: 'fill m' + (i % 3),
          points: `${x + 4 - 4 * share},${level} ${x + 22 + 4 * share},${level} ${x + 22},${y + 24} ${x + 4},${y + 24}`}),
        draw('polyline', {class: 'pail', points: `${x},${y} ${x + 4},${y + 24} ${x + 22},${y + 24} ${x + 26},${y}`})];
      }).flat()));
  })))), '');

// Flat things: a face with its door, the sheets with their flaws, the floor in sectors.

const SHEETS_DRAWN = 30;

const facePicture = face => {
  const height = 240;
  const {to} = fit(face.corners, height, 34);
  const base = Math.hypot(face.corners[1][0] - face.corners[0][0], face.corners[1][1] - face.corners[0][1]);
  const corners = face.corners.map(to);
  const words = face.text || '';
  return figure('One face', drawing('One face, flat. ' + words, height,
    draw('polygon', {class: 'cloth', points: pointList(corners)}),
    face.door && draw('polygon', {class: 'cut', points: pointList(face.door.map(to))}),
    face.door && letters('door', ...middleOf(face.door.map(to))),
    letters(metres(base), (corners[0][0] + corners[1][0]) / 2, corners[0][1] + 18)), words);
};

const middleOf = points => [points.reduce((sum, p) => sum + p[0], 0) / points.length,
  points.reduce((sum, p) => sum + p[1], 0) / points.length];

const EDGES = {
  bottom: (w, h) => [[0, 0], [w, 0]], top: (w, h) => [[0, h], [w, h]],
  left: (w, h) => [[0, 0], [0, h]], right: (w, h) => [[w, 0], [w, h]],
};

const flawWords = sheet => (sheet.flaws.length === 0 ? ''
  : sheet.flaws.length === 1 ? ', one flaw' : `, ${sheet.flaws.length} flaws`);

const borderWords = sheet => (sheet.reinforced.length ? ', border at ' + sheet.reinforced.join(', ')
  : !(sheet.bands || []).length ? ''
    : `, border along edge${sheet.bands.length > 1 ? 's' : ''} ` + sheet.bands.join(', '));

const sheetWords = sheet => `${sheet.count} × ${metres(sheet.length)} by ${metres(sheet.width)}`
  + (sheet.outline ? ` over all, ${sheet.outline.length} corners` : '') + flawWords(sheet) + borderWords(sheet);

/** The ends of the edges with a border; edge 1 of an outline leads from its first corner to the second. */
const bordersOf = sheet => {
  const corners = sheet.outline || [];
  const along = (sheet.bands || []).filter(edge => corners[edge - 1])
    .map(edge => [corners[edge - 1], corners[edge % corners.length]]);
  return [...along, ...sheet.reinforced.filter(edge => EDGES[edge]).map(edge => EDGES[edge](sheet.length, sheet.width))];
};

/** All sheets to one scale, so that they can be compared. */
const sheetPicture = (sheet, longest) => {
  const scale = (WIDTH - 8) / longest;
  const [w, h] = [sheet.length * scale, Math.max(sheet.width * scale, 2)];
  const to = ([x, y]) => [4 + x * scale, h + 4 - y * scale];
  const box = (x, y, width, height, kind) => {
    const [left, low] = to([x, y]);
    return draw('rect', {class: kind, x: left.toFixed(1), y: (low - height * scale).toFixed(1),
      width: Math.max(width * scale, 1).toFixed(1), height: Math.max(height * scale, 1).toFixed(1)});
  };
  const cloth = sheet.outline ? draw('polygon', {class: 'cloth', points: pointList(sheet.outline.map(to))})
    : box(0, 0, sheet.length, sheet.width, 'cloth');
  const borders = bordersOf(sheet).map(ends => {
    const [[x1, y1], [x2, y2]] = ends.map(to);
    return draw('line', {class: 'border', x1, y1, x2, y2});
  });
  const crosses = sheet.flaws.map(flaw => {
    const [x1, y1] = to([flaw.x, flaw.y]);
    const [x2, y2] = to([flaw.x + flaw.width, flaw.y + flaw.height]);
    return draw('path', {class: 'cross', d: `M${x1} ${y1}L${x2} ${y2}M${x1} ${y2}L${x2} ${y1}`});
  });
  return make('li', {}, make('span', {}, make('b', {}, sheet.id), ' ', sheetWords(sheet)),
    drawing(`${sheet.id}: ${sheetWords(sheet)}`, h + 8, cloth,
      sheet.flaws.map(f => box(f.x, f.y, f.width, f.height, 'flaw')), crosses, borders));
};

const sheetsPicture = sheets => {
  const sound = sheets.filter(sheet => sheet.length > 0 && sheet.width > 0);
  if (!sound.length) {
    return null;
  }
  const longest = Math.max(...sound.map(sheet => sheet.length));
  const rest = sound.length - SHEETS_DRAWN;
  return figure('Sheets', make('ul', {class: 'sheets'},
    sound.slice(0, SHEETS_DRAWN).map(sheet => sheetPicture(sheet, longest)),
    rest > 0 && make('li', {}, `and ${rest} more`)),
  'to one scale; crossed: flaws; thick line: border kept for the hem');
};

const sectorsPicture = plan => {
  const height = 260;
  const {to} = fit(plan.outline, height);
  const words = plan.text || `${plan.parts.length} sectors`;
  return figure('Floor', drawing('The floor from above. ' + words, height,
    draw('polygon', {class: 'earth', points: pointList(plan.outline.map(to))}),
    plan.parts.map((part, i) => draw('polygon', {class: 'sector s' + (i % 3), points: pointList(part.map(to))})),
    (plan.gaps || []).map(gap => draw('polygon', {class: 'cut', points: pointList(gap.map(to))})),
    plan.parts.map((part, i) => letters(String(i + 1), ...middleOf(part.map(to)), {dy: 5}))), words);
};

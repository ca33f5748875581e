// The frame in space, turned by dragging and by buttons.

const FRAME_HEIGHT = 260;
const TURN = Math.PI / 12;
const LOWEST = 0.02;
const STEEPEST = Math.PI / 2 - 0.02;

/** How the frame is looked at; kept while numbers change. */
const look = {round: 0.4, up: 0.45};

const seen = vertex => {
  const [x, y, z] = vertex;
  const [c, s] = [Math.cos(look.round), Math.sin(look.round)];
  const depth = x * s + y * c;
  return [x * c - y * s, z * Math.cos(look.up) + depth * Math.sin(look.up),
    depth * Math.cos(look.up) - z * Math.sin(look.up)];
};

const EDGE_WORDS = {base: 'base', hip: 'hips', top: 'opening', purlin: 'purlins'};

const frameWords = frame => {
  const count = kind => frame.edges.filter(edge => edge[2] === kind).length;
  return Object.entries(EDGE_WORDS).filter(([kind]) => count(kind))
    .map(([kind, word]) => `${count(kind)} edges: ${word}`).join(', ');
};

const framePicture = frame => {
  const reach = Math.max(...frame.vertices.map(v => Math.hypot(v[0], v[1], v[2] * 1.1)), 1e-9);
  const scale = (Math.min(WIDTH, FRAME_HEIGHT * 1.5) / 2 - 16) / reach;
  const highest = Math.max(...frame.vertices.map(v => v[2]));
  const group = draw('g', {});
  const svg = drawing('The frame in space: ' + frameWords(frame), FRAME_HEIGHT, group);
  svg.classList.add('turnable');

  const redraw = () => {
    const middle = seen([0, 0, highest / 2]);
    const points = frame.vertices.map(vertex => {
      const p = seen(vertex);
      return [WIDTH / 2 + (p[0] - middle[0]) * scale, FRAME_HEIGHT / 2 - (p[1] - middle[1]) * scale, p[2]];
    });
    const far = edge => points[edge[0]][2] + points[edge[1]][2];
    const lines = [...frame.edges].sort((a, b) => far(b) - far(a)).map(edge => draw('line', {
      class: 'edge ' + (EDGE_WORDS[edge[2]] ? edge[2] : 'hip') + (far(edge) > 0 ? ' back' : ''),
      x1: points[edge[0]][0].toFixed(1), y1: points[edge[0]][1].toFixed(1),
      x2: points[edge[1]][0].toFixed(1), y2: points[edge[1]][1].toFixed(1),
    }));
    group.replaceChildren(...lines);
  };

  const turn = (round, up) => {
    look.round += round;
    look.up = Math.min(STEEPEST, Math.max(LOWEST, look.up + up));
    redraw();
  };

  let from = null;
  svg.addEventListener('pointerdown', event => {
    from = [event.clientX, event.clientY];
    svg.setPointerCapture(event.pointerId);
  });
  svg.addEventListener('pointermove', event => {
    if (from) {
      turn((event.clientX - from[0]) / 120, (event.clientY - from[1]) / 160);
      from = [event.clientX, event.clientY];
    }
  });
  for (const end of ['pointerup', 'pointercancel']) {
    svg.addEventListener(end, () => {
      from = null;
    });
  }
  redraw();
  const tool = (sign, words, round, up) => button(sign, () => {
    turn(round, up);
    say(words);
  }, {'aria-label': words, title: words});
  return figure('The frame', svg, '', make('div', {class: 'row tools', role: 'group', 'aria-label': 'Turn the frame'},
    tool('⟲', 'Turn left', -TURN, 0), tool('⟳', 'Turn right', TURN, 0),
    tool('↑', 'Look from higher', 0, TURN / 2), tool('↓', 'Look from lower', 0, -TURN / 2)));
};

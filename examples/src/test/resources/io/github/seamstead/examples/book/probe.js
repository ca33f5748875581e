// Questions about the page that is shown. Each answer is a list of faults in words, empty if none.
const probe = (() => {
  const all = (selector, from = document) => [...from.querySelectorAll(selector)];
  const short = text => text.trim().replace(/\s+/g, ' ').slice(0, 60);
  const silent = 'style,script,title,desc,defs,annotation';

  function texts() {
    const found = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) {
      const node = walker.currentNode;
      if (node.data.trim() && !node.parentElement.closest(silent)) found.push(node);
    }
    return found;
  }

  function channels(colour) {
    const parts = colour.match(/[\d.]+/g).map(Number);
    return parts.length === 3 ? [...parts, 1] : parts;
  }

  function over([r, g, b, a], under) {
    return [r, g, b].map((c, i) => c * a + under[i] * (1 - a));
  }

  function luminance(rgb) {
    const [r, g, b] = rgb.map(c => {
      const s = c / 255;
      return s <= 0.04045 ? s / 12.92 : ((s + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  }

  function ratio(one, other) {
    const [low, high] = [luminance(one), luminance(other)].sort((a, b) => a - b);
    return (high + 0.05) / (low + 0.05);
  }

  function ground(element) {
    const layers = [];
    for (let e = element; e; e = e.parentElement) {
      layers.push(channels(getComputedStyle(e).backgroundColor));
    }
    return layers.reduceRight((under, layer) => over(layer, under), [255, 255, 255]);
  }

  // What may lie under a label: its own halo or, without one, any plain fill of the drawing.
  function grounds(element, style) {
    const page = ground(element);
    if (!element.ownerSVGElement) return [page];
    if (style.stroke !== 'none' && style.paintOrder.startsWith('stroke')) {
      return [over(channels(style.stroke), page)];
    }
    const fills = all('path,rect,circle,polygon', element.ownerSVGElement)
      .map(shape => getComputedStyle(shape).fill)
      .filter(fill => fill.startsWith('rgb'));
    return [page, ...fills.map(fill => over(channels(fill), page))];
  }

  function contrast() {
    const faults = [];
    for (const node of texts()) {
      const element = node.parentElement;
      const style = getComputedStyle(element);
      const inDrawing = Boolean(element.ownerSVGElement);
      const colour = channels(inDrawing ? style.fill : style.color);
      const scale = inDrawing ? Math.abs(element.getScreenCTM().a) || 1 : 1;
      const size = parseFloat(style.fontSize) * scale;
      const large = size >= 24 || (size >= 18.66 && style.fontWeight >= 700);
      let opacity = 1;
      for (let e = element; e; e = e.parentElement) opacity *= getComputedStyle(e).opacity;
      colour[3] *= opacity;
      const least = Math.min(...grounds(element, style).map(g => ratio(over(colour, g), g)));
      if (!(least >= (large ? 3 : 4.5))) faults.push(`${least.toFixed(2)}: ${short(node.data)}`);
    }
    return faults;
  }

  function wide() {
    const faults = [];
    const root = document.documentElement;
    if (root.scrollWidth > innerWidth) faults.push(`page is ${root.scrollWidth} wide`);
    for (const e of all('body *')) {
      const box = e.closest('.scroll,.chain');
      const inner = box && box !== e && getComputedStyle(box).overflowX === 'auto';
      if (!inner && !e.closest('defs') && e.getBoundingClientRect().right > innerWidth + 1) {
        faults.push(`<${e.tagName}> ${short(e.textContent)}`);
      }
      if (getComputedStyle(e).overflowX === 'hidden' && !e.closest('svg')
          && e.scrollWidth > e.clientWidth) {
        faults.push(`cut off: ${short(e.textContent)}`);
      }
    }
    return faults;
  }

  function links() {
    return all('a[href^="#"]')
      .filter(a => !document.getElementById(decodeURIComponent(a.hash.slice(1))))
      .map(a => a.getAttribute('href'));
  }

  function outside() {
    return all('[href],[src],[data],[action],[srcset]')
      .flatMap(e => ['href', 'src', 'data', 'action', 'srcset'].map(n => e.getAttribute(n)))
      .filter(to => to && !to.startsWith('#'));
  }

  function headings() {
    const faults = [];
    let last = 0;
    for (const h of all('h1,h2,h3,h4,h5,h6')) {
      const level = Number(h.tagName[1]);
      if (level > last + 1) faults.push(`h${level} after h${last}: ${short(h.textContent)}`);
      if (!h.textContent.trim()) faults.push(`empty h${level}`);
      last = level;
    }
    const titles = all('h1').length;
    return titles === 1 ? faults : [...faults, `${titles} headings of level 1`];
  }

  function ids() {
    const seen = new Set();
    return all('[id]').map(e => e.id).filter(id => seen.has(id) || !seen.add(id));
  }

  function alternatives() {
    const faults = [];
    for (const svg of all('svg')) {
      if (svg.getAttribute('aria-hidden') === 'true') {
        if (svg.querySelector('text')) faults.push('hidden drawing with text');
        continue;
      }
      const named = (svg.getAttribute('aria-labelledby') || '').split(' ')
        .map(id => document.getElementById(id));
      const tags = named.filter(e => e && svg.contains(e) && e.textContent.trim())
        .map(e => e.tagName).join();
      if (svg.getAttribute('role') !== 'img' || tags !== 'title,desc') {
        faults.push(svg.outerHTML.slice(0, 200));
      }
    }
    return [...faults, ...all('img:not([alt])').map(e => e.outerHTML)];
  }

  // What is touched and is lower or narrower than so many pixels; links of the contents need half.
  function targets(least) {
    return all('nav a,summary,input,button,textarea,.bar a,.foot a,.warn a').filter(a => {
      const box = (a.closest('label') || a).getBoundingClientRect();
      const wanted = a.closest('nav') ? Math.min(24, least) : least;
      return a.checkVisibility() && (box.height < wanted || box.width < wanted);
    }).map(a => short(a.textContent || a.getAttribute('aria-label') || a.outerHTML));
  }

  // Running text of the sheets that lies on other text: tags, titles, labels, cells.
  function collisions() {
    const faults = [];
    for (const sheet of all('.sheet')) {
      const found = texts().filter(node => sheet.contains(node) && !node.parentElement.closest('svg,sup'))
        .flatMap(node => {
          const range = document.createRange();
          range.selectNodeContents(node);
          return [...range.getClientRects()].filter(box => box.width > 1)
            .map(box => ({node, box, name: short(node.data)}));
        });
      found.forEach((one, i) => found.slice(i + 1).forEach(other => {
        const wide = Math.min(one.box.right, other.box.right) - Math.max(one.box.left, other.box.left);
        // The line box is higher than the ink.
        const tall = Math.min(one.box.bottom, other.box.bottom) - Math.max(one.box.top, other.box.top);
        if (one.node !== other.node && wide > 1
            && tall > Math.min(one.box.height, other.box.height) * 0.4) {
          faults.push(`"${one.name}" lies on "${other.name}"`);
        }
      }));
    }
    return faults;
  }

  // Letters of drawings that are smaller than so many pixels on the screen.
  function letters(least) {
    return all('svg[role=img] text').filter(t => {
      const m = t.getScreenCTM();
      return t.checkVisibility() && m
        && parseFloat(getComputedStyle(t).fontSize) * Math.hypot(m.a, m.b) < least;
    }).map(t => short(t.textContent));
  }

  // The four corners of a label's ink on the screen; the line height is more than the ink.
  function corners(text) {
    const box = text.getBBox();
    const matrix = text.getScreenCTM();
    const [top, bottom] = [box.y + box.height * 0.25, box.y + box.height * 0.78];
    return [[box.x, top], [box.x + box.width, top], [box.x + box.width, bottom], [box.x, bottom]]
      .map(([x, y]) => new DOMPoint(x, y).matrixTransform(matrix));
  }

  function apart(a, b) {
    return [a, b].some(quad => [0, 1].some(i => {
      const [nx, ny] = [quad[i].y - quad[i + 1].y, quad[i + 1].x - quad[i].x];
      const [p, q] = [a, b].map(points => points.map(c => c.x * nx + c.y * ny));
      return Math.max(...p) <= Math.min(...q) || Math.max(...q) <= Math.min(...p);
    }));
  }

  function labels() {
    const faults = [];
    for (const svg of all('svg[role=img]')) {
      const frame = svg.getBoundingClientRect();
      const found = all('text', svg).filter(t => t.textContent.trim())
        .map(t => ({name: short(t.textContent), quad: corners(t)}));
      const title = short(svg.querySelector('title').textContent);
      for (const {name, quad} of found) {
        if (quad.some(c => c.x < frame.left - 1 || c.x > frame.right + 1
            || c.y < frame.top - 1 || c.y > frame.bottom + 1)) {
          faults.push(`${title}: "${name}" is cut off`);
        }
      }
      found.forEach((one, i) => found.slice(i + 1).forEach(other => {
        if (!apart(one.quad, other.quad)) {
          faults.push(`${title}: "${one.name}" lies on "${other.name}"`);
        }
      }));
    }
    return faults;
  }

  // Hidden text; all of it must show on paper, where nothing can be opened. What leads from place
  // to place, or counts ticks, has no use there.
  function hidden() {
    return texts().filter(node => !node.parentElement.closest('nav,.bar,.count')).filter(node => {
      const range = document.createRange();
      range.selectNodeContents(node);
      const seen = [...range.getClientRects()].some(box => box.width > 0 && box.height > 0);
      const shut = node.parentElement.closest('details:not([open])');
      if (shut && !node.parentElement.closest('summary')
          && getComputedStyle(shut, '::details-content').contentVisibility === 'hidden') {
        return true;
      }
      return !seen || !node.parentElement.checkVisibility({
        visibilityProperty: true, opacityProperty: true, contentVisibilityAuto: false});
    }).map(node => short(node.data));
  }

  // What would be cut over two sheets whose print area is so many pixels high.
  function sheets(height) {
    const faults = [];
    for (const e of all('figure,.card,.caution,tr')) {
      const tall = e.getBoundingClientRect().height;
      const whole = getComputedStyle(e).breakInside === 'avoid';
      if (!whole || tall > height) faults.push(`${Math.round(tall)}: ${short(e.textContent)}`);
    }
    for (const sheet of all('.sheet.half')) {
      if (sheet.getBoundingClientRect().height > height) faults.push('tall: ' + short(sheet.textContent));
    }
    for (const card of all('.card').filter(c => !c.closest('.back'))) {
      const style = getComputedStyle(card);
      if (parseFloat(style.fontSize) < 20 || style.breakBefore !== 'page') {
        faults.push(`card not large or not on its own page: ${short(card.textContent)}`);
      }
    }
    return faults;
  }

  // Letters that are smaller than so many points.
  function small(selector, points) {
    return texts().filter(node => node.parentElement.matches(selector))
      .map(node => [parseFloat(getComputedStyle(node.parentElement).fontSize) * 0.75, node])
      .filter(([size]) => size < points - 0.01)
      .map(([size, node]) => `${size.toFixed(1)} pt: ${short(node.data)}`);
  }

  function errors() {
    return all('math merror').map(e => short(e.textContent));
  }

  return {contrast, collisions, wide, links, outside, headings, ids, alternatives, targets, labels, letters,
    hidden, sheets, small, errors};
})();

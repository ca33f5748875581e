// Finished pages shown in frames: their scripts are taken out and could not run.

/** Spares the console a complaint for every script that the frame would refuse to run. */
const withoutScripts = html => html.replace(/<script\b[^>]*>[\s\S]*?<\/script\s*>/gi, '');

/**
 * Shows a page. The frame has our origin so that we can hear its boxes, and may print; it may not
 * run scripts, go elsewhere, open windows or send forms.
 */
const pageFrame = (html, title, ready) => {
  const frame = make('iframe', {title, sandbox: 'allow-same-origin allow-modals'});
  frame.addEventListener('load', () => {
    const inside = frame.contentDocument;
    if (inside && inside.body) {
      linksStayInside(inside);
      if (ready) {
        ready(inside, frame);
      }
    }
  });
  frame.srcdoc = withoutScripts(html);
  return frame;
};

/** Links inside a page lead within it; what a folded part holds is opened. */
const linksStayInside = inside => inside.addEventListener('click', event => {
  const link = event.target.closest && event.target.closest('a[href]');
  if (!link) {
    return;
  }
  event.preventDefault();
  const goal = link.getAttribute('href');
  const target = goal.startsWith('#') && inside.getElementById(decodeURIComponent(goal.slice(1)));
  if (target) {
    for (let box = target.closest('details'); box; box = box.parentElement.closest('details')) {
      box.open = true;
    }
    target.scrollIntoView();
    target.setAttribute('tabindex', '-1');
    target.focus({preventScroll: true});
  }
});

/** A part of a page as a page of its own. */
const whole = html => (/^\s*<!doctype/i.test(html) ? html : '<!doctype html><meta charset="utf-8">'
  + '<style>body{margin:.6rem;font:1rem/1.5 system-ui,sans-serif;overflow-wrap:anywhere}</style>' + html);

/** A frame as high as what it shows. */
const tallFrame = (html, title) => pageFrame(whole(html), title, (inside, frame) => {
  inside.documentElement.style.fontSize =
    document.documentElement.classList.contains('projector') ? '150%' : '';
  const fitHeight = () => {
    frame.style.height = '0';
    frame.style.height = inside.documentElement.scrollHeight + 4 + 'px';
  };
  fitHeight();
  new ResizeObserver(fitHeight).observe(inside.body);
});

package io.github.seamstead.api.book.front;

/**
 * The script of the front. It only remembers: what is ticked and written stays with the browser,
 * under the job's name and digest. Without it the page is whole and every box can still be ticked.
 */
final class FrontScript {

  static final String TEXT =
      """
      (() => {
        const d = document, name = 'job-' + d.body.dataset.job;
        const all = (s, e = d) => [...e.querySelectorAll(s)];
        let kept = {};
        try { kept = JSON.parse(localStorage.getItem(name)) || {}; } catch (e) { kept = {}; }
        const fields = all('[data-k]'), sheets = all('details.sheet');
        for (const f of fields) {
          const v = kept[f.dataset.k];
          if (v === undefined) continue;
          if (f.type === 'checkbox') f.checked = v; else f.value = v;
        }
        const bar = d.createElement('div');
        bar.className = 'bar';
        const next = d.createElement('a'), copy = d.createElement('button');
        copy.type = 'button';
        copy.textContent = 'Copy out';
        bar.append(next, copy);
        d.body.append(bar);
        const title = sheet => sheet.querySelector('h2').textContent;
        const show = () => {
          for (const sheet of sheets) {
            const boxes = all('input[type=checkbox]', sheet);
            const done = boxes.filter(b => b.checked).length;
            sheet.querySelector('.count').textContent =
              boxes.length ? done + ' of ' + boxes.length : '';
          }
          const open = fields.find(f => f.dataset.step && !f.checked);
          const sheet = open && open.closest('details');
          next.textContent = open
            ? 'Next: ' + title(sheet) + ', step ' + open.dataset.step : 'All steps are ticked';
          next.href = '#' + (sheet || sheets[0]).querySelector('h2').id;
        };
        next.addEventListener('click', e => {
          const open = fields.find(f => f.dataset.step && !f.checked);
          if (!open) return;
          e.preventDefault();
          open.closest('details').open = true;
          open.closest('li').scrollIntoView({block: 'center'});
          open.focus();
        });
        d.addEventListener('change', e => {
          const f = e.target;
          if (!f.dataset || !f.dataset.k) return;
          kept[f.dataset.k] = f.type === 'checkbox' ? f.checked : f.value;
          try { localStorage.setItem(name, JSON.stringify(kept)); } catch (x) { next.title = 'not kept'; }
          show();
        });
        copy.addEventListener('click', () => {
          const lines = [d.title + ' · ' + d.body.dataset.job];
          for (const sheet of sheets) {
            const said = all('[data-k]', sheet)
              .filter(f => f.type === 'checkbox' ? f.checked : f.value)
              .map(f => {
                const label = f.closest('label');
                const text = label ? label.textContent.trim() : f.getAttribute('aria-label');
                return '  ' + text + (f.type === 'checkbox' ? ' [x]' : ' = ' + f.value);
              });
            if (said.length) lines.push(title(sheet), ...said);
          }
          let out = bar.querySelector('textarea');
          if (!out) {
            out = d.createElement('textarea');
            out.readOnly = true;
            out.rows = 6;
            out.setAttribute('aria-label', 'All ticks and readings as text');
            bar.append(out);
          }
          out.value = lines.join('\\n');
          out.focus();
          out.select();
          if (navigator.clipboard) navigator.clipboard.writeText(out.value).catch(() => {});
        });
        const reveal = () => {
          const at = location.hash && d.getElementById(decodeURIComponent(location.hash.slice(1)));
          const box = at && at.closest('details');
          if (box) { box.open = true; at.scrollIntoView(); }
        };
        if (matchMedia('(max-width:40rem)').matches) {
          sheets.slice(1).forEach(s => { s.open = false; });
          d.querySelector('nav').hidden = true;
        }
        addEventListener('hashchange', reveal);
        addEventListener('beforeprint', () => all('details').forEach(e => { e.open = true; }));
        reveal();
        show();
      })();
      """;

  private FrontScript() {}
}

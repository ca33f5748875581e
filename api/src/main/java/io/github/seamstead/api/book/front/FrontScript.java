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
        const next = d.createElement('a');
        const button = text => {
          const b = d.createElement('button');
          b.type = 'button';
          b.textContent = text;
          return b;
        };
        const copy = button('Copy out'), diary = button('Diary');
        bar.append(next, copy, diary);
        d.body.append(bar);
        const today = () => {
          const now = new Date(), two = n => String(n).padStart(2, '0');
          return now.getFullYear() + '-' + two(now.getMonth() + 1) + '-' + two(now.getDate());
        };
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
          if (f.dataset.diary) kept['@' + f.dataset.k] = today();
          try { localStorage.setItem(name, JSON.stringify(kept)); } catch (x) { next.title = 'not kept'; }
          show();
        });
        const give = (text, spoken) => {
          let out = bar.querySelector('textarea');
          if (!out) {
            out = d.createElement('textarea');
            out.readOnly = true;
            out.rows = 6;
            bar.append(out);
          }
          out.setAttribute('aria-label', spoken);
          out.value = text;
          out.focus();
          out.select();
          if (navigator.clipboard) navigator.clipboard.writeText(text).catch(() => {});
        };
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
          give(lines.join('\\n'), 'All ticks and readings as text');
        });
        diary.addEventListener('click', () => {
          const rows = fields.filter(f => f.dataset.diary && f.checked)
            .map(f => ({date: kept['@' + f.dataset.k] || today(), ...JSON.parse(f.dataset.diary)}))
            .sort((a, b) => a.date < b.date ? -1 : a.date > b.date ? 1 : 0);
          const book = {seamstead: 1, job: d.body.dataset.name, diary: rows};
          give(JSON.stringify(book, null, 1).replace(/[\\u2066-\\u2069]/g, ''),
            'What is cut, joined and laid, as a diary');
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

// The page of a file: the report stands in a frame in which no script runs, and is worked from here.
'use strict';
(() => {
  const frame = document.getElementById('report');
  if (!frame) return;
  const viewer = document.getElementById('viewer');
  const large = document.getElementById('large');
  const canvas = document.getElementById('canvas');
  const said = document.getElementById('said');
  const address = document.body.dataset.report || `${desk.base}/files/${document.body.dataset.file}/report`;
  const unmasked = `${address}${address.includes('?') ? '&' : '?'}personal=shown`;
  const MASK_AFTER_MILLIS = 30000;
  const when = (id, act) => button(id) && button(id).addEventListener('click', act);
  const button = id => document.getElementById(id);
  const pressed = id => button(id) !== null && button(id).getAttribute('aria-pressed') === 'true';
  const press = (id, on) => button(id) && button(id).setAttribute('aria-pressed', String(on));

  const prints = [...document.querySelectorAll('.print')];

  // Problems, one after the other.
  let at = -1;
  const problems = () => [...frame.contentDocument.querySelectorAll('.note.blocking, .note.likely, .note.advice')];
  const go = step => {
    const all = problems();
    if (all.length === 0) { said.textContent = desk.say('no-problem'); return; }
    at = at < 0 && step < 0 ? all.length - 1 : (at + step + all.length) % all.length;
    const note = all[at];
    for (let part = note.parentElement; part; part = part.parentElement) if (part.tagName === 'DETAILS') part.open = true;
    note.tabIndex = -1;
    note.focus({preventScroll: true});
    note.scrollIntoView({block: 'center'});
    const place = note.getBoundingClientRect();
    scrollTo({top: scrollY + frame.getBoundingClientRect().top + place.top - innerHeight / 3});
    note.style.outline = '3px solid';
    if (go.last && go.last !== note) go.last.style.outline = '';
    go.last = note;
    said.textContent = desk.say('problem', at + 1, all.length);
  };
  when('next', () => go(1));
  when('previous', () => go(-1));

  // What was seen in the prints, drawn over them.
  const overlay = on => {
    press('overlay', on);
    frame.contentDocument.querySelectorAll('[id^="show-"][type=checkbox]').forEach(box => { box.checked = on; });
  };
  when('overlay', () => overlay(!pressed('overlay')));

  // Biographic values: shown on a press, masked again by another, after half a minute, or when nobody looks.
  let timer = null;
  const personal = on => {
    clearTimeout(timer);
    if (on === pressed('personal')) return;
    press('personal', on);
    const top = scrollY;
    frame.addEventListener('load', () => scrollTo({top}), {once: true});
    frame.contentWindow.location.replace(on ? unmasked : address);
    said.textContent = desk.say(on ? 'personal-shown' : 'personal-masked');
    if (on) timer = setTimeout(() => personal(false), MASK_AFTER_MILLIS);
  };
  when('personal', () => personal(!pressed('personal')));
  document.addEventListener('visibilitychange', () => document.hidden && personal(false));
  addEventListener('pagehide', () => { frame.src = 'about:blank'; });

  const fit = () => {
    const page = frame.contentDocument && frame.contentDocument.documentElement;
    if (page) frame.style.height = `${Math.max(400, page.scrollHeight)}px`;
  };
  const prepare = () => {
    const inner = frame.contentDocument;
    if (!inner || !inner.body || inner.URL === 'about:blank') return;
    at = -1;
    go.last = null;
    overlay(pressed('overlay'));
    inner.addEventListener('keydown', keys);
    new ResizeObserver(fit).observe(inner.body);
    fit();
    if (said.textContent === desk.say('comparing')) said.textContent = '';
    inner.querySelectorAll('.picture').forEach(figure => {
      const record = /\d+/.exec(figure.querySelector('a[href^="#r"]')?.hash || '');
      const index = prints.findIndex(one => record && one.dataset.image.endsWith(`/images/${record[0]}`));
      const drawing = figure.querySelector('svg');
      if (index < 0 || !drawing) return;
      drawing.style.cursor = 'zoom-in';
      drawing.addEventListener('click', () => { delete large.dataset.fitted; show(index); });
    });
  };
  frame.addEventListener('load', prepare);

  // Prints, large.
  let print = 0;
  let zoom = 1;
  const scale = factor => {
    zoom = Math.min(8, Math.max(0.25, factor));
    if (large.naturalWidth) large.width = Math.round(large.naturalWidth * zoom);
  };
  const picture = () => {
    const source = prints[print].dataset.image;
    large.src = pressed('viewer-overlay') ? `${source}?overlay=yes` : source;
    large.alt = prints[print].dataset.name;
    document.getElementById('viewer-title').textContent = prints[print].dataset.name;
  };
  const show = index => {
    print = (index + prints.length) % prints.length;
    picture();
    if (!viewer.open) viewer.showModal();
    canvas.focus();
  };
  if (viewer) {
    large.addEventListener('load', () => {
      if (!large.dataset.fitted) {
        large.dataset.fitted = 'yes';
        zoom = Math.min(1, canvas.clientWidth / large.naturalWidth, canvas.clientHeight / large.naturalHeight) || 1;
      }
      scale(zoom);
    });
    prints.forEach((one, index) => one.addEventListener('click', () => { delete large.dataset.fitted; show(index); }));
    viewer.addEventListener('close', () => { large.removeAttribute('src'); if (prints[print]) prints[print].focus(); });
    when('zoom-in', () => scale(zoom * 1.5));
    when('zoom-out', () => scale(zoom / 1.5));
    when('viewer-next', () => show(print + 1));
    when('viewer-overlay', () => { press('viewer-overlay', !pressed('viewer-overlay')); picture(); });
  }

  // Keys, which a person can turn off.
  const keys = event => {
    if (event.ctrlKey || event.altKey || event.metaKey || !document.getElementById('keys').checked) return;
    if (event.target.matches && event.target.matches('textarea, select, input:not([type=checkbox])')) return;
    const act = viewer && viewer.open
      ? {'+': 'zoom-in', '=': 'zoom-in', '-': 'zoom-out', 'o': 'viewer-overlay', 'n': 'viewer-next'}[event.key]
      : {'n': 'next', 'p': 'previous', 'o': 'overlay', 'b': 'personal'}[event.key];
    if (act && button(act)) { event.preventDefault(); button(act).click(); }
    else if (viewer && viewer.open && event.target !== canvas && event.key === 'ArrowRight') show(print + 1);
    else if (viewer && viewer.open && zoom * large.naturalWidth <= canvas.clientWidth && event.key === 'ArrowRight') show(print + 1);
    else if (viewer && viewer.open && zoom * large.naturalWidth <= canvas.clientWidth && event.key === 'ArrowLeft') show(print - 1);
  };
  document.addEventListener('keydown', keys);
  if (frame.contentDocument && frame.contentDocument.readyState === 'complete') prepare();
})();

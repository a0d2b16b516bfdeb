// The list: rows as they change, files as they are dropped.
'use strict';
(() => {
  const rows = document.getElementById('rows');
  if (!rows) return;
  const MOST_AT_ONCE = 3;
  const REDRAW_MILLIS = 60;

  // Rows.
  let since = document.body.dataset.since;
  let stream = null;
  const incoming = new Map();
  let drawing = null;

  const draw = () => {
    drawing = null;
    let verdicts = false;
    incoming.forEach((markup, id) => {
      const old = document.getElementById(`row-${id}`);
      if (markup === null) {
        moveFocusFrom(old);
        if (old) old.remove();
        verdicts = true;
        return;
      }
      const holder = document.createElement('template');
      holder.innerHTML = markup;
      const row = holder.content.firstElementChild;
      const picked = old && old.querySelector('.pick:checked');
      const focused = old && old.contains(document.activeElement) ? document.activeElement.className : null;
      if (old) old.replaceWith(row); else rows.prepend(row);
      if (picked && row.querySelector('.pick')) row.querySelector('.pick').checked = true;
      if (focused !== null) (row.querySelector(`[class="${focused}"]`) || row.querySelector('a, button')).focus();
      desk.clock(row);
      htmx.process(row);
      verdicts = verdicts || row.dataset.state === 'examined';
    });
    incoming.clear();
    summarize();
    if (verdicts) htmx.trigger(document.body, 'examined');
  };

  const moveFocusFrom = row => {
    if (!row || !row.contains(document.activeElement)) return;
    const near = row.nextElementSibling || row.previousElementSibling;
    (near ? near.querySelector('a, button') : document.getElementById('main')).focus();
  };

  const take = (id, markup) => {
    incoming.set(id, markup);
    drawing = drawing || setTimeout(draw, REDRAW_MILLIS);
  };

  const summarize = () => {
    const all = [...rows.children];
    const counts = ['READY', 'REVIEW', 'HOLD', 'UNREADABLE']
      .map(verdict => [verdict, all.filter(row => row.dataset.verdict === verdict).length])
      .filter(count => count[1] > 0).map(count => `${count[1]} ${count[0]}`);
    const open = all.filter(row => ['arriving', 'waiting', 'examining', 'unsent'].includes(row.dataset.state)).length;
    if (open > 0) counts.push(desk.say('open', open));
    const summary = document.getElementById('summary');
    const text = all.length === 0 ? '' : counts.join(' · ');
    if (summary.textContent !== text) summary.textContent = text;
    document.getElementById('none').hidden = all.length > 0;
    choose();
  };

  const listen = () => {
    stream = new EventSource(`${desk.base}/events?since=${since}`);
    const remember = event => { since = event.lastEventId || since; };
    stream.addEventListener('open', () => desk.stopped(null));
    stream.addEventListener('row', event => {
      remember(event);
      const id = /id="row-([0-9a-f]{16})"/.exec(event.data);
      if (id) take(id[1], event.data);
    });
    stream.addEventListener('gone', event => { remember(event); take(event.data, null); });
    stream.addEventListener('closed', () => { stream.close(); stream = null; desk.stopped('closed'); });
    stream.addEventListener('error', () => {
      // The browser comes back by itself unless it was refused; either way the person is told.
      setTimeout(() => stream && stream.readyState !== EventSource.OPEN && desk.ask(), 500);
      if (stream && stream.readyState === EventSource.CLOSED) setTimeout(again, 3000);
    });
  };
  const again = () => { if (stream && stream.readyState === EventSource.CLOSED) listen(); };
  document.addEventListener('visibilitychange', () => {
    if (document.hidden && stream) { stream.close(); stream = null; }
    else if (!document.hidden && !stream) listen();
  });
  addEventListener('pagehide', () => stream && stream.close());

  // Choosing two rows to compare.
  const choose = () => {
    const picked = [...rows.querySelectorAll('.pick:checked')];
    document.getElementById('chosen').hidden = picked.length !== 2;
    if (picked.length === 2) {
      // The earlier one is the first.
      document.getElementById('compare').href =
        `${desk.base}/compare?first=${picked[1].value}&second=${picked[0].value}`;
    }
    rows.querySelectorAll('.pick:not(:checked)').forEach(box => { box.disabled = picked.length >= 2; });
  };
  rows.addEventListener('change', choose);

  // Sending files.
  const waiting = [];
  const most = Number(document.body.dataset.most);
  let sending = 0;

  const newId = () => [...crypto.getRandomValues(new Uint8Array(8))]
    .map(byte => byte.toString(16).padStart(2, '0')).join('');

  const placeholder = (id, file) => {
    const row = document.createElement('li');
    row.id = `row-${id}`;
    row.className = 'row unsent';
    row.dataset.state = 'unsent';
    row.dataset.verdict = '';
    const outcome = document.createElement('p');
    outcome.className = 'outcome';
    const progress = document.createElement('progress');
    progress.setAttribute('aria-label', desk.say('sending'));
    outcome.append(progress);
    const about = document.createElement('div');
    about.className = 'about';
    const name = document.createElement('p');
    name.className = 'name v';
    name.textContent = file.name;
    const step = document.createElement('p');
    step.className = 'step';
    step.textContent = desk.say('unsent');
    about.append(name, step);
    row.append(outcome, about);
    rows.prepend(row);
  };

  const refuse = (id, text) => {
    const row = document.getElementById(`row-${id}`);
    // The desk may have a row of its own by now, which says why.
    if (!row || row.dataset.state !== 'unsent') return;
    row.dataset.state = 'refused';
    row.className = 'row failed';
    row.querySelector('.step').textContent = text;
    row.querySelector('progress').remove();
    const remove = document.createElement('button');
    remove.type = 'button';
    remove.textContent = desk.say('remove');
    remove.addEventListener('click', () => { moveFocusFrom(row); row.remove(); summarize(); });
    const acts = document.createElement('div');
    acts.className = 'acts';
    acts.append(remove);
    row.append(acts);
  };

  const send = async ([id, file]) => {
    try {
      const answer = await fetch(`${desk.base}/files`, {
        method: 'POST',
        headers: {
          'Content-Type': 'application/octet-stream',
          'X-File-Id': id,
          'X-File-Name': encodeURIComponent(file.name.slice(-200).toWellFormed()),
        },
        body: file,
      });
      if (answer.status === 503) { waiting.push([id, file]); await new Promise(done => setTimeout(done, 1000)); }
      else if (!answer.ok) refuse(id, desk.say(answer.status === 413 ? 'too-large' : answer.status === 403 ? 'restarted' : answer.status === 429 ? 'list-full' : 'failed'));
    } catch (failure) {
      // A folder cannot be read as a file; a desk that is gone is told by the banner.
      refuse(id, desk.say('failed'));
      desk.ask();
    }
  };

  const next = () => {
    while (sending < MOST_AT_ONCE && waiting.length > 0) {
      sending++;
      send(waiting.shift()).finally(() => { sending--; next(); });
    }
    document.getElementById('sending').textContent =
      waiting.length + sending > 0 ? desk.say('to-send', waiting.length + sending) : '';
  };

  const add = files => {
    [...files].forEach(file => {
      const id = newId();
      placeholder(id, file);
      if (file.size > most) refuse(id, desk.say('too-large'));
      else waiting.push([id, file]);
    });
    summarize();
    next();
  };

  const filesOf = async entry => {
    if (entry.isFile) return [await new Promise((done, fail) => entry.file(done, fail))];
    const reader = entry.createReader();
    const found = [];
    for (let some = [null]; some.length > 0;) {
      some = await new Promise((done, fail) => reader.readEntries(done, fail));
      for (const inner of some) found.push(...await filesOf(inner));
    }
    return found;
  };

  ['choose-files', 'choose-folder'].forEach(id => {
    const input = document.getElementById(id);
    input.addEventListener('change', () => { add(input.files); input.value = ''; });
  });

  const zone = document.getElementById('drop');
  ['dragenter', 'dragover'].forEach(kind => addEventListener(kind, event => {
    event.preventDefault();
    zone.classList.add('over');
  }));
  addEventListener('dragleave', event => { if (!event.relatedTarget) zone.classList.remove('over'); });
  addEventListener('drop', async event => {
    event.preventDefault();
    zone.classList.remove('over');
    const entries = [...event.dataTransfer.items].map(item => item.webkitGetAsEntry && item.webkitGetAsEntry())
      .filter(entry => entry);
    if (entries.length === 0) { add(event.dataTransfer.files); return; }
    for (const entry of entries) add(await filesOf(entry));
  });

  // Up and down go from row to row.
  rows.addEventListener('keydown', event => {
    const step = {ArrowDown: 'nextElementSibling', ArrowUp: 'previousElementSibling'}[event.key];
    const row = event.target.closest('.row');
    if (!step || !row || event.target.matches('input[type=text], select, textarea')) return;
    for (let other = row[step]; other; other = other[step]) {
      const target = other.querySelector('a.open, button');
      if (target) { event.preventDefault(); target.focus(); return; }
    }
  });

  document.getElementById('forget').addEventListener('htmx:afterRequest', () => {
    rows.querySelectorAll('[data-state=refused]').forEach(row => row.remove());
    summarize();
  });

  summarize();
  listen();
})();

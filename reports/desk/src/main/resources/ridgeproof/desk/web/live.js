// What every page does: tell the time by the clock of this machine, and say when the desk is gone.
'use strict';
const desk = (() => {
  const body = document.body;
  const base = body.dataset.base;
  const texts = {};
  document.querySelectorAll('#texts [data-text]').forEach(text => {
    texts[text.dataset.text] = text.textContent;
  });

  const say = (key, ...values) =>
    values.reduce((text, value, i) => text.replace(`{${i}}`, () => value), texts[key] || key);

  const clock = within => within.querySelectorAll('time[datetime]').forEach(time => {
    const date = new Date(time.dateTime);
    time.textContent = date.toLocaleTimeString([], {hour: '2-digit', minute: '2-digit', second: '2-digit'});
    time.title = date.toLocaleString();
  });

  let gone = false;
  let closed = false;
  const stopped = key => {
    // A desk that said good-bye does not come back; what fails from now on fails for that reason.
    if (closed) return;
    closed = key === 'closed';
    const banner = document.getElementById('stopped');
    banner.hidden = key === null;
    banner.textContent = key === null ? '' : say(key);
    gone = key !== null;
    body.classList.toggle('gone', gone);
  };

  // A page without rows asks now and then; a stream of its own would take one of the browser's few connections.
  const ask = () => fetch(`${base}/alive`, {cache: 'no-store'})
    .then(answer => stopped(answer.ok ? null : 'restarted'), () => stopped('stopped'));
  if (!document.getElementById('rows')) {
    setInterval(() => document.hidden || ask(), 5000);
  }
  clock(document);
  return {base, say, clock, stopped, ask, isGone: () => gone};
})();

document.body.addEventListener('htmx:responseError', event => {
  if (event.detail.xhr.status === 403) desk.stopped('restarted');
});
document.body.addEventListener('htmx:sendError', () => desk.stopped('stopped'));
document.body.addEventListener('htmx:afterSwap', event => desk.clock(event.detail.target));

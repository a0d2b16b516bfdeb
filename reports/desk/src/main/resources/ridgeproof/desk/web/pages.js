// The pages beside the list: a ticket to copy, curves to draw, a gate to keep up to date.
'use strict';
(() => {
  const copy = document.getElementById('copy-text');
  if (copy) {
    copy.addEventListener('click', async () => {
      const text = document.getElementById('ticket-text').textContent;
      let done = true;
      try {
        await navigator.clipboard.writeText(text);
      } catch (refused) {
        // A browser that keeps the clipboard to itself gets the text selected instead.
        getSelection().selectAllChildren(document.getElementById('ticket-text'));
        done = document.execCommand('copy');
      }
      document.getElementById('copied').textContent = desk.say(done ? 'copied' : 'not-copied');
    });
  }

  const color = name => getComputedStyle(document.documentElement).getPropertyValue(name).trim();
  document.querySelectorAll('.plot').forEach(place => {
    const values = JSON.parse(place.dataset.values);
    const axis = {stroke: color('--soft'), grid: {stroke: color('--rule'), width: 0.5}, ticks: {stroke: color('--rule')}};
    const change = Number(place.dataset.change || 0);
    const line = plot => {
      if (!change) return;
      const at = plot.valToPos(change + 0.5, 'x', true);
      plot.ctx.strokeStyle = color('--red');
      plot.ctx.lineWidth = 2;
      plot.ctx.beginPath();
      plot.ctx.moveTo(at, plot.bbox.top);
      plot.ctx.lineTo(at, plot.bbox.top + plot.bbox.height);
      plot.ctx.stroke();
    };
    new uPlot({
      hooks: {draw: [line]},
      width: Math.min(420, place.clientWidth || 420),
      height: 170,
      legend: {show: false},
      cursor: {show: false},
      scales: {x: {time: false}},
      axes: [{...axis, label: desk.say(change ? 'person-number' : 'file-number'), incrs: [1, 2, 5, 10, 20, 50, 100, 200]}, axis],
      series: [{}, change
        ? {stroke: color('--link'), width: 0, paths: () => null, points: {show: true, size: 4}}
        : {stroke: color('--link'), width: 2, points: {show: true}}],
    }, [values.map((value, i) => i + 1), values], place);
  });

  const gate = document.getElementById('gate');
  if (gate) {
    setInterval(() => {
      // Whoever is filling in a form is not interrupted.
      if (!document.hidden && !gate.querySelector('details[open]')) htmx.trigger(document.body, 'refresh');
    }, 3000);
  }
})();

// A shared plan: what the page shows of it, without the server, and nothing to change.

import { h, svgOf, the } from './dom.js';
import { Moment } from './moment.js';
import * as results from './results.js';
import { schemes } from './scheme.js';
import { data } from './shared_api.js';
import { sayAll } from './spoken.js';
import { say } from './words.js';

const { answer, states } = data;
const { plan } = answer;

sayAll();
schemes();
const facts = [plan.drawing && say('page-shared-drawing', { drawing: plan.drawing }), plan.revision && say('page-shared-revision', { revision: plan.revision }),
  plan.date, plan.machine].filter(Boolean);
the('title').append(plan.job, h('small', {}, ` ${facts.join(' · ')}`));
results.verdict(answer, false, () => {});
const { width, height, svg } = answer.drawing;
const picture = svgOf(svg);
picture.setAttribute('viewBox', `0 0 ${width} ${height}`);
the('drawing-view').append(picture);
results.first(answer);
// No server searches here for changes that would help.
the('changes')?.remove();
results.rest(plan, answer.strip);
// The pictures were laid out for one width. On a narrower screen they are moved sideways, so that their text stays as large.
for (const element of document.querySelectorAll('#drawing-view, #strip > svg, #sure figure > svg')) {
  const box = /** @type {any} */ (element.matches('svg') ? element : element.querySelector('svg')).viewBox.baseVal;
  /** @type {any} */ (element).style.minWidth = `${1.1 * box.width}px`;
}
const moment = new Moment(states.map((s) => s.at));
moment.show({}, plan);
the('print').addEventListener('click', () => window.print());
document.addEventListener('keydown', (event) => {
  if (event.key !== ' ' || !event.target.matches('body, #moment')) return;
  moment.play();
  event.preventDefault();
});

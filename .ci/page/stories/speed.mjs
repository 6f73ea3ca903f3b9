// How soon an edit is answered, from the key to the picture, as a ratio to the plan alone: the same question asked without a page.
import assert from 'node:assert/strict';
import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { demo, folder, serve, story } from '../harness.mjs';

/** How often each is measured. */
const TIMES = 5;
const median = (list) => [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)];

/** Time of a plan without its sampled parts and without the page, ms. @param {string} address @param {(n: number) => any} texts new at each call */
async function alone(address, texts) {
  const times = [];
  for (let n = 0; n < TIMES; n += 1) {
    const body = JSON.stringify(texts(n));
    const began = performance.now();
    const answer = await fetch(new URL('/first', address), { method: 'POST', headers: { 'content-type': 'application/json' }, body });
    const { plan } = await answer.json();
    times.push(performance.now() - began);
    assert.equal(plan.verdict, 'feasible');
  }
  return median(times);
}

/** Times each key until the frame in which the next picture is shown. */
const watched = () => {
  let key = 0;
  document.addEventListener('keydown', (event) => { key = event.timeStamp; }, true);
  document.addEventListener('click', (event) => { key = event.timeStamp; }, true);
  window.pictured = [];
  new MutationObserver(() => {
    const of = key;
    key = 0;
    if (of) requestAnimationFrame(() => window.pictured.push(performance.now() - of));
  }).observe(document.querySelector('#drawing-view'), { childList: true });
};

/** What it takes from a key to the picture, ms: an edit at once, one typed by hand, one whose plan is known. */
async function measured({ page, planned, field }, label, values) {
  // A browser that has just begun has other work.
  await page.waitForTimeout(2000);
  await page.evaluate(watched);
  const took = async (work) => {
    const before = await page.evaluate(() => window.pictured.length);
    await planned(work);
    return page.evaluate((n) => window.pictured[n], before);
  };
  const [edits, typed, known] = [[], [], []];
  for (const value of values) {
    edits.push(await took(async () => { await field(label).fill(value); await page.keyboard.press('Enter'); }));
  }
  for (const value of values) {
    await field(label).click({ clickCount: 3 });
    const asked = page.waitForResponse(/\/first$/);
    await page.keyboard.type(`${value}.5`, { delay: 120 });
    await asked;
    // A hand takes a while from the last figure to the key that ends the field.
    await page.waitForTimeout(200);
    let late = 0;
    const count = (request) => { late += /\/first$/.test(request.url()); };
    page.on('request', count);
    typed.push(await took(() => page.keyboard.press('Enter')));
    page.off('request', count);
    assert.equal(late, 0, 'what was typed is planned before it is meant');
    known.push(await took(() => page.locator('#undo').click()));
  }
  return [edits, typed, known].map(median);
}

function told(what, plan, [edit, typed, known]) {
  const share = (ms) => `${(ms / plan).toFixed(2)} (${Math.round(ms)} ms)`;
  console.log(`        ${what}: the plan alone is 1 (${Math.round(plan)} ms); from the key to the picture: an edit ${share(edit)}, one typed by hand ${share(typed)}, one whose plan is known ${share(known)}`);
}

const machine = { name: 'long-bed-32.yaml', text: readFileSync('demo/machines/long-bed-32.yaml', 'utf8') };

await story('speed', demo, async (act) => {
  const text = readFileSync('demo/feed-roller-shaft.yaml', 'utf8');
  const plan = await alone(demo, (n) => ({ job: { name: 'feed-roller-shaft.yaml', text: text.replace('length: 330', `length: ${310 + n}`) }, machine }));
  told('a metre', plan, await measured(act, 'Length, section 4', ['329', '328', '327', '326', '325']));
});

/** A shaft of a metre with sixty sections: five seats for the collet, and steps between them. @param {number} length of the second section */
const steps = (length) => `shaft:
  name: spindle of sixty sections
  material: C45
  sections:
${Array.from({ length: 60 }, (_, i) => (i % 12 ? `    - {length: ${i === 1 ? length : 12}, diameter: ${i % 2 ? 17.5 : 17}}` : '    - {length: 60, diameter: 18, tolerance: h11}')).join('\n')}
  straightness: 0.3
stock: {diameter: 25, tolerance: h8, bar_length: 3000}
machine: ${machine.name}
cutting: {tools: single, vc: 140, feed: 0.12, ap_max: 7, ap_finish: 0.25, speed_floor: 0.6}
`;
for (const [name, content] of [['sixty.yaml', steps(12)], [machine.name, machine.text]]) writeFileSync(path.join(folder, name), content);
const sixty = await serve(path.join(folder, 'sixty.yaml'));

await story('speed-sixty', sixty, async (act) => {
  const plan = await alone(sixty, (n) => ({ job: { name: 'sixty.yaml', text: steps(13 + n) }, machine }));
  told('sixty sections', plan, await measured(act, 'Length, section 2', ['11', '10', '9', '8', '7']));
});

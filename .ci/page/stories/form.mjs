// The whole form, by hand and by keyboard.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { demo, named, story, verdict } from '../harness.mjs';

await story('by keyboard alone', demo, async ({ page, planned }) => {
  // From the top to the first field of the shaft, no pointer.
  for (let i = 0; i < 30; i += 1) {
    await page.keyboard.press('Tab');
    if (await page.evaluate(() => document.activeElement?.id === 'job:shaft.name')) break;
  }
  assert.equal(await page.evaluate(() => document.activeElement?.id), 'job:shaft.name');
  await page.keyboard.press('Control+a');
  await page.keyboard.type('roller');
  await planned(() => page.keyboard.press('Enter'));
  assert.match(await page.locator('#title').innerText(), /^roller/);
  const unnamed = await page.evaluate(() => [...document.querySelectorAll('input:not([hidden]), select, button, textarea')]
    .filter((e) => !e.labels?.length && !e.getAttribute('aria-label') && !e.textContent.trim()).map((e) => e.outerHTML.slice(0, 80)));
  assert.deepEqual(unnamed, [], 'controls without a name');
});

await story('whole form', demo, async ({ page, shot, planned, field }) => {
  const machine = readFileSync('demo/machines/long-bed-32.yaml', 'utf8');
  // Every number of the input has its field, given or not; but what no plan of the page asks for, tools of a list, which are written in the
  // text, and the two ends of a chamfer or radius, which share a field.
  const job = readFileSync('demo/feed-roller-shaft.yaml', 'utf8').replace('material: C45', 'material: {name: steel, e_gpa: 210, density: 7850, kc11: 2000, mc: 0.25, vc: [80, 200]}')
    .replace(/  features:\n/, `  back_work: [{name: deburr, time_s: 5}]
  features:
    - {facing: 0.5, end: front}
    - {axial_hole: 4, depth: 10, end: back}
    - {tapped_hole: M5, depth: 8, drill_depth: 14, end: front}
    - {hex_socket: 4, depth: 5, end: back}
    - {keyway: [2, 1], length: 5, end: back}
    - {engrave: A1, height: 2, depth: 0.1, at: 200}
`);
  const vary = 'vary: {length: {section: 4, from: 300, to: 360, step: 30}, diameter: {section: 4, from: 16, to: 18, step: 1}}\n';
  await planned(() => page.locator('#files').setInputFiles([named('whole.yaml', `${job}\n${vary}`), named('long-bed-32.yaml', machine)]));
  const there = new Set();
  for (const tab of ['Shaft', 'Cutting & limits', 'Machine']) {
    await page.getByRole('tab', { name: tab }).click();
    const ways = await page.evaluate(() => [...document.querySelectorAll('#form [data-way]')]
      .map((e) => [...(e.dataset.file === 'machine' ? ['machine'] : []), ...JSON.parse(e.dataset.way).filter((s) => typeof s === 'string')].join('.')));
    for (const way of ways) there.add(way);
  }
  there.add('wishes.hand_over_at.at').add('wishes.hand_over_at.nose').add('wishes.never_grip').add('wishes.hand_over_at');
  const fields = (await page.evaluate(() => fetch('/fields').then((r) => r.json()))).map((f) => f.path);
  assert.deepEqual(fields.filter((path) => !there.has(path) && !/^(change_prices|readings|scatter|shop|tool_list)\.|\.scatter\.|^cutting\.lag$|^shaft\.sections\.(chamfer|radius)\./.test(path)), [], 'numbers without a field');
  // The order: added, quoted, taken out.
  await planned(() => page.locator('#files').setInputFiles([named('feed.yaml', readFileSync('demo/feed-roller-shaft.yaml', 'utf8')), named('long-bed-32.yaml', machine)]));
  await page.getByRole('tab', { name: 'Cutting & limits' }).click();
  await planned(async () => { await field('pieces').fill('200'); await page.keyboard.press('Enter'); });
  assert.match(await page.locator('#order').innerText(), /200/);
  await planned(async () => { await field('set up').fill('a day'); await page.keyboard.press('Enter'); });
  assert.equal(await field('set up').getAttribute('aria-invalid'), 'true');
  await planned(async () => { await field('set up').fill('2'); await page.keyboard.press('Enter'); });
  await field('pieces').scrollIntoViewIfNeeded();
  await shot('order');
  await planned(() => page.getByRole('button', { name: 'Remove: Order' }).click());
  assert.equal(await page.locator('#order').count(), 0);
  // A family: a range is proposed that can be read as it stands.
  await planned(() => page.getByRole('button', { name: '+ vary a length' }).click());
  assert.match(await page.locator('#tables').innerText(), /The job varies/);
  await planned(() => page.getByRole('button', { name: '+ vary a diameter' }).click());
  assert.equal(await page.locator('[aria-invalid="true"]').count(), 0);
  await planned(async () => { await field('length: to').fill('1'); await page.keyboard.press('Enter'); });
  assert.equal(await page.locator('[aria-invalid="true"]').count(), 1);
  await page.getByRole('button', { name: '+ vary' }).first().waitFor({ state: 'detached' });
  await field('length: to').scrollIntoViewIfNeeded();
  await shot('family');
  await planned(() => page.getByRole('button', { name: 'Remove: varied length' }).click());
  await planned(() => page.getByRole('button', { name: 'Remove: varied diameter' }).click());
  // The machine's places for tools.
  await page.getByRole('tab', { name: 'Machine' }).click();
  await planned(async () => { await field('turning').fill('6'); await page.keyboard.press('Enter'); });
  assert.match(await verdict(page), /^NOT FEASIBLE/, 'a machine that lists turning places alone has none for the rest');
  assert.match(await page.locator('.shortfall').innerText(), /The machine has no place for every tool/);
  await planned(async () => { await field('stations').fill('12'); await page.keyboard.press('Enter'); });
  await field('turning').scrollIntoViewIfNeeded();
  await shot('tools');
  assert.match(await page.locator('#tooling').textContent(), /turret/);
  await planned(() => page.getByRole('button', { name: 'Remove: Tool places' }).click());
  assert.match(await verdict(page), /^FEASIBLE/);
  await page.getByRole('tab', { name: 'Text' }).click();
  assert.equal((await page.locator('#text-machine').inputValue()).trim(), machine.trim(), 'and the machine is as it was');
});

await story('ahead', demo, async ({ page, planned, field }) => {
  const asked = [];
  page.on('request', (r) => { if (new URL(r.url()).pathname === '/plan') asked.push(r); });
  const length = field('Length, section 4');
  const before = await verdict(page);
  await length.click({ clickCount: 3 });
  await page.keyboard.type('321', { delay: 120 });
  await page.waitForResponse((r) => new URL(r.url()).pathname === '/plan' && r.request().postData().includes('321'));
  assert.equal(await verdict(page), before, 'what is typed is no edit yet');
  assert.equal(await length.inputValue(), '321');
  const foreseen = asked.length;
  await planned(() => page.keyboard.press('Enter'));
  assert.equal(asked.length, foreseen, 'and once it is one, it is planned already');
  assert.notEqual(await verdict(page), before);
  const typed = await verdict(page);
  await planned(() => page.locator('#undo').click());
  assert.equal(await verdict(page), before);
  // Planned anew, it is the same.
  await planned(async () => { await length.fill('321'); await page.keyboard.press('Enter'); });
  assert.equal(await verdict(page), typed);
  // What was typed and given up leaves nothing.
  await length.click({ clickCount: 3 });
  await page.keyboard.type('40', { delay: 80 });
  await page.keyboard.press('Escape');
  assert.equal(await length.inputValue(), '321');
  await planned(async () => { await field('Length, section 3').fill('61'); await page.keyboard.press('Enter'); });
  assert.equal(await length.inputValue(), '321');
});

// Two plans compared: before and after a change, with and without the bush, pinned, on another machine.
import assert from 'node:assert/strict';
import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { blocked, cutOff, demo, folder, named, story, verdict } from '../harness.mjs';

/** Does something and waits for the comparison that it leads to. */
async function compared(page, work) {
  const before = await page.evaluate(() => Number(document.body.dataset.compared ?? 0));
  await work();
  await page.waitForFunction((n) => Number(document.body.dataset.compared ?? 0) > n, before);
}

const choose = (page, side, label) => compared(page, () => page.locator(`#compare-${side}`).selectOption({ label }));

await story('compares', demo, async ({ page, shot, planned, field }) => {
  // A wish moves the first hand-over.
  const hand = page.locator('#hand-hand_over-2');
  await hand.focus();
  for (let i = 0; i < 5; i += 1) await page.keyboard.press('ArrowRight');
  await page.waitForFunction(() => /passes the proof/.test(document.querySelector('#drag-bar')?.innerText ?? ''));
  const is = Number(await hand.getAttribute('aria-valuenow'));
  await planned(() => page.keyboard.press('Enter'));
  await compared(page, () => page.locator('#compare-open').click());
  assert.equal(await page.locator('#compare-A option:checked').innerText(), 'before the last change');
  assert.equal(await page.locator('#compare-B option:checked').innerText(), 'current plan');
  assert.match(await page.locator('#compare-moved').innerText(), new RegExp(`Hand-over to stage 2: 298\\.6 → ${is} mm \\(\\+5\\.0 mm\\)`));
  assert.match(await page.locator('#compare-input').innerText(), /wishes: new: .*hand_over_at/);
  assert.equal(await page.locator('#compare figure.compared').count(), 2);
  assert.match(await page.locator('#compare figure.compared').nth(1).innerHTML(), /stage 2 \+5\.0 mm/);
  assert.match(await page.locator('#compare-figures').innerText(), /cycle time\s+395\.8 s\s+\S+ s\s+[+−]?\S+ s\s+(better|worse|same)/);
  assert.ok(await page.locator('#compare-stages td.changed').count() > 1);
  assert.equal(await page.locator('#verdict').isVisible(), false, 'one plan is not shown under two');
  await shot('moved');
  await page.locator('#results').evaluate((e) => { e.scrollTop = 700; });
  await shot('moved below');
  await page.locator('#results').evaluate((e) => { e.scrollTop = e.scrollHeight; });
  await shot('moved end');
  // What is typed is compared at once. A section put in does not change those behind it.
  await compared(page, async () => { await field('Length, section 4').fill('335'); await page.keyboard.press('Enter'); });
  assert.match(await page.locator('#compare-input').innerText(), /shaft\.sections\[4\]\.length: 330 → 335/);
  await page.locator('#compare-A').selectOption({ label: 'as opened' });
  await page.waitForFunction(() => /wishes/.test(document.querySelector('#compare-input').innerText));
  await compared(page, () => page.locator('#compare-swap').click());
  assert.match(await page.locator('#compare-input').innerText(), /335 → 330/);
  await compared(page, () => page.locator('#compare-swap').click());
  // A is taken, and given back.
  await planned(() => page.getByRole('button', { name: 'Take A' }).click());
  assert.equal(await field('Length, section 4').inputValue(), '330');
  assert.equal(await page.locator('#compare-take').isDisabled(), false);
  await planned(() => page.locator('#undo').click());
  assert.equal(await field('Length, section 4').inputValue(), '335');
  await page.emulateMedia({ media: 'print' });
  writeFileSync(path.join(folder, 'compare.pdf'), await page.pdf({ preferCSSPageSize: true }));
  await page.emulateMedia({ media: 'screen' });
  await page.locator('#compare-A').focus();
  await page.locator('#compare-close').focus();
  await page.keyboard.press('Escape');
  assert.equal(await page.locator('#compare').isHidden(), true);
  assert.equal(await page.evaluate(() => document.activeElement?.id), 'compare-open');
  assert.match(await verdict(page), /^FEASIBLE/);
});

await story('compares variants', demo, async ({ page, shot }) => {
  await compared(page, () => page.locator('#compare-open').click());
  assert.equal(await page.locator('#compare-A option:checked').innerText(), 'this job without the guide bush');
  assert.match(await page.locator('#compare .card').first().innerText(), /(FEASIBLE|AT RISK|INPUT ERROR)/);
  assert.match(await page.locator('#compare-moved').innerText(), /cannot be made/);
  assert.match(await page.locator('#compare-figures').innerText(), /can be turned to\s+0\.0 mm\s+960\.0 mm\s+\+960\.0 mm\s+better/);
  await shot('without bush', true);
  await choose(page, 'A', 'this job with an opposed pair');
  assert.match(await page.locator('#compare .card').first().innerText(), /FEASIBLE|AT RISK/);
  assert.match(await page.locator('#compare-input').innerText(), /cutting\.tools: opposed → single/);
  await shot('pair');
  await compared(page, () => page.locator('#compare-file').setInputFiles(named('turret-32.yaml', readFileSync('demo/machines/turret-32.yaml', 'utf8'))));
  assert.equal(await page.locator('#compare-A option:checked').innerText(), 'this job on turret-32.yaml');
  assert.match(await page.locator('#compare-input').innerText(), /Machine: \d+/);
  await shot('machine');
  await page.locator('#results').evaluate((e) => { e.scrollTop = e.scrollHeight; });
  await shot('machine end');
  // A file that is no machine is told in its place, and the other side stays.
  await compared(page, () => page.locator('#compare-file').setInputFiles(named('none.yaml', 'shaft: {name: x}\n')));
  assert.match(await page.locator('#compare .card').first().innerText(), /INPUT ERROR/);
  assert.match(await page.locator('#compare .card').nth(1).innerText(), /FEASIBLE/);
  await shot('no machine');
});

await story('pins', demo, async ({ page, shot, planned, field }) => {
  await compared(page, () => page.locator('#compare-open').click());
  await page.locator('#compare-pin-name').fill('<b>first</b>');
  await compared(page, () => page.locator('#compare-pin-name').press('Enter'));
  await planned(async () => { await field('Length, section 4').fill('331'); await page.keyboard.press('Enter'); });
  await compared(page, () => page.locator('#compare-pin').click());
  await page.reload();
  await page.waitForFunction(() => document.body.dataset.planned === '1');
  await compared(page, () => page.locator('#compare-open').click());
  await choose(page, 'A', 'pin: <b>first</b>');
  await choose(page, 'B', 'pin: plan 1');
  assert.match(await page.locator('#compare-input').innerText(), /shaft\.sections\[4\]\.length: 330 → 331/);
  assert.equal(await page.locator('#compare li b').count(), 0, 'a name stays text');
  await shot('after a reload');
  await compared(page, () => page.getByRole('button', { name: 'Remove pin: plan 1' }).click());
  assert.equal(await page.locator('#compare-B option:checked').innerText(), 'current plan');
  assert.equal(await page.locator('#compare-pins li').count(), 1);
});

await story('compares what cannot be made', blocked, async ({ page, shot }) => {
  await compared(page, () => page.locator('#compare-open').click());
  await shot('blocked');
  assert.match(await page.locator('#compare .card').nth(1).innerText(), /NOT FEASIBLE/);
  assert.doesNotMatch(await page.locator('#compare-figures').innerText(), /NaN|undefined|Infinity/);
  for (const width of [1920, 1100, 700]) {
    await page.setViewportSize({ width, height: 900 });
    // The diagrams have one scale, so one may be moved sideways in its box.
    assert.deepEqual((await page.evaluate(cutOff)).filter((e) => !/^FIGURE#\.compared|^svg/.test(e)), [], `at ${width}`);
    await shot(`${width}`);
  }
});

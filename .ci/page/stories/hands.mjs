// The hands: plain fields, what was changed in words, where the slider stands.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { demo, named, serve, story } from '../harness.mjs';

await story('two values', demo, async ({ page, shot, planned, field }) => {
  const text = async (which) => {
    await page.getByRole('tab', { name: 'Text' }).click();
    return page.locator(`#text-${which}`).inputValue();
  };
  const write = (label, value) => planned(async () => { await field(label).fill(value); await field(label).press('Enter'); });
  // A taper: its ends are two fields, also with a decimal comma; the rest of the line stays.
  await write('taper, section 7: rear', '21,5');
  assert.match(await page.locator('#undo').getAttribute('title'), /Undo: taper, section 7: rear: 22 → 21[.,]5/);
  assert.match(await text('job'), /\{length: 40, taper: \[18, 21\.5\]\}/);
  await planned(() => page.locator('#undo').click());
  await page.getByRole('tab', { name: 'Shaft' }).click();
  // A tolerance as a class is one field; as deviations it is two.
  await write('Tolerance, section 4', '[-0.02, 0]');
  await shot('deviations');
  await write('Tolerance, section 4: lower', '-0,03');
  assert.match(await text('job'), /tolerance: \[-0\.03, 0\], ra: 1\.6, name: roller seat/);
  await page.getByRole('tab', { name: 'Shaft' }).click();
  await write('Tolerance, section 4: lower', 'h9');
  assert.equal(await field('Tolerance, section 4').inputValue(), 'h9', 'a word stands alone again');
  // A collet's range in the machine file; a wrong value is told at its field.
  await page.getByRole('tab', { name: 'Machine' }).click();
  await write('range, collet 1: largest', '18,2');
  assert.match(await text('machine'), /\{name: "18", range: \[17\.6, 18\.2\], hold: 25/);
  await page.getByRole('tab', { name: 'Machine' }).click();
  await write('range, collet 1: smallest', 'x');
  assert.equal(await field('range, collet 1: smallest').getAttribute('aria-invalid'), 'true');
  await shot('wrong');
  await planned(() => page.locator('#undo').click());
  // A wish: the place alone, then with the nose.
  await page.getByRole('tab', { name: 'Cutting & limits' }).click();
  await planned(async () => { await page.locator('#add-hand_over_at').fill('300'); await page.locator('#add-hand_over_at').press('Enter'); });
  await write('hand over at 1: nose', '272');
  assert.match(await text('job'), /hand_over_at:\s*(\[|- )\{at: 300, nose: 272\}/);
  assert.match(await page.locator('#undo').getAttribute('title'), /nose: – → 272/);
});

await story('lengths as files have them', demo, async ({ page }) => {
  const forms = [...readFileSync('src/input/measure.rs', 'utf8').matchAll(/\(&(?:LENGTH|TOLERANCE), "((?:[^"\\]|\\.)+)", (-?[\d._]+)\)/g)].map(([, text, mm]) => [text.replaceAll('\\"', '"'), Number(mm.replaceAll('_', ''))]);
  assert.ok(forms.length > 10);
  const read = await page.evaluate((all) => import('/tree.js').then(({ mmOf }) => all.map(([text]) => mmOf(text, false))), forms);
  for (const [i, [text, mm]] of forms.entries()) assert.ok(Math.abs(read[i] - mm) < 1e-9, `${text}: ${read[i]}`);
  // A wish written as a fraction is found again, so that it is changed and no second one is written.
  const job = `${readFileSync('demo/feed-roller-shaft.yaml', 'utf8')}\nwishes: {hand_over_at: ["11 13/16 in"]}\n`;
  await page.locator('#files').setInputFiles([named('fraction.yaml', job), named('long-bed-32.yaml', readFileSync('demo/machines/long-bed-32.yaml', 'utf8'))]);
  await page.waitForFunction(() => /fraction\.yaml/.test(document.querySelector('#title').innerText) && document.querySelector('.hand.wished'));
});

await story('points at the diagram', demo, async ({ page }) => {
  const overlay = await page.locator('.overlay').boundingBox();
  await page.locator('.overlay').click({ position: { x: overlay.width / 2, y: 20 } });
  const at = Number(await page.locator('#moment').inputValue());
  assert.ok(at > 200 && at < 800, `the slider stands at ${at}`);
  await page.mouse.move(10, 10);
  await page.waitForFunction((t) => Number(document.querySelector('#moment').value) === t, at);
});

/** Texts of the machine that lie on each other or are cut off. */
function untidy() {
  const edge = document.querySelector('#machine-view > svg').getBoundingClientRect();
  const all = [...document.querySelectorAll('#machine-view text')].map((e) => [e.textContent, e.getBoundingClientRect()]);
  const out = all.filter(([, b]) => b.left < edge.left - 1 || b.right > edge.right + 1).map(([t]) => `cut off: ${t}`);
  const on = (a, b) => a.left + 1 < b.right && b.left + 1 < a.right && a.top + 3 < b.bottom - 3 && b.top + 3 < a.bottom - 3;
  return out.concat(all.flatMap(([t, a], i) => all.slice(i + 1).filter(([, b]) => on(a, b)).map(([u]) => `${t} / ${u}`)));
}

for (const [name, ...language] of [['feed-roller-shaft'], ['probe-needle'], ['bobbin-spindle'], ['feed-roller-shaft', '--lang', 'ja'], ['metering-spindle', '--lang', 'de']]) {
  const address = await serve(`demo/${name}.yaml`, ...language);
  await story(`machine of ${[name, ...language].join(' ')}`, address, async ({ page, shot }) => {
    for (const width of [1280, 700]) {
      await page.setViewportSize({ width, height: 800 });
      const end = Number(await page.locator('#moment').getAttribute('max'));
      for (let i = 0; i <= 10; i += 1) {
        await page.locator('#moment').evaluate((e, t) => { e.value = String(t); e.dispatchEvent(new Event('input')); }, (end * i) / 10);
        await page.waitForSelector('#machine-view svg');
        assert.deepEqual(await page.evaluate(untidy), [], `at ${i} tenths, ${width} px`);
      }
      await shot(String(width));
    }
  });
}

// The start of the page, and choosing machine and material.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { cutOff, demo, named, serve, story, verdict } from '../harness.mjs';

const bare = await serve();
const ofShop = await serve('demo/shop/dancer-arm-pin.yaml');
const drawing = { name: 'platen-shaft.dxf', mimeType: 'application/octet-stream', buffer: readFileSync('demo/platen-shaft.dxf') };
const form = (page) => page.locator('#start form');

await story('start', bare, async ({ page, shot, planned }) => {
  assert.equal(await page.locator('main').isVisible(), false);
  const cards = page.locator('.gallery button');
  await cards.first().waitFor();
  assert.equal(await cards.count(), 8);
  // The verdicts come one after another.
  await page.waitForFunction(() => [...document.querySelectorAll('.gallery .badge')].every((b) => b.textContent));
  assert.match(await cards.filter({ hasText: 'collared push rod' }).innerText(), /565 × Ø 24 mm\s+42CrMo4\s+NOT FEASIBLE/);
  for (const width of [1280, 1000, 700]) {
    await page.setViewportSize({ width, height: 800 });
    assert.deepEqual(await page.evaluate(cutOff), [], `cut off at ${width}`);
    await shot(`gallery-${width}`);
  }
  await page.setViewportSize({ width: 1280, height: 720 });
  const small = await page.evaluate(() => [...document.querySelectorAll('#start *')].filter((e) => e.childElementCount === 0 && e.textContent.trim() && parseFloat(getComputedStyle(e).fontSize) < 11).length);
  assert.equal(small, 0, 'letters under 11 px');
  // By keyboard: the picture of a part opens it, with its machine.
  await page.getByRole('button', { name: /probe needle 80 × Ø 3 mm/ }).focus();
  await planned(() => page.keyboard.press('Enter'));
  assert.equal(await page.locator('#start').isVisible(), false);
  assert.match(await page.locator('#title').innerText(), /probe needle.*probe-needle\.yaml, small-7\.yaml/);
  assert.match(await verdict(page), /^(FEASIBLE|AT RISK)/);
  // The start screen comes again, and leaving it changes nothing. Undo goes back behind it.
  await page.getByRole('button', { name: 'New…' }).click();
  assert.match(await page.locator('#start .top button').innerText(), /Back to probe-needle\.yaml/);
  await page.keyboard.press('Escape');
  assert.match(await page.title(), /^probe needle/);
  await planned(() => page.locator('#undo').click());
  assert.match(await page.title(), /^guide roller shaft/);
});

await story('new shaft', bare, async ({ page, shot, planned }) => {
  await form(page).getByLabel('Length', { exact: false }).fill('long');
  await form(page).getByLabel('Largest diameter').fill('12,5');
  await form(page).getByRole('button', { name: 'Plan this shaft' }).click();
  assert.match(await page.locator('#new-length_mm-message').innerText(), /not a number/);
  assert.equal(await page.evaluate(() => document.activeElement.id), 'new-length_mm');
  await form(page).getByLabel('Length', { exact: false }).fill('300');
  await page.locator('#new-material').fill('cheese');
  await page.keyboard.press('Enter');
  await page.waitForFunction(() => document.getElementById('new-material-message').textContent.includes('cheese'));
  assert.equal(await page.locator('#new-length_mm-message').innerText(), '');
  await shot('wrong');
  await form(page).getByRole('combobox', { name: 'Choose a material' }).selectOption('42CrMo4');
  assert.equal(await page.locator('#new-material').inputValue(), '42CrMo4');
  await planned(() => page.locator('#new-material').press('Enter'));
  assert.match(await verdict(page), /^(FEASIBLE|AT RISK)/);
  assert.match(await page.locator('#title').innerText(), /new shaft.*new-shaft\.yaml, mid-20\.yaml/);
  // What was assumed is listed; what is checked leaves the list, and undo brings it back.
  assert.match(await page.locator('#checks summary').innerText(), /To check in this job: 4/);
  await shot('assumed');
  await planned(() => page.locator('#checks li').filter({ hasText: 'common bar size' }).getByRole('button', { name: 'Checked' }).click());
  assert.match(await page.locator('#checks summary').innerText(), /To check in this job: 3/);
  await planned(() => page.locator('#undo').click());
  assert.match(await page.locator('#checks summary').innerText(), /To check in this job: 4/);
});

await story('draft', bare, async ({ page, shot, planned }) => {
  await planned(() => page.locator('#files').setInputFiles(drawing));
  assert.match(await page.locator('#title').innerText(), /platen-shaft\.yaml/);
  assert.match(await page.locator('#checks summary').innerText(), /To check in this job: 7/);
  assert.match(await page.locator('#checks').innerText(), /CHECK: The front end .* is the left end, at \(40, 60\)\. Call with `--flip` if it is the right end\./);
  assert.match(await page.locator('#checks').innerText(), /NOT UNDERSTOOD: TEXT `harden seat to 50 HRC`/);
  await shot('checks');
  // A remark leads to its line in the text.
  await page.locator('#checks li').filter({ hasText: 'common bar size' }).getByRole('button', { name: /^Show line/ }).click();
  assert.match(await page.evaluate(() => { const t = document.activeElement; return t.value.slice(t.selectionStart, t.selectionEnd); }), /^stock: .*PLACEHOLDER/);
  await shot('line');
  for (const width of [1000, 700]) {
    await page.setViewportSize({ width, height: 800 });
    await page.locator('#checks').scrollIntoViewIfNeeded();
    assert.deepEqual(await page.evaluate(cutOff), [], `cut off at ${width}`);
    await shot(`checks-${width}`);
  }
  await page.setViewportSize({ width: 1280, height: 720 });
  // A remark of two lines leaves the text whole.
  await planned(() => page.locator('#checks li').filter({ hasText: 'The front end' }).getByRole('button', { name: 'Checked' }).click());
  assert.doesNotMatch(await page.locator('#text-job').inputValue(), /The front end|is the right end/);
  // The drawing is read again with its front face at the other end.
  await planned(() => page.getByRole('button', { name: 'Read again: front face at the other end' }).click());
  assert.match(await page.locator('#checks').innerText(), /is the right end/);
  await page.getByRole('tab', { name: 'Shaft' }).click();
  assert.equal(await page.getByLabel('thread, section 1', { exact: true }).inputValue(), 'M10x1');
  // A table dropped on the open job takes its place, and undo brings the job back.
  const table = 'name,length,diameter,tolerance\njournal,25,8,h6\nbody,200,12,h9\n';
  await planned(() => page.evaluate((text) => {
    const data = new DataTransfer();
    data.items.add(new File([text], 'rod.csv', { type: 'text/csv' }));
    document.dispatchEvent(new DragEvent('drop', { dataTransfer: data, bubbles: true, cancelable: true }));
  }, table));
  assert.match(await page.locator('#title').innerText(), /rod\.yaml/);
  await planned(() => page.locator('#undo').click());
  assert.match(await page.locator('#title').innerText(), /platen-shaft\.yaml/);
});

await story('names', bare, async ({ page }) => {
  const read = await page.evaluate(() => import('/choose.js').then(({ scalar }) => ['38', 'true', 'C45', '1.4305', 'mid 20', 'a: b'].map(scalar)));
  assert.deepEqual(read, ['"38"', '"true"', 'C45', '"1.4305"', 'mid 20', '"a: b"']);
});

await story('not taken', bare, async ({ page, shot, planned }) => {
  const told = page.locator('#start [role="alert"]');
  for (const [name, said] of [['shaft.step', /shaft\.step cannot be read yet\. .*export the drawing as DXF/], ['shaft.pdf', /cannot be read yet/],
    ['notes.docx', /is not of a kind that this page takes.*DXF/], ['empty.csv', /row 1.*unknown heading/s], ['broken.dxf', /broken\.dxf/i]]) {
    await page.locator('#files').setInputFiles({ name, mimeType: 'application/octet-stream', buffer: Buffer.from('nothing') });
    await page.waitForFunction((n) => { const t = document.querySelector('#start [role="alert"]').textContent; return t.toLowerCase().includes(n) && !t.startsWith('Reading'); }, name);
    assert.match(await told.innerText(), said);
  }
  const nothing = (name) => ({ name, mimeType: 'text/plain', buffer: Buffer.from('nothing') });
  await page.locator('#files').setInputFiles([nothing('m.yaml'), nothing('rod.csv')]);
  await page.waitForFunction(() => /not opened: rod\.csv goes alone/.test(document.querySelector('#start [role="alert"]').textContent));
  await shot('told');
  // The same is told where a job is open, and the job stays.
  await page.getByRole('button', { name: 'Skip: show an example job' }).click();
  await page.locator('#files').setInputFiles({ name: 'shaft.stp', mimeType: 'application/octet-stream', buffer: Buffer.from('nothing') });
  await page.waitForFunction(() => document.getElementById('errors').textContent.includes('shaft.stp cannot be read yet'));
  assert.match(await page.title(), /^guide roller shaft/);
  // A job whose machine is data in the file gets a machine file by its name.
  await page.getByRole('tab', { name: 'Machine' }).click();
  await planned(() => page.locator('#form').getByLabel('Choose a machine').selectOption('long-bed-32.yaml'));
  assert.match(await page.locator('#title').innerText(), /job\.yaml, long-bed-32\.yaml/);
  assert.match(await verdict(page), /^(FEASIBLE|AT RISK|NOT)/);
});

await story('choose', demo, async ({ page, shot, planned }) => {
  assert.equal(await page.locator('#start').isVisible(), false, 'a job in the call opens at once');
  await page.getByRole('tab', { name: 'Machine' }).click();
  const machines = page.locator('#form').getByLabel('Choose a machine');
  assert.match(await machines.innerText(), /heavy 38: bar to 38 mm, stroke 240 mm, counter-spindle to 400 mm/);
  await shot('machine');
  await planned(() => machines.selectOption('heavy-38.yaml'));
  assert.match(await page.locator('#title').innerText(), /heavy-38\.yaml/);
  assert.equal(await page.locator('#form').getByLabel('file', { exact: true }).inputValue(), 'heavy-38.yaml');
  assert.match(await page.locator('#undo').getAttribute('title'), /heavy 38/);
  await planned(() => page.locator('#undo').click());
  await page.getByRole('tab', { name: 'Shaft' }).click();
  const materials = page.locator('#form').getByLabel('Choose a material');
  assert.ok(await materials.locator('optgroup').count() > 5);
  await planned(() => materials.selectOption('42CrMo4'));
  assert.equal(await page.locator('#form').getByLabel('material', { exact: true }).inputValue(), '42CrMo4');
  assert.match(await verdict(page), /^(FEASIBLE|AT RISK|NOT)/);
  await shot('material');
  // A job without its machine: it is chosen from the list.
  const alone = readFileSync('demo/bobbin-spindle.yaml', 'utf8').replace('machines/mid-20.yaml', 'machines/gone.yaml');
  await planned(() => page.locator('#files').setInputFiles([named('bobbin.yaml', alone)]));
  assert.match(await page.locator('#errors').innerText(), /This job needs its machine: machines\/gone\.yaml/);
  await shot('wanted');
  await planned(() => page.locator('#errors').getByLabel('Choose a machine').selectOption('mid-20.yaml'));
  assert.match(await verdict(page), /^(FEASIBLE|AT RISK)/);
  assert.match(await page.locator('#title').innerText(), /bobbin\.yaml, mid-20\.yaml/);
});

await story('choose of shop', ofShop, async ({ page, shot, planned }) => {
  await page.getByRole('tab', { name: 'Machine' }).click();
  const machines = page.locator('#form').getByLabel('Choose a machine');
  assert.equal(await machines.locator('optgroup').first().getAttribute('label'), 'Machines of the shop');
  await shot('machines');
  await planned(() => machines.selectOption('small'));
  assert.match(await verdict(page), /^(INPUT ERROR|NOT FEASIBLE)/);
  await planned(() => page.locator('#form').getByLabel('Choose a machine').selectOption('long'));
  assert.match(await verdict(page), /^(FEASIBLE|AT RISK)/);
});

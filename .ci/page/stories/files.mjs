// Jobs opened, kept and lost.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { blocked, demo, heldBack, named, story, verdict } from '../harness.mjs';

await story('files', blocked, async ({ page, shot, planned }) => {
  const job = readFileSync('demo/feed-roller-shaft.yaml', 'utf8');
  const alone = job.replace('machines/long-bed-32.yaml', 'machines/own.yaml');
  await planned(() => page.locator('#files').setInputFiles([named('own.yaml', alone)]));
  await page.getByRole('button', { name: 'Show the error' }).click();
  assert.match(await page.locator('#form .message').innerText(), /machine/);
  await shot('alone');
  // The page asks for the machine that the job names.
  assert.match(await page.locator('#errors').innerText(), /This job needs its machine: machines\/own\.yaml is not open/);
  await page.getByRole('tab', { name: 'Shaft' }).click();
  const chosen = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Open the machine file' }).click();
  await planned(async () => (await chosen).setFiles([named('long-bed-32.yaml', readFileSync('demo/machines/long-bed-32.yaml', 'utf8'))]));
  assert.match(await verdict(page), /^FEASIBLE/);
  assert.match(await page.locator('#title').innerText(), /own\.yaml/);
  // Many sections and long names; nothing runs out of the page.
  const name = 'a very long name of a shaft that nobody would write on a drawing but somebody will';
  const sections = Array.from({ length: 60 }, (_, i) => `    - {length: ${8 + (i % 5)}, diameter: ${14 + (i % 2) * 4}, name: '${i === 7 ? name : `land ${i + 1}`}'}`);
  const crowd = job.replace(/  sections:[\s\S]*?straightness: 0.3/, `  sections:\n${sections.join('\n')}\n  straightness: 0.1`).replace('feed roller shaft', name);
  await planned(() => page.locator('#files').setInputFiles([named('crowd.yaml', crowd), named('m.yaml', readFileSync('demo/machines/long-bed-32.yaml', 'utf8'))]));
  assert.equal(await page.locator('.row[data-list*="sections"]').count(), 60);
  assert.ok(!(await page.evaluate(() => document.documentElement.scrollWidth > innerWidth)), 'wider than the page');
  await shot('crowd');
  // What is no YAML at all: the text is shown, with the message.
  await planned(() => page.locator('#files').setInputFiles([named('broken.yaml', 'shaft: {name: [\n')]));
  await shot('not-yaml');
  assert.match(await verdict(page), /^INPUT ERROR/);
  assert.match(await page.locator('#errors').innerText(), /^broken\.yaml, line/);
  // A name that looks like markup stays text.
  const sharp = job.replace('feed roller shaft', "'<img src=x onerror=alert(1)>'");
  await planned(() => page.locator('#files').setInputFiles([named('sharp.yaml', sharp), named('m.yaml', readFileSync('demo/machines/long-bed-32.yaml', 'utf8'))]));
  assert.equal(await page.locator('img').count(), 0);
});

await story('slow plan', demo, async ({ page, shot, planned, field }) => {
  const held = await heldBack(page, '**/first');
  const job = readFileSync('demo/feed-roller-shaft.yaml', 'utf8').replace('name: feed roller shaft', 'name: slow roller');
  const machine = readFileSync('demo/machines/long-bed-32.yaml', 'utf8');
  await page.locator('#files').setInputFiles([named('slow.yaml', job), named('long-bed-32.yaml', machine)]);
  await held.asked;
  // The old verdict is none of the job that is planned.
  await page.waitForFunction(() => document.body.classList.contains('old'));
  assert.match(await verdict(page), /^PLANNING.*slow\.yaml/s);
  await shot('meanwhile');
  // What is clicked meanwhile is done, in its order.
  const download = page.waitForEvent('download');
  await page.locator('[data-export="json"]').click();
  assert.match(await page.locator('#busy').innerText(), /The export follows/);
  await planned(() => held.letGo());
  assert.match(JSON.parse(readFileSync(await (await download).path(), 'utf8')).job, /^slow roller$/);
  assert.match(await verdict(page), /^FEASIBLE/);
  assert.equal(await page.evaluate(() => document.body.classList.contains('old')), false);
  assert.match(await page.title(), /^slow roller/);
  await planned(() => page.locator('#undo').click());
  assert.match(await page.title(), /^feed roller shaft/);
  // A job that is opened while an edit is under way is not put aside by it.
  const edit = await heldBack(page, '**/edit');
  const length = field('Length, section 4');
  await length.fill('335');
  await length.press('Enter');
  await edit.asked;
  await page.locator('#files').setInputFiles([named('slow.yaml', job), named('long-bed-32.yaml', machine)]);
  await edit.letGo();
  await page.waitForFunction(() => /^slow roller/.test(document.title));
  await page.waitForFunction(() => !document.body.classList.contains('old') && /slow\.yaml/.test(document.querySelector('#title').innerText));
  assert.equal(await length.inputValue(), '330');
});

await story('no plan', demo, async ({ page, shot }) => {
  const refused = JSON.stringify({ what: 'this takes longer than 30 s and was stopped', help: 'a coarser one takes less' });
  await page.route('**/first', (route) => route.fulfill({ status: 503, contentType: 'application/json', body: refused }));
  const job = readFileSync('demo/drive-hub.yaml', 'utf8');
  await page.locator('#files').setInputFiles([{ name: 'hub.yaml', mimeType: 'application/yaml', buffer: Buffer.from(job) }]);
  await page.waitForFunction(() => /longer than 30 s/.test(document.querySelector('#errors').innerText));
  assert.match(await verdict(page), /^NOT PLANNED.*hub\.yaml/s, 'the verdict is not that of the job before');
  assert.match(await page.title(), /^hub\.yaml/);
  await shot('refused');
});

await story('reloads', demo, async ({ page, planned, field }) => {
  await planned(async () => { await field('Length, section 4').fill('331'); await page.keyboard.press('Enter'); });
  await page.reload();
  await page.waitForFunction(() => document.body.dataset.planned === '1');
  assert.equal(await field('Length, section 4').inputValue(), '331', 'a reload keeps what was edited');
  await planned(() => page.locator('#undo').click());
  assert.equal(await field('Length, section 4').inputValue(), '330');
});

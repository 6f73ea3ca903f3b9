// The page in a real browser: opens, edits, drags, breaks a limit, exports, reloads. Called by .ci/page/run.sh as
//     node .ci/page/browser.mjs PROGRAM FOLDER [STORY…]
// FOLDER gets a picture of every state, to be looked at. With PAGE_ASSETS=src/page/assets the page's files are taken from
// there in place of those in the program, so that a change of them needs no build.
import assert from 'node:assert/strict';
import { spawn } from 'node:child_process';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';

const [program, folder] = process.argv.slice(2, 4).map((p) => path.resolve(p));
const stories = process.argv.slice(4);
const { chromium } = createRequire(path.resolve(process.env.PLAYWRIGHT ?? folder, 'x.js'))('playwright-core');
mkdirSync(folder, { recursive: true });

const started = [];
/** Starts the page and gives its address. */
async function serve(...args) {
  const child = spawn(program, ['page', ...args, '--port', '0'], { stdio: ['ignore', 'pipe', 'inherit'] });
  started.push(child);
  for await (const chunk of child.stdout) return String(chunk).trim();
  throw new Error('the page did not start');
}

const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking',
    '--disable-component-update', '--disable-sync'],
});

let failed = 0;
/** One story on a page of its own; what the browser complains about is a failure too. */
async function story(name, address, tell) {
  if (stories.length && !stories.includes(name)) return;
  const context = await browser.newContext({ viewport: { width: 1280, height: 720 }, acceptDownloads: true });
  const page = await context.newPage();
  const complaints = [];
  page.on('console', (m) => { if (m.type() === 'error' && !/status of (4|5)\d\d/.test(m.text())) complaints.push(m.text()); });
  page.on('pageerror', (e) => complaints.push(String(e)));
  page.on('request', (r) => { if (!/^(blob|data):/.test(r.url()) && !r.url().startsWith(address)) complaints.push(`asks elsewhere: ${r.url()}`); });
  if (process.env.PAGE_ASSETS) {
    const kinds = { '.js': 'text/javascript', '.css': 'text/css', '.html': 'text/html', '.svg': 'image/svg+xml' };
    await page.route(/\/([\w-]+\.(js|css|svg))?$/, async (route) => {
      const file = new URL(route.request().url()).pathname.slice(1) || 'index.html';
      // The texts are no file: the program makes them of its table.
      if (file === 'texts.js') return route.continue();
      const response = await route.fetch();
      return route.fulfill({ response, contentType: kinds[path.extname(file)], body: readFileSync(path.join(process.env.PAGE_ASSETS, file)) });
    });
  }
  page.setDefaultTimeout(30000);
  const act = {
    page,
    shot: (what, whole = false) => page.screenshot({ path: path.join(folder, `${name}-${what}.png`), fullPage: whole }),
    /** Does something and waits for the plan that it leads to. */
    async planned(work) {
      const before = await page.evaluate(() => Number(document.body.dataset.planned ?? 0));
      await work();
      await page.waitForFunction((n) => Number(document.body.dataset.planned ?? 0) > n, before);
    },
    field: (label) => page.getByLabel(label, { exact: true }),
  };
  try {
    await act.planned(() => page.goto(address));
    await tell(act);
    assert.deepEqual(complaints, [], 'the browser complains');
    console.log(`ok      ${name}`);
  } catch (error) {
    failed += 1;
    console.log(`FAILED  ${name}: ${error.stack}`);
    console.log(complaints.join('\n'));
    await act.shot('failed').catch(() => {});
  } finally {
    await context.close();
  }
}

const verdict = (page) => page.locator('#verdict').innerText();
const demo = await serve('demo/feed-roller-shaft.yaml');
const blocked = await serve('demo/collared-rod.yaml');

await story('opens', demo, async ({ page, shot }) => {
  assert.match(await verdict(page), /^FEASIBLE\s+holds in 9\d of 100 sampled parts; 3 stages/);
  assert.equal(await page.locator('#stages tbody tr').count(), 3);
  assert.match(await page.locator('.look-at').innerText(), /fed out to 970 mm/, 'what the sheet says to look at is said here too');
  assert.equal(await page.locator('.hand').count(), 4, 'a hand-over and a grip for each of two stages');
  const overflow = await page.evaluate(() => document.documentElement.scrollWidth > innerWidth);
  assert.ok(!overflow, 'the page is wider than 1280');
  await page.waitForSelector('#moment-state b');
  const said = await page.evaluate(() => import('/words.js').then(({ percent, words }) => [...[0.916, 0.9991, 1, 1.0004, 1.2].map(percent), words('whirl')]));
  assert.deepEqual(said, ['92 %', '99.9 %', '100 %', '100.1 %', '120 %', 'critical speed'], 'a broken limit never reads as 100 %');
  await shot('first');
  for (const tab of ['Cutting & limits', 'Machine', 'Text']) {
    await page.getByRole('tab', { name: tab }).click();
    await shot(tab.split(' ')[0].toLowerCase());
  }
  await page.locator('#wide').click();
  await shot('wide');
  await page.locator('#results').evaluate((e) => { e.scrollTop = e.scrollHeight; });
  await shot('below');
  await page.emulateMedia({ media: 'print' });
  writeFileSync(path.join(folder, 'print.pdf'), await page.pdf({ preferCSSPageSize: true }));
  await shot('print', true);
  assert.ok(await page.locator('#moments table').first().isVisible(), 'what is folded on the screen is open on paper');
  assert.match(await page.locator('#title').innerText(), /feed roller shaft/);
  assert.ok(await page.locator('#title').isVisible(), 'the job has its name on paper');
});

await story('edits', demo, async ({ page, shot, planned, field }) => {
  const length = field('Length, section 4');
  await planned(async () => { await length.fill('335'); await length.press('Enter'); });
  assert.equal(await length.evaluate((e) => e === document.activeElement), true, 'the field keeps the focus');
  assert.match(await page.locator('#stages').innerText(), /968/, 'the last stage ends 5 mm later');
  await planned(() => page.locator('#undo').click());
  assert.equal(await length.inputValue(), '330');
  await planned(() => page.locator('#redo').click());
  assert.equal(await length.inputValue(), '335');
  await planned(() => page.keyboard.press('Control+z'));
  assert.equal(await length.inputValue(), '330');
  // A wrong number is marked at its field alone, in the words of the command line; the last plan stays, faint.
  await planned(async () => { await length.fill('33,5'); await length.press('Enter'); });
  assert.equal(await length.getAttribute('aria-invalid'), 'true');
  assert.match(await page.locator('#form .message').innerText(), /`33,5` has a decimal comma.*Write 33\.5/s);
  assert.equal(await page.locator('#errors').innerText(), '', 'nothing is said twice');
  assert.match(await page.locator('#heard').textContent(), /`33,5` has a decimal comma/, 'a screen reader says it at once');
  assert.match(await verdict(page), /^INPUT ERROR\s+Errors in the input: 1\. .* last input without errors/);
  await page.getByRole('tab', { name: 'Machine' }).click();
  await page.getByRole('button', { name: 'Show the error' }).click();
  assert.equal(await length.evaluate((e) => e === document.activeElement), true, 'the button leads to the field');
  await shot('wrong');
  await planned(async () => { await length.fill(''); await length.press('Enter'); });
  assert.equal(await length.getAttribute('aria-invalid'), 'true', 'what is missing is marked where it would stand');
  await planned(async () => { await length.fill('330'); await length.press('Enter'); });
  assert.equal(await page.locator('[aria-invalid="true"]').count(), 0);
  assert.equal(await page.locator('#heard').textContent(), '');
  // What belongs to no field of the form is said above the plan, with its line; a key too many at its group.
  const whole = async (change) => {
    await page.getByRole('tab', { name: 'Text' }).click();
    const text = page.locator('#text-job');
    await planned(async () => { await text.fill(change(await text.inputValue())); await text.press('Control+Enter'); });
  };
  await whole((yaml) => `${yaml}\nnonsense: 1\n`);
  assert.match(await page.locator('#errors').innerText(), /^feed-roller-shaft\.yaml, line \d+: .*`nonsense`/s);
  await shot('unplaced');
  await planned(() => page.locator('#undo').click());
  await whole((yaml) => yaml.replace(/^shaft:/m, 'shaft:\n  colour: red'));
  assert.equal(await page.locator('#errors').innerText(), '');
  await page.getByRole('tab', { name: 'Shaft' }).click();
  assert.match(await page.locator('#form .message').innerText(), /`colour`/);
  await planned(() => page.locator('#undo').click());
  // Rows are put in, moved by the keyboard, taken out.
  const rows = page.locator('.row[data-list*="sections"]');
  const many = await rows.count();
  await planned(() => page.getByRole('button', { name: '+ cylinder' }).click());
  assert.equal(await rows.count(), many + 1);
  const last = field(`Name, section ${many + 1}`);
  await last.fill('stub');
  await planned(() => last.press('Enter'));
  await planned(() => last.press('Alt+ArrowUp'));
  assert.equal(await field(`Name, section ${many}`).inputValue(), 'stub');
  assert.equal(await field(`Name, section ${many}`).evaluate((e) => e === document.activeElement), true, 'the focus goes with the row');
  await planned(() => field(`Kind, section ${many}`).selectOption('groove'));
  assert.equal(await field(`Name, section ${many}`).inputValue(), 'stub', 'another kind keeps the name');
  await page.locator(`.row[data-index="${many - 1}"]`).first().hover();
  await planned(() => page.getByRole('button', { name: `Remove: ${many}`, exact: true }).click());
  assert.equal(await rows.count(), many);
  // Another machine setting.
  await page.getByRole('tab', { name: 'Machine' }).click();
  await planned(async () => { await field('stroke').fill('200'); await field('stroke').press('Tab'); });
  assert.match(await verdict(page), /stages/);
  await page.getByRole('tab', { name: 'Text' }).click();
  const yaml = await page.locator('#text-job').inputValue();
  assert.ok(yaml.startsWith('# Shows: a metre'), 'comments stay');
});

await story('drags', demo, async ({ page, shot, planned }) => {
  const [far, hand] = [page.locator('#hand-hand_over-3'), page.locator('#hand-hand_over-2')];
  // What was answered on the way there may be told first, so the answer that is meant is waited for.
  const drag = async (hand, by, told) => {
    const box = await hand.locator('.seen').boundingBox();
    const [x, y] = [box.x + box.width / 2, box.y + 5];
    await page.mouse.move(x, y);
    await page.mouse.down();
    for (let i = 1; i <= 8; i += 1) await page.mouse.move(x + (by * i) / 8, y);
    await page.waitForFunction((told) => new RegExp(told, 's').test(document.querySelector('#drag-bar')?.innerText ?? ''), told);
  };
  await drag(far, 150, 'fails the proof.*counter.spindle.travel');
  const broken = await page.locator('#drag-bar').innerText();
  assert.match(broken, /fails the proof.*counter.spindle.travel/s, 'too far for the counter-spindle');
  await shot('broken');
  await page.mouse.up();
  await page.getByRole('button', { name: 'Move back' }).click();
  assert.equal(await page.locator('#drag-bar').isHidden(), true);
  assert.match(await far.getAttribute('aria-valuetext'), /^662/);
  await drag(hand, 10, 'passes the proof');
  await page.mouse.up();
  await page.waitForFunction(() => document.querySelector('#drag-bar')?.classList.contains('held'));
  const moved = await hand.getAttribute('aria-valuenow');
  await shot('holds');
  await planned(() => page.getByRole('button', { name: 'Keep as a wish' }).click());
  assert.equal(await page.locator('#hand-hand_over-2').getAttribute('aria-valuenow'), moved);
  assert.ok((await page.locator('#hand-hand_over-2').getAttribute('class')).includes('wished'));
  assert.match(await page.locator('#tables').innerText(), new RegExp(`The plan keeps these wishes: hand over at ${moved} mm`));
  // A grip, by the keyboard.
  const grip = page.locator('#hand-grip-2');
  await grip.focus();
  for (let i = 0; i < 3; i += 1) await page.keyboard.press('ArrowLeft');
  await page.waitForFunction(() => /(passes|fails) the proof/.test(document.querySelector('#drag-bar')?.innerText ?? ''));
  const nose = await grip.getAttribute('aria-valuenow');
  await planned(() => page.keyboard.press('Enter'));
  assert.equal(await page.locator('#hand-grip-2').getAttribute('aria-valuenow'), nose);
  await page.getByRole('tab', { name: 'Cutting & limits' }).click();
  assert.equal(await page.getByLabel('hand over at 1').inputValue(), `{at: ${moved}, nose: ${nose}}`);
  await shot('wished');
});

await story('plays', demo, async ({ page, shot }) => {
  await page.locator('#moment').fill('500');
  await page.waitForFunction(() => /500 mm · stage 2/.test(document.querySelector('#moment-text').value) && document.querySelector('#moment-state b'));
  assert.match(await page.locator('#machine-view').innerHTML(), /bending ×/);
  await page.waitForTimeout(300);
  await shot('moment');
  // No label of the machine is cut off or lies on another, wherever it stands.
  for (let t = 0; t <= 963; t += 107) {
    await page.locator('#moment').fill(String(t));
    const astray = await page.evaluate(() => {
      const view = document.querySelector('#machine-view svg').getBoundingClientRect();
      const labels = [...document.querySelectorAll('#machine-view text')].map((e) => [e.textContent, e.getBoundingClientRect()]);
      return labels.flatMap(([text, a], i) => [
        ...(a.left < view.left - 1 || a.right > view.right + 1 ? [`${text} is cut off`] : []),
        ...labels.slice(i + 1).filter(([, b]) => a.left < b.right - 1 && b.left < a.right - 1 && a.top < b.bottom - 3 && b.top < a.bottom - 3).map(([other]) => `${text} on ${other}`)]);
    });
    assert.deepEqual(astray, [], `at ${t} mm`);
  }
  await page.locator('#moment').fill('500');
  const box = await page.locator('#drawing-view').boundingBox();
  await page.mouse.move(box.x + box.width * 0.2, box.y + 60);
  await page.waitForFunction(() => /stage 1/.test(document.querySelector('#moment-text').value));
  await shot('hover');
  await page.mouse.move(5, 300);
  await page.waitForFunction(() => /^500 mm/.test(document.querySelector('#moment-text').value));
  await page.locator('#play').click();
  await page.waitForFunction(() => Number(document.querySelector('#moment').value) > 560);
  await page.locator('#play').click();
  assert.equal(await page.locator('#play').getAttribute('aria-pressed'), 'false');
});

await story('breaks', demo, async ({ page, shot, planned, field }) => {
  await page.getByRole('tab', { name: 'Cutting & limits' }).click();
  await planned(async () => { await field('stiffness_min'.replace('_', ' ')).fill('900'); await page.keyboard.press('Enter'); });
  assert.match(await verdict(page), /^NOT FEASIBLE/);
  assert.match(await page.locator('.shortfall').innerText(), /The plan stops at .* mm\./);
  assert.equal(await page.locator('.hand').count(), 0, 'nothing to drag where there is no plan');
  await shot('limit');
  await planned(() => page.keyboard.press('Control+z'));
  assert.match(await verdict(page), /^FEASIBLE/);
});

await story('infeasible', blocked, async ({ page, shot, planned }) => {
  assert.match(await verdict(page), /^NOT FEASIBLE/);
  await shot('first');
  await page.waitForFunction(() => /Each of these makes/.test(document.querySelector('#changes')?.innerText ?? ''), null, { timeout: 60000 });
  await page.waitForFunction(() => !/is looking for/.test(document.querySelector('#changes').innerText), null, { timeout: 60000 });
  await page.locator('#changes').scrollIntoViewIfNeeded();
  await shot('changes');
  await planned(() => page.locator('#changes button').first().click());
  assert.match(await verdict(page), /^(FEASIBLE|AT RISK)/, 'a set that is applied makes it feasible');
  await shot('applied');
  await planned(() => page.keyboard.press('Control+z'));
  assert.match(await verdict(page), /^NOT FEASIBLE/);
});

await story('at risk', demo, async ({ page, shot, planned }) => {
  const named = (name, text) => ({ name, mimeType: 'application/yaml', buffer: Buffer.from(text) });
  const files = [named('scanner-rail.yaml', readFileSync('demo/scanner-rail.yaml', 'utf8')), named('long-bed-alu.yaml', readFileSync('demo/machines/long-bed-alu.yaml', 'utf8'))];
  await planned(() => page.locator('#files').setInputFiles(files));
  assert.match(await verdict(page), /^AT RISK.*holds in \d+ of 100 sampled parts/s);
  assert.match(await page.locator('#sure').innerText(), /What breaks: critical speed/);
  await page.locator('#sampled summary').click();
  assert.equal(await page.locator('#drawing-view .sampled').count(), 1, 'the band');
  await page.locator('#sampled .parts button').first().click();
  await page.locator('#sampled table').waitFor();
  assert.match(await page.locator('#sampled table').innerText(), /Young's modulus/);
  assert.match(await page.locator('#drawing-view').innerHTML(), /this part/);
  await shot('part');
  await page.locator('#sure details figure').count();
  await page.getByText('What to measure first', { exact: true }).click();
  assert.ok(await page.locator('#sure .input').count() > 2, 'bars');
  await shot('inputs');
  await page.getByRole('button', { name: 'Hide the part' }).click();
  await page.waitForFunction(() => !document.querySelector('#sampled table'));
  // What can be moved stays under the new pictures.
  assert.ok(await page.locator('#drawing-view .overlay').count() === 1);
  // A confidence is asked for in the form, and the plan follows.
  await page.getByRole('tab', { name: 'Cutting & limits' }).click();
  await planned(async () => { await page.locator('[data-way=\'["confidence"]\']').fill('0.95'); await page.keyboard.press('Enter'); });
  assert.match(await verdict(page), /^FEASIBLE.*holds in 9[5-9]/s);
  await shot('made to hold');
});

await story('exports', demo, async ({ page }) => {
  const saved = async (work) => {
    const [download] = await Promise.all([page.waitForEvent('download'), work()]);
    return { name: download.suggestedFilename(), text: readFileSync(await download.path(), 'utf8') };
  };
  const starts = { sheet: /^<!doctype html>/i, svg: /^<\?xml/, csv: /stage/, positions: /^row,stage/, dxf: /AC1009/, xlsx: /^PK/, json: /"verdict": "(feasible|at_risk)"/ };
  for (const [format, start] of Object.entries(starts)) {
    const { name, text } = await saved(() => page.locator(`[data-export="${format}"]`).click());
    assert.match(name, /^feed-roller-shaft\.(html|svg|csv|positions\.csv|dxf|xlsx|json)$/);
    assert.match(text, start, format);
  }
  const job = await saved(() => page.keyboard.press('Control+s'));
  assert.equal(job.text, readFileSync('demo/feed-roller-shaft.yaml', 'utf8'), 'saved as it was opened');
  const stored = JSON.parse((await saved(() => page.locator('[data-export="json"]').click())).text);
  const plan = JSON.parse(readFileSync('plans/feed-roller-shaft/plan.json', 'utf8'));
  assert.equal(stored.input_digest, plan.input_digest, 'the same inputs as the command line');
  // The stored plan is written by a build of another optimisation: the last digits of a share may differ.
  const held = (stages) => stages.map((s) => [s.number, s.from_mm, s.to_mm, s.grip?.nose_mm ?? -1, s.rpm_max].map((n) => n.toFixed(6)));
  assert.deepEqual(held(stored.stages), held(plan.stages), 'the same plan as the command line');
});

await story('files', blocked, async ({ page, shot, planned }) => {
  const named = (name, text) => ({ name, mimeType: 'application/yaml', buffer: Buffer.from(text) });
  const job = readFileSync('demo/feed-roller-shaft.yaml', 'utf8');
  const alone = job.replace('machines/long-bed-32.yaml', 'machines/own.yaml');
  await planned(() => page.locator('#files').setInputFiles([named('own.yaml', alone)]));
  await page.getByRole('button', { name: 'Show the error' }).click();
  assert.match(await page.locator('#form .message').innerText(), /machine/);
  await shot('alone');
  await page.getByRole('tab', { name: 'Shaft' }).click();
  await planned(() => page.locator('#files').setInputFiles([named('long-bed-32.yaml', readFileSync('demo/machines/long-bed-32.yaml', 'utf8'))]));
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

/** Holds back the answers to a path until it is let go. */
async function heldBack(page, url) {
  let letGo;
  let came;
  const gone = new Promise((then) => { letGo = then; });
  const asked = new Promise((then) => { came = then; });
  await page.route(url, async (route) => {
    came();
    await gone;
    // One that was ended meanwhile has no taker.
    await route.continue().catch(() => {});
  });
  return { asked, letGo };
}

await story('slow plan', demo, async ({ page, shot, planned, field }) => {
  const held = await heldBack(page, '**/plan');
  const named = (name, text) => ({ name, mimeType: 'application/yaml', buffer: Buffer.from(text) });
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
  await page.route('**/plan', (route) => route.fulfill({ status: 503, contentType: 'application/json', body: refused }));
  const job = readFileSync('demo/drive-hub.yaml', 'utf8');
  await page.locator('#files').setInputFiles([{ name: 'hub.yaml', mimeType: 'application/yaml', buffer: Buffer.from(job) }]);
  await page.waitForFunction(() => /longer than 30 s/.test(document.querySelector('#errors').innerText));
  assert.match(await verdict(page), /^NOT PLANNED.*hub\.yaml/s, 'the verdict is not that of the job before');
  assert.match(await page.title(), /^hub\.yaml/);
  await shot('refused');
});

/** What runs out of the page, or is hidden by what it stands in. */
function cutOff() {
  const hides = (e) => getComputedStyle(e).overflowX !== 'visible' && e.clientWidth && e.scrollWidth > e.clientWidth + 1;
  return [...document.querySelectorAll('body *')]
    .filter((e) => !e.matches('input, select, textarea') && !e.closest('svg') && e.checkVisibility() && e.getBoundingClientRect().width > 1)
    .filter((e) => e.getBoundingClientRect().right > innerWidth + 1 || hides(e)).map((e) => `${e.tagName}#${e.id}.${e.className} ${e.textContent.slice(0, 40)}`);
}

for (const name of ['drive-hub', 'probe-needle', 'metering-spindle', 'feed-roller-shaft', 'collared-rod']) {
  const address = await serve(`demo/${name}.yaml`);
  await story(`widths of ${name}`, address, async ({ page, shot }) => {
    for (const width of [700, 1000, 1400]) {
      await page.setViewportSize({ width, height: 900 });
      for (const tab of ['Cutting & limits', 'Machine', 'Shaft']) {
        await page.getByRole('tab', { name: tab }).click();
        assert.deepEqual(await page.evaluate(cutOff), [], `${tab} is cut off at ${width}`);
      }
      await shot(String(width));
    }
  });
}

await story('reloads', demo, async ({ page, planned, field }) => {
  await planned(async () => { await field('Length, section 4').fill('331'); await page.keyboard.press('Enter'); });
  await page.reload();
  await page.waitForFunction(() => document.body.dataset.planned === '1');
  assert.equal(await field('Length, section 4').inputValue(), '331', 'a reload keeps what was edited');
  await planned(() => page.locator('#undo').click());
  assert.equal(await field('Length, section 4').inputValue(), '330');
});

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
  const named = (name, text) => ({ name, mimeType: 'application/yaml', buffer: Buffer.from(text) });
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

await story('speed', demo, async ({ page, planned, field }) => {
  // A browser that has just begun has other work.
  await page.waitForTimeout(2000);
  const times = [];
  for (const value of ['329', '328', '327', '326', '325']) {
    await planned(async () => { await field('Length, section 4').fill(value); await page.keyboard.press('Enter'); });
    times.push(Number(/(\d+) ms/.exec(await page.locator('#busy').innerText())?.[1]));
  }
  await field('Length, section 4').click({ clickCount: 3 });
  await page.keyboard.type('317', { delay: 120 });
  await page.waitForTimeout(300);
  await planned(() => page.keyboard.press('Enter'));
  const typed = Number(/(\d+) ms/.exec(await page.locator('#busy').innerText())?.[1]);
  await planned(() => page.locator('#undo').click());
  const known = Number(/(\d+) ms/.exec(await page.locator('#busy').innerText())?.[1]);
  console.log(`        an edit is answered in ${times.join(', ')} ms; one typed by hand in ${typed} ms after it is meant; one whose plan is known in ${known} ms`);
});

await browser.close();
for (const child of started) child.kill();
if (failed) {
  console.log(`${failed} stories failed`);
  process.exit(1);
}

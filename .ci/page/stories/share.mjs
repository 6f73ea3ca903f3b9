// A plan as one file: it plays without a server, and holds nothing but the plan.
import assert from 'node:assert/strict';
import { readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import { blocked, demo, folder, named, serve, story } from '../harness.mjs';

/** Opens the saved file as a page of its own, where no request may leave it. */
async function opened(page, file, tell) {
  const other = await page.context().newPage();
  const complaints = [];
  other.on('pageerror', (e) => complaints.push(String(e)));
  other.on('console', (m) => { if (m.type() === 'error') complaints.push(m.text()); });
  other.on('request', (r) => { if (r.url() !== `file://${file}`) complaints.push(`asks ${r.url()}`); });
  await other.goto(`file://${file}`);
  await other.waitForSelector('#machine-view svg');
  await tell(other);
  assert.deepEqual(complaints, []);
  await other.close();
}

async function saved(page, name) {
  const download = page.waitForEvent('download');
  await page.locator('#share').click();
  const file = path.join(folder, name);
  await (await download).saveAs(file);
  return [file, (await download).suggestedFilename()];
}

await story('share', demo, async ({ page }) => {
  const [file, name] = await saved(page, 'shared.html');
  assert.equal(name, 'feed-roller-shaft.plan.html');
  assert.ok(statSync(file).size < 1_000_000, `${statSync(file).size} bytes`);
  const text = readFileSync(file, 'utf8');
  assert.ok(!/machine_per_hour|material_per_kg|EUR|# Shows/.test(text), 'neither prices nor files');
  const before = await page.locator('#stages').innerText();
  await opened(page, file, async (other) => {
    assert.match(await other.locator('#verdict').innerText(), /^FEASIBLE\s+holds in 9\d of 100/);
    assert.match(await other.locator('#title').innerText(), /^feed roller shaft.*LP-2040-11.*B/);
    assert.match(await other.locator('.note').innerText(), /no setter’s sheet.*qualified setter/s);
    const words = (t) => t.replace(/\s+/g, ' ');
    assert.equal(words(await other.locator('#stages').innerText()), words(before));
    // It plays, stops, and shows each place that is asked for.
    await other.locator('#play').click();
    await other.waitForFunction(() => Number(document.querySelector('#moment').value) > 20);
    await other.locator('#play').click();
    assert.equal(await other.locator('#play').innerText(), 'Play');
    for (const at of [0, 298.7, 500, 900]) {
      await other.locator('#moment').evaluate((e, t) => { e.value = String(t); e.dispatchEvent(new Event('input')); }, at);
      await other.waitForFunction((t) => Math.abs(Number(/^[\d.]+/.exec(document.querySelector('#moment-text').value)?.[0]) - t) < 6 && document.querySelector('#moment-state b'), at);
    }
    for (const width of [700, 1100, 1600]) {
      await other.setViewportSize({ width, height: 900 });
      assert.ok(await other.evaluate(() => document.documentElement.scrollWidth <= innerWidth), `wider than ${width}`);
      const least = await other.evaluate(() => Math.min(...[...document.querySelectorAll('svg text')].filter((e) => e.checkVisibility()).map((e) => parseFloat(getComputedStyle(e).fontSize) * e.getScreenCTM().d)));
      assert.ok(least > 10.9, `text of ${least} px at ${width}`);
      await other.screenshot({ path: path.join(folder, `share-${width}.png`), fullPage: width === 1100 });
    }
    await other.emulateMedia({ colorScheme: 'dark' });
    await other.screenshot({ path: path.join(folder, 'share-dark.png') });
    // On A4 landscape, without its margins, the first sheet has the diagram.
    await other.setViewportSize({ width: 1047, height: 725 });
    await other.emulateMedia({ media: 'print' });
    const bottom = await other.locator('#drawing').evaluate((e) => e.getBoundingClientRect().bottom);
    assert.ok(bottom <= 725, `the diagram ends at ${bottom} of 725`);
    await other.screenshot({ path: path.join(folder, 'share-print.png'), fullPage: true });
  });
  // What is shown at a place is what the page shows there.
  const state = async (p) => {
    const old = await p.locator('#moment-state').innerText();
    await p.locator('#moment').evaluate((e) => { e.value = '498'; e.dispatchEvent(new Event('input')); });
    await p.waitForFunction(() => /^498/.test(document.querySelector('#moment-text').value) && document.querySelector('#moment-state b'));
    await p.waitForFunction((was) => document.querySelector('#moment-state').innerText !== was, old);
    return p.locator('#moment-state').innerText();
  };
  const here = await state(page);
  await opened(page, file, async (other) => assert.equal(await state(other), here));
});

await story('share of a hostile name', demo, async ({ page, planned }) => {
  const job = readFileSync('demo/feed-roller-shaft.yaml', 'utf8').replace('feed roller shaft', "'</script><script>alert(1)</script><!--'");
  await planned(() => page.locator('#files').setInputFiles([named('sharp.yaml', job), named('m.yaml', readFileSync('demo/machines/long-bed-32.yaml', 'utf8'))]));
  const [file] = await saved(page, 'shared-sharp.html');
  await opened(page, file, async (other) => {
    other.on('dialog', () => assert.fail('a script of the job ran'));
    assert.match(await other.locator('#title').innerText(), /<\/script><script>alert\(1\)/);
    assert.equal(await other.locator('script').count(), 2);
  });
});

await story('share of what cannot be made', blocked, async ({ page }) => {
  // The search for changes takes all cores meanwhile.
  page.setDefaultTimeout(120000);
  const [file] = await saved(page, 'shared-unmade.html');
  assert.ok(!/"(price|sets|changes)":/.test(readFileSync(file, 'utf8')), 'no changes with prices');
  await opened(page, file, async (other) => {
    assert.match(await other.locator('#verdict').innerText(), /^NOT FEASIBLE/);
    assert.match(await other.locator('.shortfall').innerText(), /^The plan stops at 320 mm\..*end of its stroke/s);
    assert.equal(await other.locator('#changes').count(), 0);
    await other.screenshot({ path: path.join(folder, 'share-unmade.png') });
  });
});

const german = await serve('demo/probe-needle.yaml', '--lang', 'de');
await story('share in German', german, async ({ page }) => {
  const [file] = await saved(page, 'shared-de.html');
  await opened(page, file, async (other) => {
    assert.equal(await other.locator('html').getAttribute('lang'), 'de');
    assert.match(await other.locator('.note').innerText(), /Einrichteblatt/);
    await other.screenshot({ path: path.join(folder, 'share-de.png'), fullPage: true });
  });
});

// What everyone can see, hear and reach: light and dark, checked by axe.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { blocked, demo, need, serve, story } from '../harness.mjs';

const AXE = readFileSync(need.resolve('axe-core/axe.min.js'), 'utf8');
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** What axe finds wrong on the page as it is. */
async function wrong(page) {
  await page.evaluate(AXE);
  const found = await page.evaluate((tags) => axe.run(document, { runOnly: { type: 'tag', values: tags } }), TAGS);
  return found.violations.flatMap((v) => v.nodes.map((n) => `${v.id}: ${n.target.join(' ')} ${n.any.concat(n.all).map((c) => c.message).join('; ')}`.slice(0, 240)));
}

const bare = await serve();

for (const scheme of ['light', 'dark']) {
  await story(`axe at the start in ${scheme}`, bare, async ({ page, shot }) => {
    await page.emulateMedia({ colorScheme: scheme });
    await page.waitForFunction(() => document.querySelectorAll('.gallery svg').length === 8);
    await page.getByRole('button', { name: 'Plan this shaft' }).click();
    await page.waitForSelector('#start [aria-invalid="true"]');
    for (const width of [1280, 700]) {
      await page.setViewportSize({ width, height: 800 });
      await shot(String(width));
      assert.deepEqual(await wrong(page), [], `at ${width}`);
    }
  });

  await story(`axe in ${scheme}`, demo, async ({ page, shot, planned, field }) => {
    await page.emulateMedia({ colorScheme: scheme });
    await page.waitForFunction((s) => document.documentElement.dataset.scheme === s, scheme);
    const look = async (what) => {
      await shot(what);
      assert.deepEqual(await wrong(page), [], what);
    };
    await page.waitForSelector('#sampled *');
    await look('plan');
    for (const tab of ['Cutting & limits', 'Machine', 'Text', 'Shaft']) {
      await page.getByRole('tab', { name: tab }).click();
      await look(`tab ${tab.split(' ')[0]}`);
    }
    await page.locator('#results').evaluate((e) => { e.querySelectorAll('details').forEach((d) => { d.open = true; }); e.scrollTop = e.scrollHeight; });
    await look('below');
    await page.locator('#results').evaluate((e) => { e.scrollTop = 0; });
    await page.locator('#hand-grip-2').focus();
    await page.keyboard.press('ArrowLeft');
    await page.waitForFunction(() => /Planned anew.*\d s/.test(document.querySelector('#drag-bar').innerText));
    await look('moved');
    await page.keyboard.press('Escape');
    await planned(async () => { await field('Length, section 4').fill('x'); await page.keyboard.press('Enter'); });
    await look('wrong');
    await planned(() => page.locator('#undo').click());
    await planned(async () => { await field('Length, section 4').fill('331'); await page.keyboard.press('Enter'); });
    await page.locator('#compare-open').click();
    await page.waitForSelector('#compare-stages');
    await look('compared');
    await page.locator('#compare-open').click();
    await page.setViewportSize({ width: 700, height: 900 });
    await page.locator('#drawer').click();
    await look('drawer');
  });

  await story(`axe without a plan in ${scheme}`, blocked, async ({ page, shot }) => {
    await page.emulateMedia({ colorScheme: scheme });
    await page.waitForFunction(() => document.querySelector('#changes li') && !/Searching/i.test(document.querySelector('#changes').innerText));
    await shot('changes');
    assert.deepEqual(await wrong(page), []);
  });
}

await story('schemes', demo, async ({ page }) => {
  const ground = () => page.evaluate(() => getComputedStyle(document.body).backgroundColor);
  const light = await ground();
  await page.locator('#scheme').selectOption('dark');
  assert.notEqual(await ground(), light);
  await page.reload();
  await page.waitForFunction(() => document.body.dataset.planned === '1');
  assert.notEqual(await ground(), light, 'the choice is kept');
  // Paper stays light, and the diagram on it.
  await page.emulateMedia({ media: 'print' });
  const fill = await page.locator('#drawing-view > svg > rect').first().evaluate((e) => getComputedStyle(e).fill);
  assert.equal(fill, 'rgb(255, 255, 255)');
  await page.emulateMedia({ media: 'screen' });
  await page.locator('#scheme').selectOption('system');
  assert.equal(await ground(), light);
});

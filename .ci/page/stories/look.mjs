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

/** Fields whose edge stands out less than 3 to 1 from what is around it, and what is smaller than 24 px. axe does not look at them. */
function faint() {
  const light = (c) => /(\d+), (\d+), (\d+)/.exec(c).slice(1).map((v) => v / 255)
    .map((v) => (v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4)).reduce((sum, v, i) => sum + v * [0.2126, 0.7152, 0.0722][i], 0.05);
  const ground = (e) => { const c = getComputedStyle(e).backgroundColor; return c === 'rgba(0, 0, 0, 0)' ? ground(e.parentElement) : c; };
  const name = (e) => `${e.tagName} ${e.id} ${e.getAttribute('aria-label') ?? e.textContent.slice(0, 20)}`;
  const seen = [...document.querySelectorAll('button, input, select, textarea, summary')].filter((e) => e.checkVisibility());
  const pale = seen.filter((e) => e.matches('input:not([type="range"]), select, textarea')).filter((e) => {
    const [a, b] = [getComputedStyle(e).borderTopColor, ground(e.parentElement)].map(light);
    return Math.max(a, b) / Math.min(a, b) < 3;
  });
  const small = seen.filter((e) => e.getBoundingClientRect().height < 23.9 && !e.matches('[type="range"]'));
  return { seen: seen.length, pale: pale.map(name), small: small.map(name) };
}

await story('fields in sight', demo, async ({ page, shot }) => {
  for (const scheme of ['light', 'dark']) {
    await page.locator('#scheme').selectOption(scheme);
    for (const tab of ['Cutting & limits', 'Machine', 'Text', 'Shaft']) {
      await page.getByRole('tab', { name: tab }).click();
      const { seen, ...wrong } = await page.evaluate(faint);
      assert.ok(seen > 20, `${seen} controls`);
      assert.deepEqual(wrong, { pale: [], small: [] }, `${tab} in ${scheme}`);
      await shot(`${tab.split(' ')[0]} ${scheme}`);
    }
  }
  const outside = await page.evaluate(() => [...document.querySelectorAll('#form .row .tools')].filter((e) => e.getBoundingClientRect().right > e.closest('.row').getBoundingClientRect().right).length);
  assert.equal(outside, 0, 'the buttons of a row stay in it');
});

await story('colours of the system', demo, async ({ page, shot }) => {
  // The worst pair: a dark system and a light page.
  await page.locator('#scheme').selectOption('light');
  await page.emulateMedia({ forcedColors: 'active', colorScheme: 'dark' });
  await page.locator('#wide').click();
  await shot('wide');
  const edge = (selector, side) => page.locator(selector).first().evaluate((e, s) => getComputedStyle(e)[s], side);
  // By its width: the system colours the edge of what the pointer is on, pressed or not.
  assert.deepEqual([await edge('#wide', 'borderTopWidth'), await edge('#print', 'borderTopWidth')], ['2px', '1px'], 'what is pressed is seen');
  await page.locator('#wide').click();
  await shot('plan');
  const canvas = await edge('body', 'backgroundColor');
  assert.equal(await edge('#tabs [aria-selected="false"]', 'borderBottomColor'), canvas, 'only the chosen tab is underlined');
  assert.notEqual(await edge('#tabs [aria-selected="true"]', 'borderBottomColor'), canvas);
  for (const view of ['#machine-view', '#drawing-view']) assert.equal(await edge(view, 'backgroundColor'), 'rgb(255, 255, 255)', view);
  await page.emulateMedia({ forcedColors: 'none', reducedMotion: 'reduce' });
  const moving = await page.evaluate(() => [...document.querySelectorAll('*')].filter((e) => parseFloat(getComputedStyle(e).transitionDuration) > 0).length);
  assert.equal(moving, 0, 'nothing moves for who wants no motion');
});

// At any width nothing is cut off, every text can be read, and the form is at hand.
import assert from 'node:assert/strict';
import { cutOff, demo, serve, story, verdict } from '../harness.mjs';

/** Texts that are shown lower than 11 px. */
function tooSmall() {
  const own = (e) => [...e.childNodes].some((n) => n.nodeType === 3 && n.textContent.trim());
  const px = (e) => parseFloat(getComputedStyle(e).fontSize) * (e instanceof SVGElement ? e.getScreenCTM().d : 1);
  return [...document.querySelectorAll('body *')]
    .filter((e) => own(e) && !e.matches('title, desc, option, script') && e.checkVisibility({ visibilityProperty: true }) && e.getBoundingClientRect().width > 1)
    .filter((e) => px(e) < 10.95).map((e) => `${e.tagName} ${px(e).toFixed(1)} px: ${e.textContent.slice(0, 40)}`);
}

/** Texts of a picture that lie on each other, or run out of it. @param {string} picture selector */
function onEachOther(picture) {
  const svg = document.querySelector(picture);
  if (!svg) return [];
  const all = [...svg.querySelectorAll('text')].map((e) => [e.textContent, e.getBoundingClientRect()]).filter(([, b]) => b.width > 0);
  const edge = svg.getBoundingClientRect();
  const out = all.filter(([, b]) => b.left < edge.left - 1 || b.right > edge.right + 1 || b.bottom > edge.bottom + 1).map(([t]) => `cut off: ${t}`);
  // A line of text is less high than its box.
  const less = (b) => 0.25 * b.height;
  const both = (a, b) => a.left + 1 < b.right && b.left + 1 < a.right && a.top + less(a) < b.bottom - less(b) && b.top + less(b) < a.bottom - less(a);
  return out.concat(all.flatMap(([t, a], i) => all.slice(i + 1).filter(([, b]) => both(a, b)).map(([u]) => `${t} / ${u}`)));
}

/** Waits until the pictures are laid out for the width. */
const fitted = (page) => page.waitForFunction(() => {
  const wide = 1.1 * document.querySelector('#drawing-view > svg').viewBox.baseVal.width;
  return Math.abs(wide - Math.max(616, document.querySelector('#results').clientWidth - 22)) < 0.03 * wide;
});

const PICTURES = ['#drawing-view > svg:first-child', '#machine-view > svg', '#strip > svg', '#sure figure > svg'];

for (const name of ['bobbin-spindle', 'probe-needle', 'feed-roller-shaft', 'collared-rod', 'metering-spindle', 'drive-hub']) {
  const address = await serve(`demo/${name}.yaml`);
  await story(`fits ${name}`, address, async ({ page, shot }) => {
    for (const width of [1600, 1280, 1101, 1000, 853, 700, 360]) {
      await page.setViewportSize({ width, height: 900 });
      await fitted(page);
      await page.evaluate(() => document.querySelectorAll('#sure details').forEach((d) => { d.open = true; }));
      // What is wider than a narrow screen is moved in a box of its own, which is no fault.
      const boxes = /\.sideways|#strip|#first|#rest|figure|details/i;
      const cut = (await page.evaluate(cutOff)).filter((e) => width >= 700 || !boxes.test(e.toLowerCase()) && !/^(svg|table|t[dhr]|tbody|thead|caption|summary|div#(drawing|machine)-view)/i.test(e));
      assert.deepEqual(cut, [], `cut off at ${width}`);
      assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth), `the page is wider than ${width}`);
      assert.deepEqual(await page.evaluate(tooSmall), [], `too small at ${width}`);
      for (const picture of PICTURES) assert.deepEqual(await page.evaluate(onEachOther, picture), [], `${picture} at ${width}`);
      await shot(String(width));
      const drawn = width <= 1100;
      if (drawn) await page.locator('#drawer').click();
      for (const tab of ['Cutting & limits', 'Machine', 'Shaft']) {
        await page.getByRole('tab', { name: tab }).click();
        const inForm = (await page.evaluate(cutOff)).filter((e) => width >= 700 || !/sideways/.test(e) && !/^(svg|table|t[dhr]|tbody|thead|caption|details|summary|div#(drawing-view|machine-view|first|rest)|figure)/i.test(e));
        assert.deepEqual(inForm, [], `${tab} is cut off at ${width}`);
        assert.deepEqual(await page.evaluate(tooSmall), [], `${tab}: too small at ${width}`);
      }
      if (drawn) {
        await shot(`${width}-form`);
        await page.locator('#drawer-close').click();
      }
    }
    await page.evaluate(() => document.querySelector('#results').scrollTo(0, 1e6));
    await shot('360-below');
  });
}

await story('drawer', demo, async ({ page, shot, planned, field }) => {
  await page.setViewportSize({ width: 1000, height: 800 });
  await fitted(page);
  const [button, length] = [page.locator('#drawer'), field('Length, section 4')];
  await length.waitFor({ state: 'hidden' });
  // By keyboard: it opens with the focus in it, and gives the focus back.
  await button.focus();
  await page.keyboard.press('Enter');
  assert.equal(await button.getAttribute('aria-expanded'), 'true');
  await length.waitFor({ state: 'visible' });
  assert.equal(await page.evaluate(() => document.activeElement.getAttribute('role')), 'tab');
  await planned(async () => { await length.fill('335'); await length.press('Enter'); });
  assert.match(await page.locator('#stages').innerText(), /968/, 'the plan behind it follows');
  await shot('open');
  await page.keyboard.press('Escape');
  await length.waitFor({ state: 'hidden' });
  assert.equal(await page.evaluate(() => document.activeElement.id), 'drawer');
  // An error is told at the verdict, which leads to its field.
  await button.click();
  await planned(async () => { await length.fill('x'); await length.press('Enter'); });
  await page.mouse.click(900, 500);
  await length.waitFor({ state: 'hidden' });
  assert.match(await verdict(page), /^INPUT ERROR/);
  await page.getByRole('button', { name: 'Show the error' }).click();
  await length.waitFor({ state: 'visible' });
  assert.equal(await length.evaluate((e) => e === document.activeElement), true);
  // With room for both the form is always there.
  await page.setViewportSize({ width: 1280, height: 800 });
  assert.equal(await page.locator('#drawer').isVisible(), false);
  assert.equal(await length.isVisible(), true);
});

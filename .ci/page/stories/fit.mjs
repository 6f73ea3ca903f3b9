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

/** What is too low for a finger, or runs out of the row of the form that it belongs to. */
function badForFinger() {
  const all = [...document.querySelectorAll('button, select, summary, [role="tab"], input:not([hidden])')]
    .filter((e) => e.checkVisibility({ visibilityProperty: true }) && e.getBoundingClientRect().width > 1).map((e) => [e, e.getBoundingClientRect()]);
  const out = (e, b) => e.closest('#form, .row') && b.right > e.closest('#form .row, #form').getBoundingClientRect().right + 1;
  return all.filter(([e, b]) => b.height < 39.5 || b.width < 23.5 || out(e, b))
    .map(([e, b]) => `${e.tagName}#${e.id} ${e.textContent.slice(0, 20)} ${Math.round(b.width)} x ${Math.round(b.height)}, right ${Math.round(b.right)}`);
}

for (const [width, height] of [[820, 1180], [1180, 820]]) {
  await story(`touch ${width}`, demo, async ({ page, shot }) => {
    await fitted(page);
    const cdp = await page.context().newCDPSession(page);
    const touch = (type, ...touchPoints) => cdp.send('Input.dispatchTouchEvent', { type, touchPoints });
    const swipe = async ({ x, y }, dx, dy) => {
      await touch('touchStart', { x, y });
      for (let i = 1; i <= 10; i += 1) await touch('touchMove', { x: x + dx * i / 10, y: y + dy * i / 10 });
      await touch('touchEnd');
    };
    const middle = async (selector) => {
      const b = await page.locator(selector).first().boundingBox();
      return { x: b.x + b.width / 2, y: b.y + b.height / 2 };
    };
    // A finger on a picture moves the page, as everywhere.
    const results = page.locator('#results');
    for (const picture of ['#machine-view > svg', '.overlay']) {
      await swipe(await middle(picture), 0, -150);
      await page.waitForFunction(() => document.querySelector('#results').scrollTop > 50);
      await results.evaluate((e) => e.scrollTo(0, 0));
    }
    // The slider and a hand-over follow a finger.
    const moment = await page.locator('#moment').boundingBox();
    await swipe({ x: moment.x + 8, y: moment.y + moment.height / 2 }, moment.width / 3, 0);
    await page.waitForFunction(() => Number(document.querySelector('#moment').value) > 200);
    const hand = page.locator('#hand-hand_over-2');
    const was = Number(await hand.getAttribute('aria-valuenow'));
    await hand.scrollIntoViewIfNeeded();
    await swipe(await middle('#hand-hand_over-2'), 25, 0);
    await page.getByRole('button', { name: 'Move back' }).waitFor();
    assert.ok(Number(await hand.getAttribute('aria-valuenow')) > was + 10, 'the hand-over has moved');
    assert.deepEqual(await page.evaluate(badForFinger), []);
    await page.getByRole('button', { name: 'Move back' }).tap();
    const drawn = width <= 1100;
    if (drawn) await page.locator('#drawer').tap();
    for (const tab of ['Cutting & limits', 'Machine', 'Shaft']) {
      await page.getByRole('tab', { name: tab }).tap();
      assert.deepEqual(await page.evaluate(badForFinger), [], tab);
      await shot(tab);
    }
  }, { viewport: { width, height }, hasTouch: true, isMobile: true });
}

await story('compares on narrow screens', demo, async ({ page, shot }) => {
  await page.locator('#compare-open').click();
  await page.waitForFunction(() => Number(document.body.dataset.compared ?? 0) > 0);
  for (const width of [1100, 1000, 700, 360]) {
    await page.setViewportSize({ width, height: 900 });
    // The two pictures are laid out anew.
    await page.waitForFunction(() => [...document.querySelectorAll('figure.compared svg text')]
      .every((e) => parseFloat(getComputedStyle(e).fontSize) * e.getScreenCTM().d >= 10.95));
    assert.deepEqual(await page.evaluate(tooSmall), [], `too small at ${width}`);
    const room = await page.evaluate(() => [document.documentElement.scrollWidth - innerWidth, document.documentElement.scrollHeight - innerHeight]);
    assert.deepEqual(room, [0, 0], `the page itself can be moved at ${width}`);
    await shot(String(width));
  }
});

// How soon an edit is answered.
import { demo, story } from '../harness.mjs';

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

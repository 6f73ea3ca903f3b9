// Nothing is cut off, at any width.
import assert from 'node:assert/strict';
import { cutOff, demo, serve, story } from '../harness.mjs';

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

// The page in a real browser. Called by .ci/page/run.sh as
//     node .ci/page/browser.mjs PROGRAM FOLDER [STORY…]
// FOLDER gets a picture of every state, to be looked at. With PAGE_ASSETS=src/page/assets the page's files and its English texts are
// taken from the sources in place of those in the program, so that a change of them needs no build.
import { readdirSync } from 'node:fs';
import { end } from './harness.mjs';

for (const file of readdirSync(new URL('stories', import.meta.url)).sort()) await import(`./stories/${file}`);
await end();

// The page in a real browser: what every story needs. A story opens the page, does something, and looks.
import assert from 'node:assert/strict';
import { spawn } from 'node:child_process';
import { mkdirSync, readFileSync, readdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';

const [program, shots] = process.argv.slice(2, 4).map((p) => path.resolve(p));
/** Folder of the pictures. */
export const folder = shots;
const stories = process.argv.slice(4);
/** Packages of the checks of the page. */
export const need = createRequire(path.resolve(process.env.PLAYWRIGHT ?? folder, 'x.js'));
const { chromium } = need('playwright-core');
mkdirSync(folder, { recursive: true });

const started = [];
/** Starts the page and gives its address. */
export async function serve(...args) {
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

/** The English texts of the page in the sources, as members of a script's object. */
function newTexts() {
  const from = path.join(process.env.PAGE_ASSETS, '../../lang/en');
  const lines = readdirSync(from).filter((f) => f.startsWith('page')).flatMap((f) => readFileSync(path.join(from, f), 'utf8').split('\n'));
  return lines.map((l) => /^(page-[\w-]+) = (.*)$/.exec(l)).filter(Boolean)
    .map(([, key, text]) => `${JSON.stringify(key)}: ${JSON.stringify(text.replace(/\{\s*\$([\w-]+)\s*\}/g, '{$$$1}'))},`).join('');
}

let failed = 0;
/** One story on a page of its own; what the browser complains about is a failure too. @param {object} [screen] another than the usual one */
export async function story(name, address, tell, screen = {}) {
  if (stories.length && !stories.includes(name)) return;
  const context = await browser.newContext({ viewport: { width: 1280, height: 720 }, acceptDownloads: true, ...screen });
  const page = await context.newPage();
  const complaints = [];
  page.on('console', (m) => { if (m.type() === 'error' && !/status of (4|5)\d\d/.test(m.text())) complaints.push(m.text()); });
  page.on('pageerror', (e) => complaints.push(String(e)));
  page.on('request', (r) => { if (!/^(blob|data):/.test(r.url()) && !r.url().startsWith(address)) complaints.push(`asks elsewhere: ${r.url()}`); });
  if (process.env.PAGE_ASSETS) {
    const kinds = { '.js': 'text/javascript', '.css': 'text/css', '.html': 'text/html', '.svg': 'image/svg+xml' };
    await page.route(/\/([\w-]+\.(js|css|svg|html))?$/, async (route) => {
      const file = new URL(route.request().url()).pathname.slice(1) || 'index.html';
      const response = await route.fetch();
      // The texts are no file: the program makes them of its table. New English texts of the sources are put in.
      if (file === 'texts.js') return route.fulfill({ response, body: (await response.text()).replace('};\nexport const NAMES', () => `,${newTexts()}};\nexport const NAMES`) });
      return route.fulfill({ response, status: 200, contentType: kinds[path.extname(file)], body: readFileSync(path.join(process.env.PAGE_ASSETS, file)) });
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

/** The line of the verdict. */
export const verdict = (page) => page.locator('#verdict').innerText();
/** The address of a job that can be made. */
export const demo = await serve('demo/feed-roller-shaft.yaml');
/** The address of a job that cannot be made. */
export const blocked = await serve('demo/collared-rod.yaml');


/** A YAML file to open. @param {string} name @param {string} text */
export const named = (name, text) => ({ name, mimeType: 'application/yaml', buffer: Buffer.from(text) });

/** Holds back the answers to a path until it is let go. */
export async function heldBack(page, url) {
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

/** What runs out of the page, or is hidden by what it stands in. */
export function cutOff() {
  const hides = (e) => getComputedStyle(e).overflowX !== 'visible' && e.clientWidth && e.scrollWidth > e.clientWidth + 1;
  return [...document.querySelectorAll('body *')]
    .filter((e) => !e.matches('input, select, textarea') && !e.closest('svg') && e.checkVisibility() && e.getBoundingClientRect().width > 1)
    .filter((e) => e.getBoundingClientRect().right > innerWidth + 1 || hides(e)).map((e) => `${e.tagName}#${e.id}.${e.className} ${e.textContent.slice(0, 40)}`);
}

/** Ends the browser and the pages. Fails if a story failed. */
export async function end() {
  await browser.close();
  for (const child of started) child.kill();
  if (failed) {
    console.log(`${failed} stories failed`);
    process.exit(1);
  }
}

// A plan as one HTML file that plays without a server. It holds the plan, the state of the machine at many places, and the parts of this
// page that show them; no job file, no machine file, no prices.

import { ask, Refused } from './api.js';
import { asked, partedAt } from './machine.js';

/** The scripts in the file, each after those that it uses. `shared_api` stands for the server. */
const SCRIPTS = ['dom', 'texts', 'words', 'spoken', 'scheme', 'shared_api', 'machine', 'moment', 'results', 'shared'];
const STANDS_FOR = { api: 'shared_api' };
const STYLES = ['style', 'fit', 'dark', 'shared'];

/** Number of places at which the machine is shown, about, and of points of a bent bar, at most. */
const PLACES = 160;
const POINTS = 32;

/** Turned lengths at which the machine is shown, mm: evenly spread, and both sides of each stop. @param {any} plan */
function places(plan) {
  const end = partedAt(plan);
  const step = Math.max(0.01, Number((end / PLACES).toPrecision(1)));
  const even = Array.from({ length: Math.floor(end / step) + 1 }, (_, i) => Number((i * step).toFixed(4)));
  const stops = [...plan.hand_overs_mm, ...plan.headstock_regrips_mm].flatMap((at) => [at, at + Math.min(0.05, step / 4)]);
  return [...new Set([...even, ...stops, end].filter((at) => at <= end))].sort((a, b) => a - b);
}

const rounded = (x) => Number(x.toPrecision(4));

/** What is shown of a state. @param {any} found what `/at` gave */
function shown(found) {
  const every = Math.max(1, Math.ceil((found.shape.length - 1) / (POINTS - 1)));
  const shape = found.shape.filter((_, i) => i % every === 0 || i === found.shape.length - 1)
    .map((p) => ({ at_mm: rounded(p.at_mm), weight_um: rounded(p.weight_um), cut_um: rounded(p.cut_um) }));
  const checks = [...found.checks].sort((a, b) => b.utilisation - a.utilisation).slice(0, 2).map(({ check, utilisation }) => ({ check, utilisation }));
  const numbers = ['rpm', 'unsupported_mm', 'l_over_d', 'stiffness_n_per_um', 'cut_deflection_um', 'sag_um'];
  return { ...Object.fromEntries(numbers.map((key) => [key, found[key]])), checks, shape };
}

/** The states of the machine, at each place what is shown of it. @param {any} texts @param {any} plan */
async function states(texts, plan) {
  const all = [];
  for (const at of places(plan)) {
    const question = asked(texts, plan, at);
    try {
      all.push({ at, found: question && shown(await ask('/at', question, 'share')) });
    } catch (error) {
      // A place without an answer is shown without one.
      if (!(error instanceof Refused)) throw error;
      all.push({ at, found: null });
    }
  }
  return all;
}

/** A module as a function that gives what it exports, so that all stand in one script. @param {string} name @param {string} text */
function wrapped(name, text) {
  const exported = [...text.matchAll(/^export (?:async )?(?:function|const|class) (\w+)/gm)].map(([, what]) => what);
  const from = (file) => `modules.${STANDS_FOR[file] ?? file}`;
  const body = text.replace(/^import \* as (\w+) from '\.\/(\w+)\.js';$/gm, (_, as, file) => `const ${as} = ${from(file)};`)
    .replace(/^import \{([^}]*)\} from '\.\/(\w+)\.js';$/gm, (_, what, file) => `const {${what.replaceAll(' as ', ': ')}} = ${from(file)};`)
    .replace(/^export /gm, '');
  return `modules.${name} = (() => {\n${body}\nreturn { ${exported.join(', ')} };\n})();\n`;
}

const file = async (name) => (await fetch(`/${name}`)).text();
const escaped = (text) => text.replace(/[&<>"]/g, (c) => `&#${c.charCodeAt(0)};`);

/**
 * What of an answer is in the file. Prices stay in the house, and so does what the order takes. Of what is missing the reason stays; the
 * changes that would help have prices. @param {any} answer
 */
function told({ plan, summary, look_at, drawing, strip, sure, inputs }) {
  const { trace, shortfall: s, ...rest } = plan;
  const shortfall = s && { farthest_mm: s.farthest_mm, text: s.text };
  return { errors: [], settled: true, summary, look_at, drawing, strip, sure, inputs,
    plan: { ...rest, shortfall, quote: { ...plan.quote, cost: null }, order: null, limit_costs: [] } };
}

/**
 * The file of a plan: its name and its text.
 * @param {any} texts @param {any} answer the whole answer of a plan
 */
export async function shared(texts, answer) {
  const { plan } = answer;
  const scripts = await Promise.all(SCRIPTS.map(async (name) => wrapped(name, await file(`${name}.js`))));
  const styles = await Promise.all(STYLES.map((name) => file(`${name}.css`)));
  const script = `'use strict';\nconst modules = {};\n${scripts.join('')}`;
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', new TextEncoder().encode(script)));
  const allowed = `default-src 'none'; style-src 'unsafe-inline'; script-src 'sha256-${btoa(String.fromCharCode(...digest))}'; base-uri 'none'; form-action 'none'`;
  const data = JSON.stringify({ answer: told(answer), states: await states(texts, plan) }).replaceAll('<', '\\u003c');
  const body = (await file('shared.html')).replace(/<script[^>]*><\/script>\s*/g, '');
  const html = body
    .replace('<!-- head -->', () => `<meta http-equiv="Content-Security-Policy" content="${allowed}">\n<title>${escaped(plan.job)}</title>\n<style>\n${styles.join('')}</style>`)
    .replace('<!-- data -->', () => `<script type="application/json" id="data">${data}</script>\n<script type="module">${script}</script>`);
  const name = plan.job.replace(/[^A-Za-z0-9]+/g, '-').replace(/^-|-$/g, '') || 'plan';
  return { name: `${name}.plan.html`, blob: new Blob([html], { type: 'text/html' }) };
}

// Texts, numbers and names in the form in which people read them.

import { CHECKS, DECIMAL_MARK, NAMES, TEXTS } from './texts.js';

/**
 * A text of the table, with its arguments put in by name.
 * @param {string} key
 * @param {Record<string, string|number>} [given]
 * @returns {string}
 */
export function say(key, given = {}) {
  return (TEXTS[key] ?? key).replace(/\{\$(\w+)\}/g, (whole, name) => String(given[name] ?? whole));
}

/** A text of the program as a sentence of its own: its first letter is a capital. @param {string} text */
export const sentence = (text) => text.charAt(0).toUpperCase() + text.slice(1);

/** What is wrong and what to do, as sentences. @param {{what: string, help?: string|null}} problem */
export function advice({ what, help }) {
  return sentence(help ? say('page-problem-with-help', { what, help }) : say('page-problem', { what }));
}

/** A number written with a point, as the language writes it. @param {string} written */
const told = (written) => written.replace('.', DECIMAL_MARK);

/** A number with exactly some decimals. @param {number} x @param {number} decimals */
export const fixed = (x, decimals) => told(x.toFixed(decimals));

/** A number with at most some decimals, no zeros at the end. @param {number|null|undefined} x @param {number} [decimals] */
export const num = (x, decimals = 1) => told(plain(x, decimals));

/** As `num`, with a point in every language: for what a program reads. @param {number|null|undefined} x @param {number} [decimals] */
export function plain(x, decimals = 1) {
  if (x === null || x === undefined || !Number.isFinite(x)) return '–';
  const written = x.toFixed(decimals);
  return written.includes('.') ? written.replace(/\.?0+$/, '') : written;
}

/**
 * A number as a file has it: with a point. Where the language writes a point, a comma before exactly three digits may group thousands;
 * it stays, and the message about it asks.
 * @param {string} typed
 */
export function pointed(typed) {
  const grouped = DECIMAL_MARK === '.' && /^\s*[-+]?[1-9]\d{0,2},\d{3}(?!\d)/.test(typed);
  return grouped ? typed : typed.replace(/^(\s*[-+]?\d*),(\d+)(?=\D*$)/, (_, whole, rest) => `${whole}.${rest}`);
}

/** A speed as a whole number, rounded down so that it is never above the limit, rev/min. @param {number} rpm */
export const speed = (rpm) => num(Math.floor(rpm * (1 + 1e-9)), 0);

/** A number with three significant digits. @param {number} x */
export function figures(x) {
  if (!Number.isFinite(x)) return '–';
  return x === 0 ? '0' : Math.abs(x) >= 100 ? x.toFixed(0) : told(String(Number(x.toPrecision(3))));
}

/**
 * A share of a limit as a whole percentage, never rounded across the limit: what fails is never shown as 100.
 * @param {number} share
 */
export function percent(share) {
  const all = 100 * share;
  if (all > 100 && all < 100.5) return `${fixed(Math.ceil(all * 10) / 10, 1)} %`;
  if (all >= 99.5 && all < 100) return `${fixed(Math.floor(all * 10) / 10, 1)} %`;
  return `${all.toFixed(0)} %`;
}

/** Whether there is a plan, sure or at risk. @param {any} plan */
export const made = (plan) => plan.verdict !== 'infeasible';

/** The word of a verdict. @param {string} verdict */
export const verdictName = (verdict) =>
  ({ feasible: say('page-verdict-feasible'), at_risk: say('page-verdict-at-risk') })[verdict] ?? say('page-verdict-not-feasible');

/** A key in words, where it has none: `counter_spindle_travel`. @param {string} key */
const spelled = (key) => key.replace('counter_spindle', 'counter-spindle').replaceAll('_', ' ');

/** A key of a plan in words. @param {string} key @returns {string} */
export const words = (key) => NAMES[key] ?? spelled(key);

/** Keys of a file that stand in words in the form; the others stand as they are, so that one finds them in the file. */
const IN_WORDS = ['hand_over', 'regrip'];

/** A key of a file, to be found again in the file. @param {string} key @returns {string} */
export const keyName = (key) => (IN_WORDS.includes(key) ? words(key) : spelled(key));

/** The name of a check in words; a rule that is no check as a key. @param {string} name @returns {string} */
export const checkName = (name) => CHECKS[name] ?? words(name);

/** The largest of 1, 2 or 5 times a power of ten that is not above a number. @param {number} x */
export function round125(x) {
  const power = 10 ** Math.floor(Math.log10(x));
  const lead = x / power;
  return (lead >= 5 ? 5 : lead >= 2 ? 2 : 1) * power;
}

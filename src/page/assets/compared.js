// What differs between two plans and between the files that they were made from. Nothing here knows of the page.

import { made, say } from './words.js';

/**
 * @typedef {import('./tree.js').Value} Value
 * @typedef {'hand_over'|'grip'|'regrip'|'speed'} Moved
 * @typedef {{what: Moved, number: number, was: number|null, is: number|null}} Move `null`: there is none in this plan
 * @typedef {{key: string, was: string|null, is: string|null}} Change `null`: the key is not in this file
 */

/** Places nearer than this are the same, mm: half of what the tables show. */
const SAME_MM = 0.05;
/** Longest text of a list or a map that stands for all that is in it. */
const SHORT = 40;

/** Pairs two lists by order; what has no partner is paired with nothing. */
function pairs(was, is) {
  return Array.from({ length: Math.max(was.length, is.length) }, (_, i) => [was[i] ?? null, is[i] ?? null, i]);
}

/** Highest speed of a stage as the sheet has it, rounded down, rev/min. @param {any} stage */
export const topSpeed = (stage) => Math.floor((stage?.rpm_max ?? 0) * (1 + 1e-9));

/**
 * Stops, grips and speeds that differ, matched by order: from the front, and a re-grip by its number.
 * @param {any} was @param {any} is @returns {Move[]}
 */
export function moves(was, is) {
  /** @type {Move[]} */
  const found = [];
  const put = (what, number, a, b, same = SAME_MM) => {
    if (a === null && b === null) return;
    if (a === null || b === null || Math.abs(a - b) >= same) found.push({ what, number, was: a, is: b });
  };
  // A job that cannot be made has stages up to where it ends, and they are no plan.
  if (!made(was) || !made(is)) return found;
  for (const [a, b, i] of pairs(was.stages, is.stages)) {
    if (i > 0) put('hand_over', i + 1, a && a.from_mm, b && b.from_mm);
    put('grip', i + 1, a?.grip?.nose_mm ?? null, b?.grip?.nose_mm ?? null);
  }
  for (const [a, b, i] of pairs(was.headstock_regrips_mm, is.headstock_regrips_mm)) put('regrip', i + 1, a, b);
  for (const [a, b, i] of pairs(was.stages, is.stages)) if (a && b) put('speed', i + 1, topSpeed(a), topSpeed(b), 1);
  return found;
}

/** The check nearest to its limit in a whole plan. @param {any} plan */
export function tightest(plan) {
  const all = plan.stages.flatMap((stage) => stage.checks);
  return all.reduce((worst, check) => (worst && worst.utilisation >= check.utilisation ? worst : check), null);
}

/**
 * @typedef {{name: string, value: number|null, decimals: number, unit: string, good: 1|-1, check?: string, share?: boolean, ifBroken?: boolean}} Figure
 * `good`: 1 if more is better, -1 if less is. `ifBroken`: told if one of the plans cannot be made
 */

/** The figures of a plan, in the order of the table. @param {any} plan @returns {Figure[]} */
export function figuresOf(plan) {
  const ok = made(plan);
  const of = (name, value, good, decimals = 0, unit = '', more = {}) => ({ name, value: ok ? value ?? null : null, decimals, unit, good, ...more });
  const worst = tightest(plan);
  const cost = plan.quote.cost;
  return [
    { ...of(say('page-compare-turned-to'), null, 1, 1, 'mm'), value: ok ? plan.length_mm : plan.shortfall?.farthest_mm ?? null, ifBroken: true },
    of(say('page-cycle-time'), plan.cycle?.steady_s ?? plan.time_s.total, -1, 1, 's'),
    of(say('page-compare-stages-number'), plan.stages.length, -1), of(say('page-time-hand-overs'), plan.hand_overs_mm.length, -1),
    of(say('page-time-regrips'), plan.headstock_regrips_mm.length, -1), of(say('page-compare-witness-lines'), plan.witnesses.length, -1),
    of(say('page-compare-unsupported'), Math.max(0, ...plan.stages.map((stage) => stage.unsupported_max_mm)), -1, 1, 'mm'),
    of(say('page-closest-check'), worst?.utilisation, -1, 1, '%', { check: worst?.check, share: true }),
    of(say('page-compare-parts-that-hold'), plan.scatter ? 100 * plan.scatter.good_share : null, 1, 1),
    of(say('page-parts-per-bar'), plan.quote.pieces_per_bar, 1),
    ...(cost ? [of(say('page-cost'), cost.total, -1, 2, cost.currency)] : []),
  ];
}

/**
 * A number as the table shows it, so that what looks equal is equal.
 * @param {Figure} figure
 */
export function shownValue({ value, decimals, share }) {
  if (value === null) return null;
  const by = 10 ** decimals;
  return Math.round((share ? 100 * value : value) * by) / by;
}

/** The difference of two figures as shown; null if it cannot be told. @param {Figure|undefined} was @param {Figure|undefined} is */
export function difference(was, is) {
  const [a, b] = [was, is].map((f) => (f ? shownValue(f) : null));
  if (a === null || b === null || was?.unit !== is?.unit) return null;
  const by = Number((b - a).toFixed(is?.decimals ?? 0));
  return { by, better: by === 0 ? 0 : Math.sign(by) * (is?.good ?? 1) };
}

// -- The files.

const inside = (value) => value.entries ?? [];
/** The value as one text: a scalar, or a short list or map without names in it. @param {Value} value */
function leaf(value) {
  if (value.kind === 'scalar') return true;
  return value.text !== '' && inside(value).every((e) => e.key === undefined && e.kind === 'scalar');
}

/** A value of any kind as one text. @param {Value} value @returns {string} */
function written(value) {
  if (value.text) return value.text.length <= SHORT * 3 ? value.text : `${value.text.slice(0, SHORT * 3)}…`;
  return value.kind === 'map' ? `{${inside(value).map((e) => `${e.key}: ${written(e)}`).join(', ')}}` : `[${inside(value).map(written).join(', ')}]`;
}

/**
 * Items of two lists that belong together. Equal items are kept in order; between them what was taken out and what was
 * put in is paired by order, so that a section put in does not move all sections behind it.
 * @param {Value[]} was @param {Value[]} is @returns {[Value|null, Value|null, number][]}
 */
function aligned(was, is) {
  const [a, b] = [was, is].map((list) => list.map((item) => JSON.stringify(item)));
  const longest = a.map(() => new Int32Array(b.length + 1));
  longest.push(new Int32Array(b.length + 1));
  for (let i = a.length - 1; i >= 0; i -= 1) {
    for (let k = b.length - 1; k >= 0; k -= 1) {
      longest[i][k] = a[i] === b[k] ? longest[i + 1][k + 1] + 1 : Math.max(longest[i + 1][k], longest[i][k + 1]);
    }
  }
  /** @type {[Value|null, Value|null, number][]} */
  const out = [];
  let [i, k] = [0, 0];
  /** Items that are in one list only, up to the next equal pair. */
  let [gone, come] = [/** @type {number[]} */ ([]), /** @type {number[]} */ ([])];
  const flush = () => {
    for (const [x, y] of pairs(gone, come)) out.push([x === null ? null : was[x], y === null ? null : is[y], (y ?? x) + 1]);
    [gone, come] = [[], []];
  };
  while (i < a.length || k < b.length) {
    if (i < a.length && k < b.length && a[i] === b[k]) {
      flush();
      [i, k] = [i + 1, k + 1];
    } else if (k >= b.length || (i < a.length && longest[i + 1][k] >= longest[i][k + 1])) {
      gone.push(i);
      i += 1;
    } else {
      come.push(k);
      k += 1;
    }
  }
  flush();
  return out;
}

/**
 * What differs between two files: paths with both values. Items of lists are counted from 1, as in the form.
 * @param {Value|null|undefined} was @param {Value|null|undefined} is @param {string} [key] @returns {Change[]}
 */
export function changes(was, is, key = '') {
  if (!was && !is) return [];
  if (!was || !is) return [{ key, was: was ? written(was) : null, is: is ? written(is) : null }];
  if (was.kind !== is.kind || leaf(was) || leaf(is)) {
    const [a, b] = [written(was), written(is)];
    return a === b ? [] : [{ key, was: a, is: b }];
  }
  if (was.kind === 'list') return aligned(inside(was), inside(is)).flatMap(([a, b, number]) => changes(a, b, `${key}[${number}]`));
  const keys = [...new Set([...inside(was), ...inside(is)].map((e) => e.key))];
  const of = (tree, name) => inside(tree).find((e) => e.key === name) ?? null;
  return keys.flatMap((name) => changes(of(was, name), of(is, name), key ? `${key}.${name}` : String(name)));
}

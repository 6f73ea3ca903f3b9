// Values of two numbers as two plain fields: a range, a taper, a groove's width and depth, both ends of a section, a wish with its nose.

import { say } from './words.js';

/**
 * The two values of a key: their names, and how the file writes them. `map`: by these keys, or the first alone. `always`: also while there
 * is no value yet. `words`: the key may also have a word, which is typed into the first field.
 * @typedef {{names: string[], map?: string[], always?: boolean, words?: boolean}} Two
 */

/** @type {Record<string, Two>} */
const TWO = {
  range: { names: [say('page-two-smallest'), say('page-two-largest')], always: true },
  taper: { names: [say('page-two-front'), say('page-two-rear')], always: true },
  keyseat: { names: [say('page-two-width'), say('page-two-depth')], always: true },
  keyway: { names: [say('page-two-width'), say('page-two-depth')], always: true },
  vc: { names: [say('page-two-lowest'), say('page-two-highest')] },
  tolerance: { names: [say('page-two-lower'), say('page-two-upper')], words: true },
  turned_tolerance: { names: [say('page-two-lower'), say('page-two-upper')], words: true },
  never_grip: { names: [say('page-two-from'), say('page-two-to')], words: true },
  chamfer: { names: [say('page-two-front'), say('page-two-rear')], map: ['front', 'rear'] },
  radius: { names: [say('page-two-front'), say('page-two-rear')], map: ['front', 'rear'] },
  hand_over_at: { names: [say('page-two-at'), say('page-two-nose')], map: ['at', 'nose'], always: true },
};

/**
 * How a value is shown in two fields, or null if it is not: the steps to its values, their names and texts.
 * @param {string} key @param {import('./tree.js').Value|undefined} value
 */
export function two(key, value) {
  const of = TWO[key];
  if (!of) return null;
  const inside = value?.entries ?? [];
  const plain = inside.every((e) => e.kind === 'scalar');
  const steps = of.map ?? [0, 1];
  const shown = (texts) => ({ steps, names: of.names, texts });
  if (value?.kind === 'list' && !of.map) return inside.length === 2 && plain ? shown(inside.map((e) => e.text)) : null;
  if (value?.kind === 'map' && of.map) {
    const known = inside.every((e) => of.map?.includes(e.key ?? ''));
    return known && plain ? shown(of.map.map((step) => inside.find((e) => e.key === step)?.text ?? '')) : null;
  }
  const single = value?.kind === 'scalar' && of.map && of.always;
  return of.always && (!value || single) ? shown([value?.text ?? '', '']) : null;
}

/** The whole value as a file has it. @param {string} key @param {string[]} texts of both fields */
export function whole(key, texts) {
  const of = TWO[key];
  const [first, second] = texts.map((t) => t.trim());
  if (!first && !second) return '';
  if (of.map) return second ? `{${of.map.map((step, i) => [step, [first, second][i]]).filter(([, text]) => text).map((p) => p.join(': ')).join(', ')}}` : first;
  // A word such as a class of tolerance stands alone.
  if (of.words && /^[^\d+.-]/.test(first)) return first;
  return `[${[first, second].map((text) => text || '""').join(', ')}]`;
}

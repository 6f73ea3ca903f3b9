// The current texts and earlier ones, for undo and redo. They survive a reload; each tab has its own.

import { keyName, say } from './words.js';

/** @typedef {import('./api.js').Texts} Texts */
/** @typedef {{texts: Texts, what: string}} Step */

const KEY = 'spanhold-2';
const MOST = 200;

/** Lists as the form names them. @type {Record<string, string>} */
const LISTS = { sections: say('page-list-sections'), features: say('page-list-features'), back_work: say('page-rear-end'), collets: say('page-list-collets'),
  hand_over_at: say('page-wish-hand-over'), never_grip: say('page-wish-never-grip') };

/** What edits change, in words, by the list or the key that they change. @param {any[]} edits */
export function told(edits) {
  const [first] = edits;
  const last = String(first.way.filter((step) => typeof step === 'string').at(-1) ?? '');
  const key = LISTS[last] ?? keyName(last);
  const row = (first.index ?? 0) + 1;
  const kinds = new Set(edits.map((e) => e.edit));
  if (kinds.has('swap')) return say('page-did-move', { key, row });
  if (kinds.has('insert') && kinds.has('remove')) return say('page-did-change', { key, row });
  if (kinds.has('insert')) return say('page-did-add', { key, row });
  if (kinds.has('remove')) return say('page-did-remove', { key, row });
  return first.value === '' ? say('page-did-take-out', { key }) : say('page-did-write', { key });
}

/** Undo and redo over whole texts. */
export class History {
  constructor() {
    /** Earlier texts, each with what changed them, in words. @type {Step[]} */
    this.past = [];
    /** Texts that were undone, each with what had led to them. @type {Step[]} */
    this.future = [];
    /** @type {Texts|null} */
    this.now = null;
  }

  /** Takes the texts kept before a reload, if they began with the same texts as the server. @param {Texts} start */
  begin(start) {
    let kept = null;
    try {
      kept = JSON.parse(sessionStorage.getItem(KEY) ?? 'null');
    } catch {
      kept = null;
    }
    const same = kept && JSON.stringify(kept.start) === JSON.stringify(start);
    this.start = start;
    this.now = same ? kept.now : start;
    this.past = same ? kept.past : [];
    this.future = [];
    this.keep();
  }

  /** @param {Texts} texts @param {string} what what changes, in words */
  change(texts, what) {
    if (JSON.stringify(texts) === JSON.stringify(this.now)) return false;
    if (this.now) this.past.push({ texts: this.now, what });
    if (this.past.length > MOST) this.past.shift();
    this.future = [];
    this.now = texts;
    this.keep();
    return true;
  }

  /** Takes back the last change; what it was, or null. */
  undo() {
    return this.step(this.past, this.future);
  }

  /** Makes the change again that was undone last; what it is, or null. */
  redo() {
    return this.step(this.future, this.past);
  }

  /** @param {Step[]} from @param {Step[]} to */
  step(from, to) {
    const step = from.pop();
    if (!step || !this.now) return null;
    to.push({ texts: this.now, what: step.what });
    this.now = step.texts;
    this.keep();
    return step.what;
  }

  keep() {
    try {
      // The last steps are enough after a reload.
      sessionStorage.setItem(KEY, JSON.stringify({ start: this.start, now: this.now, past: this.past.slice(-20) }));
    } catch {
      // The storage is full or forbidden: after a reload the history is lost.
    }
  }
}

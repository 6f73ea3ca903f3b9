// The current texts and earlier ones, for undo and redo. They survive a reload; each tab has its own.

/** @typedef {import('./api.js').Texts} Texts */

const KEY = 'spanhold';
const MOST = 200;

/** Undo and redo over whole texts. */
export class History {
  constructor() {
    /** @type {Texts[]} */
    this.past = [];
    /** @type {Texts[]} */
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

  /** @param {Texts} texts */
  change(texts) {
    if (JSON.stringify(texts) === JSON.stringify(this.now)) return false;
    if (this.now) this.past.push(this.now);
    if (this.past.length > MOST) this.past.shift();
    this.future = [];
    this.now = texts;
    this.keep();
    return true;
  }

  undo() {
    return this.step(this.past, this.future);
  }

  redo() {
    return this.step(this.future, this.past);
  }

  /** @param {Texts[]} from @param {Texts[]} to */
  step(from, to) {
    const texts = from.pop();
    if (!texts || !this.now) return false;
    to.push(this.now);
    this.now = texts;
    this.keep();
    return true;
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

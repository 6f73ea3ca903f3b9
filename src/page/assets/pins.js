// Plans that are kept by a name, as their files. They survive a reload; each tab has its own.

/** @typedef {import('./api.js').Texts} Texts */

const KEY = 'spanhold-pins';
const MOST = 20;

export class Pins {
  constructor() {
    /** @type {{name: string, texts: Texts}[]} */
    this.list = [];
    try {
      const kept = JSON.parse(sessionStorage.getItem(KEY) ?? '[]');
      if (Array.isArray(kept)) this.list = kept.filter((pin) => typeof pin?.name === 'string' && typeof pin?.texts?.job?.text === 'string');
    } catch {
      // Nothing that can be read is kept.
    }
  }

  /** Keeps texts; a pin of the same name is replaced, and of many the oldest goes. @param {string} name @param {Texts} texts */
  add(name, texts) {
    this.list = [...this.list.filter((pin) => pin.name !== name), { name, texts }].slice(-MOST);
    this.keep();
  }

  /** @param {string} name */
  remove(name) {
    this.list = this.list.filter((pin) => pin.name !== name);
    this.keep();
  }

  keep() {
    try {
      sessionStorage.setItem(KEY, JSON.stringify(this.list));
    } catch {
      // The storage is full or forbidden: after a reload the pins are lost.
    }
  }
}

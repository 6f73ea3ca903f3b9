// The answers to texts: the proven plan first, then all of it. What is typed or dragged is planned in advance, without showing it.

import { ask, drop, hand, Refused, Superseded } from './api.js';
import { the } from './dom.js';

/** @typedef {import('./api.js').Texts} Texts */
/**
 * What the server says of some texts: `first` as soon as the plan is proven, `whole` when its sampled parts are counted. Where there is
 * nothing to count they are the same.
 * @typedef {{of: string, channel: string, live: boolean, first: Promise<any>, whole: Promise<any>}} Both
 */

/** Width that the pictures have, px: that of the plan without its edges. While the start screen hides the plan: what it will be. */
export const room = () => Math.floor(the('results').clientWidth || innerWidth - (innerWidth > 1100 ? 384 : 0)) - 22;

/** @param {Texts} texts @param {string} channel @returns {Both} */
function asked(texts, channel) {
  /** @type {any} */
  const both = { of: JSON.stringify(texts), channel, live: true };
  const question = { ...texts, width_px: room() };
  both.first = ask('/first', question, channel);
  both.whole = both.first.then((first) => {
    if (first.settled) return first;
    if (!both.live) throw new Superseded();
    return ask('/plan', question, both.channel);
  });
  // Who waits for the first answer hears of a failure there.
  both.whole.catch(() => {});
  return both;
}

/** Answers kept, so that what is undone is shown at once. */
const KEPT = 12;

export class Answers {
  constructor() {
    /** Whole answers by their texts, the newest last. @type {Map<string, any>} */
    this.kept = new Map();
    /** What was asked in advance, by its channel: what is typed, or a place that is dragged. @type {Map<string, Both>} */
    this.foreseen = new Map();
    /** What is shown, or will be. @type {Both|null} */
    this.wanted = null;
  }

  /** Ends what was asked in advance. @param {string} channel */
  end(channel) {
    const both = this.foreseen.get(channel);
    if (both) both.live = false;
    this.foreseen.delete(channel);
    drop(channel);
  }

  /**
   * Plans in advance what edits would give. The next call on the channel ends this one; a call without edits only does that.
   * @param {string} channel @param {Texts} texts @param {'job'|'machine'} which @param {any[]} edits
   * @returns {Promise<any>} the whole answer, `{refused}` with a problem, or null if it was ended
   */
  async ahead(channel, texts, which, edits) {
    this.end(channel);
    const at = texts[which];
    if (!edits.length || !at) return null;
    /** @type {Both|null} */
    let mine = null;
    try {
      const { text } = await ask('/edit', { text: at, edits }, channel);
      mine = asked({ ...texts, [which]: { ...at, text } }, channel);
      this.foreseen.set(channel, mine);
      return await mine.whole;
    } catch (error) {
      if (mine && this.foreseen.get(channel) === mine) this.foreseen.delete(channel);
      if (error instanceof Superseded) return null;
      if (error instanceof Refused) return { refused: error.problem };
      throw error;
    }
  }

  /** The answers to some texts. If they are known or were asked for in advance, those are taken. @param {Texts} texts @returns {Both} */
  to(texts) {
    if (this.wanted) this.wanted.live = false;
    const of = JSON.stringify(texts);
    const kept = this.kept.get(of);
    if (kept) {
      for (const channel of [...this.foreseen.keys()]) this.end(channel);
      this.keep(of, kept);
      const whole = Promise.resolve(kept);
      this.wanted = { of, channel: '/plan', live: true, first: whole, whole };
      return this.wanted;
    }
    const known = [...this.foreseen.values()].find((both) => both.of === of);
    if (known) {
      // They are wanted now, so what is typed next must not end them.
      this.foreseen.delete(known.channel);
      hand(known.channel, '/plan');
      known.channel = '/plan';
    }
    for (const channel of [...this.foreseen.keys()]) this.end(channel);
    const wanted = known ?? asked(texts, '/plan');
    wanted.whole.then((whole) => this.keep(of, whole)).catch(() => {});
    this.wanted = wanted;
    return wanted;
  }

  /** Forgets what was answered for another width of the pictures. */
  forget() {
    for (const channel of [...this.foreseen.keys()]) this.end(channel);
    this.kept.clear();
  }

  /** @param {string} of @param {any} whole */
  keep(of, whole) {
    this.kept.delete(of);
    this.kept.set(of, whole);
    if (this.kept.size > KEPT) this.kept.delete(this.kept.keys().next().value);
  }
}

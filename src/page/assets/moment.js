// The moment that is shown: the turned length at the slider, under the pointer, or played.

import { ask, latest } from './api.js';
import { the } from './dom.js';
import * as machine from './machine.js';
import { say } from './words.js';

const askMoment = latest((question) => ask('/at', question));

/** Time to play a whole part, s, and the pause at each stop, s. */
const WHOLE_S = 20;
const PAUSE_S = 0.6;

/** Where a tab keeps how fast it plays. */
const KEY = 'spanhold-pace';

export class Moment {
  /** @param {number[]} [places] the only turned lengths that can be shown, mm, from the smallest; left out: all */
  constructor(places) {
    this.places = places;
    /** The plan that is shown, and its texts. @type {any} */
    this.plan = null;
    this.texts = null;
    /** Turned length at the slider, mm. */
    this.at = 0;
    /** Turned length under the pointer, mm. @type {number|null} */
    this.hovered = null;
    /** What was found last. @type {any} */
    this.found = null;
    /** The frame under way while it plays. */
    this.playing = 0;
    the('play').addEventListener('click', () => this.play());
    const pace = the('pace');
    pace.value = sessionStorage.getItem(KEY) ?? '1';
    pace.addEventListener('change', () => sessionStorage.setItem(KEY, pace.value));
    the('moment').addEventListener('input', (event) => this.set(Number(event.target.value)));
    // The machine is drawn for its width.
    let width = 0;
    new ResizeObserver(() => {
      const now = the('machine-view').clientWidth;
      if (now === width) return;
      width = now;
      this.look();
    }).observe(the('machine-view'));
  }

  /** @param {any} texts @param {any} plan */
  show(texts, plan) {
    [this.texts, this.plan] = [texts, plan];
    const end = machine.partedAt(plan);
    the('moment').max = String(end);
    this.set(Math.min(this.at, end));
  }

  /** The next plan is shown from its beginning. */
  back() {
    this.at = 0;
  }

  /** @param {number|null} t */
  hover(t) {
    if (t === this.hovered) return;
    this.hovered = t;
    // The slider follows the pointer, and goes back when it leaves.
    the('moment').value = String(t ?? this.at);
    this.look();
  }

  /** @param {number} t */
  set(t) {
    this.at = t;
    the('moment').value = String(t);
    this.look();
  }

  /** The turned length that is shown, mm. */
  get shown() {
    const t = this.hovered ?? this.at;
    if (!this.places) return t;
    return this.places.reduce((near, p) => (Math.abs(p - t) < Math.abs(near - t) ? p : near));
  }

  async look() {
    if (!this.plan) return;
    const t = this.shown;
    const of = this.plan;
    // The old bent shape stays until the new one arrives, so that the picture does not flicker.
    machine.draw(of, t, this.found);
    machine.tell(of, t, null);
    const question = machine.asked(this.texts, of, t);
    if (!question) return;
    const got = await askMoment(question);
    if (!got || got.refused || of !== this.plan || t !== this.shown) return;
    this.found = got;
    machine.draw(of, t, got);
    machine.tell(of, t, got);
  }

  /** Plays the stages, with a short pause at each stop; or stops playing. */
  play() {
    if (this.playing) {
      cancelAnimationFrame(this.playing);
      this.playing = 0;
    } else if (this.plan) {
      const end = machine.partedAt(this.plan);
      if (this.at >= end - 0.25) this.set(0);
      const stops = [...this.plan.hand_overs_mm, ...this.plan.headstock_regrips_mm, end].sort((a, b) => a - b);
      let last = performance.now();
      let wait = 0;
      let at = this.at;
      // Who wants no motion sees the stops one after another.
      const jumps = matchMedia('(prefers-reduced-motion: reduce)').matches;
      const step = (now) => {
        const passed = (Number(the('pace').value) * Math.min(100, now - last)) / 1000;
        last = now;
        if (wait > 0) wait -= passed;
        else {
          const stop = stops.find((p) => p > at + 1e-6) ?? end;
          at = jumps ? stop : Math.min(stop, at + (passed * end) / WHOLE_S);
          if (at === stop) wait = PAUSE_S;
          this.set(at);
        }
        this.playing = at < end ? requestAnimationFrame(step) : 0;
        if (!this.playing) this.told();
      };
      this.playing = requestAnimationFrame(step);
    }
    this.told();
  }

  told() {
    the('play').textContent = this.playing ? say('page-pause') : say('page-play');
    the('play').title = this.playing ? say('page-pause-title') : say('page-play-title');
  }
}

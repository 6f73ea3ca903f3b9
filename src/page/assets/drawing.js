// The diagram, and over it what the user can move: hand-overs and grips to drag, the turned length under the pointer.

import { h, s, svgOf, the } from './dom.js';
import { partedAt } from './machine.js';
import { advice, checkName, made, num, percent, plain, say, sentence } from './words.js';

/** How long a dragged place rests until it is planned anew, ms. */
const REST_MS = 150;

/** A dragged hand-over this near to a shoulder snaps to it, in units of the drawing. */
const NEAR = 5;

/**
 * @typedef {{what: 'hand_over'|'grip', number: number, was: number, from: number, to: number}} Place
 */
/** A moved place in words. @param {Place} place @param {number} to mm */
export function placeAt(place, to) {
  const [number, at] = [place.number, num(to)];
  return place.what === 'grip' ? say('page-grip-at', { number, at }) : say('page-hand-over-at', { number, at });
}

export class Drawing {
  /**
   * @param {{prove: (place: Place, to: number) => Promise<any>, foresee: (place: Place, to: number) => Promise<any>, keep: (place: Place, to: number) => void, hover: (t: number|null) => void, pick: (t: number) => void}} act
   */
  constructor(act) {
    this.act = act;
    /** @type {{place: Place, to: number, element: any, reset: () => void, was: any, found: any, anew: any, asked: number|null, released: boolean}|null} */
    this.drag = null;
  }

  /** @param {any} answer what `/plan` gave @param {any} wishes hand-overs that are wished: turned length and nose */
  show(answer, wishes) {
    this.plan = answer.plan;
    this.frame = answer.drawing;
    this.drag = null;
    the('drag-bar').hidden = true;
    const { width, height } = this.frame;
    this.overlay = s('svg', { class: 'overlay', viewBox: `0 0 ${width} ${height}`, 'aria-label': say('page-hands'), role: 'group' });
    this.cross = s('line', { class: 'cross', y1: 0, y2: height, visibility: 'hidden' });
    the('under').value = '';
    this.overlay.append(this.cross);
    const picture = svgOf(this.frame.svg);
    picture.setAttribute('viewBox', `0 0 ${width} ${height}`);
    const focused = document.activeElement?.id;
    the('drawing-view').replaceChildren(picture, this.overlay);
    if (made(this.plan)) this.hands(wishes);
    this.overlay.addEventListener('pointermove', (event) => this.hover(event));
    this.overlay.addEventListener('pointerleave', () => this.hover(null));
    // A click sets the slider; a finger has no other way to point.
    this.overlay.addEventListener('click', (event) => {
      const t = this.mm(event);
      if (!event.target.closest('.hand') && t >= 0 && t <= partedAt(this.plan)) this.act.pick(Math.round(t * 2) / 2);
    });
    if (focused?.startsWith('hand-')) document.getElementById(focused)?.focus();
  }

  /** Puts another picture of the same plan under what can be moved. @param {any} frame */
  reframe(frame) {
    const { width, height } = this.frame;
    const picture = svgOf(frame.svg);
    picture.setAttribute('viewBox', `0 0 ${width} ${height}`);
    the('drawing-view').firstElementChild.replaceWith(picture);
  }

  x(mm) {
    return this.frame.left + mm * this.frame.per_mm;
  }

  mm(event) {
    const box = this.overlay.getBoundingClientRect();
    return ((event.clientX - box.left) * (this.frame.width / box.width) - this.frame.left) / this.frame.per_mm;
  }

  hands(wishes) {
    const { centre, bar_half: half } = this.frame;
    const hold = this.plan.layout.collet_hold_mm ?? 0;
    const stages = this.plan.stages;
    for (const [i, stage] of stages.entries()) {
      if (!stage.grip) continue;
      const number = stage.number;
      const wish = wishes.find((w) => Math.abs(w.at - stage.from_mm) < 1e-4);
      const before = stages[i - 1];
      this.hand({ what: 'hand_over', number, was: stage.from_mm, from: before.from_mm + 1, to: stage.to_mm - 1 }, !!wish,
        say('page-hand-hand-over', { number }), (at) => {
          const x = this.x(at);
          return `M${x} ${centre - half - 1}l-6 -11h12ZM${x - 1.2} ${centre - half - 1}h2.4v${2 * half + 2}h-2.4Z`;
        });
      this.hand({ what: 'grip', number, was: stage.grip.nose_mm, from: hold, to: stage.from_mm }, wish?.nose !== undefined && wish.nose !== null,
        say('page-hand-grip', { number }), (at) => `M${this.x(at - hold)} ${centre + half * 0.35}H${this.x(at)}V${centre + half + 5}H${this.x(at - hold)}Z`);
    }
  }

  /** @param {Place} place @param {boolean} wished @param {string} label @param {(at: number) => string} shape */
  hand(place, wished, label, shape) {
    const seen = s('path', { class: 'seen', d: shape(place.was) });
    // A wider, invisible shape that is easier to catch.
    const ground = s('path', { d: shape(place.was), fill: 'transparent', stroke: 'transparent', 'stroke-width': 8 });
    const [what, at] = [label, num(place.was)];
    const element = s('g', {
      class: `hand${wished ? ' wished' : ''}`, id: `hand-${place.what}-${place.number}`, tabindex: 0, role: 'slider', 'aria-label': label,
      'aria-valuemin': plain(place.from), 'aria-valuemax': plain(place.to), 'aria-valuenow': plain(place.was), 'aria-valuetext': `${num(place.was)} mm`,
    }, s('title', {}, wished ? say('page-hand-title-wished', { what, at }) : say('page-hand-title', { what, at })), ground, seen);
    const stand = (at) => {
      for (const p of [seen, ground]) p.setAttribute('d', shape(at));
      element.setAttribute('aria-valuenow', plain(at));
      element.setAttribute('aria-valuetext', `${num(at)} mm`);
    };
    const put = (to) => {
      const at = Math.min(place.to, Math.max(place.from, Math.round(to * 10) / 10));
      stand(at);
      this.moved(place, at, element, () => stand(place.was));
    };
    element.addEventListener('pointerdown', (event) => {
      if (event.button !== 0) return;
      event.preventDefault();
      element.focus();
      element.setPointerCapture(event.pointerId);
      const start = this.mm(event) - (this.drag?.place === place ? this.drag.to : place.was);
      const move = (e) => put(this.snapped(place, this.mm(e) - start));
      const up = () => {
        element.removeEventListener('pointermove', move);
        element.removeEventListener('pointerup', up);
        element.removeEventListener('pointercancel', up);
        if (this.drag?.place === place) this.released();
      };
      element.addEventListener('pointermove', move);
      element.addEventListener('pointerup', up);
      element.addEventListener('pointercancel', up);
    });
    element.addEventListener('keydown', (event) => {
      const by = { ArrowLeft: -1, ArrowRight: 1, PageDown: -10, PageUp: 10 }[event.key];
      if (by) {
        event.preventDefault();
        put((this.drag?.place === place ? this.drag.to : place.was) + by * (event.shiftKey ? 0.1 : 1));
        this.released();
      } else if (event.key === 'Enter' && this.drag?.place === place) this.keep();
      else if (event.key === 'Escape') this.giveBack();
    });
    this.overlay.append(element);
  }

  snapped(place, to) {
    if (place.what !== 'hand_over') return to;
    const shoulders = this.plan.shaft.sections.map((p) => p.to_mm);
    const near = shoulders.find((p) => Math.abs(p - to) * this.frame.per_mm < NEAR);
    return near ?? to;
  }

  moved(place, to, element, reset) {
    if (this.drag && this.drag.place !== place) this.giveBack();
    if (!this.drag) {
      const was = s('path', { class: 'was', d: `M${this.x(place.was)} ${this.frame.centre - this.frame.bar_half - 14}V${this.frame.centre + this.frame.bar_half + 14}` });
      this.overlay.append(was);
      this.drag = { place, to, element, reset, was, found: null, anew: null, asked: null, released: false };
    }
    const drag = this.drag;
    if (drag.to === to && drag.found) return;
    drag.to = to;
    drag.released = false;
    [drag.anew, drag.asked] = [null, null];
    this.say();
    clearTimeout(this.resting);
    this.resting = setTimeout(() => { if (this.drag === drag && drag.to === to) this.foresee(); }, REST_MS);
    this.act.prove(place, to).then((found) => {
      if (this.drag !== drag || drag.to !== to || !found) return;
      drag.found = found;
      element.classList.toggle('broken', !found.proven);
      element.classList.toggle('held', found.proven);
      this.say();
    });
  }

  released() {
    if (!this.drag) return;
    if (Math.abs(this.drag.to - this.drag.place.was) < 1e-9) this.giveBack();
    else {
      this.drag.released = true;
      this.foresee();
      this.say();
    }
  }

  /** A place that rests may be kept as a wish, so its plan is made in advance, and what it gives is told. */
  foresee() {
    const drag = this.drag;
    const to = drag.to;
    if (drag.asked === to) return;
    drag.asked = to;
    clearTimeout(this.resting);
    this.act.foresee(drag.place, to).then((anew) => {
      if (this.drag !== drag || drag.to !== to) return;
      drag.anew = anew;
      // It was ended by another plan.
      if (!anew) drag.asked = null;
      this.say();
    });
  }

  /** What planning anew with the wish gives. @param {any} answer what is known of it, or null while it is under way */
  anew(answer) {
    if (!answer) return say('page-drag-anew-running');
    if (!answer.plan) return sentence(say('page-drag-anew-unknown', { why: advice(answer.refused ?? answer.errors[0]) }));
    const { plan, summary } = answer;
    if (!made(plan)) return `${sentence(say('page-drag-anew-none', { why: summary }))}. ${say('page-keep-no-plan')}`;
    const pace = (p) => p.cycle?.steady_s ?? p.time_s.total;
    const later = pace(plan) - pace(this.plan);
    const sign = Math.abs(later) < 0.05 ? '±' : later < 0 ? '−' : '+';
    const [time, change] = [num(pace(plan)), `${sign}${num(Math.abs(later))}`];
    if (plan.verdict === 'feasible') return say('page-drag-anew-feasible', { time, change });
    return `${say('page-drag-anew-at-risk', { time, change })}. ${say('page-set-holds', { good: percent(plan.scatter.good_share) })}`;
  }

  /** Says which rules break, and what can be done. */
  say() {
    const { place, to, found, released } = this.drag;
    const bar = the('drag-bar');
    const name = placeAt(place, to);
    const what = found === null ? say('page-proof-running') : found.proven ? say('page-proof-passed') : say('page-proof-failed');
    const breach = (b) => {
      const [rule, text] = [checkName(b.rule), b.text];
      return b.stage ? say('page-breach-of-stage', { stage: b.stage, rule, text }) : sentence(say('page-breach', { rule, text }));
    };
    const breaches = (found?.breaches ?? []).slice(0, 3).map((b) => h('span', {}, ` ${breach(b)}`));
    const before = num(this.plan.cycle?.steady_s ?? this.plan.time_s.total);
    const time = found?.proven ? h('span', {}, ` ${say('page-proof-time', { time: num(found.total_s), before })}`) : null;
    const worst = found?.proven ? [...found.stages].filter((g) => g.check).sort((a, b) => b.check.utilisation - a.check.utilisation)[0] : null;
    const margin = worst ? h('span', {}, ` ${say('page-proof-closest',
      { check: checkName(worst.check.check), share: percent(worst.check.utilisation), stage: worst.number })}`) : null;
    bar.className = found === null ? '' : found.proven ? 'held' : 'broken';
    bar.hidden = false;
    bar.replaceChildren(
      h('div', { role: 'status', 'aria-live': 'polite' }, h('p', {}, `${name} ${say('page-drag-left')} `, h('b', {}, what), time, margin, breaches),
        this.drag.asked === to && h('p', { class: 'anew' }, `${say('page-drag-anew')} `, this.anew(this.drag.anew))),
      ...(released ? [h('button', { class: 'first', onclick: () => this.keep(), title: say('page-keep-title') }, say('page-keep')),
        h('button', { onclick: () => this.giveBack(), title: say('page-give-back-title') }, say('page-give-back'))] : []));
  }

  keep() {
    if (!this.drag) return;
    const { place, to } = this.drag;
    this.drag.was.remove();
    this.drag = null;
    the('drag-bar').hidden = true;
    this.act.keep(place, to);
  }

  giveBack() {
    const drag = this.drag;
    if (!drag) return;
    this.drag = null;
    drag.was.remove();
    drag.element.classList.remove('broken', 'held');
    the('drag-bar').hidden = true;
    drag.reset();
  }

  hover(event) {
    const t = event ? this.mm(event) : -1;
    const inside = event && t >= 0 && t <= partedAt(this.plan) && !this.drag;
    this.cross.setAttribute('visibility', inside ? 'visible' : 'hidden');
    if (!inside) {
      the('under').value = '';
      this.act.hover(null);
      return;
    }
    const x = this.x(t);
    this.cross.setAttribute('x1', String(x));
    this.cross.setAttribute('x2', String(x));
    const point = this.plan.trace.find((p) => p.turned_mm >= t);
    the('under').value = point ? say('page-pointer',
      { at: num(t), stage: point.stage, check: checkName(point.check), share: percent(point.utilisation) }) : `${num(t)} mm`;
    this.act.hover(Math.round(t * 2) / 2);
  }
}

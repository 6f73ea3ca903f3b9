// Two plans side by side: which two, and the view that shows them.

import { room } from './answers.js';
import { ask, Refused, Superseded } from './api.js';
import { diagrams, figures, input, moved, stages, verdict } from './compare_parts.js';
import { h, the } from './dom.js';
import { Pins } from './pins.js';
import { valueAt } from './tree.js';
import { advice, say } from './words.js';

/**
 * @typedef {import('./api.js').Texts} Texts
 * @typedef {{id: string, name: string, texts: () => Texts|Promise<Texts>}} Source a plan that can be compared
 */

/** Edits of the job that give a variant of it. @param {Texts} texts @param {any[]} edits */
async function variant(texts, edits) {
  const { text } = await ask('/edit', { text: texts.job, edits }, `variant ${JSON.stringify(edits)}`);
  return { ...texts, job: { ...texts.job, text } };
}

const same = (a, b) => JSON.stringify(a) === JSON.stringify(b);

export class Compare {
  /**
   * @param {import('./history.js').History} history
   * @param {{take: (texts: Texts) => void, answer: () => any}} act `take` makes texts the current ones; `answer` is what `/plan` gave for them
   */
  constructor(history, act) {
    this.history = history;
    this.act = act;
    this.pins = new Pins();
    /** The same job on other machines, by the name of the machine. @type {Map<string, any>} */
    this.machines = new Map();
    /** The chosen sources. @type {Record<'A'|'B', string>} */
    this.chosen = { A: '', B: 'current' };
    /** Counts what was asked for, so that an old answer is not shown. */
    this.turn = 0;
    /** What is shown: the texts of A. @type {Texts|null} */
    this.textsOfA = null;
    this.build();
  }

  build() {
    const select = (side) => {
      const box = h('select', { id: `compare-${side}`, onchange: () => { this.chosen[side] = box.value; this.refresh(); } });
      return h('label', {}, say('page-compare-choose', { side }), ' ', box);
    };
    const button = (id, text, title, onclick) => h('button', { type: 'button', id, title, onclick }, text);
    this.file = h('input', { type: 'file', id: 'compare-file', accept: '.yaml,.yml', hidden: true, 'aria-label': say('page-compare-machine-label'),
      onchange: async () => {
        const [given] = this.file.files;
        if (given) this.onMachine({ name: given.name, text: await given.text() });
        this.file.value = '';
      } });
    this.name = h('input', { id: 'compare-pin-name', 'aria-label': say('page-compare-pin-name'), placeholder: say('page-compare-pin-name'), maxlength: 60 });
    this.pinned = h('ul', { id: 'compare-pins' });
    this.shown = h('div', { id: 'compare-shown' });
    this.status = h('p', { class: 'heard', role: 'status', 'aria-live': 'polite' });
    this.view = h('section', { id: 'compare', hidden: true, 'aria-label': say('page-compare-heading'),
      onkeydown: (event) => { if (event.key === 'Escape' && !event.target.matches('select')) this.close(); } },
    h('h2', { tabindex: -1 }, say('page-compare-heading')),
    h('div', { class: 'bar-of-choices' }, select('A'), select('B'),
      button('compare-swap', say('page-compare-swap'), say('page-compare-swap-title'), () => this.swap()),
      button('compare-take', say('page-compare-take'), say('page-compare-take-title'), () => this.take()),
      button('compare-machine', say('page-compare-machine'), say('page-compare-machine-title'), () => this.file.click()), this.file,
      button('compare-close', say('page-compare-close'), say('page-compare-close-title'), () => this.close())),
    h('form', { class: 'bar-of-choices', onsubmit: (event) => { event.preventDefault(); this.pin(); } }, this.name,
      h('button', { id: 'compare-pin', title: say('page-compare-pin-title') }, say('page-compare-pin')), this.pinned),
    this.status, this.shown);
    the('results').prepend(this.view);
    the('compare-open').addEventListener('click', () => (this.view.hidden ? this.open() : this.close()));
  }

  /** The plans that can be chosen. @returns {Source[]} */
  sources() {
    const { now, past } = this.history;
    if (!now) return [];
    /** @type {Source[]} */
    const list = [{ id: 'current', name: say('page-compare-current'), texts: () => now }];
    const before = past.at(-1)?.texts;
    if (before) list.push({ id: 'before', name: say('page-compare-before'), texts: () => before });
    const opened = this.opened();
    if (opened && !same(opened, before)) list.push({ id: 'opened', name: say('page-compare-opened'), texts: () => opened });
    for (const pin of this.pins.list) list.push({ id: `pin ${pin.name}`, name: say('page-compare-pinned', { name: pin.name }), texts: () => pin.texts });
    // A variant is one of the current job, so what is typed changes both sides.
    const answer = this.act.answer();
    const plan = answer?.plan;
    if (plan) {
      const bush = plan.holding === 'bush';
      const alone = plan.tools === 'single';
      list.push({ id: 'holding', name: bush ? say('page-compare-without-bush') : say('page-compare-with-bush'),
        texts: () => variant(now, [{ edit: 'set', way: ['holding'], value: bush ? 'no_bush' : 'bush' }]) },
      { id: 'tools', name: alone ? say('page-compare-pair') : say('page-compare-one-tool'),
        texts: () => variant(now, [{ edit: 'set', way: ['cutting', 'tools'], value: alone ? 'opposed' : 'single' }]) });
    }
    for (const [name, machine] of this.machines) {
      list.push({ id: `machine ${name}`, name: say('page-compare-on-machine', { machine: name }), texts: () => {
        // A machine that stands in the job itself gives way to the file.
        const own = valueAt(answer?.job, ['machine'])?.kind === 'map';
        const texts = { ...now, machine };
        return own ? variant(texts, [{ edit: 'set', way: ['machine'], value: JSON.stringify(name) }]) : texts;
      } });
    }
    return list;
  }

  /** The first texts of the file that is open; null if they are the current ones or are not known any more. */
  opened() {
    const { now, past, start } = this.history;
    let first = past.length;
    while (first > 0 && past[first - 1].texts.job.name === now?.job.name) first -= 1;
    const of = first === 0 && start?.job.name === now?.job.name ? start : past[first]?.texts;
    return of && !same(of, now) && (first > 0 || of === start) ? of : null;
  }

  /** Compares with the same job on another machine. @param {{name: string, text: string}} machine its file */
  onMachine(machine) {
    this.machines.set(machine.name, machine);
    this.chosen.A = `machine ${machine.name}`;
    this.refresh();
  }

  open() {
    this.view.hidden = false;
    document.body.classList.add('comparing');
    the('compare-open').setAttribute('aria-pressed', 'true');
    this.view.querySelector('h2').focus();
    this.refresh();
  }

  close() {
    this.view.hidden = true;
    document.body.classList.remove('comparing');
    the('compare-open').setAttribute('aria-pressed', 'false');
    the('compare-open').focus();
  }

  /** The current texts have a new answer. */
  changed() {
    if (!this.view.hidden) this.refresh();
  }

  swap() {
    this.chosen = { A: this.chosen.B, B: this.chosen.A };
    this.refresh();
  }

  /** Makes the texts of A the current ones. A then is what was current, so that both stay in sight. */
  take() {
    if (!this.textsOfA) return;
    this.chosen = { A: 'before', B: 'current' };
    this.act.take(this.textsOfA);
  }

  pin() {
    if (!this.history.now) return;
    const taken = (number) => this.pins.list.some((pin) => pin.name === say('page-compare-pin-number', { number }));
    let number = 1;
    while (taken(number)) number += 1;
    this.pins.add(this.name.value.trim() || say('page-compare-pin-number', { number }), this.history.now);
    this.name.value = '';
    this.refresh();
  }

  unpin(name) {
    this.pins.remove(name);
    this.refresh();
    this.name.focus();
  }

  /** Offers the sources, and shows the two that are chosen. */
  async refresh() {
    this.turn += 1;
    const turn = this.turn;
    const list = this.sources();
    const known = (id) => list.some((source) => source.id === id);
    if (!known(this.chosen.B)) this.chosen.B = 'current';
    if (!known(this.chosen.A)) this.chosen.A = ['before', 'opened', 'holding', 'current'].find(known) ?? 'current';
    for (const side of ['A', 'B']) {
      the(`compare-${side}`).replaceChildren(...list.map((source) => h('option', { value: source.id, selected: source.id === this.chosen[side] }, source.name)));
    }
    this.pinned.replaceChildren(...this.pins.list.map((pin) => h('li', {}, pin.name, h('button', { type: 'button', class: 'small',
      'aria-label': say('page-compare-unpin', { name: pin.name }), title: say('page-compare-unpin', { name: pin.name }), onclick: () => this.unpin(pin.name) }, '×'))));
    const of = (side) => /** @type {Source} */ (list.find((source) => source.id === this.chosen[side]));
    const [a, b] = await Promise.all([this.found('A', of('A')), this.found('B', of('B'))]);
    if (turn !== this.turn || !a || !b) return;
    this.textsOfA = a.texts;
    the('compare-take').disabled = !a.texts || same(a.texts, this.history.now);
    this.show([of('A').name, of('B').name], a, b);
  }

  /**
   * Texts and answer of a source; null if a newer question ended this one.
   * @param {'A'|'B'} side @param {Source} source
   */
  async found(side, source) {
    try {
      const texts = await source.texts();
      return { texts, answer: await ask('/plan', { ...texts, width_px: room() }, `compare ${side}`), failed: null };
    } catch (error) {
      if (error instanceof Superseded) return null;
      if (error instanceof Refused) return { texts: null, answer: null, failed: advice(error.problem) };
      throw error;
    }
  }

  /** @param {string[]} names @param {any} a @param {any} b */
  show([nameOfA, nameOfB], a, b) {
    const [was, is] = [a.answer, b.answer];
    const both = was?.plan && is?.plan;
    const table = both && figures(was.plan, is.plan);
    this.shown.replaceChildren(...[
      h('div', { class: 'sides' }, verdict('A', nameOfA, was, a.failed), verdict('B', nameOfB, is, b.failed)),
      both && moved(was.plan, is.plan), table, both && diagrams(was, is), both && h('div', { class: 'scrolls' }, stages(was.plan, is.plan)),
      was && is && input(was, is), h('p', { class: 'cautions' }, say('page-compare-caution'))].filter(Boolean));
    this.status.textContent = say('page-compare-shown', { a: nameOfA, b: nameOfB });
    document.body.dataset.compared = String(Number(document.body.dataset.compared ?? 0) + 1);
  }
}

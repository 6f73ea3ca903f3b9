// The start screen: example parts, a new shaft, a file. And what a file is, by its ending.

import { ask, drop, Refused, Superseded } from './api.js';
import { materialPicker } from './choose.js';
import { h, s, the } from './dom.js';
import { advice, num, pointed, say, verdictName } from './words.js';

/** Channel of the verdicts of the examples. */
const VERDICTS = 'verdicts';
/** Largest drawing, MB: what the server takes, less what the bytes grow by on the way. */
const MOST_MB = 4;

/** @typedef {{yaml?: File[], draft?: {job: any, file: string}, problem?: {what: string, help: string}}} Taken */

/** What becomes of opened files: jobs and machines as they are, a drawing or table as a draft. @param {File[]} files @returns {Promise<Taken>} */
export async function taken(files) {
  const ending = (f) => /\.(\w+)$/.exec(f.name)?.[1].toLowerCase() ?? '';
  const yaml = files.filter((f) => ['yaml', 'yml', ''].includes(ending(f)));
  const left = files.find((f) => !yaml.includes(f));
  if (yaml.length && left) return { problem: { what: say('page-start-alone', { file: left.name }), help: say('page-start-alone-help') } };
  if (yaml.length) return { yaml };
  const [first] = files;
  if (!first) return {};
  const file = first.name;
  if (['step', 'stp', 'iges', 'igs', 'pdf', 'png', 'jpg', 'jpeg', 'gif', 'bmp', 'tif', 'tiff', 'webp', 'svg', 'dwg'].includes(ending(first))) {
    return { problem: { what: say('page-start-not-yet', { file }), help: say('page-start-not-yet-help') } };
  }
  if (!['dxf', 'csv', 'tsv', 'txt', 'xlsx', 'xls', 'ods'].includes(ending(first))) {
    return { problem: { what: say('page-start-unknown', { file }), help: say('page-start-unknown-help') } };
  }
  if (first.size > MOST_MB * 1e6) {
    const what = say('page-start-too-large', { file, size: num(first.size / 1e6) });
    return { problem: { what, help: say('page-start-too-large-help', { most: MOST_MB }) } };
  }
  const content = new Uint8Array(await first.arrayBuffer());
  const bytes = Array.from(content, (byte) => String.fromCharCode(byte)).join('');
  return drafted({ name: file, bytes, flip: false, inches: false });
}

/** A draft as it was asked for last, so that it can be read again the other way round. @type {{asked: any, job: any}|null} */
let last = null;

/** @param {any} asked @returns {Promise<Taken>} */
async function drafted(asked) {
  try {
    const { job } = await ask('/draft', asked);
    last = { asked, job };
    return { draft: { job, file: asked.name } };
  } catch (error) {
    if (error instanceof Refused) return { problem: error.problem };
    if (error instanceof Superseded) return {};
    throw error;
  }
}

/**
 * Buttons that read the drawing again, for a job that is its draft.
 * @param {{name: string, text: string}} job @param {(taken: Promise<Taken>) => void} take
 */
export function again(job, take) {
  // The first line of a draft names its drawing. Another job may have the same file name.
  const head = (text) => text.split('\n')[0];
  if (last?.job.name !== job.name || head(last.job.text) !== head(job.text) || !/\.dxf$/i.test(last.asked.name)) return null;
  const { asked } = last;
  const button = (text, more) => h('button', { type: 'button', onclick: () => take(drafted({ ...asked, ...more })) }, text);
  return h('p', {}, button(say('page-checks-flip'), { flip: !asked.flip }),
    button(asked.inches ? say('page-checks-own-unit') : say('page-checks-inches'), { inches: !asked.inches }));
}

/** Width and half height of the picture of a part, and the most that diameters are drawn larger than lengths. */
const [WIDE, HALF, LARGER] = [300, 34, 5];

/** The outline of a part. Slender parts stay slender: only so much are diameters drawn larger. @param {any} example */
function picture({ shaft, name, length_mm: length, diameter_mm: diameter }) {
  const across = (WIDE - 16) / length;
  const up = Math.min(HALF, Math.max(HALF / 3, LARGER * across * diameter / 2)) / (diameter / 2);
  const x = (mm) => 8 + mm * across;
  const y = (d) => d / 2 * up;
  const parts = shaft.sections.map((p) => {
    const [x1, x2, y1, y2] = [x(p.from_mm), x(p.to_mm), y(p.front_diameter_mm), y(p.rear_diameter_mm)];
    const within = ['thread', 'flats'].includes(p.kind) && p.inner_diameter_mm;
    const inner = within && y(Math.min(within, p.front_diameter_mm)) * (p.kind === 'flats' ? 0.58 : 1);
    return [s('path', { d: `M${x1} ${-y1}L${x2} ${-y2}V${y2}L${x1} ${y1}Z` }),
      inner && s('path', { class: 'inner', d: `M${x1} ${-inner}H${x2}M${x1} ${inner}H${x2}` })];
  });
  return s('svg', { viewBox: `0 ${-HALF - 6} ${WIDE} ${2 * HALF + 12}`, role: 'img', 'aria-label': say('page-start-picture', { name }) },
    parts, s('path', { class: 'axis', d: `M2 0H${WIDE - 2}` }));
}

export class Start {
  /** @param {{open: (texts: any, what: string) => void, choose: () => void, job: () => string}} act */
  constructor(act) {
    this.act = act;
    /** @type {any[]|null} */
    this.examples = null;
    this.box = the('start');
    this.box.addEventListener('keydown', (event) => { if (event.key === 'Escape' && !event.target.matches('select')) this.close(); });
    the('new').addEventListener('click', () => this.show());
  }

  get shown() {
    return !this.box.hidden;
  }

  /** @param {boolean} [begins] whether no job was opened yet */
  async show(begins = false) {
    this.gallery = h('ul', { class: 'gallery' });
    this.told = h('div', { role: 'alert' });
    const heading = h('h1', { tabindex: -1 }, say('page-start-heading'));
    const close = begins ? say('page-start-close-example') : say('page-start-close', { job: this.act.job() });
    this.box.replaceChildren(
      h('div', { class: 'top' }, h('div', {}, h('p', { class: 'brand' }, 'spanhold'), heading),
        h('button', { type: 'button', onclick: () => this.close() }, close)),
      this.told,
      h('div', { class: 'ways' }, this.fresh(), this.file()),
      h('section', {}, h('h2', {}, say('page-start-gallery')), h('p', {}, say('page-start-gallery-what')), this.gallery));
    this.box.hidden = false;
    document.body.classList.add('starting');
    heading.focus();
    try {
      this.examples ??= await ask('/gallery');
      this.gallery.replaceChildren(...(this.examples ?? []).map((e) => this.card(e)));
      await this.verdicts();
    } catch (error) {
      if (error instanceof Refused) this.problem(error.problem);
      else if (!(error instanceof Superseded)) throw error;
    }
  }

  close() {
    if (!this.shown) return;
    this.box.hidden = true;
    document.body.classList.remove('starting');
    drop('/new');
    drop(VERDICTS);
    the('new').focus();
  }

  /** @param {{what: string, help: string}|null} problem */
  problem(problem) {
    this.told.replaceChildren(...(problem ? [h('p', {}, advice(problem))] : []));
    this.told.scrollIntoView({ block: 'nearest' });
  }

  /** What is under way. @param {string} what */
  busy(what) {
    this.told.replaceChildren(h('p', { class: 'busy' }, what));
  }

  /** @param {any} example */
  card(example) {
    const { name, material, texts } = example;
    const size = say('page-start-size', { length: num(example.length_mm), diameter: num(example.diameter_mm) });
    example.badge = h('span', { class: 'badge' });
    return h('li', {}, h('button', { type: 'button', onclick: () => this.act.open(texts, say('page-did-example', { name })) },
    picture(example), h('b', {}, name), h('span', {}, size), h('span', {}, material), example.badge));
  }

  /** The verdicts of the examples, one after another; once known they are kept. */
  async verdicts() {
    for (const example of this.examples ?? []) {
      if (!this.shown) return;
      example.verdict ??= (await ask('/plan', example.texts, VERDICTS)).plan?.verdict;
      example.badge.className = `badge ${example.verdict}`;
      example.badge.textContent = verdictName(example.verdict);
    }
  }

  /** Length, diameter and material of a new shaft. */
  fresh() {
    const field = (key, label, unit, more) => {
      const id = `new-${key}`;
      const input = h('input', { id, name: key, autocomplete: 'off', spellcheck: 'false', 'aria-describedby': `${id}-message`, ...more });
      const pick = (name) => { input.value = name; input.focus(); };
      const parts = key === 'material' ? h('span', { class: 'picked' }, input, materialPicker(pick)) : input;
      return h('div', { class: 'ask' }, h('label', { for: id }, label, unit ? h('small', {}, ` ${unit}`) : null), parts,
        h('div', { class: 'message', id: `${id}-message` }));
    };
    const form = h('form', { novalidate: '', onsubmit: (event) => { event.preventDefault(); this.make(form); } },
      h('h2', {}, say('page-start-new')), h('p', {}, say('page-start-new-what')),
      h('div', { class: 'asks' }, field('length_mm', say('page-start-length'), 'mm', { class: 'number', inputmode: 'decimal', placeholder: '300' }),
        field('diameter_mm', say('page-start-diameter'), 'mm', { class: 'number', inputmode: 'decimal', placeholder: '12' }),
        field('material', say('page-start-material'), '', { value: 'C45' })),
      h('button', { class: 'first' }, say('page-start-make')));
    return form;
  }

  /** @param {any} form */
  async make(form) {
    const of = (key) => form.elements[key];
    const numbers = ['length_mm', 'diameter_mm'];
    const wrong = new Map();
    const asked = { material: of('material').value };
    for (const key of numbers) {
      const typed = pointed(of(key).value).trim();
      asked[key] = typed ? Number(typed) : NaN;
      if (!Number.isFinite(asked[key])) wrong.set(key, say('page-start-number', { example: of(key).placeholder }));
    }
    try {
      if (!wrong.size) {
        const texts = await ask('/new', asked);
        return this.act.open(texts, say('page-did-new', { length: num(asked.length_mm), diameter: num(asked.diameter_mm) }));
      }
    } catch (error) {
      if (error instanceof Superseded) return undefined;
      if (!(error instanceof Refused)) throw error;
      for (const told of error.problem.errors ?? []) wrong.set(told.way[0], advice(told));
      if (!wrong.size) this.problem(error.problem);
    }
    for (const key of [...numbers, 'material']) {
      of(key).setAttribute('aria-invalid', String(wrong.has(key)));
      the(`new-${key}-message`).textContent = wrong.get(key) ?? '';
    }
    const [first] = wrong.keys();
    if (first) of(first).focus();
    return undefined;
  }

  file() {
    const zone = h('div', { class: 'zone' }, h('p', {}, say('page-start-file-what')),
      h('button', { type: 'button', onclick: () => this.act.choose() }, say('page-start-file-open')));
    const over = (on) => () => zone.classList.toggle('over', on);
    for (const [kind, on] of [['dragenter', true], ['dragover', true], ['dragleave', false], ['drop', false]]) zone.addEventListener(kind, over(on));
    return h('section', {}, h('h2', {}, say('page-start-file')), zone);
  }
}

// The job as a form. Every field is a place in one of the texts. What the user types is written there unchanged.

import { h, settle, the } from './dom.js';
import { BACK_WORK, CUTTING, FEATURES, KINDS, MACHINE, MATERIAL, MORE, SHAFT, VARIED, EDGES } from './layout.js';
import { two, whole } from './plain.js';
import { idOf, inInches, placed, sized, valueAt } from './tree.js';
import { advice, keyName, pointed, say } from './words.js';

/**
 * @typedef {import('./tree.js').Value} Value
 * @typedef {import('./tree.js').Way} Way
 * @typedef {import('./tree.js').File} File
 * @typedef {import('./tree.js').Told} Told
 */

const TABS = [['shaft', say('page-tab-shaft')], ['cutting', say('page-tab-cutting')], ['machine', say('page-tab-machine')], ['text', say('page-tab-text')]];

/** Keys of features that take one of a few words. */
const CHOICES = { end: { choice: ['front', 'back'] }, forming: { choice: ['', 'shave', 'punch'] } };

/** After this pause in typing the plan with the new value is made in advance, ms. */
const TYPING_MS = 50;

export class Form {
  /** @param {{edit: (file: File, edits: any[], what?: string) => void, text: (file: File, text: string) => void, ahead: (file: File, edits: any[]) => void, picker: (of: string) => any}} act */
  constructor(act) {
    this.act = act;
    this.tab = 'shaft';
    /** @type {Map<string, any>} */
    this.fields = new Map();
    this.rebuilding = false;
    /** Places that showed messages, if there were any. @type {Set<string>} */
    this.shown = new Set();
    this.wrong = new Map();
    const box = the('form');
    box.addEventListener('input', (event) => this.typed(event.target));
    box.addEventListener('focusout', (event) => this.commit(event.target));
    box.addEventListener('change', (event) => { if (event.target.matches('select')) this.commit(event.target); });
    box.addEventListener('keydown', (event) => this.key(event));
  }

  /** @param {any[]} fields */
  know(fields) {
    for (const field of fields) this.fields.set(field.path, field);
  }

  /** @param {{texts: any, job: Value|null, machine: Value|null, errors: Told[]}} state */
  show(state) {
    this.state = state;
    this.rebuild();
  }

  // -- Fields.

  commit(target) {
    const { file, way, was } = target.dataset;
    clearTimeout(this.typing);
    if (this.rebuilding || !way || target.value.trim() === was) return;
    const value = written(target);
    target.dataset.was = target.value.trim();
    if (target.matches('textarea')) this.act.text(file, value);
    else this.act.edit(file, [{ edit: 'set', way: JSON.parse(way), value }], say('page-did-set', { field: target.getAttribute('aria-label'), from: was || '–', to: (target.dataset.two ? pointed(target.value) : value).trim() || '–' }));
  }

  /** A half-typed field is no edit yet, but it may become one, so its plan is made in advance. */
  typed(target) {
    const { file, way, was } = target.dataset;
    clearTimeout(this.typing);
    if (!way || !target.matches('input') || target.value.trim() === was) return;
    const edits = [{ edit: 'set', way: JSON.parse(way), value: written(target) }];
    this.typing = setTimeout(() => this.act.ahead(file, edits), TYPING_MS);
  }

  key(event) {
    const target = event.target;
    if (event.key === 'Enter' && target.matches('input')) {
      this.commit(target);
      if (target.dataset.add) this.add(target);
      event.preventDefault();
    } else if (event.key === 'Enter' && event.ctrlKey && target.matches('textarea')) {
      this.commit(target);
    } else if (event.key === 'Escape' && target.matches('input') && target.dataset.was !== undefined) {
      target.value = target.dataset.was;
      clearTimeout(this.typing);
      this.act.ahead('job', []);
    } else if (event.altKey && (event.key === 'ArrowUp' || event.key === 'ArrowDown')) {
      const row = target.closest('.row[data-list]');
      if (!row) return;
      event.preventDefault();
      this.move(row, event.key === 'ArrowUp' ? -1 : 1, target);
    } else if ((event.key === 'ArrowUp' || event.key === 'ArrowDown') && target.matches('.row input')) {
      // To the same field of the next or previous row.
      const rows = [...the('form').querySelectorAll('.row')];
      const next = rows[rows.indexOf(target.closest('.row')) + (event.key === 'ArrowUp' ? -1 : 1)];
      const name = JSON.parse(target.dataset.way ?? '[]').at(-1);
      const there = [...(next?.querySelectorAll('input') ?? [])].find((i) => JSON.parse(i.dataset.way ?? '[]').at(-1) === name);
      if (there) { there.focus(); there.select(); event.preventDefault(); }
    }
  }

  move(row, by, target) {
    const way = JSON.parse(row.dataset.list);
    const index = Number(row.dataset.index);
    const length = valueAt(this.state[row.dataset.file], way)?.entries?.length ?? 0;
    if (index + by < 0 || index + by >= length) return;
    this.commit(target);
    const there = JSON.parse(target.dataset.way ?? 'null');
    if (there) { there[way.length] = index + by; this.focusNext = idOf(row.dataset.file, there); }
    this.act.edit(row.dataset.file, [{ edit: 'swap', way, index, with: index + by }]);
  }

  /** The input for a place of a text, or two inputs for a value of two numbers. */
  control(file, way, more) {
    const list = typeof way.at(-1) === 'number';
    const key = String(list ? way.at(-2) : way.at(-1));
    const both = two(key, valueAt(this.state[file], way));
    if (!both) return this.single(file, way, more);
    return h('div', { class: 'pair', role: 'group', 'aria-label': more.label }, both.steps.map((step, i) => {
      const name = say('page-two', { field: more.label, name: both.names[i] });
      const input = this.single(file, [...way, step], { ...more, number: true, label: name, title: more.title || both.names[i], placeholder: both.names[i] }, both.texts[i]);
      input.dataset.way = JSON.stringify(way);
      input.dataset.two = key;
      return input;
    }));
  }

  /** The input for a place of a text. @param {File} file @param {Way} way @param {any} more @param {string} [value] */
  single(file, way, { choice = null, said = keyName, number = false, placeholder = '', label, title = '' }, value = valueAt(this.state[file], way)?.text ?? '') {
    const id = idOf(file, way);
    const wrong = this.wrong.get(id);
    const attributes = {
      id, 'data-file': file, 'data-way': JSON.stringify(way), 'data-was': value, 'aria-label': label, title,
      'aria-invalid': wrong ? 'true' : null, 'aria-describedby': wrong ? `${id}-message` : null,
    };
    if (!choice) {
      return h('input', { ...attributes, value, placeholder, class: number ? 'number' : null, spellcheck: 'false', autocomplete: 'off',
        inputmode: number ? 'decimal' : null });
    }
    const known = choice.includes(value) || value === '' ? choice : [...choice, value];
    const options = known.map((c) => h('option', { value: c, selected: c === value }, c === '' ? placeholder || '–' : said(c)));
    const select = h('select', attributes, options);
    select.value = value;
    return select;
  }

  /** The messages about places, below them. */
  messages(file, ...ways) {
    // A message may be about one of two values.
    const all = ways.flatMap((way) => [way, ...(two(String(way.at(-1)), valueAt(this.state[file], way))?.steps ?? []).map((step) => [...way, step])]);
    return all.flatMap((way) => {
      const id = idOf(file, way);
      this.shown.add(id);
      return (this.wrong.get(id) ?? []).map((told) => h('div', { class: 'message', id: `${id}-message` }, advice(told)));
    });
  }

  field(file, base, at, field) {
    const way = [...base, ...at, field.key];
    const told = this.fields.get([...(file === 'machine' || base.length ? ['machine'] : []), ...at, field.key].join('.'));
    // The label leaves out the unit at the end of a key, because the unit is shown anyway.
    const bare = field.key.replace(/_[sh]$/, '');
    const inches = inInches(this.state, file, base.length > 0);
    const unit = inches ? told?.unit_inch : told?.unit;
    const short = /rpm$/.test(field.key) ? '' : { degrees: '°', 'mm per m': 'mm/m', 'in per ft': 'in/ft' }[unit] ?? unit;
    const label = field.label ?? keyName(['s', 'h'].includes(told?.unit) ? bare : field.key);
    const given = valueAt(this.state[file], way) !== undefined;
    const title = told ? rangeOf(told) : field.title ?? '';
    const fallback = told ? usual(told, inches) : '';
    const control = this.control(file, way, {
      choice: field.choice ? (given || field.choice.includes('') ? field.choice : ['', ...field.choice]) : null, number: !!told && !field.text,
      placeholder: field.choice ? keyName(field.choice[0]) : fallback, label, title,
    });
    return h('div', { class: `field${given ? ' given' : ''}${field.full ? ' full' : field.text ? ' words' : ''}` },
      h('label', { for: control.id, title }, label, short ? h('small', {}, ` ${short}`) : null), field.pick ? h('span', { class: 'picked' }, control, this.act.picker(field.key)) : control, this.messages(file, way));
  }

  group(file, base, group) {
    const fields = group.fields.map((field) => this.field(file, base, group.at, field));
    const whole = this.messages(file, [...base, ...group.at]);
    const there = group.optional && valueAt(this.state[file], [...base, ...group.at]) !== undefined;
    return h('fieldset', {}, h('legend', {}, group.title, there && this.without(file, [...base, ...group.at], group.title)), whole,
      h('div', { class: 'fields' }, fields));
  }

  /** A button that removes a whole map. @param {File} file @param {Way} way @param {string} name */
  without(file, way, name) {
    const title = say('page-remove', { what: name });
    return h('button', { class: 'small', type: 'button', title, 'aria-label': title, onclick: () => this.act.edit(file, [{ edit: 'set', way, value: '' }]) }, '×');
  }

  // -- Rows.

  row(file, list, index, ...inside) {
    const way = [...list, index];
    const within = JSON.stringify(way).slice(0, -1);
    const wrong = this.state.errors.some((e) => e.file === file && JSON.stringify(e.way).startsWith(within));
    return h('div', { class: `row${wrong ? ' wrong' : ''}`, 'data-list': JSON.stringify(list), 'data-index': index, 'data-file': file },
      inside, this.messages(file, way));
  }

  tools(file, list, index, fresh) {
    const act = (edits) => () => this.act.edit(file, edits);
    const button = (text, title, edits) => h('button', { class: 'small', type: 'button', title, 'aria-label': say('page-row-button', { what: title, row: index + 1 }), onclick: act(edits) }, text);
    return h('span', { class: 'tools' },
      index > 0 && button('↑', say('page-move-up'), [{ edit: 'swap', way: list, index, with: index - 1 }]),
      fresh && button('+', say('page-insert-after'), [{ edit: 'insert', way: list, index: index + 1, item: fresh }]),
      button('×', say('page-remove-row'), [{ edit: 'remove', way: list, index }]));
  }

  sections() {
    const list = ['shaft', 'sections'];
    const sections = valueAt(this.state.job, list)?.entries ?? [];
    const rows = sections.map((section, index) => this.section(list, section, index));
    const inches = inInches(this.state, 'job');
    const bar = valueAt(this.state.job, ['stock', 'diameter'])?.text ?? (inches ? '10 mm' : '10');
    const adds = KINDS.map(({ name, fresh }) => h('button', { type: 'button', onclick: () =>
      this.act.edit('job', [{ edit: 'insert', way: list, index: sections.length, item: sized(fresh, inches, bar) }]) }, say('page-add', { what: name })));
    const heads = h('div', { class: 'line one heads', 'aria-hidden': 'true' },
      ...['', say('page-head-name'), say('page-head-kind'), say('page-head-size'), say('page-head-length')].map((t) => h('span', {}, t)));
    return h('fieldset', {}, h('legend', {}, say('page-sections')), heads, rows, this.messages('job', list), h('div', { class: 'adds', 'data-of': `${sections.length} ${bar}` }, adds));
  }

  section(list, section, index) {
    const file = 'job';
    const way = (key) => [...list, index, key];
    const has = (key) => section.entries?.some((e) => e.key === key);
    const told = valueAt(section, ['kind'])?.text;
    const kind = told ?? (has('thread') ? 'thread' : has('taper') ? 'taper' : has('across_flats') ? 'flats' : 'cylinder');
    const known = KINDS.find((k) => k.kind === kind);
    const number = index + 1;
    const inches = inInches(this.state, file);
    const size = kind === 'flats'
      ? h('div', { class: 'pair' }, this.control(file, way('across_flats'), { number: true, label: say('page-section-across-flats', { number }) }),
        this.control(file, way('sides'), { number: true, label: say('page-section-sides', { number }), title: say('page-section-sides-title') }))
      : this.control(file, way(known?.key ?? 'diameter'), { number: kind !== 'thread', label: say('page-section-size', { key: keyName(known?.key ?? 'diameter'), number }) });
    const kinds = h('select', { 'aria-label': say('page-section-kind', { number }), onchange: (event) => this.become(list, section, index, event.target.value) },
      KINDS.map((k) => h('option', { value: k.kind, selected: k.kind === kind }, k.name)));
    const stop = this.control(file, way('interrupt'), { choice: ['', 'never', 'avoid', 'free'], placeholder: say('page-section-stop-short'),
      label: say('page-section-stop', { number }), title: say('page-section-stop-title') });
    const grip = this.control(file, way('grip'), { choice: ['', 'true', 'false'], placeholder: say('page-section-grip-short'),
      said: (v) => (v === 'true' ? say('page-section-grip-yes') : v === 'false' ? say('page-section-grip-no') : v),
      label: say('page-section-grip', { number }), title: say('page-section-grip-title') });
    const finish = this.control(file, way('finish_pass'), { choice: ['', 'true', 'false'], placeholder: say('page-section-finish-short'),
      said: (v) => (v === 'true' ? say('page-section-finish-yes') : v === 'false' ? say('page-section-finish-no') : v),
      label: say('page-section-finish', { number }), title: say('page-section-finish-title') });
    const by = kind === 'thread' && this.control(file, way('thread_by'), { choice: ['', 'single_point', 'whirling', 'rolling'],
      placeholder: say('page-section-thread-by-short'), label: say('page-section-thread-by', { number }), title: say('page-section-thread-by-title') });
    const keys = ['name', 'length', 'diameter', 'thread', 'thread_by', 'taper', 'across_flats', 'sides', 'tolerance', 'ra', 'run_out', 'interrupt', 'grip', 'kind', 'finish_pass', 'chamfer', 'radius', 'grind', 'turned_tolerance', 'turned_ra'];
    return this.row(file, list, index,
      h('div', { class: 'line one' }, h('span', { class: 'n' }, String(number)),
        this.control(file, way('name'), { label: say('page-section-name', { number }), placeholder: say('page-section', { number }) }), kinds, size,
        this.control(file, way('length'), { number: true, label: say('page-section-length', { number }) })),
      h('div', { class: 'line two' }, this.control(file, way('tolerance'), { label: say('page-section-tolerance', { number }), placeholder: say('page-section-tolerance-short') }),
        this.control(file, way('ra'), { number: true, label: say('page-section-ra', { number }), placeholder: 'Ra' }),
        this.control(file, way('run_out'), { number: true, label: say('page-section-run-out', { number }), placeholder: say('page-section-run-out-short') }), stop, grip, finish, h('span'),
        this.tools(file, list, index, sized(KINDS[0].fresh, inches, valueAt(section, ['diameter'])?.text ?? (inches ? '10 mm' : '10')))),
      h('details', { open: ['thread_by', ...EDGES.map(([key]) => key)].some((key) => valueAt(section, [key])) ? '' : null }, h('summary', {}, say('page-section-more')),
        h('div', { class: 'line three' }, by, EDGES.map(([key, short]) => this.control(file, way(key),
          { number: key === 'grind' || key === 'turned_ra', label: say('page-section-key', { key, number }), placeholder: short })))),
      this.messages(file, ...keys.map(way)));
  }

  /** Changes the kind of a row. The row keeps the values that both kinds have. */
  become(list, section, index, kind) {
    const next = KINDS.find((k) => k.kind === kind);
    const text = (key) => valueAt(section, [key])?.text;
    const inches = inInches(this.state, 'job');
    const metric = /[\d.]+/.exec(text('thread') ?? '')?.[0] ?? '10';
    const across = text('diameter') ?? text('across_flats') ?? valueAt(section, ['taper', 0])?.text ?? (inches ? `${metric} mm` : metric);
    const fresh = sized(next.fresh, inches, across);
    const length = text('length');
    const kept = ['tolerance', 'ra', 'interrupt', 'name'].filter((key) => text(key));
    const way = [...list, index];
    const edits = [
      { edit: 'insert', way: list, index, item: fresh }, { edit: 'remove', way: list, index: index + 1 },
      ...(length ? [{ edit: 'set', way: [...way, 'length'], value: length }] : []),
      ...kept.map((key) => ({ edit: 'set', way: [...way, key], value: text(key) })),
    ];
    this.act.edit('job', edits);
  }

  /** Holes, keyseats and other work, of every kind: each with the keys it has, and those often added. */
  features() {
    const list = ['shaft', 'features'];
    const features = valueAt(this.state.job, list)?.entries ?? [];
    const rows = features.map((feature, index) => {
      const keys = (feature.entries ?? []).map((e) => e.key);
      const [kind] = keys;
      const asked = [...keys, ...(MORE[kind] ?? []).filter((key) => !keys.includes(key))];
      const ways = asked.map((key) => [...list, index, key]);
      const cells = asked.map((key, i) => this.cell(ways[i], key, `shaft.features.${key}`, say('page-row', { what: keyName(kind), number: index + 1 }), CHOICES[key] ?? {}));
      return this.row('job', list, index, h('div', { class: 'line work' }, h('div', { class: 'cells' }, cells), this.tools('job', list, index, null)), this.messages('job', ...ways));
    });
    const adds = FEATURES.map(([name, item]) => h('button', { type: 'button', onclick: () =>
      this.act.edit('job', [{ edit: 'insert', way: list, index: features.length, item: sized(item, inInches(this.state, 'job')) }]) }, say('page-add', { what: name })));
    return h('fieldset', {}, h('legend', {}, say('page-features')), rows, this.messages('job', list), h('div', { class: 'adds', 'data-of': features.length }, adds));
  }

  /** Work on the rear end after part-off, with its forces. */
  backWork() {
    const list = ['shaft', 'back_work'];
    const works = valueAt(this.state.job, list)?.entries ?? [];
    const rows = works.map((_, index) => {
      const ways = BACK_WORK.map((key) => [...list, index, key]);
      return this.row('job', list, index, h('div', { class: 'line work' },
        h('div', { class: 'cells' }, BACK_WORK.map((key, i) => this.cell(ways[i], key, `shaft.back_work.${key}`, say('page-row', { what: say('page-rear-end'), number: index + 1 })))), this.tools('job', list, index, null)),
      this.messages('job', ...ways));
    });
    const add = h('button', { type: 'button', onclick: () => this.act.edit('job', [{ edit: 'insert', way: list, index: works.length,
      item: '{name: deburr, time_s: 5}' }]) }, say('page-add', { what: say('page-rear-work-item') }));
    return h('fieldset', {}, h('legend', {}, say('page-rear-work')), rows, this.messages('job', list), h('div', { class: 'adds', 'data-of': works.length }, add));
  }

  /**
   * An input with its name over it, in a row.
   * @param {Way} way
   * @param {string} key
   * @param {string} path
   * @param {string} of
   */
  cell(way, key, path, of, more = {}) {
    const told = this.fields.get(path);
    const bare = ['s', 'h'].includes(told?.unit) ? key.replace(/_[sh]$/, '') : key;
    const inches = inInches(this.state, 'job');
    const unit = inches ? told?.unit_inch : told?.unit;
    const control = this.control('job', way, { number: !!told, label: say('page-cell', { row: of, key: keyName(bare) }),
      title: told ? rangeOf(told) : '', placeholder: told ? usual(told, inches) : '', ...more });
    return h('div', { class: 'cell' }, h('label', { for: control.id }, keyName(bare), unit ? h('small', {}, ` ${unit}`) : null), control);
  }

  /** The ranges of a family of parts. */
  family() {
    const sections = valueAt(this.state.job, ['shaft', 'sections'])?.entries ?? [];
    const text = (index, key) => valueAt(sections[index], [key])?.text;
    const names = sections.map((_, i) => text(i, 'name'));
    const called = sections.map((_, i) => (names[i] && names.filter((n) => n === names[i]).length === 1 ? names[i] : String(i + 1)));
    const there = VARIED.filter(([varied]) => valueAt(this.state.job, ['vary', varied]));
    const rows = there.map(([varied, , range]) => {
      const base = ['vary', varied];
      const keys = ['section', 'from', 'to', 'step'];
      const cells = keys.map((key) => this.cell([...base, key], key, `vary.${varied}.${key}`, varied,
        key === 'section' ? { choice: called, said: String } : {}));
      const whole = there.length === 1 ? ['vary'] : base;
      return h('div', { class: 'row', 'data-whole': whole.join('.') }, h('div', { class: 'line work' }, h('div', { class: 'cells' }, cells), h('span', { class: 'tools' }, this.without('job', whole, range))),
        this.messages('job', base, ...keys.map((key) => [...base, key])));
    });
    const adds = VARIED.filter((v) => !there.includes(v)).map(([varied, vary]) => h('button', { type: 'button', onclick: () => {
      // Proposes the longest section that has this size, with a range of a fifth below it, for a length also above it.
      const sizes = sections.map((_, i) => (text(i, 'diameter') ? Number(text(i, varied)) || 0 : 0));
      const lengths = sections.map((_, i) => (sizes[i] ? Number(text(i, 'length')) || 0 : 0));
      const index = Math.max(0, lengths.indexOf(Math.max(...lengths)));
      const size = sizes[index] || (inInches(this.state, 'job') ? 0.5 : 10);
      const [from, to, step] = [0.8 * size, varied === 'length' ? 1.2 * size : size, 0.1 * size].map((x) => Number(x.toPrecision(3)));
      this.act.edit('job', [{ edit: 'set', way: ['vary', varied], value: `{section: ${JSON.stringify(called[index] ?? '1')}, from: ${from}, to: ${to}, step: ${step}}` }]);
    } }, say('page-add', { what: vary })));
    return h('fieldset', {}, h('legend', {}, say('page-family')), this.messages('job', ['vary']), rows,
      h('div', { class: 'adds', 'data-of': JSON.stringify(sections.map((_, i) => [called[i], text(i, 'length'), text(i, 'diameter')])) }, adds));
  }

  wishes() {
    const lists = [['hand_over_at', say('page-wish-hand-over'), say('page-wish-hand-over-example', { example: '{at: 180, nose: 148}' })],
      ['never_grip', say('page-wish-never-grip'), say('page-wish-never-grip-example')]];
    const parts = lists.map(([key, title, hint]) => {
      const list = ['wishes', key];
      const items = valueAt(this.state.job, list)?.entries ?? [];
      const rows = items.map((item, index) => this.row('job', list, index, h('div', { class: 'line wish' },
        this.control('job', [...list, index], { label: say('page-row', { what: title, number: index + 1 }) }), this.tools('job', list, index, null)),
      this.messages('job', [...list, index, 'at'], [...list, index, 'nose'], [...list, index, 0], [...list, index, 1])));
      const fresh = h('input', { 'data-add': JSON.stringify(list), 'data-count': items.length, placeholder: hint, 'aria-label': say('page-wish', { what: title }) });
      const id = `add-${key}`;
      fresh.id = id;
      const plus = h('button', { type: 'button', title: say('page-wish-add'), onclick: () => this.add(fresh) }, '+');
      return h('div', {}, h('label', { for: id }, title), rows, this.messages('job', list), h('div', { class: 'line wish' }, fresh, plus));
    });
    const most = this.field('job', [], ['wishes'], { key: 'at_most_hand_overs', label: say('page-wish-at-most') });
    return h('fieldset', {}, h('legend', {}, say('page-wishes')), this.messages('job', ['wishes']), parts, h('div', { class: 'fields' }, most));
  }

  add(input) {
    const item = input.value.trim();
    if (!item) return;
    this.act.edit('job', [{ edit: 'insert', way: JSON.parse(input.dataset.add), index: Number(input.dataset.count), item }]);
    input.value = '';
  }

  collets(file, base) {
    const list = [...base, 'counter_spindle', 'collets'];
    const collets = valueAt(this.state[file], list)?.entries ?? [];
    const keys = ['name', 'range', 'hold', 'passes', 'clamp_force', 'run_out'];
    const rows = collets.map((_, index) => {
      const ways = keys.map((key) => [...list, index, key]);
      return this.row(file, list, index, h('div', { class: 'line collet' },
        ways.map((way, i) => this.control(file, way, { number: i > 1, label: say('page-collet-field', { key: keyName(keys[i]), number: index + 1 }) })),
        this.tools(file, list, index, null)), this.messages(file, ...ways));
    });
    const heads = h('div', { class: 'line collet heads', 'aria-hidden': 'true' },
      ...[say('page-head-name'), say('page-collet-range'), say('page-collet-hold'), say('page-collet-passes'), say('page-collet-force'),
        say('page-collet-run-out')].map((t) => h('span', {}, t)));
    const add = h('button', { type: 'button', onclick: () => this.act.edit(file, [{ edit: 'insert', way: list, index: collets.length,
      item: sized("{name: 'new', range: [9.6, 10.1], hold: 20, passes: 10.4, clamp_force: 8000}", inInches(this.state, file, base.length > 0)) }]) }, say('page-add', { what: say('page-collet') }));
    return h('fieldset', {}, h('legend', {}, say('page-collets')), heads, rows, this.messages(file, list),
      h('div', { class: 'adds', 'data-of': `${file} ${collets.length}` }, add));
  }

  // -- The whole form.

  /** The places that can show a message, each with its tab. */
  places() {
    const now = this.tab;
    const places = new Map();
    for (const [tab] of TABS) {
      this.tab = tab;
      this.shown.clear();
      this.parts();
      for (const id of this.shown) if (!places.has(id)) places.set(id, tab);
    }
    this.tab = now;
    return places;
  }

  /** Where the data of the machine are: in the job, or in a machine file. @returns {[File, Way]} */
  machineAt() {
    return valueAt(this.state.job, ['machine'])?.kind === 'map' ? ['job', ['machine']] : ['machine', []];
  }

  parts() {
    if (this.tab === 'text' || !this.state.job) return this.texts();
    const groups = (all) => all.map((g) => this.group('job', [], g));
    if (this.tab === 'shaft') {
      const own = valueAt(this.state.job, MATERIAL.at)?.kind === 'map' ? [MATERIAL] : [];
      return [groups([...SHAFT, ...own]), this.sections(), this.features(), this.backWork()].flat();
    }
    if (this.tab === 'cutting') return [groups(CUTTING.slice(0, 2)), this.wishes(), groups(CUTTING.slice(2)), this.family()].flat();
    const [file, base] = this.machineAt();
    const pick = h('div', {}, this.act.picker('machine'));
    const named = file === 'machine' ? [pick, this.field('job', [], [], { key: 'machine', text: true, full: true, label: say('page-machine-file') })] : [pick];
    if (file === 'machine' && !this.state.machine) {
      const given = valueAt(this.state.job, ['machine']);
      return [...named, h('p', {}, given ? say('page-machine-file-not-open') : say('page-machine-of-shop'))];
    }
    const ofMachine = MACHINE.map((g) => this.group(file, base, g));
    return [...named, ofMachine.slice(0, 6), this.collets(file, base), ofMachine.slice(6)].flat();
  }

  texts() {
    const one = (file, text) => h('fieldset', {}, h('legend', {}, text.name), h('textarea', { id: `text-${file}`, 'data-file': file, 'data-way': '[]',
      'data-was': text.text.trim(), spellcheck: 'false', 'aria-label': say('page-text-of', { file: text.name }), value: text.text }));
    const { job, machine } = this.state.texts;
    return [h('p', {}, say('page-texts')), one('job', job), machine ? one('machine', machine) : null];
  }

  /** @param {boolean} [whole] rebuild also what looks unchanged */
  rebuild(whole = false) {
    this.wrong = new Map();
    ({ wrong: this.wrong, tabs: this.wrongTabs, unplaced: this.unplaced } =
      placed(this.state, this.state.errors.length ? this.places() : new Map()));
    this.rebuilding = true;
    const active = document.activeElement;
    const held = active && the('form').contains(active) && active.id
      ? { id: this.focusNext ?? active.id, value: active.value, was: active.dataset.was, from: active.selectionStart, to: active.selectionEnd }
      : null;
    this.focusNext = null;
    const parts = this.parts().flat(2).filter(Boolean);
    const of = JSON.stringify([this.tab, this.state.texts.job.name, this.state.texts.machine?.name, this.machineAt()]);
    if (whole || of !== this.of) the('form').replaceChildren(...parts);
    else settle(the('form'), parts, 'fieldset, div.fields');
    this.of = of;
    if (held && document.activeElement !== active) {
      const again = document.getElementById(held.id);
      again?.focus({ preventScroll: true });
      // Text that is being typed is kept when an answer arrives.
      if (again && held.id === active.id && held.value !== undefined && held.value.trim() !== held.was) again.value = held.value;
      if (again?.setSelectionRange && held.from !== null && held.from !== undefined && again.type === 'text') again.setSelectionRange(held.from, held.to);
    }
    this.rebuilding = false;
    this.tabs();
  }

  tabs() {
    const box = the('tabs');
    const focused = document.activeElement?.parentElement === box;
    box.replaceChildren(...TABS.map(([tab, name]) => h('button', {
      role: 'tab', id: `tab-${tab}`, 'aria-selected': tab === this.tab ? 'true' : 'false', 'aria-controls': 'form', type: 'button',
      tabindex: tab === this.tab ? 0 : -1, class: this.wrongTabs.has(tab) ? 'wrong' : null,
      onclick: () => this.turn(tab),
      onkeydown: (event) => {
        const by = { ArrowLeft: -1, ArrowRight: 1 }[event.key];
        if (by) this.turn(TABS[(TABS.findIndex(([t]) => t === tab) + by + TABS.length) % TABS.length][0]);
      },
    }, name)));
    the('form').setAttribute('role', 'tabpanel');
    the('form').setAttribute('aria-labelledby', `tab-${this.tab}`);
    if (focused) the(`tab-${this.tab}`).focus();
  }

  turn(tab) {
    this.tab = tab;
    this.rebuild();
    the('input').scrollTop = 0;
  }

  /** Shows the first field with a message, or the text if there is none. */
  reveal() {
    this.turn(TABS.find(([tab]) => this.wrongTabs.has(tab))?.[0] ?? this.tab);
    const field = the('form').querySelector('[aria-invalid="true"]') ?? the('form').querySelector('.wrong input, textarea');
    field?.focus();
    field?.scrollIntoView({ block: 'center' });
  }
}

/** The value of a field as a file has it. @param {any} target */
function written(target) {
  const one = (input) => (input.matches('.number') ? pointed(input.value) : input.value);
  if (!target.dataset.two) return one(target);
  return whole(target.dataset.two, [...target.parentElement.children].map(one));
}

/** What counts where a number is left out, as it would be written in the file. */
function usual({ default: value, unit, unit_inch: inch }, inches) {
  return (value ?? null) === null ? '' : inches && inch !== unit ? `${value} ${unit}` : String(value);
}

/** The meaning of a number, and its range. */
function rangeOf({ what, min, max, unit }) {
  return say('page-field-range', { what, min, max: unit ? `${max} ${unit}` : max });
}

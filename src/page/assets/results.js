// What the plan says, in words and tables.

import { h, svgOf, the } from './dom.js';
import { figures, num, percent, speed, words } from './words.js';

/** The verdict, in one line above everything else. @param {any} answer */
export function verdict(answer) {
  const box = the('verdict');
  const errors = answer.errors.length;
  if (errors) {
    box.className = 'wrong';
    const many = errors === 1 ? 'One thing is wrong' : `${errors} things are wrong`;
    box.replaceChildren(h('strong', {}, 'CANNOT BE READ'), h('span', {}, `${many} with the job; the plan below is of the last one that could be read.`));
    return;
  }
  box.className = answer.plan.verdict;
  box.replaceChildren(h('strong', {}, answer.plan.verdict === 'feasible' ? 'FEASIBLE' : 'NOT FEASIBLE'), h('span', {}, answer.summary));
}

/**
 * Says that the results below are old: a newer job is being planned, or could not be planned.
 * @param {string} name
 * @param {boolean} failed
 */
export function old(name, failed) {
  const box = the('verdict');
  box.className = failed ? 'wrong' : 'old';
  box.replaceChildren(h('strong', {}, failed ? 'NOT PLANNED' : 'PLANNING…'), h('span', {}, `${name}; what is below is of before.`));
}

/** Messages as the command line prints them. @param {any[]} told @param {(told: any) => void} reveal */
export function errors(told, reveal) {
  const one = (t) => h('pre', {}, t.printed, t.file && h('button', { class: 'small', onclick: () => reveal(t) }, 'Show the field'));
  the('errors').replaceChildren(...told.map(one));
}

/** A problem of the server or the work. @param {{what: string, help: string}} problem */
export function problem(problem) {
  the('errors').replaceChildren(h('p', {}, `${problem.what}${problem.help ? `: ${problem.help}` : ''}.`));
}

const sentence = (text) => text.charAt(0).toUpperCase() + text.slice(1);

function share(check) {
  if (!check) return '–';
  const used = check.utilisation;
  const fill = h('i', { class: used > 1 ? 'over' : used > 0.85 ? 'near' : null });
  fill.style.width = `${Math.min(100, 100 * used).toFixed(0)}%`;
  return [h('span', { class: 'bar', 'aria-hidden': 'true' }, fill), `${words(check.check)} ${percent(used)}`];
}

const governing = (stage) => stage.checks.reduce((worst, c) => (worst && worst.utilisation >= c.utilisation ? worst : c), null);

// Speeds are whole numbers, rounded down so that they are never above the limit.
const speeds = (stage) => [...new Set([speed(stage.rpm_min), speed(stage.rpm_max)])].join('–');

/** The highest speed of every stretch of a stage, part-off among them, as on the sheet. @param {any} plan @param {any} stage */
function stretches(plan, stage) {
  const runs = [];
  const pieces = plan.segments.filter((p) => p.stage === stage.number && p.rpm > 0);
  const last = plan.stages[plan.stages.length - 1] === stage && plan.part_off_rpm;
  if (last) pieces.push({ from_mm: plan.length_mm, to_mm: stage.to_mm, rpm: plan.part_off_rpm });
  for (const p of pieces) {
    const run = runs[runs.length - 1];
    if (run && run.rpm === speed(p.rpm)) run.to = p.to_mm;
    else runs.push({ from: p.from_mm, to: p.to_mm, rpm: speed(p.rpm) });
  }
  return runs;
}

/**
 * The speeds of a stage. If there are several, each stands with its stretch, because the highest may be too fast
 * elsewhere.
 * @param {any} plan
 * @param {any} stage
 */
function speedsOf(plan, stage) {
  const runs = stretches(plan, stage);
  if (runs.length < 2) return speeds(stage);
  const lines = runs.map((r) => h('li', {}, `${num(r.from)}–${num(r.to)} mm: ${r.rpm}`));
  return h('details', {}, h('summary', {}, speeds(stage)), h('ul', {}, lines));
}

function stages(plan) {
  const head = ['stage', 'from', 'to', 'travel', 'grip', 'unsupported', 'counter-spindle', 'headstock', 'rev/min', 'time'];
  const rows = plan.stages.map((g) => h('tr', {},
    h('td', {}, String(g.number)), h('td', {}, num(g.from_mm)), h('td', {}, num(g.to_mm)), h('td', {}, num(g.travel_mm)),
    h('td', {}, g.grip ? `${num(g.grip.from_mm)}–${num(g.grip.to_mm)} Ø${num(g.grip.diameter_mm)}` : 'free'), h('td', {}, num(g.unsupported_max_mm)),
    h('td', {}, g.grip ? `${num(g.counter_spindle_start_mm)}–${num(g.counter_spindle_end_mm)}` : '–'),
    h('td', {}, plan.verdict === 'feasible' ? `${num(g.headstock_start_mm)}–${num(g.headstock_end_mm)}` : '–'),
    h('td', {}, g.rpm_max ? speedsOf(plan, g) : '–'),
    h('td', {}, g.time_s ? num(g.time_s) : '–'), h('td', { class: 'w' }, share(governing(g)))));
  return h('table', { id: 'stages' }, h('caption', {}, 'Stages (mm, s)'),
    h('thead', {}, h('tr', {}, head.map((t) => h('th', { scope: 'col' }, t)), h('th', { class: 'w', scope: 'col' }, 'governing check'))), h('tbody', {}, rows));
}

function checks(plan) {
  const names = [...new Set(plan.stages.flatMap((g) => g.checks.map((c) => c.check)))];
  const cell = (stage, name) => {
    const c = stage.checks.find((k) => k.check === name);
    const title = c ? `${figures(c.demand)} of ${figures(c.limit)} ${c.unit}, at ${num(c.turned_mm)} mm turned` : null;
    return h('td', { class: c && c.utilisation > 1 ? 'over' : null, title }, c ? percent(c.utilisation) : '–');
  };
  return h('details', {}, h('summary', {}, 'Every check of every stage'), h('table', {},
    h('thead', {}, h('tr', {}, h('th', { scope: 'col' }, 'stage'), names.map((n) => h('th', { scope: 'col' }, words(n))))),
    h('tbody', {}, plan.stages.map((g) => h('tr', {}, h('td', {}, String(g.number)), names.map((n) => cell(g, n)))))));
}

function figuresOf(plan) {
  const t = plan.time_s;
  const q = plan.quote;
  const rows = plan.verdict === 'feasible' ? [
    ...(plan.cycle ? [['part to part', `${num(plan.cycle.steady_s)} s`]] : []),
    ['a part, added up', `${num(t.total)} s`], ['cutting', `${num(t.cutting)} s`], ['travels', `${num(t.segments)} s`], ['hand-overs', `${num(t.hand_overs)} s`],
    ['re-grips', `${num(t.regrips)} s`], ['holes and flats', `${num(t.features)} s`], ['part-off', `${num(t.part_off)} s`],
    ['rear end', `${num(t.back_work)} s`],
    ['re-grips at', plan.headstock_regrips_mm.map((m) => num(m)).join(', ') || 'none'],
    ['pieces a bar', String(q.pieces_per_bar)], ['material', `${num(q.material_kg, 2)} kg`], ['remnant', `${num(q.remnant_mm, 0)} mm`],
    ...(q.cost ? [['cost', `${q.cost.total.toFixed(2)} ${q.cost.currency}`]] : []),
  ] : [['material', `${num(q.material_kg, 2)} kg`]];
  return h('dl', { class: 'figures' }, rows.map(([k, v]) => h('div', {}, h('dt', {}, k), h('dd', {}, v))));
}

function shortfall(plan) {
  const s = plan.shortfall;
  if (!s) return null;
  return h('div', { class: 'shortfall' }, h('p', {}, h('b', {}, `Stopped at ${num(s.farthest_mm)} mm by ${[s.blocked_by, ...s.blocked_with].map(words).join(' and ')}. `), `${sentence(s.text)}.`),
    h('div', { id: 'changes', role: 'status', 'aria-live': 'polite' }, 'Looking for what would help…'));
}

/** What would help. @param {any[]|null} list null: it could not be found out @param {string} [why] */
export function changes(list, why = '') {
  const box = the('changes');
  if (!box) return;
  if (list === null) box.replaceChildren(`What would help was not found out: ${why}.`);
  else if (!list.length) box.replaceChildren('No single change of those tried, and no pair of them, makes it feasible.');
  else box.replaceChildren('What would help, each alone:', h('ol', {}, list.slice(0, 8).map((c) => h('li', {}, c.text))));
}

/** Both spindles in time, and what to shorten first. @param {any} plan @param {string|null} strip */
function inTime(plan, strip) {
  if (!strip) return null;
  const first = plan.cycle.critical.slice(0, 5).map((c) => h('li', {}, `${c.what}: ${num(c.seconds)} s, ${percent(c.share)}`));
  return h('figure', { id: 'strip' }, svgOf(strip), h('figcaption', {}, 'What to shorten first:', h('ol', {}, first)));
}

/**
 * A table: heads; rows of texts. `words_`: indices of the columns of words.
 * @param {string} caption
 * @param {string[]} heads
 * @param {any[][]} rows
 */
function table(caption, heads, rows, words_ = []) {
  const kind = (i) => (words_.includes(i) ? 'w' : null);
  return h('table', {}, caption && h('caption', {}, caption),
    h('thead', {}, h('tr', {}, heads.map((t, i) => h('th', { scope: 'col', class: kind(i) }, t)))),
    h('tbody', {}, rows.map((row) => h('tr', {}, row.map((c, i) => h('td', { class: kind(i) }, c))))));
}

/** The order, if the job has one. */
function order(plan) {
  const o = plan.order;
  if (!o) return null;
  const money = (x) => (x === null || x === undefined ? '–' : `${x.toFixed(2)} ${o.currency ?? ''}`);
  const facts = [['pieces', num(o.pieces, 0)], ['bars', num(o.bars, 0)], ['set-up', `${num(o.set_up_h)} h`], ['run', `${num(o.run_h)} h`], ['shifts', num(o.shifts)],
    ['pieces a shift', num(o.pieces_per_shift, 0)], ...(o.cost === null ? [] : [['cost a piece', money(o.cost_per_piece)], ['in all', money(o.cost)]])];
  return h('section', { id: 'order' }, table('Order', facts.map(([k]) => k), [facts.map(([, v]) => v)]),
    h('details', {}, h('summary', {}, 'By quantity, and what would change the time'),
      table('By quantity', ['pieces', 'bars', 'shifts', 'cost a piece'], o.quantities.map((q) => [num(q.pieces, 0), num(q.bars, 0), num(q.shifts), money(q.cost_per_piece)])),
      table('From part to part', ['what', 'times', 's', 'change s'],
        o.sensitivity.map((v) => [words(v.what), num(v.factor, 2), num(v.steady_s), `${v.change_s > 0 ? '+' : ''}${num(v.change_s)}`]), [0])));
}

/** Tools and places, if the machine lists places. */
function tooling(plan) {
  const t = plan.tooling;
  if (!t) return null;
  const rows = t.places.filter((p) => p.places || p.tools.length)
    .map((p) => [words(p.place), String(p.places), String(p.tools.length), String(p.elsewhere), String(p.short), String(p.left), p.tools.join(', ')]);
  if (t.turret_tools !== null) rows.push(['turret', String(t.turret_tools), String(t.turret_used), '–', '–', String(t.turret_tools - t.turret_used), '']);
  const said = t.fits ? 'every tool has its place' : t.no_pair ? 'the turning tools stand on one side, a pair cannot cut' : 'places are short';
  return h('details', { id: 'tooling', open: t.fits ? null : '' }, h('summary', {}, `Tool places: ${said}`),
    table('', ['place', 'there are', 'needed', 'elsewhere', 'short', 'left', 'tools'], rows, [0, 6]));
}

/** What is done when, and what the stops leave. */
function moments(plan) {
  const works = plan.features.map((f) => [f.text, num(f.at_mm), f.turned_mm === null ? 'after part-off' : num(f.turned_mm), f.stage === null ? '–' : String(f.stage), num(f.time_s)]);
  const lines = plan.witnesses.map((w) => [num(w.at_mm), plan.shaft.sections[w.section - 1]?.name ?? String(w.section), words(w.cause), w.interrupt]);
  if (!works.length && !lines.length) return null;
  return h('details', { id: 'moments' }, h('summary', {}, 'Features with their moment, and lines the stops leave'),
    works.length ? table('Features (mm, s)', ['feature', 'at', 'done at turned', 'stage', 'time'], works, [0]) : null,
    lines.length ? table('Witness lines (mm)', ['at', 'surface', 'cause', 'surface marked'], lines, [1, 2, 3]) : null);
}

const list = (title, items, kind) => (items.length ? h('div', { class: kind }, h('b', {}, title), h('ul', {}, items.map((i) => h('li', {}, i)))) : null);

function put(id, parts) {
  the(id).replaceChildren(...parts.filter(Boolean));
}

/** What is read first, below the drawing. @param {any} plan @param {string[]} lookAt */
export function first(plan, lookAt) {
  put('first', [shortfall(plan), stages(plan), list('Look at', lookAt, 'look-at')]);
}

/** Everything else. @param {any} plan @param {string|null} strip */
export function rest(plan, strip) {
  put('rest', [inTime(plan, strip), figuresOf(plan), order(plan), tooling(plan), checks(plan), moments(plan),
    list('Cautions', plan.cautions, 'cautions'), list('Notes', plan.notes.map(sentence), '')]);
}

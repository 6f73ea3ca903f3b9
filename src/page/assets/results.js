// What the plan says, in words and tables.

import { h, svgOf, the } from './dom.js';
import { advice, checkName, figures, fixed, made, num, percent, say, sentence, speed, verdictName, words } from './words.js';

/**
 * The verdict, in one line above everything else.
 * @param {any} answer
 * @param {boolean} before whether results of earlier input are shown
 * @param {() => void} reveal shows the first field with a message
 */
export function verdict(answer, before, reveal) {
  const box = the('verdict');
  const errors = answer.errors.length;
  // A verdict is told once, when it is final.
  box.setAttribute('aria-busy', String(!errors && !answer.settled));
  if (errors) {
    box.className = 'wrong';
    const said = `${say('page-input-errors', { count: errors })} ${before ? say('page-results-of-last-good-input') : ''}`;
    box.replaceChildren(h('strong', {}, say('page-verdict-input-error')), h('span', {}, said),
      h('button', { onclick: reveal }, say('page-show-error')));
    return;
  }
  box.className = answer.settled ? answer.plan.verdict : 'counting';
  if (!answer.settled) {
    box.replaceChildren(h('strong', {}, say('page-verdict-counting')), h('span', {}, say('page-counting')));
    return;
  }
  box.replaceChildren(h('strong', {}, verdictName(answer.plan.verdict)), h('span', {}, answer.summary));
}

/**
 * Says that the results below are old: a newer job is being planned, or could not be planned.
 * @param {string} name
 * @param {boolean} failed
 */
export function old(name, failed) {
  const box = the('verdict');
  box.className = failed ? 'wrong' : 'old';
  box.replaceChildren(h('strong', {}, failed ? say('page-verdict-not-planned') : say('page-verdict-planning')),
    h('span', {}, say('page-results-of-earlier-input', { job: name })));
}

/** Messages that belong to no field of the form, one line each. @param {any[]} told @param {any} texts */
export function unplaced(told, texts) {
  const one = (t) => (t.file && t.line ? say('page-error-at-line', { file: texts[t.file].name, line: t.line, text: advice(t) }) : advice(t));
  the('errors').replaceChildren(...told.map((t) => h('p', {}, one(t))));
}

/** Asks for the machine file that a job names. @param {string} file @param {() => void} open @param {any} picker chooses another machine */
export function wanted(file, open, picker) {
  the('errors').append(h('p', {}, `${say('page-machine-wanted', { file })} `, h('button', { type: 'button', class: 'first', onclick: open }, say('page-machine-wanted-open')), picker));
}

/** All messages, for screen readers only, because a field may be out of sight. What was shown above the plan is old. @param {any[]} told */
export function heard(told) {
  the('errors').replaceChildren();
  the('heard').replaceChildren(...told.map((t) => h('p', {}, advice(t))));
}

/** A problem of the server or the work. @param {{what: string, help: string}} problem */
export function problem(problem) {
  the('errors').replaceChildren(h('p', {}, advice(problem)));
}

function share(check) {
  if (!check) return '–';
  const used = check.utilisation;
  const fill = h('i', { class: used > 1 ? 'over' : used > 0.85 ? 'near' : null });
  fill.style.width = `${Math.min(100, 100 * used).toFixed(0)}%`;
  return [h('span', { class: 'bar', 'aria-hidden': 'true' }, fill), `${checkName(check.check)} ${percent(used)}`];
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
  const lines = runs.map((r) => h('li', {}, say('page-speed-from-to', { from: num(r.from), to: num(r.to), speed: r.rpm })));
  return h('details', {}, h('summary', {}, speeds(stage)), h('ul', {}, lines));
}

/** L/d of a stage, below its unsupported length. */
function ratio(stage) {
  return stage.l_over_d_max === null ? [] : [h('br'), h('small', {}, say('page-l-over-d', { ratio: fixed(stage.l_over_d_max, 1) }))];
}

function stages(plan) {
  const head = [say('page-stage'), say('page-from'), say('page-to'), say('page-travel'), say('page-grip'), say('page-unsupported'),
    say('page-counter-spindle'), say('page-headstock'), say('page-speed'), say('page-time')];
  const caption = plan.layout.bush_land_mm === null ? say('page-stages-no-bush') : say('page-stages');
  const rows = plan.stages.map((g) => h('tr', {},
    h('td', {}, String(g.number)), h('td', {}, num(g.from_mm)), h('td', {}, num(g.to_mm)), h('td', {}, num(g.travel_mm)),
    h('td', {}, g.grip ? `${num(g.grip.from_mm)}–${num(g.grip.to_mm)} Ø${num(g.grip.diameter_mm)}` : plan.centre ? say('page-grip-centre') : say('page-grip-free')), h('td', {}, num(g.unsupported_max_mm), ratio(g)),
    h('td', {}, g.grip ? `${num(g.counter_spindle_start_mm)}–${num(g.counter_spindle_end_mm)}` : '–'),
    h('td', {}, made(plan) ? `${num(g.headstock_start_mm)}–${num(g.headstock_end_mm)}` : '–'),
    h('td', {}, g.rpm_max ? speedsOf(plan, g) : '–'),
    h('td', {}, g.time_s ? num(g.time_s) : '–'), h('td', { class: 'w' }, share(governing(g)))));
  return h('table', { id: 'stages' }, h('caption', {}, caption),
    h('thead', {}, h('tr', {}, head.map((t) => h('th', { scope: 'col' }, t)), h('th', { class: 'w', scope: 'col' }, say('page-closest-check')))), h('tbody', {}, rows));
}

function checks(plan) {
  const names = [...new Set(plan.stages.flatMap((g) => g.checks.map((c) => c.check)))];
  const cell = (stage, name) => {
    const c = stage.checks.find((k) => k.check === name);
    const title = c ? say('page-check-worst',
      { value: figures(c.demand), limit: `${figures(c.limit)} ${c.unit}`.trim(), at: num(c.turned_mm) }) : null;
    return h('td', { class: c && c.utilisation > 1 ? 'over' : null, title }, c ? percent(c.utilisation) : '–');
  };
  return h('details', {}, h('summary', {}, say('page-all-checks')), h('table', {},
    h('thead', {}, h('tr', {}, h('th', { scope: 'col' }, say('page-stage')), names.map((n) => h('th', { scope: 'col' }, checkName(n))))),
    h('tbody', {}, plan.stages.map((g) => h('tr', {}, h('td', {}, String(g.number)), names.map((n) => cell(g, n)))))));
}

function figuresOf(plan) {
  const t = plan.time_s;
  const q = plan.quote;
  const regrips = plan.headstock_regrips_mm.map((m) => num(m)).join(', ');
  const material = [say('page-material'), `${num(q.material_kg, 2)} kg`];
  const rows = made(plan) ? [
    ...(plan.cycle ? [[say('page-cycle-time'), `${num(plan.cycle.steady_s)} s`]] : []),
    [say('page-sum-of-operations'), `${num(t.total)} s`], [say('page-time-cutting'), `${num(t.cutting)} s`],
    [say('page-time-moves'), `${num(t.segments)} s`], [say('page-time-hand-overs'), `${num(t.hand_overs)} s`],
    [say('page-time-regrips'), `${num(t.regrips)} s`], [say('page-time-features'), `${num(t.features)} s`],
    [say('page-time-part-off'), `${num(t.part_off)} s`], [say('page-time-rear-end'), `${num(t.back_work)} s`],
    [say('page-regrips-at'), regrips ? `${regrips} mm` : say('page-none')],
    [say('page-parts-per-bar'), String(q.pieces_per_bar)], material, [say('page-remnant'), `${num(q.remnant_mm, 0)} mm`],
    ...(q.cost ? [[say('page-cost'), `${fixed(q.cost.total, 2)} ${q.cost.currency}`]] : []),
  ] : [material];
  return h('dl', { class: 'figures' }, rows.map(([k, v]) => h('div', {}, h('dt', {}, k), h('dd', {}, v))));
}

function shortfall(plan) {
  const s = plan.shortfall;
  if (!s) return null;
  return h('div', { class: 'shortfall' }, h('p', {}, h('b', {}, `${say('page-stopped', { at: num(s.farthest_mm) })} `), `${sentence(s.text)}.`),
    h('div', { id: 'changes', role: 'status', 'aria-live': 'polite' }, say('page-changes-searching')));
}

/**
 * What would help. `done`: the search has ended. `apply` makes the edits of a set.
 * @param {any|null} help null: it could not be found out
 * @param {boolean} done
 * @param {(edits: any[], what: string) => void} apply
 * @param {string} [why]
 */
export function changes(help, done, apply, why = '') {
  const box = the('changes');
  if (!box) return;
  if (help === null) {
    box.replaceChildren(say('page-changes-failed', { why }));
    return;
  }
  const button = (edits, what) => edits.length > 0 && h('button', { type: 'button', 'aria-label': say('page-apply-what', { what }),
    onclick: () => apply(edits, what) }, say('page-apply'));
  const set = (s) => {
    const holds = s.good_share === null ? '' : ` ${say('page-set-holds', { good: percent(s.good_share) })}`;
    return h('li', {}, `${sentence(s.text)}.${holds} `, button(s.changes.flatMap((c) => c.edits), s.text));
  };
  const alone = help.sets.filter((s) => s.changes.length === 1).map((s) => s.changes[0].change);
  const others = help.changes.filter((c) => !alone.includes(c.change));
  const items = (title, list) => list.length > 0 && [h('p', {}, title), h('ul', {}, list.map((c) => h('li', {}, `${sentence(c.text)}. `, button(c.edits, c.text))))];
  box.replaceChildren(...[
    help.sets.length > 0 && [h('p', {}, say('page-changes')), h('ol', {}, help.sets.map(set))],
    !done && h('p', {}, say('page-changes-searching')),
    done && help.tried && h('p', {}, `${sentence(help.tried)}.`),
    done && items(say('page-changes-single'), others),
    done && items(say('page-after-trial'), help.after_trial),
  ].flat(2).filter(Boolean));
}

/** Both spindles in time, and what to shorten first. @param {any} plan @param {string|null} strip */
function inTime(plan, strip) {
  if (!strip) return null;
  const first = plan.cycle.critical.slice(0, 5).map((c) => h('li', {}, say('page-critical', { what: c.what, seconds: num(c.seconds), share: percent(c.share) })));
  return h('figure', { id: 'strip' }, svgOf(strip), h('figcaption', {}, say('page-shorten-first'), h('ol', {}, first)));
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
  const money = (x) => (x === null || x === undefined ? '–' : `${fixed(x, 2)} ${o.currency ?? ''}`);
  const facts = [[say('page-parts'), num(o.pieces, 0)], [say('page-bars'), num(o.bars, 0)], [say('page-set-up'), `${num(o.set_up_h)} h`],
    [say('page-running-time'), `${num(o.run_h)} h`], [say('page-shifts'), num(o.shifts)], [say('page-parts-per-shift'), num(o.pieces_per_shift, 0)],
    ...(o.cost === null ? [] : [[say('page-cost'), money(o.cost_per_piece)], [say('page-total-cost'), money(o.cost)]])];
  return h('section', { id: 'order' }, table(say('page-order'), facts.map(([k]) => k), [facts.map(([, v]) => v)]),
    h('details', {}, h('summary', {}, say('page-order-more')),
      table(say('page-quantities'), [say('page-parts'), say('page-bars'), say('page-shifts'), say('page-cost')],
        o.quantities.map((q) => [num(q.pieces, 0), num(q.bars, 0), num(q.shifts), money(q.cost_per_piece)])),
      table(say('page-sensitivity'), [say('page-sensitivity-what'), say('page-sensitivity-factor'), say('page-sensitivity-time'), say('page-sensitivity-change')],
        o.sensitivity.map((v) => [words(v.what), num(v.factor, 2), num(v.steady_s), `${v.change_s > 0 ? '+' : ''}${num(v.change_s)}`]), [0])));
}

/** Tools and places, if the machine lists places. */
function tooling(plan) {
  const t = plan.tooling;
  if (!t) return null;
  const rows = t.places.filter((p) => p.places || p.tools.length)
    .map((p) => [words(p.place), String(p.places), String(p.tools.length), String(p.elsewhere), String(p.short), String(p.left), p.tools.join(', ')]);
  if (t.turret_tools !== null) rows.push([say('page-turret'), String(t.turret_tools), String(t.turret_used), '–', '–', String(t.turret_tools - t.turret_used), '']);
  const said = t.fits ? say('page-tool-places-fit') : t.no_pair ? say('page-tool-places-no-pair') : say('page-tool-places-short');
  return h('details', { id: 'tooling', open: t.fits ? null : '' }, h('summary', {}, said),
    table('', [say('page-place'), say('page-places-available'), say('page-places-needed'), say('page-places-elsewhere'),
      say('page-places-short'), say('page-places-left'), say('page-tools')], rows, [0, 6]));
}

/** What is done when, and what the stops leave. */
function moments(plan) {
  const works = plan.features.map((f) => [f.text, num(f.at_mm), f.turned_mm === null ? say('page-after-part-off') : num(f.turned_mm), f.stage === null ? '–' : String(f.stage), num(f.time_s)]);
  const lines = plan.witnesses.map((w) => [num(w.at_mm), plan.shaft.sections[w.section - 1]?.name ?? String(w.section), words(w.cause), w.interrupt]);
  if (!works.length && !lines.length) return null;
  return h('details', { id: 'moments' }, h('summary', {}, say('page-features-and-lines')),
    works.length ? table(say('page-features-table'),
      [say('page-feature'), say('page-at'), say('page-done-at'), say('page-stage'), say('page-time')], works, [0]) : null,
    lines.length ? table(say('page-witness-lines'),
      [say('page-at'), say('page-surface'), say('page-cause'), say('page-surface-marked')], lines, [1, 2, 3]) : null);
}

const list = (title, items, kind) => (items.length ? h('div', { class: kind }, h('b', {}, title), h('ul', {}, items.map((i) => h('li', {}, i)))) : null);

function put(id, parts) {
  the(id).replaceChildren(...parts.filter(Boolean));
}

/** How sure the plan is. The parts that break a limit come later. @param {any} answer */
function sure({ sure: told, inputs, settled }) {
  if (!settled) return h('section', { id: 'sure' }, h('b', {}, say('page-sure')), h('ul', {}, h('li', {}, say('page-counting'))));
  if (!told.length) return null;
  return h('section', { id: 'sure' }, h('b', {}, say('page-sure')), h('ul', {}, told.map((t) => h('li', {}, t))),
    h('div', { id: 'sampled' }),
    inputs ? h('details', {}, h('summary', {}, say('page-measure-first')), h('figure', {}, svgOf(inputs))) : null);
}

/**
 * Parts that break a limit, and one of them with its inputs.
 * @param {any|null} along null: it could not be worked out
 * @param {(number: number|null) => void} look shows a part, or none
 * @param {string} [why]
 */
export function sampled(along, look, why = '') {
  const box = the('sampled');
  if (!box) return;
  if (!along) {
    box.replaceChildren(say('page-sampled-failed', { why }));
    return;
  }
  const { broken, part } = along;
  const one = (b) => h('li', {}, h('button', { title: say('page-sampled-look'), 'aria-pressed': String(part?.number === b.number),
    onclick: () => look(part?.number === b.number ? null : b.number) }, say('page-sampled-part', { number: b.number, check: checkName(b.check), from: num(b.from_mm) })));
  const value = (x, unit) => `${figures(x)} ${unit}`.trim();
  const inputs = part && table(say('page-sampled-inputs', { number: part.number }),
    [say('page-sampled-input'), say('page-sampled-value'), say('page-sampled-nominal'), say('page-sampled-off')],
    part.inputs.map((i) => [i.name, value(i.value, i.unit), value(i.nominal, i.unit), num(i.off, 1)]), [0]);
  box.replaceChildren(...[broken.length ? h('details', { open: part ? '' : null }, h('summary', {}, say('page-sampled')),
    h('ul', { class: 'parts' }, broken.map(one)), inputs, part ? h('button', { onclick: () => look(null) }, say('page-sampled-hide')) : null)
    : h('p', {}, say('page-sampled-none'))].filter(Boolean));
}

/** What is read first, below the drawing. @param {any} answer */
export function first(answer) {
  const { plan, look_at: lookAt } = answer;
  put('first', [shortfall(plan), sure(answer), stages(plan), list(say('page-look-at'), lookAt, 'look-at')]);
}

/** Everything else. @param {any} plan @param {string|null} strip */
export function rest(plan, strip) {
  put('rest', [inTime(plan, strip), figuresOf(plan), order(plan), tooling(plan), checks(plan), moments(plan),
    list(say('page-cautions'), plan.cautions, 'cautions'), list(say('page-notes'), plan.notes.map(sentence), '')]);
}

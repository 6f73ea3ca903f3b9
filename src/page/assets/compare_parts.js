// The parts of the comparison as elements: figures, what moved, both diagrams, stages, differences of the files.

import { changes, difference, figuresOf, moves, shownValue, topSpeed } from './compared.js';
import { h, s, svgOf } from './dom.js';
import { advice, checkName, fixed, made, num, percent, say, sentence, verdictName } from './words.js';

/** Differences of the files up to this number are open at once. */
const OPEN_UP_TO = 12;
/** Height of a row of marks above the diagram, and the text in it, in its units. */
const ROW = 15;
const TEXT = 11;
const wide = (text) => [...text].reduce((sum, letter) => sum + (letter > '\u2e7f' ? 1.05 : 0.6), 0) * TEXT;

/** @param {number} by @param {number} decimals */
const signed = (by, decimals) => (by > 0 ? `+${fixed(by, decimals)}` : fixed(by, decimals).replace('-', '−'));

/** The verdict of one side. @param {'A'|'B'} side @param {string} name @param {any} answer @param {string|null} failed */
export function verdict(side, name, answer, failed) {
  const head = h('h3', {}, h('b', { class: 'side' }, side), ` ${name}`);
  if (failed) return h('div', { class: 'card wrong' }, head, h('p', {}, failed));
  if (!answer) return h('div', { class: 'card' }, head, h('p', {}, say('page-planning')));
  if (!answer.plan) {
    const told = answer.errors.map((e) => h('li', {}, advice(e)));
    return h('div', { class: 'card wrong' }, head, h('p', {}, h('strong', {}, say('page-verdict-input-error'))), h('ul', {}, told));
  }
  const { plan, summary, look_at: lookAt } = answer;
  return h('div', { class: `card ${plan.verdict}` }, head,
    h('p', {}, h('strong', {}, verdictName(plan.verdict)), ` ${summary}`), h('p', { class: 'machine' }, plan.machine),
    plan.shortfall ? h('p', {}, `${say('page-stopped', { at: num(plan.shortfall.farthest_mm) })} ${sentence(plan.shortfall.text)}.`) : null,
    lookAt.length ? h('details', {}, h('summary', {}, say('page-look-at')), h('ul', {}, lookAt.map((l) => h('li', {}, l)))) : null);
}

/** What a difference means: a class, and a word. @param {number} better */
function judged(better) {
  if (better === 0) return ['same', say('page-compare-same')];
  return better > 0 ? ['better', say('page-compare-better')] : ['worse', say('page-compare-worse')];
}

/** The table of figures. @param {any} was @param {any} is */
export function figures(was, is) {
  const [a, b] = [figuresOf(was), figuresOf(is)];
  const shown = (figure) => {
    const value = figure && shownValue(figure);
    if (value === null || value === undefined) return '–';
    return figure.check ? `${checkName(figure.check)} ${percent(figure.value)}` : `${fixed(value, figure.decimals)} ${figure.unit}`.trim();
  };
  const all = [...a, ...b].filter((f) => f.value !== null && !(f.ifBroken && made(was) && made(is)));
  const names = [...new Set(all.map((f) => f.name))];
  const row = (name) => {
    const [x, y] = [a, b].map((list) => list.find((f) => f.name === name));
    const found = difference(x, y);
    const [kind, word] = found ? judged(found.better) : [null, '–'];
    const unit = y?.share ? '%' : y?.unit ?? '';
    const by = found ? `${found.by === 0 ? '0' : signed(found.by, y?.decimals ?? 0)} ${unit}`.trim() : '–';
    return h('tr', {}, h('th', { scope: 'row', class: 'w' }, name), h('td', {}, shown(x)), h('td', {}, shown(y)), h('td', {}, by),
      h('td', { class: kind }, word));
  };
  return h('table', { id: 'compare-figures' }, h('caption', {}, say('page-compare-figures')),
    h('thead', {}, h('tr', {}, [say('page-compare-figure'), 'A', 'B', say('page-compare-difference'), say('page-compare-judgement')]
      .map((t, i) => h('th', { scope: 'col', class: i === 0 ? 'w' : null }, t)))), h('tbody', {}, names.map(row)));
}

/** What moved, in full and as a short label in the diagram. @type {Record<string, ((number: number) => string)[]>} */
const NAMED = {
  hand_over: [(number) => say('page-compare-hand-over', { number }), (number) => say('page-compare-hand-over-short', { number })],
  grip: [(number) => say('page-compare-grip', { number }), (number) => say('page-compare-grip-short', { number })],
  regrip: [(number) => say('page-compare-regrip', { number }), (number) => say('page-compare-regrip-short', { number })],
  speed: [(number) => say('page-compare-speed', { number })],
};

/** A move as a sentence: what, from where, to where, by how much. @param {import('./compared.js').Move} move */
function moveSaid({ what, number, was, is }) {
  const unit = what === 'speed' ? say('unit-rpm') : 'mm';
  const decimals = what === 'speed' ? 0 : 1;
  const name = NAMED[what][0](number);
  if (was === null || is === null) return say('page-compare-only-in', { what: name, at: num(was ?? is, decimals), unit, side: was === null ? 'B' : 'A' });
  return say('page-compare-moved-by', { what: name, was: num(was, decimals), is: num(is, decimals), by: signed(is - was, decimals), unit });
}

/** What moved, in words. @param {any} was @param {any} is */
export function moved(was, is) {
  const found = moves(was, is);
  return h('section', { id: 'compare-moved' }, h('h3', {}, say('page-compare-moved')),
    found.length ? h('ul', {}, found.map((m) => h('li', {}, moveSaid(m)))) : h('p', {}, made(was) && made(is) ? say('page-compare-moved-none') : say('page-compare-moved-unknown')));
}

/**
 * One diagram with marks of what moved: a line at its place, a dashed line at its place in the other plan, and above it
 * the distance.
 * @param {'A'|'B'} side @param {any} answer @param {any} other the answer of the other side @param {number} scale units per mm of both
 */
function diagram(side, answer, other, scale) {
  const { drawing: frame, plan } = answer;
  const own = side === 'B' ? moves(other.plan, plan) : moves(plan, other.plan).map((m) => ({ ...m, was: m.is, is: m.was }));
  const x = (mm) => frame.left + mm * frame.per_mm;
  const [top, bottom] = [frame.centre - frame.bar_half - 4, frame.centre + frame.bar_half + 4];
  /** Right end of the last label of each row. @type {number[]} */
  const rows = [];
  const placed = own.filter((m) => m.what !== 'speed' && m.is !== null);
  // A re-grip at a hand-over is the same stop.
  const shared = (m) => m.what === 'regrip' && placed.some((n) => n.what === 'hand_over' && n.was === m.was && n.is === m.is);
  const marks = placed.filter((m) => !shared(m)).sort((m, n) => /** @type {any} */ (m.is) - /** @type {any} */ (n.is)).map((m) => {
    const at = x(m.is);
    const by = m.was === null ? say('page-compare-new', { side }) : `${signed(side === 'B' ? Number(m.is) - m.was : m.was - Number(m.is), 1)} mm`;
    const text = `${NAMED[m.what][1](m.number)} ${by}`;
    const left = Math.min(at + 4, frame.width - wide(text) - 2);
    let row = rows.findIndex((end) => end < left - 6);
    if (row < 0) row = rows.length;
    rows[row] = left + wide(text);
    return { m, at, text, left, row };
  });
  const head = rows.length * ROW + 2;
  const label = say('page-compare-diagram', { side });
  const lines = marks.map(({ m, at, row }) => s('g', { class: m.what },
    s('title', {}, `${NAMED[m.what][0](m.number)}: ${num(m.is)} mm`),
    m.was === null ? null : s('path', { class: 'was', d: `M${x(m.was)} ${top}V${bottom}M${x(m.was)} ${bottom - 1}H${at}` }),
    s('path', { class: 'is', d: `M${at} ${row * ROW + 3 - head}V${bottom}` })));
  const labels = marks.map(({ text, left, row }) => s('text', { x: left, y: row * ROW + TEXT - head, 'font-size': TEXT }, text));
  const box = `0 ${-head} ${frame.width} ${frame.height + head}`;
  const picture = svgOf(frame.svg);
  for (const [name, value] of Object.entries({ x: 0, y: 0, width: frame.width, height: frame.height, viewBox: `0 0 ${frame.width} ${frame.height}` })) picture.setAttribute(name, String(value));
  const whole = s('svg', { viewBox: box, role: 'img', 'aria-label': label }, picture, s('g', { class: 'marks' }, lines, labels));
  // The same length in mm is the same length on the screen, whatever the lengths of the shafts.
  whole.style.width = `${((100 * scale) / frame.per_mm).toFixed(2)}%`;
  return h('figure', { class: 'compared' }, h('figcaption', {}, label), whole);
}

/** Diagrams are drawn smaller by up to this share for one scale; the smaller one is drawn larger for more. */
const SHRINK = 0.02;

/** Both diagrams, in one scale. @param {any} was @param {any} is */
export function diagrams(was, is) {
  const [small, large] = [was.drawing.per_mm, is.drawing.per_mm].sort((a, b) => a - b);
  const scale = small >= (1 - SHRINK) * large ? small : large;
  return h('div', { class: 'sides' }, diagram('A', was, is, scale), diagram('B', is, was, scale));
}

/** The stages of both plans by order; what differs is old → new, and marked. @param {any} was @param {any} is */
export function stages(was, is) {
  const ends = (list, i, of) => (list[i] ? of(list[i]) : '–');
  const share = (stage) => {
    const worst = stage.checks.reduce((w, c) => (w && w.utilisation >= c.utilisation ? w : c), null);
    return worst ? `${checkName(worst.check)} ${percent(worst.utilisation)}` : '–';
  };
  /** @type {[string, (stage: any) => string][]} */
  const columns = [[say('page-from'), (g) => num(g.from_mm)], [say('page-to'), (g) => num(g.to_mm)],
    [say('page-grip'), (g) => (g.grip ? `${num(g.grip.from_mm)}–${num(g.grip.to_mm)} Ø${num(g.grip.diameter_mm)}` : '–')],
    [say('page-time-regrips'), (g) => g.regrips_mm.map((r) => num(r)).join(', ') || '–'], [say('page-unsupported'), (g) => num(g.unsupported_max_mm)],
    [say('page-speed'), (g) => (g.rpm_max ? num(topSpeed(g), 0) : '–')], [say('page-time'), (g) => (g.time_s ? num(g.time_s) : '–')],
    [say('page-closest-check'), share]];
  const count = Math.max(was.stages.length, is.stages.length);
  const row = (i) => h('tr', {}, h('th', { scope: 'row' }, String(i + 1)), columns.map(([, of]) => {
    const [a, b] = [ends(was.stages, i, of), ends(is.stages, i, of)];
    return a === b ? h('td', {}, a) : h('td', { class: 'changed' }, h('del', {}, a), ' → ', h('ins', {}, b));
  }));
  return h('table', { id: 'compare-stages' }, h('caption', {}, say('page-compare-stages')),
    h('thead', {}, h('tr', {}, h('th', { scope: 'col' }, say('page-stage')), columns.map(([t]) => h('th', { scope: 'col' }, t)))),
    h('tbody', {}, Array.from({ length: count }, (_, i) => row(i))));
}

/** Differences of the files. @param {any} was @param {any} is answers */
export function input(was, is) {
  const one = (file, title) => {
    const found = changes(was[file], is[file]);
    const item = ({ key, was: a, is: b }) => h('li', {}, h('code', {}, key), ': ', ...(a === null ? [say('page-compare-added', { is: b })]
      : b === null ? [say('page-compare-removed', { was: a })] : [h('del', {}, a), ' → ', h('ins', {}, b)]));
    return found.length ? h('details', { open: found.length <= OPEN_UP_TO }, h('summary', {}, say('page-compare-input-of', { file: title, count: found.length })),
      h('ul', {}, found.map(item))) : null;
  };
  const both = [one('job', say('page-job')), one('machine', say('page-tab-machine'))].filter(Boolean);
  return h('section', { id: 'compare-input' }, h('h3', {}, say('page-compare-input')), ...(both.length ? both : [h('p', {}, say('page-compare-input-none'))]));
}

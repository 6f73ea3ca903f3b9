// The machine at one moment, seen from the side: the bush stays in place, the bar comes out of it, the counter-spindle
// moves along.

import { h, s, the } from './dom.js';
import { LANGUAGE } from './texts.js';
import { checkName, figures, fixed, made, num, percent, round125, say, speed } from './words.js';

const HEIGHT = 150;
const CENTRE = 78;
const BAR_HALF = 15;
/** Text size of the labels, and the estimated width of one, which is a little too large. */
const TEXT = 13;
const wide = (text) => [...text].reduce((sum, letter) => sum + (letter > '\u2e7f' ? 1.05 : 0.56), 0) * TEXT;
/** Units for a pixel, so that the labels are 11 px high, and the narrowest view in units; on a narrower screen it is moved sideways. */
const PER_PX = TEXT / 11;
const NARROWEST = 728;
/** Largest bending on the page, in its units. */
const BENT = 22;
/** Bending below this is drawn at the scale for this value, so that it looks small, µm. */
const SLIGHT_UM = 5;

/**
 * What holds the bar at a turned length of a plan.
 * @param {any} plan @param {number} t
 */
export function stateAt(plan, t) {
  const stages = plan.stages;
  const stage = stages.find((g) => t <= g.to_mm + 1e-6) ?? stages.at(-1);
  if (!stage) return null;
  const before = plan.headstock_regrips_mm.filter((m) => m <= t + 1e-6);
  const last = before.at(-1) ?? 0;
  const bush = plan.layout.bush_land_mm !== null;
  // Without a bush the headstock's collet is set back for the turned length of the next re-grip, or else for the end of
  // the stage and for bar fed on behind it.
  const done = plan.features.filter((f) => f.stage === stage.number && f.turned_mm !== null).map((f) => f.turned_mm);
  const next = stage.regrips_mm.find((m) => m > t + 1e-6) ?? Math.max(stage.to_mm, ...done);
  const { headstock_nearest_mm: near, headstock_farthest_mm: far } = plan.layout;
  return {
    stage,
    nose: stage.grip?.nose_mm ?? null,
    centred: Boolean(plan.centre) && t <= plan.centre.leaves_at_mm + 1e-6,
    headstock: bush ? Math.min(far, Math.max(near, far - (t - last))) : null,
    end: Math.max(t, next),
    piece: plan.segments.find((p) => t >= p.from_mm - 1e-6 && t <= p.to_mm + 1e-6 && p.stage === stage.number),
  };
}

/** The request to `/at` for this moment. @param {any} texts @param {any} plan @param {number} t */
export function asked(texts, plan, t) {
  const state = stateAt(plan, t);
  if (!state) return null;
  const settled = made(plan);
  return {
    texts, turned_mm: t, grip_mm: state.nose, collet: state.nose === null ? null : plan.collet,
    // If there is no plan, the place of the headstock is not known.
    headstock_mm: settled ? state.headstock : null,
    stage_end_mm: plan.layout.bush_land_mm === null ? state.end : null,
    rpm: state.piece && settled ? state.piece.rpm : null,
  };
}

/** Turned length at the part-off, mm. @param {any} plan */
export function partedAt(plan) {
  return plan.length_mm + plan.layout.part_off_width_mm;
}

/** Points of the finished shaft up to a turned length, and of the bar behind it: place, diameter. */
function outline(plan, t, to) {
  const finished = [];
  for (const p of plan.shaft.sections) {
    if (p.from_mm >= t) continue;
    const end = Math.min(p.to_mm, t);
    const share = (end - p.from_mm) / (p.to_mm - p.from_mm);
    finished.push([p.from_mm, p.front_diameter_mm], [end, p.front_diameter_mm + share * (p.rear_diameter_mm - p.front_diameter_mm)]);
  }
  const bar = plan.shaft.stock_diameter_mm;
  return { finished, bar: [[t, bar], [to, bar]] };
}

/** The points with further ones between them, close enough together to draw a bent shape. */
function fine(points) {
  const out = [];
  for (let i = 0; i + 1 < points.length; i += 1) {
    const [[a, da], [b, db]] = [points[i], points[i + 1]];
    const steps = Math.max(1, Math.ceil((b - a) / 12));
    for (let k = 0; k <= steps; k += 1) out.push([a + ((b - a) * k) / steps, da + ((db - da) * k) / steps]);
  }
  return out;
}

/** A straight line through a row of points. */
function at(shape, key, x) {
  if (!shape?.length) return 0;
  let i = shape.findIndex((p) => p.at_mm >= x);
  if (i < 0) return shape.at(-1)[key];
  if (i === 0) return shape[0][key];
  const [a, b] = [shape[i - 1], shape[i]];
  return a[key] + (b[key] - a[key]) * (b.at_mm === a.at_mm ? 0 : (x - a.at_mm) / (b.at_mm - a.at_mm));
}

/**
 * Draws the machine.
 * @param {any} plan @param {number} t @param {any} found what `/at` found, or null while it is under way
 */
export function draw(plan, t, found) {
  const view = the('machine-view');
  const state = stateAt(plan, t);
  // Where not even the first stage begins there is no moment to show.
  the('machine').hidden = !state;
  if (!state) return;
  const width = Math.max(NARROWEST, view.clientWidth * PER_PX);
  const layout = plan.layout;
  const bush = layout.bush_land_mm !== null;
  const land = layout.bush_land_mm ?? 0;
  const gap = layout.gap_mm;
  const parted = partedAt(plan);
  // Places along the machine are measured from the bush face (without a bush: from the collet's nose at the end of the
  // piece).
  const face = bush ? t + gap : state.end + gap;
  const nose = bush ? state.headstock : 0;
  const hold = layout.headstock_hold_mm;
  const left = -(parted + gap) - 12;
  const right = (bush ? layout.headstock_farthest_mm : 0) + hold + 30;
  const scale = (width - 8) / (right - left);
  const x = (along) => 4 + (along - left) * scale;
  const sx = (place) => x(place - face);
  const radial = (2 * BAR_HALF) / plan.shaft.stock_diameter_mm;
  const rear = face + nose + hold + 25;

  const most = Math.max(SLIGHT_UM, ...(found?.shape ?? []).map((p) => Math.max(Math.abs(p.weight_um), Math.abs(p.cut_um), Math.abs(p.weight_um + p.cut_um))));
  const bend = found ? round125(BENT / most) : 0;
  const y = (place) => CENTRE + bend * (at(found?.shape, 'weight_um', place) + at(found?.shape, 'cut_um', place));
  const { finished, bar } = outline(plan, t, rear);
  const edge = (rows, sign) => rows.map(([p, d]) => `${sx(p).toFixed(1)} ${(y(p) + (sign * d * radial) / 2).toFixed(1)}`);
  const body = (points, kind) => {
    const rows = fine(points);
    return s('path', { d: `M${[...edge(rows, -1), ...edge(rows, 1).reverse()].join('L')}Z`, class: kind });
  };

  const block = (from, to, above, below, kind) => [CENTRE - below, CENTRE + above].map((top) =>
    s('rect', { class: kind, x: from, y: top, width: Math.max(2, to - from), height: below - above }));
  const label = (left, top, words_) => s('text', { x: left, y: top, 'font-size': TEXT }, words_);
  /** Left edge of a text centred at a place, moved so that it stays in the view and clear of the text left of it. */
  const middled = (place, words_, from = 4) => Math.max(from, Math.min(place - wide(words_) / 2, width - 4 - wide(words_)));

  const bushName = say('page-machine-bush');
  const parts = [s('line', { x1: x(left), x2: x(right), y1: CENTRE, y2: CENTRE, class: 'axis' })];
  if (state.nose !== null) {
    const [grip, held] = [sx(state.nose), sx(state.nose - (layout.collet_hold_mm ?? 0))];
    const bore = Math.max(x(left) - 20, sx(state.nose - (layout.bore_depth_mm ?? 0)));
    const deep = s('path', { d: `M${held} ${CENTRE - 42}H${bore}M${held} ${CENTRE + 42}H${bore}`, class: 'bore' });
    parts.push(deep);
    for (let k = 1; layout.sleeve_pitch_mm && k < 60; k += 1) {
      const p = state.nose - (layout.collet_hold_mm ?? 0) - k * layout.sleeve_pitch_mm;
      if (p < 0) break;
      parts.push(s('path', { d: `M${sx(p)} ${CENTRE - 38}v${38 - BAR_HALF}m0 ${2 * BAR_HALF}v${38 - BAR_HALF}`, class: 'sleeve' }));
    }
    parts.push(...block(held, grip, 15, 45, 'grip'));
    const name = say('page-machine-counter-spindle', { collet: plan.collet ?? '' });
    parts.push(label(middled((held + grip) / 2, name), 20, name));
  }
  if (state.centred) {
    const front = sx(0);
    parts.push(s('path', { class: 'centre', d: `M${front + 5} ${CENTRE}l-22 -12v24Z` }));
  }
  parts.push(body(bar, 'raw'));
  if (finished.length > 1) parts.push(body(finished, 'steel'));
  if (bush) parts.push(...block(x(0), x(land), BAR_HALF + 1, 45, 'bush'));
  parts.push(...block(x(nose), x(nose + hold), BAR_HALF + 1, 45, 'head'));
  const head = bush ? say('page-machine-headstock-at', { at: num(nose, 0) }) : say('page-machine-headstock');
  // The name of the bush gives way where both have no room.
  const over = Math.min(middled(x(land / 2), bushName), width - 10 - wide(head) - wide(bushName));
  if (bush) parts.push(label(over, HEIGHT - 8, bushName));
  parts.push(label(middled(x(nose + hold / 2), head, bush ? over + wide(bushName) + 6 : 4), HEIGHT - 8, head));
  // The tool stands at the turned length.
  const tip = sx(t);
  const top = y(t) - BAR_HALF - 2;
  parts.push(s('path', { d: `M${tip} ${top + 4}l-7 -14h14Z`, class: 'tool' }),
    label(Math.max(4, tip + 6 - wide(`${num(t)} mm`)), 34, `${num(t)} mm`));
  const diameters = figures(radial / scale);
  const bending = Number((bend * 1000 / scale).toPrecision(2)).toLocaleString(LANGUAGE);
  parts.push(label(8, HEIGHT - 8, found ? say('page-machine-scales', { bending, diameters }) : say('page-machine-scale', { diameters })));
  const says = say('page-machine-label', { at: num(t), stage: state.stage.number });
  view.replaceChildren(s('svg', { viewBox: `0 0 ${width} ${HEIGHT}`, role: 'img', 'aria-label': says }, parts));
}

/**
 * The text below the machine: the places at this moment, and the check that uses most of its limit.
 * @param {any} plan
 * @param {number} t
 * @param {any} found
 */
export function tell(plan, t, found) {
  const state = stateAt(plan, t);
  if (!state) return;
  const [at, stage, nose] = [num(t), state.stage.number, num(state.nose)];
  const open = () => (state.centred ? say('page-moment-centre', { at, stage }) : say('page-moment-free', { at, stage }));
  the('moment-text').value = state.nose === null ? open() : say('page-moment-held', { at, stage, nose });
  const box = the('moment-state');
  if (!found) return;
  const worst = [...found.checks].sort((a, b) => b.utilisation - a.utilisation).slice(0, 2);
  const item = (name, value, over = false) => h('span', { class: over ? 'over' : null }, `${name} `, h('b', {}, value));
  box.replaceChildren(
    item(say('page-moment-speed'), `${speed(found.rpm)} ${say('unit-rpm')}`), item(say('page-moment-unsupported'), `${num(found.unsupported_mm)} mm (${say('page-l-over-d', { ratio: fixed(found.l_over_d, 1) })})`),
    item(say('page-moment-stiffness'), `${figures(found.stiffness_n_per_um)} N/µm`),
    item(say('page-moment-deflection'), `${figures(found.cut_deflection_um)} µm`), item(say('page-moment-sag'), `${figures(found.sag_um)} µm`),
    ...worst.map((c) => item(checkName(c.check), percent(c.utilisation), c.utilisation > 1)));
}

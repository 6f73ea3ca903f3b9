// A place moved by hand, as a wish in the job.

import { inInches, mmOf, valueAt } from './tree.js';

/** The hand-overs that a job wishes, mm. @param {any} answer what `/plan` gave */
export function wishes(answer) {
  const list = valueAt(answer.job, ['wishes', 'hand_over_at'])?.entries ?? [];
  const mm = (value) => mmOf(value?.text, inInches(answer, 'job'));
  return list.map((item) => item.kind === 'map'
    ? { at: mm(valueAt(item, ['at'])), nose: valueAt(item, ['nose']) ? mm(valueAt(item, ['nose'])) : null }
    : { at: mm(item), nose: null });
}

/**
 * The edits that write a moved place as a wish.
 * @param {any} answer @param {any} plan the plan that was moved @param {any} place @param {number} to mm
 */
export function wished(answer, plan, place, to) {
  const list = ['wishes', 'hand_over_at'];
  const stage = plan.stages.find((g) => g.number === place.number);
  const items = wishes(answer);
  const index = items.findIndex((w) => Math.abs(w.at - stage.from_mm) < 1e-4);
  const at = place.what === 'hand_over' ? to : Math.round(stage.from_mm * 1e4) / 1e4;
  const nose = place.what === 'grip' ? to : items[index]?.nose ?? null;
  // In a job in inches a number alone would be inches.
  const unit = inInches(answer, 'job') ? ' mm' : '';
  const item = nose === null ? `${at}${unit}` : `{at: ${at}${unit}, nose: ${nose}${unit}}`;
  return index < 0 ? [{ edit: 'insert', way: list, index: items.length, item }]
    : [{ edit: 'insert', way: list, index, item }, { edit: 'remove', way: list, index: index + 1 }];
}

// The remarks in a job that ask for a check: a draft and a new shaft have them. The text of the job is all there is, so undo and a
// reload bring them back.

import { h, the } from './dom.js';
import { say } from './words.js';

const MARKS = new RegExp(`#\\s*(?:- )?((?:${say('page-start-marks')})[^]*)$`);
/** A further line of a remark: it is set in. */
const MORE = /^\s*#\s{3,}(\S.*)$/;

/** @typedef {{from: number, to: number, text: string}} Remark lines from 0 */

/** The remarks of a job. @param {string} text @returns {Remark[]} */
export function remarks(text) {
  const lines = text.split('\n');
  const found = [];
  for (let at = 0; at < lines.length; at += 1) {
    const mark = MARKS.exec(lines[at]);
    if (!mark) continue;
    const one = { from: at, to: at, text: mark[1].trim() };
    const whole = /^\s*#/.test(lines[at]);
    while (whole && MORE.test(lines[one.to + 1] ?? '') && !MARKS.test(lines[one.to + 1])) {
      one.to += 1;
      one.text += ` ${MORE.exec(lines[one.to])?.[1]}`;
    }
    found.push(one);
    at = one.to;
  }
  return found;
}

/** The text without a remark. @param {string} text @param {Remark} remark */
export function without(text, { from, to }) {
  const lines = text.split('\n');
  const before = lines[from].slice(0, lines[from].search(MARKS)).trimEnd();
  lines.splice(from, to - from + 1, ...(before ? [before] : []));
  return lines.join('\n');
}

/** Shows a line of the text of the job, where that stands in its field. @param {number} line from 0 */
export function reveal(line) {
  const area = the('text-job');
  const lines = area.value.split('\n');
  const from = lines.slice(0, line).join('\n').length + (line ? 1 : 0);
  area.focus();
  area.setSelectionRange(from, from + lines[line].length);
  area.scrollTop = area.scrollHeight * line / lines.length - area.clientHeight / 2;
}

/**
 * Lists the remarks above the plan.
 * @param {{name: string, text: string}} job
 * @param {(line: number) => void} show shows a line of the text, from 0
 * @param {(text: string) => void} write takes the new text
 * @param {any} more what stands below the list
 */
export function list(job, show, write, more) {
  const all = remarks(job.text);
  const item = (one) => h('li', {},
    h('button', { type: 'button', 'aria-label': say('page-checks-show', { line: one.from + 1 }), onclick: () => show(one.from) },
      say('page-checks-line', { line: one.from + 1 })),
    h('span', {}, one.text),
    h('button', { type: 'button', title: say('page-checks-done-title', { line: one.from + 1 }), onclick: () => write(without(job.text, one)) },
      say('page-checks-done')));
  // The list stays open or closed as it was.
  const shut = the('checks').querySelector('details')?.open === false;
  the('checks').replaceChildren(...(all.length ? [h('details', { open: shut ? null : '' },
    h('summary', {}, h('b', {}, say('page-checks', { count: all.length })), ` ${say('page-checks-what')}`), h('ul', {}, all.map(item)), more)] : []));
}

// Machines and materials to choose from. A choice is an edit as any other.

import { h } from './dom.js';
import { num, say } from './words.js';

/** What the server offers. @type {{begins: boolean, machines: any[], materials: any[]}} */
let offered = { begins: false, machines: [], materials: [] };

/** @param {any} choices */
export function offer(choices) {
  offered = choices;
}

/** A machine in one line. @param {any} machine */
function line({ title: name, bar_mm: bar, stroke_mm: stroke, reach_mm: reach }) {
  if (bar === null) return say('page-choose-no-bush', { name, stroke: num(stroke) });
  if (reach === null) return say('page-choose-bar-alone', { name, bar: num(bar), stroke: num(stroke) });
  return say('page-choose-bar', { name, bar: num(bar), stroke: num(stroke), reach: num(reach) });
}

/**
 * A list to pick from. It shows its name until something is picked, and after that again.
 * @param {string} name @param {any[]} groups @param {(value: string) => void} pick
 */
function picker(name, groups, pick) {
  const choose = (event) => {
    const { value } = event.target;
    event.target.value = '';
    if (value) pick(value);
  };
  return h('select', { class: 'picker', 'aria-label': name, title: name, onchange: choose }, h('option', { value: '' }, name), groups);
}

/** @param {string} label @param {any[]} options */
const group = (label, options) => options.length > 0 && h('optgroup', { label }, options);

/** @param {(machine: any) => void} pick @param {() => void} open asks for a file */
export function machinePicker(pick, open) {
  const options = (ofShop) => offered.machines.filter((m) => m.of_shop === ofShop).map((m) => h('option', { value: m.name }, line(m)));
  const groups = [group(say('page-choose-of-shop'), options(true)), group(say('page-choose-examples'), options(false)),
    h('option', { value: '\n' }, say('page-choose-file'))];
  return picker(say('page-choose-machine'), groups, (name) => (name === '\n' ? open() : pick(offered.machines.find((m) => m.name === name))));
}

/** @param {(name: string) => void} pick */
export function materialPicker(pick) {
  const one = ([name, number]) => h('option', { value: name }, number ? `${name}  (${number})` : name);
  const groups = offered.materials.map(({ family, names }) => group(family ?? say('page-choose-materials-of-shop'), names.map(one)));
  return picker(say('page-choose-material'), groups, pick);
}

/** Words that YAML takes for something else than a name. */
const NO_NAME = /^(true|false|null|yes|no|on|off|y|n)$/i;

/** A name as YAML has it: in quotes where it would be no name without them. @param {string} word */
export const scalar = (word) => (/^\p{L}[\p{L}\d ./_-]*$/u.test(word) && !NO_NAME.test(word) ? word : JSON.stringify(word));

/** The edits that let a job name a machine. @param {any} given the machine that the job has @param {string} name */
export function naming(given, name) {
  const set = (value) => ({ edit: 'set', way: ['machine'], value });
  // Machine data in the job are taken out first: a name cannot be written over a map.
  return given?.kind === 'map' ? [set(''), set(scalar(name))] : [set(scalar(name))];
}

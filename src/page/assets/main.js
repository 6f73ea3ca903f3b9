// Connects the parts of the page: texts, plan, keys and buttons.

import { Answers, room } from './answers.js';
import { ask, drop, file, latest, Refused, save, Superseded } from './api.js';
import { list as checks, reveal } from './checks.js';
import { machinePicker, materialPicker, naming, offer, scalar } from './choose.js';
import { Compare } from './compare.js';
import { the } from './dom.js';
import { Drawer } from './drawer.js';
import { Drawing, placeAt } from './drawing.js';
import { Form } from './form.js';
import { History, told } from './history.js';
import { Moment } from './moment.js';
import * as results from './results.js';
import { schemes } from './scheme.js';
import { shared } from './share.js';
import { sayAll } from './spoken.js';
import { again, Start, taken } from './start.js';
import { valueAt } from './tree.js';
import { wished, wishes } from './wish.js';
import { made, say } from './words.js';

/** Pictures are laid out anew if their room has changed by more than this share, and then rests this long, ms. */
const REFIT = 0.02;
const REFIT_MS = 150;

const history = new History();
const answers = new Answers();
/** The last answer, and the last that had a plan. @type {any} */
let answer = null;
/** @type {any} */
let planned = null;
/** The texts the last plan belongs to. @type {any} */
let plannedTexts = null;

const form = new Form({ edit, text, ahead: (which, edits) => answers.ahead('typed', history.now, which, edits), picker });
const moment = new Moment();
const drawer = new Drawer();
const drawing = new Drawing({ prove, foresee: (place, to) => answers.ahead('dragged', history.now, 'job', wished(answer, planned.plan, place, to)), keep, hover: (t) => moment.hover(t), pick: (t) => moment.set(t) });
const compare = new Compare(history, { take: (texts) => { queue = queue.then(() => change(texts, say('page-compare-take'))); }, answer: () => answer });
const start = new Start({ open: opened, choose: () => the('files').click(), job: () => history.now.job.name });

/** Edits are made one after another, so that each sees the text that the one before it made. */
let queue = Promise.resolve();

/** @param {'job'|'machine'} which @param {any[]} edits @param {string} [what] what changes, in words */
function edit(which, edits, what = told(edits)) {
  queue = queue.then(async () => {
    const texts = history.now;
    const at = texts[which];
    if (!at) return;
    try {
      const { text: edited } = await ask('/edit', { text: at, edits });
      change({ ...texts, [which]: { ...at, text: edited } }, what);
    } catch (error) {
      // A lost edit is reported; the edits after it are made all the same.
      results.problem(error.problem ?? { what: say('page-edit-not-made'), help: String(error) });
      form.rebuild(true);
    }
  });
  return queue;
}

/** @param {'job'|'machine'} which @param {string} whole */
function text(which, whole) {
  queue = queue.then(() => change({ ...history.now, [which]: { ...history.now[which], text: whole } },
    say('page-did-text', { file: history.now[which].name })));
}

/** @param {any} texts @param {string} what what changes, in words */
function change(texts, what) {
  if (history.change(texts, what)) plan();
}

/** The plan under way, or the last one. */
let planning = Promise.resolve();

function plan() {
  planning = planNow();
  return planning;
}

/** Resolves when all earlier edits and plans are finished. */
async function settled() {
  let last;
  do {
    last = planning;
    await queue;
    await last;
  } while (last !== planning);
}

/** Plans the current texts; a newer edit ends an older plan. */
async function planNow() {
  const texts = history.now;
  buttons();
  drop('/changes');
  drop('/sampled');
  drop('/plan');
  const slow = setTimeout(() => {
    the('busy').textContent = say('page-planning');
    document.body.classList.add('old');
    results.old(texts.job.name, false);
  }, 150);
  const began = performance.now();
  try {
    fitted = room();
    const both = answers.to(texts);
    const first = await both.first;
    clearTimeout(slow);
    if (texts !== history.now) return;
    document.body.classList.remove('old');
    show(texts, first);
    the('busy').textContent = say('page-answered', { ms: Math.round(performance.now() - began) });
    the('done').textContent = stepped;
    stepped = '';
    // Errors are shown at their fields at once. Without errors the form already shows what was typed, so the form and what is read later
    // are updated after the picture is on the page.
    if (!first.errors.length) {
      await new Promise((then) => { setTimeout(then, 0); });
      if (texts !== history.now) return;
    }
    inForm(texts);
    if (first.plan) moment.show(texts, first.plan);
    const whole = await both.whole;
    if (texts !== history.now) return;
    if (whole !== first) show(texts, whole);
    if (whole.plan) showRest(texts);
    compare.changed();
    // Pictures laid out anew are no new plan.
    if (texts !== counted) document.body.dataset.planned = String(Number(document.body.dataset.planned ?? 0) + 1);
    counted = texts;
  } catch (error) {
    if (error instanceof Superseded) return;
    if (!(error instanceof Refused)) throw error;
    if (texts !== history.now) return;
    the('busy').textContent = '';
    document.body.classList.remove('old');
    document.body.classList.add('stale');
    results.old(texts.job.name, true);
    results.problem(error.problem);
    // The form belongs to another file, and there is none for this job, so the text of the job is shown.
    if (formOf === texts.job.name) return;
    answer = { job: null, machine: null, errors: [], plan: null };
    title(texts);
    inForm(texts);
  } finally {
    clearTimeout(slow);
  }
}

/** The texts that were planned last. @type {any} */
let counted = null;

/** The name of the job file in the form. */
let formOf = '';

function inForm(texts) {
  formOf = texts.job.name;
  form.show({ texts, job: answer.job, machine: answer.machine, errors: answer.errors });
  if (!answer.errors.length) return;
  results.unplaced(form.unplaced, texts);
  const machine = valueAt(answer.job, ['machine']);
  const missing = answer.errors.some((e) => e.file === 'job' && e.way[0] === 'machine' && e.way.length === 1);
  if (missing && !texts.machine && machine?.kind === 'scalar') results.wanted(machine.text, () => the('files').click(), picker('machine'));
}

/** @param {any} texts @param {any} got */
function show(texts, got) {
  answer = got;
  results.verdict(answer, !!planned, () => { drawer.open(false); form.reveal(); });
  results.heard(answer.errors);
  const checked = (whole) => change({ ...history.now, job: { ...texts.job, text: whole } }, say('page-did-checked'));
  checks(texts.job, (line) => { form.turn('text'); reveal(line); }, checked, again(texts.job, take));
  document.body.classList.toggle('stale', answer.errors.length > 0);
  // Counting the sampled parts changes nothing in the picture.
  const drawn = got.plan && plannedTexts === texts && planned.drawing.svg === got.drawing.svg;
  if (answer.plan) planned = answer;
  title(texts);
  if (!answer.plan) return;
  plannedTexts = texts;
  if (!drawn) drawing.show(answer, wishes(answer));
  results.first(answer);
}

function showRest(texts) {
  results.rest(answer.plan, answer.strip);
  if (made(answer.plan)) sampled(texts, null);
  else help(texts);
}

function title(texts) {
  // The title names the job that is open, even if the plan below belongs to another one.
  const name = valueAt(answer.job, ['shaft', 'name'])?.text || texts.job.name;
  const small = document.createElement('small');
  small.textContent = ` ${texts.job.name}${texts.machine ? `, ${texts.machine.name}` : ''}`;
  the('title').replaceChildren(name, small);
  the('title').title = `${name}, ${texts.job.name}`;
  document.title = `${name} – spanhold`;
}

/** Sampled parts take longer than the plan, so they are a separate request. @param {any} texts @param {number|null} part */
async function sampled(texts, part) {
  const look = (number) => sampled(texts, number);
  try {
    const { drawing: frame, along } = await ask('/sampled', { texts, width_px: room(), ...(part === null ? {} : { part }) });
    if (texts !== plannedTexts || texts !== history.now) return;
    drawing.reframe(frame);
    results.sampled(along, look);
  } catch (error) {
    if (error instanceof Refused) results.sampled(null, look, error.problem.what);
    else if (!(error instanceof Superseded)) throw error;
  }
}

/** To find what would help takes many plans, so it is a separate request. The first set is known sooner than the others. */
async function help(texts) {
  const apply = (edits, what) => applied(edits, texts, what);
  try {
    for (const first of [true, false]) {
      const found = await ask('/changes', { texts, first });
      if (texts !== history.now) return;
      results.changes(found, !first, apply);
      if (first && !found.sets.length) return results.changes(found, true, apply);
    }
  } catch (error) {
    if (error instanceof Refused) results.changes(null, true, apply, error.problem.what);
    else if (!(error instanceof Superseded)) throw error;
  }
}

/** Makes the edits of changes. @param {any[]} edits @param {any} texts @param {string} what the changes in words */
async function applied(edits, texts, what) {
  if (texts !== history.now) return;
  try {
    const { job, machine: other } = await ask('/apply', { texts, edits });
    change({ ...texts, job: { ...texts.job, text: job }, ...(texts.machine ? { machine: { ...texts.machine, text: other } } : {}) }, say('page-did-apply', { what }));
  } catch (error) {
    if (error instanceof Refused) results.problem(error.problem);
    else if (!(error instanceof Superseded)) throw error;
  }
}

// -- A place moved by hand.

const askProof = latest((place, to) => ask('/prove', { texts: plannedTexts, what: place.what, number: place.number, to_mm: to }));

async function prove(place, to) {
  const got = await askProof(place, to);
  if (!got?.refused) return got;
  return { proven: false, total_s: 0, stages: [], breaches: [{ stage: null, rule: 'place', text: `${got.refused.what} (${got.refused.help})` }] };
}

/** Writes a moved place into the job as a wish. */
function keep(place, to) {
  edit('job', wished(answer, planned.plan, place, to), placeAt(place, to).replace(/[.。]$/, ''));
}

// -- Files, keys, buttons.

/** Opens a draft, or tells why there is none; the files that need no draft. @param {Promise<import('./start.js').Taken>} under */
async function take(under) {
  const { yaml, draft, problem } = await under;
  if (draft) opened({ job: draft.job }, say('page-did-draft', { file: draft.file }));
  if (problem) (start.shown ? start : results).problem(problem);
  return yaml;
}

async function openFiles(files) {
  if (start.shown) start.busy(say('page-start-reading', { file: files[0]?.name ?? '' }));
  const yaml = await take(taken([...files]));
  if (!yaml) return;
  const texts = await Promise.all(yaml.slice(0, 2).map(async (f) => ({ name: f.name, text: await f.text() })));
  const isJob = (t) => /^\s*shaft\s*:/m.test(t.text);
  const job = texts.find(isJob);
  const other = texts.find((t) => t !== job);
  if (!job) return choose({ name: other.name, title: other.name, file: other });
  const named = other ?? (sameMachine(job) ? history.now.machine : undefined);
  opened(named ? { job, machine: named } : { job }, say('page-did-open', { file: job.name }));
}

/** Puts other texts in place of those that are open. @param {any} texts @param {string} what */
function opened(texts, what) {
  // Waits for the edits that are under way: otherwise they would be made in the old job and bring it back.
  queue = queue.then(() => {
    moment.back();
    start.close();
    change(texts, what);
  });
}

/** Puts a machine in place of the one that is open. The job names it, so that it is found again. @param {any} machine */
function choose({ name, title: said, file: at }) {
  queue = queue.then(async () => {
    const { job } = history.now;
    try {
      const { text: edited } = await ask('/edit', { text: job, edits: naming(valueAt(answer.job, ['machine']), name) });
      moment.back();
      start.close();
      change({ job: { ...job, text: edited }, ...(at ? { machine: at } : {}) }, say('page-did-machine', { name: said }));
    } catch (error) {
      results.problem(error.problem ?? { what: say('page-edit-not-made'), help: String(error) });
    }
  });
}

/** A list of machines or materials to pick from. @param {string} of */
function picker(of) {
  if (of === 'machine') return machinePicker(choose, () => the('files').click());
  return materialPicker((name) => edit('job', [{ edit: 'set', way: ['shaft', 'material'], value: scalar(name) }]));
}

/** Whether a job names the machine file that is open. */
function sameMachine(job) {
  const name = /^machine\s*:\s*["']?([^\s"'#{]+)/m.exec(job.text)?.[1];
  return !!name && !!history.now.machine && name.split('/').at(-1) === history.now.machine.name.split('/').at(-1);
}

function saveText(which) {
  const at = history.now[which];
  if (at) save(at.name.split('/').at(-1), new Blob([at.text], { type: 'application/yaml' }));
}

async function exportAs(format) {
  try {
    if (document.body.classList.contains('old')) the('busy').textContent = say('page-planning-then-export');
    await settled();
    const { name, blob } = await file(`/export/${format}`, history.now);
    save(name, blob);
  } catch (error) {
    if (error instanceof Refused) results.problem(error.problem);
    else if (!(error instanceof Superseded)) throw error;
  }
}

/** Saves the plan as a file that plays without a server. */
async function share() {
  try {
    await settled();
    if (!planned || document.body.classList.contains('stale')) return;
    the('busy').textContent = say('page-share-running');
    const { name, blob } = await shared(plannedTexts, planned);
    save(name, blob);
    the('busy').textContent = say('page-share-done', { file: name, size: Math.ceil(blob.size / 1024) });
  } catch (error) {
    if (error instanceof Refused) results.problem(error.problem);
    else if (!(error instanceof Superseded)) throw error;
  }
}

/** What was undone or made again last, in words, until the next plan. */
let stepped = '';

function undo(back) {
  queue = queue.then(() => {
    const what = back ? history.undo() : history.redo();
    if (what === null) return;
    stepped = back ? say('page-undone', { what }) : say('page-redone', { what });
    plan();
  });
}

function buttons() {
  const [done, undone] = [history.past.at(-1), history.future.at(-1)];
  the('undo').disabled = !done;
  the('redo').disabled = !undone;
  the('undo').title = done ? say('page-undo-what', { what: done.what }) : say('page-undo-title');
  the('redo').title = undone ? say('page-redo-what', { what: undone.what }) : say('page-redo-title');
  for (const [button, step] of [[the('undo'), done], [the('redo'), undone]]) button.setAttribute('aria-label', [button.textContent, step?.what].filter(Boolean).join(': '));
  the('save-machine').disabled = !history.now?.machine;
}

/** The room that the pictures were laid out for, px. */
let fitted = 0;
let fitting = 0;

/** Lays the pictures out anew when there is another room for them. */
function refit() {
  clearTimeout(fitting);
  fitting = setTimeout(() => {
    if (!planned || !the('results').clientWidth || Math.abs(room() - fitted) < REFIT * fitted) return;
    answers.forget();
    plan();
  }, REFIT_MS);
}

function widen() {
  const wide = document.body.classList.toggle('wide');
  the('wide').setAttribute('aria-pressed', String(wide));
}

function keys(event) {
  if (start.shown && !(event.ctrlKey && event.key === 'o')) return;
  const inText = event.target.matches('textarea');
  const control = event.ctrlKey || event.metaKey;
  const pressed = event.key.toLowerCase();
  // While the user types in a field, undo is left to the browser.
  const typing = inText || (event.target.matches('#form input') && event.target.value.trim() !== (event.target.dataset.was ?? ''));
  if (control && pressed === 'z' && !typing) undo(!event.shiftKey);
  else if (control && pressed === 'y' && !typing) undo(false);
  else if (control && pressed === 's') saveText('job');
  else if (control && pressed === 'o') the('files').click();
  else if (control && event.key === '\\') widen();
  else if (event.key === ' ' && event.target.matches('body, #results, #moment')) moment.play();
  else return;
  event.preventDefault();
}

function wire() {
  the('open').addEventListener('click', () => the('files').click());
  the('files').addEventListener('change', (event) => { openFiles(event.target.files); event.target.value = ''; });
  the('save-job').addEventListener('click', () => saveText('job'));
  the('save-machine').addEventListener('click', () => saveText('machine'));
  the('undo').addEventListener('click', () => undo(true));
  the('redo').addEventListener('click', () => undo(false));
  the('wide').addEventListener('click', widen);
  the('share').addEventListener('click', share);
  the('print').addEventListener('click', () => window.print());
  for (const button of document.querySelectorAll('[data-export]')) {
    button.addEventListener('click', () => exportAs(button.dataset.export));
  }
  document.addEventListener('keydown', keys);
  schemes();
  new ResizeObserver(refit).observe(the('results'));
  document.addEventListener('dragover', (event) => event.preventDefault());
  document.addEventListener('drop', (event) => {
    event.preventDefault();
    if (event.dataTransfer?.files.length) openFiles(event.dataTransfer.files);
  });
}

async function begin() {
  sayAll();
  wire();
  try {
    const [texts, fields, choices] = await Promise.all([ask('/start'), ask('/fields'), ask('/choices')]);
    offer(choices);
    form.know(fields);
    history.begin(texts);
    if (choices.begins && !history.past.length) start.show(true);
    await plan();
  } catch (error) {
    if (error instanceof Refused) results.problem(error.problem);
    else throw error;
  }
}

begin();

// The texts as trees: the value at a place, and the place in the form where a message is shown.

/**
 * @typedef {{key?: string, kind: string, text: string, entries?: Value[]}} Value
 * @typedef {(string|number)[]} Way
 * @typedef {'job'|'machine'} File
 * @typedef {{file: File|null, what: string, help: string|null, line: number|null, way: Way}} Told
 */

/** The value at a place of a tree. @param {Value|null} tree @param {Way} way @returns {Value|undefined} */
export function valueAt(tree, way) {
  let here = tree ?? undefined;
  for (const step of way) {
    const inside = here?.entries ?? [];
    here = typeof step === 'number' ? (here?.kind === 'list' ? inside[step] : undefined) : inside.find((e) => e.key === step);
  }
  return here;
}

/**
 * Whether a number alone is in inches in a file. A machine in the job has its own units, else those of the job.
 * @param {{job: Value|null, machine: Value|null}} state @param {File} file @param {boolean} [inside] whether the machine in the job is meant
 */
export function inInches(state, file, inside = false) {
  const own = inside ? valueAt(state.job, ['machine', 'units']) ?? valueAt(state.job, ['units']) : valueAt(state[file], ['units']);
  return own?.text === 'inch';
}

/** Millimetres of the units of lengths that a file may have. */
const MM = { mm: 1, in: 25.4, 'in.': 25.4, inch: 25.4, inches: 25.4, '"': 25.4, '″': 25.4 };

/**
 * A length of a file, mm; NaN if it has another form. Inches may be a fraction: `1/2`, `1 1/4 in`, `1-1/4"`.
 * @param {string|undefined} text @param {boolean} inches whether a number alone is in inches
 */
export function mmOf(text, inches) {
  const { sign, decimal, whole, over, under, unit } =
    /^\s*(?<sign>[-+]?)(?:(?<decimal>[.\d]+(?:e[-+]?\d+)?)|(?:(?<whole>\d+)(?: +|-))?(?<over>\d+)\/(?<under>\d+))\s*(?<unit>[a-z."″]*)\s*$/i.exec(text ?? '')?.groups ?? {};
  const per = MM[(unit || (inches ? 'in' : 'mm')).toLowerCase()] ?? NaN;
  if (decimal === undefined && per === 1) return NaN;
  return Number(`${sign}1`) * per * (decimal === undefined ? Number(whole ?? 0) + Number(over) / Number(under) : Number(decimal));
}

/**
 * A new row as a file has it. In a file in inches its sizes, which are in mm, get their unit.
 * @param {string} item @param {boolean} inches @param {string} [size] what stands for `@`, as the file has it
 */
export function sized(item, inches, size = '') {
  const unit = (key) => ({ clamp_force: ' N', sides: '' })[key] ?? ' mm';
  const row = inches ? item.replace(/(\w+): (\[[^\]]*\]|[\d.]+)(?=[,}])/g, (_, key, value) =>
    `${key}: ${value.replace(/[\d.]+/g, (number) => number + unit(key))}`) : item;
  return row.replaceAll('@', () => size);
}

/** @param {string} file @param {Way} way */
export function idOf(file, way) {
  return `${file}:${way.join('.')}`;
}

/**
 * The place of a message: that of the key that is missing, of the value, or of what it stands in.
 * @param {Told} told @param {Value|null} tree of its file @param {Map<string, string>} places
 * @returns {string|null}
 */
function placeOf({ file, what, way }, tree, places) {
  const named = [...what.matchAll(/`(\w+)`/g)].map(([, key]) => [...way, key]);
  const missing = named.find((there) => places.has(idOf(file, there)) && valueAt(tree, there) === undefined);
  if (missing) return idOf(file, missing);
  for (let length = way.length; length > 0; length -= 1) {
    const id = idOf(file, way.slice(0, length));
    if (places.has(id)) return id;
  }
  return null;
}

/**
 * The messages by the place where they are shown, the tabs with messages, and the messages without a place.
 * @param {{errors: Told[], job: Value|null, machine: Value|null}} state
 * @param {Map<string, string>} places what can show a message, each with its tab
 */
export function placed(state, places) {
  /** @type {{wrong: Map<string, Told[]>, tabs: Set<string>, unplaced: Told[]}} */
  const out = { wrong: new Map(), tabs: new Set(), unplaced: [] };
  for (const told of state.errors) {
    const id = told.file && placeOf(told, state[told.file], places);
    out.tabs.add((id && places.get(id)) || 'text');
    if (id) out.wrong.set(id, [...(out.wrong.get(id) ?? []), told]);
    else out.unplaced.push(told);
  }
  return out;
}

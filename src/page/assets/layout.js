// Where each key of the job and the machine stands in the form. Meaning, unit, range and default come from the server.

/**
 * @typedef {{key: string, label?: string, choice?: string[], text?: boolean, full?: boolean}} FieldAt
 * @typedef {{title: string, at: (string|number)[], fields: FieldAt[]}} Group
 */

/** @param {...string} keys @returns {FieldAt[]} */
const numbers = (...keys) => keys.map((key) => ({ key }));

/** @type {Group[]} */
export const SHAFT = [
  { title: 'Part', at: ['shaft'], fields: [
    { key: 'name', text: true, full: true }, { key: 'drawing', text: true }, { key: 'revision', text: true },
    { key: 'material', text: true }, { key: 'straightness' }] },
  { title: 'Bar', at: ['stock'], fields: [{ key: 'diameter' }, { key: 'tolerance', text: true }, { key: 'bar_length' }] },
];

/** @type {Group[]} */
export const CUTTING = [
  { title: 'Way of turning', at: [], fields: [
    { key: 'holding', choice: ['bush', 'no_bush'] }, { key: 'objective', choice: ['time', 'fewest_hand_overs', 'margin'] }] },
  { title: 'Cutting', at: ['cutting'], fields: [
    { key: 'tools', choice: ['single', 'opposed'] },
    ...numbers('vc', 'feed', 'ap_max', 'ap_finish', 'nose_radius', 'approach_angle', 'speed_floor', 'unbalance', 'in_plane_share')] },
  { title: 'Limits', at: ['limits'], fields: numbers('stiffness_min', 'whirl_ratio', 'whip', 'sag', 'release', 'tolerance_share',
    'drill', 'damping_ratio', 'bore_clearance', 'torque_margin', 'station_pitch', 'avoid_penalty_s') },
  { title: 'Rates', at: ['rates'], fields: [...numbers('machine_per_hour', 'material_per_kg'), { key: 'currency', text: true }] },
];

/** @type {Group[]} */
export const MACHINE = [
  { title: 'Machine', at: [], fields: [{ key: 'name', text: true, full: true }] },
  { title: 'Guide bush', at: ['bush'], fields: numbers('max_bar', 'land', 'gap', 'stiffness', 'engagement_min') },
  { title: 'Without a bush', at: ['no_bush'], fields: numbers('max_bar', 'collet_gap') },
  { title: 'Headstock', at: ['headstock'], fields: numbers('nearest', 'stroke', 'hold', 'stiffness', 'max_rpm', 'regrip_s') },
  { title: 'Counter-spindle', at: ['counter_spindle'], fields: numbers('nearest', 'farthest', 'bore', 'bore_depth', 'stiffness',
    'max_rpm', 'hand_over_s', 'friction') },
  { title: 'Sleeves in its bore', at: ['counter_spindle', 'sleeve'], fields: numbers('pitch', 'stiffness') },
  { title: 'Times and tools', at: [], fields: [...numbers('shared_stop_saving_s', 'segment_overhead_s'),
    { key: 'cross_tool_reach' }, ...numbers('bar_end', 'facing')] },
  { title: 'Part-off', at: ['part_off'], fields: numbers('width', 'time_s') },
];

/** Kinds of sections: the key that tells each, and a row to begin with. */
export const KINDS = [
  { kind: 'cylinder', key: 'diameter', fresh: (d) => `{length: 20, diameter: ${d}}` },
  { kind: 'groove', key: 'diameter', fresh: (d) => `{length: 2, diameter: ${d}, kind: groove}` },
  { kind: 'knurl', key: 'diameter', fresh: (d) => `{length: 20, diameter: ${d}, kind: knurl}` },
  { kind: 'thread', key: 'thread', fresh: () => '{length: 20, thread: M10}' },
  { kind: 'taper', key: 'taper', fresh: (d) => `{length: 20, taper: [${d}, ${d}]}` },
  { kind: 'flats', key: 'across_flats', fresh: (d) => `{length: 10, across_flats: ${d}, sides: 6}` },
];

/** Work on the shaft: a name and a row to begin with. */
export const FEATURES = [
  ['cross hole', '{cross_hole: 4, at: 20}'], ['keyseat', '{keyseat: [4, 2.5], from: 10, to: 20}'],
  ['centre hole', '{centre_hole: A2.5, end: front}'], ['facing', '{facing: 0.5, end: front}'],
  ['tapped hole', '{tapped_hole: M5, depth: 10, end: front}'],
];

/** Keys of a kind that may be left out. */
export const MORE = { cross_hole: ['thrust'] };

// Where each key of the job and the machine stands in the form. Meaning, unit, range and default come from the server.

/**
 * @typedef {{key: string, label?: string, choice?: string[], text?: boolean, full?: boolean, title?: string}} FieldAt
 * @typedef {{title: string, at: (string|number)[], fields: FieldAt[], optional?: boolean}} Group an optional group can be removed
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
    'drill', 'damping_ratio', 'bore_clearance', 'torque_margin', 'avoid_penalty_s') },
  { title: 'Planning', at: ['planning'], optional: true, fields: numbers('station_pitch') },
  { title: 'Rates', at: ['rates'], optional: true, fields: [...numbers('machine_per_hour', 'material_per_kg'), { key: 'currency', text: true }] },
  { title: 'Order', at: ['order'], optional: true, fields: numbers('pieces', 'set_up_h', 'shift_h', 'running_share') },
];

/** A material described in the job, instead of the name of a known one. @type {Group} */
export const MATERIAL = { title: 'Material of its own', at: ['shaft', 'material'], fields: [{ key: 'name', text: true },
  ...numbers('e_gpa', 'density', 'kc11', 'mc', 'poisson'), { key: 'vc', text: true, title: 'usual cutting speed, [low, high] in m/min' }] };

/** The sizes that a family can vary: the key in `vary`, and the key of the size in a section. */
export const VARIED = [['length', 'length'], ['diameter', 'diameter']];

/** @type {Group[]} */
export const MACHINE = [
  { title: 'Machine', at: [], fields: [{ key: 'name', text: true, full: true }] },
  { title: 'Guide bush', at: ['bush'], fields: numbers('max_bar', 'land', 'gap', 'stiffness', 'engagement_min') },
  { title: 'Without a bush', at: ['no_bush'], fields: numbers('max_bar', 'collet_gap') },
  { title: 'Headstock', at: ['headstock'], fields: numbers('nearest', 'stroke', 'hold', 'stiffness', 'max_rpm', 'regrip_s',
    'clamp_force', 'friction') },
  { title: 'Counter-spindle', at: ['counter_spindle'], fields: [...numbers('nearest', 'farthest', 'bore', 'bore_depth', 'stiffness',
    'max_rpm', 'hand_over_s', 'friction', 'unload_s'), { key: 'back_work', label: 'rear end', choice: ['in_line', 'aside'],
    title: 'where the rear end is worked on: in line, and the next part waits; or aside, at tools of its own' }] },
  { title: 'Sleeves in its bore', at: ['counter_spindle', 'sleeve'], fields: numbers('pitch', 'stiffness') },
  { title: 'Times and tools', at: [], fields: [...numbers('shared_stop_saving_s', 'segment_overhead_s', 'tool_change_s', 'bar_change_s', 'rapid'),
    { key: 'cross_tool_reach' }, ...numbers('bar_end', 'facing')] },
  { title: 'Part-off', at: ['part_off'], fields: numbers('width', 'time_s') },
  { title: 'Places for tools', at: ['tools'], optional: true, fields: [
    ...numbers('turning', 'cross_driven', 'front_fixed', 'front_driven', 'back_fixed', 'back_driven'),
    { key: 'opposed', choice: ['false', 'true'], title: 'whether turning tools stand on both sides of the bar' }] },
  { title: 'Turret', at: ['tools', 'turret'], optional: true, fields: numbers('stations', 'tools_per_station') },
];

/** Kinds of sections: the key of the size of each kind, and the text of a new row. */
export const KINDS = [
  { kind: 'cylinder', key: 'diameter', fresh: (d) => `{length: 20, diameter: ${d}}` },
  { kind: 'groove', key: 'diameter', fresh: (d) => `{length: 2, diameter: ${d}, kind: groove}` },
  { kind: 'knurl', key: 'diameter', fresh: (d) => `{length: 20, diameter: ${d}, kind: knurl}` },
  { kind: 'thread', key: 'thread', fresh: () => '{length: 20, thread: M10}' },
  { kind: 'taper', key: 'taper', fresh: (d) => `{length: 20, taper: [${d}, ${d}]}` },
  { kind: 'flats', key: 'across_flats', fresh: (d) => `{length: 10, across_flats: ${d}, sides: 6}` },
];

/** Features of the shaft: a name and the text of a new row. */
export const FEATURES = [
  ['cross hole', '{cross_hole: 4, at: 20}'], ['keyseat', '{keyseat: [4, 2.5], from: 10, to: 20}'],
  ['centre hole', '{centre_hole: A2.5, end: front}'], ['facing', '{facing: 0.5, end: front}'],
  ['axial hole', '{axial_hole: 4, depth: 10, end: front}'], ['tapped hole', '{tapped_hole: M5, depth: 10, end: front}'],
  ['tapped across', '{tapped_hole: M3, at: 20}'], ['hex socket', '{hex_socket: 4, depth: 5, end: back}'],
  ['keyway', '{keyway: [3, 1.4], length: 10, end: front}'], ['engraving', '{engrave: A1, height: 2, at: 20}'],
];

/** Optional keys of each kind of feature. */
export const MORE = {
  cross_hole: ['thrust'], hex_socket: ['step', 'forming'], keyway: ['step'], engrave: ['depth'],
};

/** Keys of a work on the rear end after part-off. */
export const BACK_WORK = ['name', 'time_s', 'radial_force', 'axial_force', 'torque', 'tolerance'];

// Where each key of the job and the machine stands in the form. Meaning, unit, range and default come from the server.

import { say } from './words.js';

/**
 * @typedef {{key: string, label?: string, choice?: string[], text?: boolean, full?: boolean, pick?: boolean, title?: string}} FieldAt
 * @typedef {{title: string, at: (string|number)[], fields: FieldAt[], optional?: boolean}} Group an optional group can be removed
 */

/** @param {...string} keys @returns {FieldAt[]} */
const numbers = (...keys) => keys.map((key) => ({ key }));

/** @type {Group[]} */
export const SHAFT = [
  { title: say('page-group-part'), at: ['shaft'], fields: [
    { key: 'name', text: true, full: true }, { key: 'drawing', text: true }, { key: 'revision', text: true }, { key: 'date', text: true },
    { key: 'material', text: true, pick: true }, { key: 'straightness' }] },
  { title: say('page-group-bar'), at: ['stock'], fields: [{ key: 'diameter' }, { key: 'bore' }, { key: 'tolerance', text: true }, { key: 'bar_length' },
    { key: 'kind', label: say('page-stock-kind'), choice: ['', 'drawn', 'turned', 'ground', 'bar_feeder'], title: say('page-stock-kind-title') }] },
];

/** @type {Group[]} */
export const CUTTING = [
  { title: say('page-group-holding'), at: [], fields: [
    { key: 'holding', choice: ['bush', 'no_bush'] }, { key: 'hold', choice: ['collet', 'centre'], title: say('page-hold-title') },
    { key: 'objective', choice: ['time', 'fewest_hand_overs', 'margin'] }, ...numbers('confidence', 'confidence_warn')] },
  { title: say('page-group-cutting'), at: ['cutting'], fields: [
    { key: 'tools', choice: ['single', 'opposed', 'tandem'] },
    ...numbers('vc', 'feed', 'ap_max', 'ap_finish', 'nose_radius', 'approach_angle', 'speed_floor', 'lag', 'unbalance', 'in_plane_share', 'passive_floor', 'ra_factor', 'ra_floor')] },
  { title: say('page-group-finisher'), at: ['cutting', 'finisher'], optional: true, fields: [
    { key: 'side', choice: ['same', 'opposite'] }, ...numbers('nose_radius', 'approach_angle')] },
  { title: say('page-group-limits'), at: ['limits'], fields: numbers('stiffness_min', 'span_stiffness_min', 'free_ratio', 'whirl_ratio',
    'whip', 'sag', 'pick_up', 'release', 'tolerance_share', 'drill', 'damping_ratio', 'bore_clearance', 'torque_margin',
    'buckling_share', 'avoid_penalty_s') },
  { title: say('page-group-planning'), at: ['planning'], optional: true, fields: numbers('station_pitch') },
  { title: say('page-group-rates'), at: ['rates'], optional: true, fields: [...numbers('machine_per_hour', 'material_per_kg'), { key: 'currency', text: true }] },
  { title: say('page-group-order'), at: ['order'], optional: true, fields: numbers('pieces', 'set_up_h', 'shift_h', 'running_share') },
];

/** A material described in the job, instead of the name of a known one. @type {Group} */
export const MATERIAL = { title: say('page-group-material'), at: ['shaft', 'material'], fields: [{ key: 'name', text: true },
  ...numbers('e_gpa', 'density', 'kc11', 'mc', 'poisson'), { key: 'vc', text: true, title: say('page-material-vc-title') },
  { key: 'class', choice: ['', 'free_cutting_steel', 'structural_steel', 'carbon_steel', 'alloy_steel', 'tool_steel', 'free_cutting_stainless',
    'ferritic_stainless', 'austenitic_stainless', 'duplex_stainless', 'heat_resistant_steel', 'pure_titanium', 'titanium_alloy', 'cobalt_chromium',
    'nickel_alloy', 'free_cutting_copper', 'copper_alloy', 'aluminium', 'plastic'], title: say('page-material-class-title') }] };

/** The sizes that a family can vary: the key in `vary` and in a section, and its names on the buttons. */
export const VARIED = [['length', say('page-vary-length'), say('page-varied-length')],
  ['diameter', say('page-vary-diameter'), say('page-varied-diameter')]];

/** @type {Group[]} */
export const MACHINE = [
  { title: say('page-group-machine'), at: [], fields: [{ key: 'name', text: true, full: true }] },
  { title: say('page-group-bush'), at: ['bush'], fields: [...numbers('max_bar', 'land', 'gap', 'stiffness', 'engagement_min'),
    { key: 'kind', choice: ['', 'fixed', 'following'], title: say('page-bush-kind-title') }] },
  { title: say('page-group-no-bush'), at: ['no_bush'], fields: numbers('max_bar', 'collet_gap') },
  { title: say('page-group-headstock'), at: ['headstock'], fields: numbers('nearest', 'stroke', 'hold', 'stiffness', 'max_rpm', 'regrip_s',
    'clamp_force', 'friction', 'power', 'efficiency', 'torque', 'feed_force') },
  { title: say('page-group-bar-feed'), at: ['bar_feed'], optional: true, fields: numbers('max_rpm') },
  { title: say('page-group-counter-spindle'), at: ['counter_spindle'], fields: [...numbers('nearest', 'farthest', 'bore', 'bore_depth', 'stiffness',
    'max_rpm', 'torque', 'hand_over_s', 'friction', 'unload_s', 'axial_load', 'torsional_stiffness', 'phase_error'), { key: 'back_work', label: say('page-rear-end'), choice: ['in_line', 'aside'],
    title: say('page-rear-end-title') }] },
  { title: say('page-group-sleeves'), at: ['counter_spindle', 'sleeve'], fields: numbers('pitch', 'stiffness') },
  { title: say('page-group-centre'), at: ['counter_spindle', 'centre'], optional: true, fields: numbers('force', 'stiffness', 'stands_out') },
  { title: say('page-group-times'), at: [], fields: [...numbers('shared_stop_saving_s', 'segment_overhead_s', 'tool_change_s', 'bar_change_s', 'rapid', 'driven_max_rpm'),
    { key: 'cross_tool_reach' }, ...numbers('bar_end', 'facing')] },
  { title: say('page-group-part-off'), at: ['part_off'], fields: numbers('width', 'time_s') },
  { title: say('page-group-tray'), at: ['part_off', 'tray'], optional: true, fields: numbers('max_length', 'max_diameter') },
  { title: say('page-group-tool-places'), at: ['tools'], optional: true, fields: [
    ...numbers('turning', 'cross_driven', 'front_fixed', 'front_driven', 'back_fixed', 'back_driven', 'whirling'),
    { key: 'opposed', choice: ['false', 'true'], title: say('page-opposed-title') },
    { key: 'tandem', choice: ['false', 'true'], title: say('page-tandem-title') }] },
  { title: say('page-group-turret'), at: ['tools', 'turret'], optional: true, fields: numbers('stations', 'tools_per_station') },
];

/** Kinds of sections: the name, the key of the size of each kind, and the text of a new row, with `@` for its size. */
export const KINDS = [
  { kind: 'cylinder', name: say('page-kind-cylinder'), key: 'diameter', fresh: '{length: 20, diameter: @}' },
  { kind: 'groove', name: say('page-kind-groove'), key: 'diameter', fresh: '{length: 2, diameter: @, kind: groove}' },
  { kind: 'knurl', name: say('page-kind-knurl'), key: 'diameter', fresh: '{length: 20, diameter: @, kind: knurl}' },
  { kind: 'thread', name: say('page-kind-thread'), key: 'thread', fresh: '{length: 20, thread: M10}' },
  { kind: 'taper', name: say('page-kind-taper'), key: 'taper', fresh: '{length: 20, taper: [@, @]}' },
  { kind: 'flats', name: say('page-kind-flats'), key: 'across_flats', fresh: '{length: 10, across_flats: @, sides: 6}' },
];

/** Keys of the edges and the grinding of a section, with the word in an empty field. */
export const EDGES = [['chamfer', say('page-chamfer-short')], ['radius', say('page-radius-short')], ['grind', say('page-grind-short')],
  ['turned_tolerance', say('page-turned-tolerance-short')], ['turned_ra', say('page-turned-ra-short')]];

/** Features of the shaft: a name and the text of a new row. */
export const FEATURES = [
  [say('page-feature-cross-hole'), '{cross_hole: 4, at: 20}'], [say('page-feature-keyseat'), '{keyseat: [4, 2.5], from: 10, to: 20}'],
  [say('page-feature-centre-hole'), '{centre_hole: A2.5, end: front}'], [say('page-feature-facing'), '{facing: 0.5, end: front}'],
  [say('page-feature-axial-hole'), '{axial_hole: 4, depth: 10, end: front}'], [say('page-feature-tapped-hole'), '{tapped_hole: M5, depth: 10, end: front}'],
  [say('page-feature-tapped-cross-hole'), '{tapped_hole: M3, at: 20}'], [say('page-feature-hex-socket'), '{hex_socket: 4, depth: 5, end: back}'],
  [say('page-feature-keyway'), '{keyway: [3, 1.4], length: 10, end: front}'], [say('page-feature-engraving'), '{engrave: A1, height: 2, at: 20}'],
];

/** Optional keys of each kind of feature. */
export const MORE = {
  cross_hole: ['thrust'], hex_socket: ['step', 'forming'], keyway: ['step'], engrave: ['depth'],
};

/** Keys of a work on the rear end after part-off. */
export const BACK_WORK = ['name', 'time_s', 'radial_force', 'axial_force', 'torque', 'tolerance'];

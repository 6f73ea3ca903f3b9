// Numbers and names as they are read.

/** A number with at most some decimals, no zeros behind. @param {number|null|undefined} x @param {number} [decimals] */
export function num(x, decimals = 1) {
  if (x === null || x === undefined || !Number.isFinite(x)) return '–';
  const fixed = x.toFixed(decimals);
  return fixed.includes('.') ? fixed.replace(/\.?0+$/, '') : fixed;
}

/** Three figures, whatever the size. @param {number} x */
export function figures(x) {
  if (!Number.isFinite(x)) return '–';
  return x === 0 ? '0' : Math.abs(x) >= 100 ? x.toFixed(0) : String(Number(x.toPrecision(3)));
}

/** @param {number} share */
export function percent(share) {
  return `${(100 * share).toFixed(0)} %`;
}

/** A key in words: `counter_spindle_travel`. @param {string} key */
export function words(key) {
  return key.replaceAll('_', ' ');
}

/** One of 1, 2, 5 times a power of ten, not above. @param {number} x */
export function round125(x) {
  const power = 10 ** Math.floor(Math.log10(x));
  const lead = x / power;
  return (lead >= 5 ? 5 : lead >= 2 ? 2 : 1) * power;
}

// Elements without markup text: nothing a job says is ever read as HTML.

/**
 * An element. Attributes that begin with `on` are listeners, `class` and the rest are set as they are; null is left out.
 * @param {string} name
 * @param {Record<string, any>} [attributes]
 * @param {...(Node|string|null|undefined|false)} inside
 * @returns {any}
 */
export function h(name, attributes = {}, ...inside) {
  return fill(document.createElement(name), attributes, inside);
}

/** The same for SVG. @param {string} name @param {Record<string, any>} [attributes] @param {...any} inside @returns {any} */
export function s(name, attributes = {}, ...inside) {
  return fill(document.createElementNS('http://www.w3.org/2000/svg', name), attributes, inside);
}

function fill(element, attributes, inside) {
  for (const [name, value] of Object.entries(attributes)) {
    if (value === null || value === undefined || value === false) continue;
    if (name.startsWith('on')) element.addEventListener(name.slice(2), value);
    else if (name === 'value') element.value = value;
    else element.setAttribute(name, value === true ? '' : String(value));
  }
  element.append(...inside.flat(Infinity).filter((i) => i !== null && i !== undefined && i !== false));
  return element;
}

/** The element of an id. @param {string} id @returns {any} */
export function the(id) {
  return document.getElementById(id);
}

/** An SVG text as an element of this page; it holds no scripts and no styles. @param {string} text @returns {SVGElement} */
export function svgOf(text) {
  const read = new DOMParser().parseFromString(text, 'image/svg+xml');
  return /** @type {any} */ (document.importNode(read.documentElement, true));
}

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

/**
 * Gives an element other children, but leaves those that are as they should be: what is typed in, has the focus, or need
 * not be laid out again. What an element listens for must be told by its attributes, or it is not like another.
 * @param {any} box @param {any[]} fresh @param {string} inside those of which the children are looked at one by one
 */
export function settle(box, fresh, inside) {
  const old = [...box.children];
  for (const [i, node] of fresh.entries()) {
    const there = old[i];
    if (!there) box.append(node);
    else if (there.isEqualNode(node)) continue;
    else if (there.matches(inside) && node.matches(inside)) settle(there, [...node.children], inside);
    else there.replaceWith(node);
  }
  for (const gone of old.slice(fresh.length)) gone.remove();
}

/** The element of an id. @param {string} id @returns {any} */
export function the(id) {
  return document.getElementById(id);
}

/** An SVG text as an element of this page; it holds no scripts and no styles. @param {string} text @returns {SVGElement} */
export function svgOf(text) {
  const read = new DOMParser().parseFromString(text, 'image/svg+xml');
  return /** @type {any} */ (document.adoptNode(read.documentElement));
}

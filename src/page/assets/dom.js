// Builds elements without HTML text, so that nothing in a job is ever read as HTML.

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

/**
 * An SVG element, made like `h`.
 * @param {string} name
 * @param {Record<string, any>} [attributes]
 * @param {...any} inside
 * @returns {any}
 */
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
 * Gives an element new children, but keeps equal ones. So a field that is typed in or has the focus stays, and less has
 * to be laid out again. Elements are compared by their attributes, so these must show what an element listens for.
 * @param {any} box @param {any[]} fresh @param {string} inside selector of elements whose children are compared one by one
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

/** The element with an id. @param {string} id @returns {any} */
export function the(id) {
  return document.getElementById(id);
}

let pictures = 0;

/** An SVG text as an element of this page; it holds no scripts and no styles. @param {string} text @returns {SVGElement} */
export function svgOf(text) {
  const read = new DOMParser().parseFromString(text, 'image/svg+xml');
  pictures += 1;
  // Each picture has its own patterns: those of a hidden picture fill nothing.
  for (const own of read.querySelectorAll('[id]')) {
    const id = `${own.id}-${pictures}`;
    for (const user of read.querySelectorAll(`[fill="url(#${own.id})"]`)) user.setAttribute('fill', `url(#${id})`);
    own.id = id;
  }
  return /** @type {any} */ (document.adoptNode(read.documentElement));
}

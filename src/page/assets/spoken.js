// The texts of the page that do not change.

import { LANGUAGE } from './texts.js';
import { say } from './words.js';

/** Puts them in. */
export function sayAll() {
  document.documentElement.lang = LANGUAGE;
  for (const element of document.querySelectorAll('[data-say], [data-say-title], [data-say-label]')) {
    const { say: inside, sayTitle, sayLabel } = element.dataset;
    if (inside) element.textContent = say(inside);
    if (sayTitle) element.title = say(sayTitle);
    if (sayLabel) element.setAttribute('aria-label', say(sayLabel));
  }
}

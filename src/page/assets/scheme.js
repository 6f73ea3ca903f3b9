// Light or dark: as the system has it, or as it was chosen on this computer.

import { the } from './dom.js';

const KEY = 'spanhold-scheme';
const dark = matchMedia('(prefers-color-scheme: dark)');

function chosen() {
  try {
    return localStorage.getItem(KEY) ?? 'system';
  } catch {
    return 'system';
  }
}

/** Shows the page in the scheme that was chosen. */
function put() {
  const now = chosen();
  document.documentElement.dataset.scheme = now === 'system' ? (dark.matches ? 'dark' : 'light') : now;
}

/** Connects the choice in the head of the page. */
export function schemes() {
  const select = the('scheme');
  select.value = chosen();
  select.addEventListener('change', () => {
    try {
      localStorage.setItem(KEY, select.value);
    } catch {
      // The storage is forbidden: the choice holds for this page.
    }
    document.documentElement.dataset.scheme = select.value === 'system' ? (dark.matches ? 'dark' : 'light') : select.value;
  });
}

dark.addEventListener('change', put);
put();

// The form as a drawer over the plan, where there is no room for both.

import { the } from './dom.js';

export class Drawer {
  constructor() {
    this.narrow = matchMedia('(max-width: 1100px)');
    this.narrow.addEventListener('change', () => this.set(false));
    the('drawer').addEventListener('click', () => (this.isOpen() ? this.close() : this.open()));
    the('drawer-close').addEventListener('click', () => this.close());
    the('drawer-ground').addEventListener('click', () => this.close());
    the('input').addEventListener('keydown', (event) => {
      if (event.key === 'Escape' && this.isOpen()) this.close();
    });
    this.set(false);
  }

  isOpen() {
    return document.body.classList.contains('drawn');
  }

  /** Opens the form, if it is a drawer now. @param {boolean} [focus] whether it takes the focus */
  open(focus = true) {
    if (!this.narrow.matches) return;
    this.set(true);
    if (focus) the('tabs').querySelector('[aria-selected="true"]')?.focus();
  }

  close() {
    this.set(false);
    the('drawer').focus();
  }

  /** @param {boolean} open */
  set(open) {
    document.body.classList.toggle('drawn', open);
    the('drawer').setAttribute('aria-expanded', String(open));
    // What lies under the drawer is out of reach until it is closed; what is shut away is out of reach too.
    the('results').inert = open;
    the('input').inert = this.narrow.matches && !open;
  }
}

import { byId } from './dom.js';

/** The forms of the answer. */
export const tabNames = ['summary', 'drawing', 'sheet', 'plan'] as const;
export type TabName = (typeof tabNames)[number];

/** Tabs that the arrow keys move between; `show` is told which one is chosen. */
export function watchTabs(show: (name: TabName) => void): void {
  for (const [index, name] of tabNames.entries()) {
    const tab = byId(`tab-${name}`);
    tab.addEventListener('click', () => choose(name, show));
    tab.addEventListener('keydown', ({ key }) => {
      const step = key === 'ArrowRight' ? 1 : key === 'ArrowLeft' ? -1 : 0;
      const next = tabNames[(index + step + tabNames.length) % tabNames.length];
      if (step === 0 || next === undefined) return;
      choose(next, show);
      byId(`tab-${next}`).focus();
    });
  }
}

function choose(name: TabName, show: (name: TabName) => void): void {
  markTab(name);
  show(name);
}

/** Shows one panel and hides the others. */
export function markTab(name: TabName): void {
  for (const each of tabNames) {
    const tab = byId(`tab-${each}`);
    tab.setAttribute('aria-selected', String(each === name));
    tab.tabIndex = each === name ? 0 : -1;
    byId(`panel-${each}`).hidden = each !== name;
  }
}

import { render } from 'preact';
import type { ComponentChild } from 'preact';

/** Takes the paper away that was printed last. */
let takeAway = (): void => {};

/**
 * Prints one paper alone, whatever the screen shows. It leaves the page when the printing is over, or with the next
 * touch where a browser does not say when that is: what the browser's own menu prints later is the screen, never a
 * paper left behind.
 * @param style CSS of the paper, for print only: made by script, for the page's policy allows no other that is not in
 *   its files
 */
export function printPaper(paper: ComponentChild, style = ''): void {
  takeAway();
  const host = document.createElement('div');
  host.className = 'paper-host';
  document.body.append(host);
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(`@media print {${style}}`);
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
  render(paper, host);
  document.documentElement.dataset.paper = '';

  const over = new AbortController();
  takeAway = () => {
    over.abort();
    takeAway = () => {};
    render(null, host);
    host.remove();
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((each) => each !== sheet);
    delete document.documentElement.dataset.paper;
  };
  for (const sign of ['afterprint', 'pointerdown', 'keydown'])
    addEventListener(sign, () => takeAway(), { signal: over.signal, capture: true });
  print();
}

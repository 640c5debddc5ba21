import type { Page } from 'playwright-core';

/**
 * Buttons, links and fields that a finger could miss: smaller than `least` px either way, as far as they can be seen.
 */
export function smallTargets(page: Page, least: number): Promise<string[]> {
  return page.evaluate((size) => {
    const small: string[] = [];
    // For screen readers and the keyboard alone: cut to a pixel until it has the focus.
    const isCut = (element: HTMLElement | null): boolean =>
      element !== null && ((element.offsetWidth <= 1 && element.offsetHeight <= 1) || isCut(element.parentElement));
    for (const element of document.querySelectorAll<HTMLElement>(
      'button, a[href], label:has(input[type=radio]), select, input[type=text]',
    )) {
      const { width, height } = element.getBoundingClientRect();
      const inSentence = element.closest('p') !== null && getComputedStyle(element).display === 'inline';
      const isSeen =
        element.checkVisibility({ visibilityProperty: true, opacityProperty: true }) &&
        !isCut(element) &&
        !element.classList.contains('skip-link');
      if (isSeen && !inSentence && (width < size - 0.5 || height < size - 0.5))
        small.push(`${element.textContent.trim().slice(0, 30)} ${Math.round(width)}×${Math.round(height)}`);
    }
    return small;
  }, least);
}

/**
 * Buttons, fields and folds of the page, all folds opened, that a tap cannot hit however one scrolls: cut off, or under
 * something else.
 */
export function outOfReach(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const missed: string[] = [];
    // For screen readers and the keyboard alone: cut to a pixel until it has the focus.
    const isCut = (element: HTMLElement | null): boolean =>
      element !== null && ((element.offsetWidth <= 1 && element.offsetHeight <= 1) || isCut(element.parentElement));
    const closed = [...document.querySelectorAll('details:not([open])')] as HTMLDetailsElement[];
    for (const fold of closed) fold.open = true;
    for (const control of document.querySelectorAll<HTMLElement>('button, a[href], input, select, textarea, summary')) {
      const label = control instanceof HTMLInputElement ? control.labels?.[0] : undefined;
      const target = label ?? control;
      if (!target.checkVisibility({ visibilityProperty: true, opacityProperty: true })) continue;
      if (isCut(target)) continue;
      if (control.matches(':disabled, .skip-link, .map-way-out, [type=file]')) continue;
      target.scrollIntoView({ block: 'center', inline: 'center', behavior: 'instant' });
      const [box] = target.getClientRects();
      if (box === undefined || box.width <= 1) continue;
      const hit = document.elementFromPoint(box.x + box.width / 2, box.y + box.height / 2);
      if (hit === null || !(target.contains(hit) || control.contains(hit)))
        missed.push(
          `${control.tagName} "${(target.textContent || control.ariaLabel || '').trim().slice(0, 40)}" at ` +
            `${Math.round(box.x)},${Math.round(box.y)} under ${hit?.className || hit?.tagName}`,
        );
    }
    for (const fold of closed) fold.open = false;
    return missed;
  });
}

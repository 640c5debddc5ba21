/** What the keyboard can come to. */
const FOCUSABLE = ':is(a[href], button, input, select, textarea, summary, [tabindex]):not(:disabled, [tabindex="-1"])';

interface Held {
  readonly element: Element;
  /** What it stood in, the innermost first. */
  readonly around: readonly Element[];
}

/**
 * Finds the keyboard another place where what it was on goes away or can no longer be used: the browser would begin
 * again at the top of the page. Parts of the page that set the focus themselves do so after this, and win.
 */
export function keepFocus(page: HTMLElement): void {
  const trail: Held[] = [];
  page.addEventListener('focusin', ({ target }) => {
    if (!(target instanceof Element)) return;
    const around: Element[] = [];
    for (let outer = target.parentElement; outer !== null && outer !== page; outer = outer.parentElement)
      around.push(outer);
    trail.push({ element: target, around });
    if (trail.length > 8) trail.shift();
  });
  // Whoever points elsewhere has let go.
  page.addEventListener('pointerdown', ({ target }) => {
    if (target instanceof Element && !target.closest(FOCUSABLE)) trail.length = 0;
  });
  new MutationObserver(() => {
    const held = trail.at(-1);
    const active = document.activeElement;
    if (!held || canHold(held.element) || (active !== null && active !== document.body && active !== held.element))
      return;
    const next = placeFor(held, trail);
    if (next instanceof HTMLElement) {
      if (!next.matches(FOCUSABLE)) next.tabIndex = -1;
      next.focus();
    }
  }).observe(page, { subtree: true, childList: true, attributes: true, attributeFilter: ['disabled'] });
}

function canHold(element: Element): boolean {
  return element.isConnected && !element.matches(':disabled') && element.checkVisibility();
}

/**
 * The nearest thing beside it; where all beside it has gone, the heading of the card that came instead; from the
 * drawing, where one came from.
 */
function placeFor({ element, around }: Held, trail: readonly Held[]): Element | null {
  for (const home of around) {
    if (!home.isConnected || !home.checkVisibility()) continue;
    if (home.matches('.slip, .slip-card')) return home.querySelector('h1');
    if (home.matches('.map-slot, .yard-map, .shell')) break;
    const beside = Array.from(home.querySelectorAll(FOCUSABLE)).filter(canHold);
    const isAfter = (other: Element): boolean =>
      (element.compareDocumentPosition(other) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0;
    const place = element.isConnected ? (beside.find(isAfter) ?? beside.at(-1)) : beside[0];
    if (place) return place;
  }
  return (
    trail.findLast(
      ({ element: earlier, around: then }) => canHold(earlier) && !then.some((outer) => outer.matches('.map-slot')),
    )?.element ?? document.querySelector('.map-paper')
  );
}

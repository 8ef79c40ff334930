/** Within so many frames heights that were only estimated become known. */
const frames = 5;

/**
 * Brings an element into view: a near one as the page scrolls, a far one at once. On a long way estimated heights become
 * known one after the other and lead past it, so it is looked for again until it stands.
 */
export function bringIntoView(element: Element, block: "center" | "nearest"): void {
  const isNear = Math.abs(element.getBoundingClientRect().top) < 2 * window.innerHeight;
  if (isNear) element.scrollIntoView({ block });
  else jump(element, block, frames);
}

function jump(element: Element, block: "center" | "nearest", left: number): void {
  element.scrollIntoView({ block, behavior: "instant" });
  if (left > 0) requestAnimationFrame(() => jump(element, block, left - 1));
}

/** How far the pointer has to go before a press becomes a drag, px. */
const threshold = 6;
/** How near the edge of the board it scrolls, px, and how fast, px a frame. */
const [edge, speed] = [44, 12];

/**
 * Lets a sheet be dragged to another place on its board, from the press that begins it. A line shows where it would stand;
 * Escape calls it off. Fingers scroll instead: there the menu of the sheet moves it.
 */
export function dragSheet(press: PointerEvent, sheet: HTMLElement, onDrop: (index: number) => void): void {
  const board = sheet.parentElement;
  const scroller = sheet.closest<HTMLElement>("#board");
  if (press.button !== 0 || press.pointerType === "touch" || !board || !scroller) return;
  const others = [...board.children].filter((each): each is HTMLElement => each !== sheet);
  const isStrip = getComputedStyle(board).display === "flex";
  let at = { x: press.clientX, y: press.clientY };
  let place: number | null = null;

  const mark = (): void => {
    if (place === null) return;
    place = others.filter((other) => isBefore(other.getBoundingClientRect(), at, isStrip)).length;
    for (const [index, other] of others.entries()) {
      other.classList.toggle("drop-before", index === place);
      other.classList.toggle("drop-after", index === others.length - 1 && place === others.length);
    }
  };
  const scroll = (): void => {
    if (place === null || ended.signal.aborted) return;
    const { left, right, top, bottom } = scroller.getBoundingClientRect();
    const by = isStrip ? toward(at.x, left, right) : toward(at.y, top, bottom);
    if (by !== 0) {
      scroller.scrollBy({ [isStrip ? "left" : "top"]: by * speed, behavior: "instant" });
      mark();
    }
    requestAnimationFrame(scroll);
  };
  const end = (drop: boolean): void => {
    ended.abort();
    sheet.classList.remove("dragged");
    for (const other of others) other.classList.remove("drop-before", "drop-after");
    if (drop && place !== null) onDrop(place);
  };
  const ended = new AbortController();
  const listen = { signal: ended.signal, capture: true };
  window.addEventListener(
    "pointermove",
    ({ clientX, clientY }) => {
      at = { x: clientX, y: clientY };
      if (place === null && Math.hypot(at.x - press.clientX, at.y - press.clientY) > threshold) {
        place = 0;
        sheet.classList.add("dragged");
        requestAnimationFrame(scroll);
      }
      mark();
    },
    listen,
  );
  window.addEventListener("pointerup", () => end(true), listen);
  window.addEventListener("pointercancel", () => end(false), listen);
  window.addEventListener("keydown", ({ key }) => key === "Escape" && end(false), listen);
}

function isBefore({ left, right, top, bottom }: DOMRect, at: { x: number; y: number }, isStrip: boolean): boolean {
  return isStrip ? (left + right) / 2 < at.x : (top + bottom) / 2 < at.y;
}

const toward = (at: number, from: number, to: number): number => (at < from + edge ? -1 : at > to - edge ? 1 : 0);

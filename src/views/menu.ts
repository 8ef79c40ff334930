import { html, nothing, render } from "lit";

/** One line of a menu. */
export interface MenuItem {
  readonly label: string;
  /** Said after it, softer: what it is, or its key. */
  readonly hint?: string;
  /** A line parts it from those above. */
  readonly parted?: boolean;
  act(): void;
}

/**
 * Opens a menu at an element, in the top layer, its first item focused. Arrow keys, Home, End and first letters go
 * through it; Escape, Tab or a press elsewhere closes it. The focus goes back to `back` before an item acts.
 */
export function openMenu(
  anchor: HTMLElement,
  label: string,
  items: readonly MenuItem[],
  back: HTMLElement = anchor,
): void {
  const menu = document.createElement("div");
  menu.className = "menu";
  menu.role = "menu";
  menu.ariaLabel = label;
  menu.popover = "auto";
  const choose = (item: MenuItem): void => {
    close();
    item.act();
  };
  const close = (): void => {
    if (!menu.isConnected) return;
    const hadFocus = menu.contains(document.activeElement) || document.activeElement === document.body;
    menu.remove();
    if (hadFocus) back.focus({ preventScroll: true });
  };
  render(
    items.map(
      (item) => html`${item.parted ? html`<hr />` : nothing}
        <button type="button" role="menuitem" tabindex="-1" @click=${() => choose(item)}
          ><span>${item.label}</span> ${item.hint ? html`<span class="hint">${item.hint}</span>` : nothing}</button>`,
    ),
    menu,
  );
  menu.addEventListener("keydown", (event) => walk(menu, event, close));
  menu.addEventListener("toggle", (event) => {
    if (event.newState === "closed") close();
  });
  (anchor.closest("spanwise-app") ?? document.body).append(menu);
  menu.showPopover();
  place(menu, anchor);
  itemsOf(menu)[0]?.focus();
}

const itemsOf = (menu: HTMLElement): HTMLElement[] => [...menu.querySelectorAll<HTMLElement>("[role=menuitem]")];

function walk(menu: HTMLElement, event: KeyboardEvent, close: () => void): void {
  if (event.ctrlKey || event.metaKey || event.altKey) return;
  const all = itemsOf(menu);
  const here = all.indexOf(document.activeElement as HTMLElement);
  const { key } = event;
  let to: number;
  if (key === "ArrowDown") to = (here + 1) % all.length;
  else if (key === "ArrowUp") to = (here - 1 + all.length) % all.length;
  else if (key === "Home") to = 0;
  else if (key === "End") to = all.length - 1;
  else if (key === "Escape" || key === "Tab") {
    event.preventDefault();
    event.stopPropagation();
    close();
    return;
  } else if (key.length === 1 && key !== " ") {
    const begins = (each: HTMLElement | undefined): boolean =>
      each?.textContent?.trim().toLowerCase().startsWith(key.toLowerCase()) ?? false;
    to = all.findIndex((_, step) => begins(all[(here + 1 + step) % all.length]));
    if (to < 0) return;
    to = (here + 1 + to) % all.length;
  } else return;
  event.preventDefault();
  event.stopPropagation();
  all[to]?.focus();
}

/** Below the anchor where there is room, else above; within the window in any case. */
function place(menu: HTMLElement, anchor: HTMLElement): void {
  const from = anchor.getBoundingClientRect();
  const { width, height } = menu.getBoundingClientRect();
  const left = Math.max(8, Math.min(from.left, window.innerWidth - width - 8));
  const below = from.bottom + 4;
  const top = below + height > window.innerHeight - 8 ? Math.max(8, from.top - 4 - height) : below;
  menu.style.setProperty("left", `${left}px`);
  menu.style.setProperty("top", `${top}px`);
}

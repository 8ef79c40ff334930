import type { Cell } from "../cells/index.ts";
import type { CellView } from "./cell-view.ts";
import type { Desk } from "./desk.ts";

type View = CellView<Cell>;

/** As many cells as any screen shows at once. */
const firstScreen = 40;

/** About how many cells a stretch has, and about how high one is, px. */
const stretchSize = 50;
const usualHeight = 72;

/**
 * The elements of a notebook's cells, in stretches, of which the browser leaves out those far from the screen: thousands
 * of cells in one row would cost it as much in every frame as all the rest. Elements stay where they are as far as they
 * can; one that moves is the same element still.
 */
export class CellList {
  readonly element = document.createElement("div");
  private serial = -1;
  private views = new Map<string, View>();
  private inOrder: readonly View[] = [];
  private readonly near = new Set<Element>();
  private readonly nearness = new IntersectionObserver(
    (entries) => {
      for (const { target, isIntersecting } of entries) (target as View).away = !isIntersecting;
    },
    { rootMargin: "150px" },
  );
  private readonly stretchNearness = new IntersectionObserver(
    (entries) => {
      for (const { target, isIntersecting } of entries) this.comeOrGo(target, isIntersecting);
    },
    { rootMargin: "600px", scrollMargin: "600px" } as IntersectionObserverInit,
  );

  constructor() {
    this.element.className = "cells";
  }

  /** The elements of the cells, in their order. */
  get all(): readonly View[] {
    return this.inOrder;
  }

  /** The element of a cell, by id. */
  get(id: string): View | undefined {
    return this.views.get(id);
  }

  /**
   * Takes the cells as they now are. Of a notebook that has just been opened those further down than the first screen
   * are patient.
   */
  take(desk: Desk): void {
    const { cells } = desk.session.notebook;
    const isOpened = desk.serial !== this.serial;
    if (isOpened) this.clear();
    this.serial = desk.serial;
    const before = this.views;
    this.views = new Map();
    this.inOrder = cells.map((cell, index) => {
      const known = before.get(cell.id);
      const view = known?.localName === tagOf(cell) ? known : make(desk, cell, isOpened && index >= firstScreen);
      view.cell = cell;
      this.views.set(cell.id, view);
      return view;
    });
    for (const [id, view] of before) if (this.views.get(id) !== view) this.remove(view);
    this.arrange();
  }

  /** Gives cells that say something else to their elements; false where elements come, go or move. */
  takeInPlace({ serial, session }: Desk): boolean {
    const { cells } = session.notebook;
    const views = this.inOrder;
    const isInPlace = (cell: Cell, index: number): boolean => {
      const view = views[index] as View;
      return view.cell === cell || (view.cell.id === cell.id && view.localName === tagOf(cell));
    };
    if (serial !== this.serial || views.length !== cells.length || !cells.every(isInPlace)) return false;
    cells.forEach((cell, index) => {
      (views[index] as View).cell = cell;
    });
    return true;
  }

  /** Lets go of everything. */
  clear(): void {
    this.nearness.disconnect();
    this.stretchNearness.disconnect();
    this.near.clear();
    this.views.clear();
    this.inOrder = [];
    this.element.replaceChildren();
    this.serial = -1;
  }

  private remove(view: View): void {
    this.nearness.unobserve(view);
    view.remove();
  }

  private arrange(): void {
    const stretches: Element[] = [...this.element.children];
    const homes = this.inOrder.map(({ parentElement }) => (parentElement ? stretches.indexOf(parentElement) : -1));
    const parts: View[][] = [];
    divide(homes, stretchSize).forEach((part, index) => {
      parts[part] ??= [];
      parts[part].push(this.inOrder[index] as View);
    });
    for (let index = 0; index < Math.max(parts.length, stretches.length); index++) {
      const stretch = stretches[index] ?? this.addStretch();
      fill(stretch, parts[index] ?? []);
    }
    for (const stretch of [...this.element.children]) {
      if (stretch.childElementCount === 0) {
        this.stretchNearness.unobserve(stretch);
        this.near.delete(stretch);
        stretch.remove();
      } else if (this.near.has(stretch)) for (const view of stretch.children) this.nearness.observe(view);
      else for (const view of stretch.children) this.nearness.unobserve(view);
    }
  }

  private addStretch(): Element {
    const stretch = document.createElement("div");
    // Until it is known that it is not.
    stretch.className = "stretch near";
    this.element.append(stretch);
    this.stretchNearness.observe(stretch);
    return stretch;
  }

  private comeOrGo(stretch: Element, isNear: boolean): void {
    if (isNear) this.near.add(stretch);
    else this.near.delete(stretch);
    stretch.classList.toggle("near", isNear);
    for (const view of stretch.children as HTMLCollectionOf<View>) {
      if (isNear) this.nearness.observe(view);
      else {
        this.nearness.unobserve(view);
        view.away = true;
      }
    }
  }
}

/**
 * The stretch that each cell belongs to. `homes` are those they are in, -1 for none: a cell stays with the one before it,
 * unless from it on the next stretch begins. Where one would grow too long all are cut anew.
 */
export function divide(homes: readonly number[], size: number): readonly number[] {
  let at = 0;
  const parts = homes.map((home, index) => {
    const next = homes[index + 1] ?? -1;
    if (home > at && (next < 0 || next >= home)) at = home;
    return at;
  });
  const counts: number[] = [];
  for (const part of parts) counts[part] = (counts[part] ?? 0) + 1;
  return counts.some((count) => count > 2 * size) ? homes.map((_, index) => Math.floor(index / size)) : parts;
}

/** Puts elements into a stretch in their order; where one stands in the way that comes later, it is taken out first. */
function fill(stretch: Element, views: readonly View[]): void {
  let at = stretch.firstElementChild;
  for (const view of views) {
    if (at !== view && at !== null && at.nextElementSibling === view) {
      at.remove();
      at = view;
    }
    if (at === view) at = view.nextElementSibling;
    else stretch.insertBefore(view, at);
  }
  // Until it has been drawn once; then the browser remembers.
  (stretch as HTMLElement).style.containIntrinsicHeight = `auto ${views.length * usualHeight}px`;
}

function make(desk: Desk, cell: Cell, isPatient: boolean): View {
  const view = document.createElement(tagOf(cell)) as View;
  view.desk = desk;
  view.isPatient = isPatient;
  return view;
}

function tagOf({ kind }: Cell): string {
  switch (kind) {
    case "given":
    case "derived":
    case "check":
      return "spanwise-formula-cell";
    case "drawing":
    case "chart":
      return "spanwise-figure-cell";
    default:
      return `spanwise-${kind}-cell`;
  }
}

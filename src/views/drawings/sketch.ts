/**
 * A drawing as a value: a tree of marks, computed from data alone, and its writing into the page. Written again, only
 * what differs is touched, so that a drawing can follow a knob within a frame.
 */

/** One element of a drawing. Attributes that are undefined are left away; an element has a text or children. */
export interface Mark {
  readonly tag: string;
  readonly attributes: Attributes;
  readonly children: readonly Mark[];
  readonly text?: string;
  /** What is no picture, such as a description: made and written only once nothing moves any more. */
  readonly later?: () => Mark;
}
/** Attributes by name; undefined ones are left away. */
export type Attributes = Readonly<Record<string, string | number | undefined>>;

/** Where elements are made: the page's document or one without a page. */
export interface Surroundings {
  readonly document: Pick<Document, "createElementNS">;
}

/** A drawing on the page that takes new data in place. */
export interface LiveDrawing<Data, Options> {
  readonly element: SVGSVGElement;
  /** With `whenIdle`, which calls back once nothing moves any more, what can wait is left until then. */
  update(data: Data, options: Options, whenIdle?: (act: () => void) => void): void;
}

/** An element with children. */
export const mark = (tag: string, attributes: Attributes, children: readonly Mark[] = []): Mark => ({
  tag,
  attributes,
  children,
});

/** An element with a text. */
export const textMark = (tag: string, attributes: Attributes, text: string): Mark => ({
  tag,
  attributes,
  children: [],
  text,
});

/** An element that is no part of the picture and can wait, by its tag and what makes it. */
export const later = (tag: string, make: () => Mark): Mark => ({ tag, attributes: {}, children: [], later: make });

/** A group of its own for each layer keeps elements in place where the number of marks in another layer changes. */
export const layer = (name: string, children: readonly Mark[]): Mark => mark("g", { class: name }, children);

/** The whole of a drawing: a picture of this size with a title and a description, its class the name of its view. */
export const sheetMark = (
  view: string,
  { width, height }: { readonly width: number; readonly height: number },
  title: string,
  description: () => string,
  layers: readonly Mark[],
): Mark =>
  mark("svg", { class: `drawing ${view}`, role: "img", width, height, viewBox: `0 0 ${width} ${height}` }, [
    textMark("title", {}, title),
    later("desc", () => textMark("desc", {}, description())),
    ...layers,
  ]);

/** Coordinates to a hundredth of a px: enough for any screen, and short. */
export const round = (value: number): number => Math.round(value * 100) / 100 + 0;

/** Draws a sketch, whose root mark is the `svg`, and keeps it ready for the next. */
export function liveDrawing<Data, Options>(
  sketch: (data: Data, options: Options) => Mark,
  data: Data,
  options: Options,
  { document }: Surroundings,
): LiveDrawing<Data, Options> {
  let drawn = draw(sketch(data, options), document);
  let last: Mark | null = null;
  const element = drawn.element as SVGSVGElement;
  // One and the same function, so that who calls it can tell that it was asked for already.
  const finish = (): void => {
    if (last) drawn = redraw(drawn, last, document, false);
    last = null;
  };
  return {
    element,
    update(nextData, nextOptions, whenIdle) {
      last = sketch(nextData, nextOptions);
      if (!whenIdle) return finish();
      drawn = redraw(drawn, last, document, true);
      whenIdle(finish);
    },
  };
}

/** Throws where an option is not one of those that a drawing knows; `known` names each, by its type. */
export function checkOptions<Options extends object>(
  options: Options,
  known: Readonly<Record<keyof Options, true>>,
  drawing: string,
): void {
  for (const name of Object.keys(options)) {
    if (!(name in known)) {
      throw new Error(`got the option "${name}" for the ${drawing}, expected one of ${Object.keys(known).join(", ")}`);
    }
  }
}

interface Drawn {
  readonly mark: Mark;
  readonly element: Element;
  readonly children: readonly Drawn[];
  /** True for what can wait. */
  readonly waits?: boolean;
}

function draw(mark: Mark, document: Surroundings["document"]): Drawn {
  if (mark.later) return { ...draw(mark.later(), document), waits: true };
  const element = document.createElementNS("http://www.w3.org/2000/svg", mark.tag);
  for (const [name, value] of Object.entries(mark.attributes)) {
    if (value !== undefined) element.setAttribute(name, String(value));
  }
  if (mark.text !== undefined) element.textContent = mark.text;
  const children = mark.children.map((child) => draw(child, document));
  for (const child of children) element.appendChild(child.element);
  return { mark, element, children };
}

/**
 * The same element with only its differences written, if it is of the same kind; else a new one in its place. While
 * things move, what can wait stays as it was.
 */
function redraw(old: Drawn, next: Mark, document: Surroundings["document"], isMoving: boolean): Drawn {
  if (next.later) {
    return isMoving && old.waits ? old : { ...redraw(old, next.later(), document, isMoving), waits: true };
  }
  if (old.mark.tag !== next.tag) {
    const fresh = draw(next, document);
    old.element.replaceWith(fresh.element);
    return fresh;
  }
  const { element } = old;
  const before = old.mark.attributes;
  const after = next.attributes;
  // Plain loops: this runs for every attribute of a drawing in every frame.
  for (const name in after) {
    const value = after[name];
    if (value !== undefined && value !== before[name]) element.setAttribute(name, String(value));
  }
  for (const name in before) {
    if (before[name] !== undefined && after[name] === undefined) element.removeAttribute(name);
  }
  if (next.text !== old.mark.text) writeText(element, next.text);
  const children = next.children.map((child, index) => {
    const drawn = old.children[index];
    if (drawn) return redraw(drawn, child, document, isMoving);
    const fresh = draw(child, document);
    element.appendChild(fresh.element);
    return fresh;
  });
  for (const gone of old.children.slice(next.children.length)) gone.element.remove();
  return { mark: next, element, children };
}

/** Into the text that is there, if one is: the element keeps its parts. */
function writeText(element: Element, text: string | undefined): void {
  const { firstChild } = element;
  const isText = firstChild?.nodeType === textNode && firstChild === element.lastChild;
  if (isText && text !== undefined) firstChild.nodeValue = text;
  else element.textContent = text ?? "";
}

const textNode = 3;

/** Drawings outside the page: a copy that carries its look itself, in the light colours. */

/** The texts of theme.css and drawing.css, from wherever they are read. */
export interface Look {
  readonly theme: string;
  readonly drawing: string;
}

/**
 * A copy of a drawing with the rules of drawing.css written out as presentation attributes and the light colours put
 * in, without what only a page can use (focus, roles of controls). Throws where a colour is not in the theme.
 */
export function standalone(drawing: SVGElement, look: Look): SVGElement {
  const rules = readRules(look.drawing, readTokens(look.theme));
  const copy = drawing.cloneNode(true) as SVGElement;
  for (const element of [copy, ...copy.querySelectorAll("*")]) {
    for (const name of (element.getAttribute("class") ?? "").split(/\s+/)) {
      for (const [property, value] of rules.get(name) ?? []) element.setAttribute(property, value);
    }
    if (element.hasAttribute("tabindex")) for (const name of ofPage) element.removeAttribute(name);
  }
  // Without anything to choose a chart is a picture like any drawing.
  copy.setAttribute("role", "img");
  copy.setAttributeNS("http://www.w3.org/2000/xmlns/", "xmlns", "http://www.w3.org/2000/svg");
  return copy;
}

/** Attributes of what can be chosen on the page. */
const ofPage = ["tabindex", "role", "aria-label", "aria-current"];

/** The properties of the stylesheet that are attributes of SVG elements as well. */
const presentation = new Set(
  (
    "fill fill-opacity stroke stroke-width stroke-dasharray stroke-linecap stroke-linejoin stroke-opacity " +
    "font-family font-style color opacity text-anchor visibility"
  ).split(" "),
);

/** Tokens by name, the light value of each. */
function readTokens(css: string): ReadonlyMap<string, string> {
  const found = withoutComments(css).matchAll(/(--[a-z-]+):\s*([^;]+);/g);
  return new Map(
    [...found].map(([, name = "", value = ""]) => [name, value.replace(/light-dark\(([^,]+),.*\)/, "$1")]),
  );
}

/** Declarations by class; rules on anything but single classes are for the page alone. */
function readRules(css: string, tokens: ReadonlyMap<string, string>): ReadonlyMap<string, readonly [string, string][]> {
  const rules = new Map<string, [string, string][]>();
  for (const [, selectors = "", body = ""] of withoutComments(css).matchAll(/([^{}]+)\{([^{}]*)\}/g)) {
    const declarations = [...body.matchAll(/([a-z-]+):\s*([^;]+);/g)]
      .map(([, property = "", value = ""]): [string, string] => [property, resolve(value, tokens)])
      .filter(([property]) => presentation.has(property));
    for (const selector of selectors.split(",").map((each) => each.trim())) {
      const name = /^\.([a-z][a-z0-9-]*)$/.exec(selector)?.[1];
      if (name) rules.set(name, [...(rules.get(name) ?? []), ...declarations]);
    }
  }
  return rules;
}

const withoutComments = (css: string): string => css.replace(/\/\*[\s\S]*?\*\//g, "");

function resolve(value: string, tokens: ReadonlyMap<string, string>): string {
  return value.replace(/var\((--[a-z-]+)\)/g, (_, name: string) => {
    const found = tokens.get(name);
    if (found === undefined) throw new Error(`got ${name} in the look of a drawing, expected a token of the theme`);
    return found;
  });
}

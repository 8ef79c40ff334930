/** The manual of all functions as a page without a script: the build puts it beside the app. */
import { parseHTML } from "linkedom";
import { functions, latticeConvergence } from "./library/index.ts";
import { manualPage } from "./views/reference/manual-page.ts";

/** What the template has in the place of the manual. */
const place = "<!-- manual -->";

/**
 * The page: the template, as the bundler left it, with the manual in its place. It asks for its style as any page does, so
 * that it is the same when it is opened as a file.
 */
export function manualHtml(template: string): string {
  if (!template.includes(place)) throw new Error(`got a page without ${place}, expected it where the manual goes`);
  const { document } = parseHTML("<!doctype html><html><body></body></html>");
  const page = manualPage(functions, latticeConvergence(), document as unknown as Document);
  return template.replaceAll(" crossorigin ", " ").replace(place, () => page.outerHTML);
}

import axe from "axe-core";
import type { Page } from "playwright-core";

/**
 * What axe-core finds on the page, shadow roots included, that seriously hinders people who do not see, or do not use a
 * mouse: `rule: where`, one line for each place.
 */
export async function hindrances(page: Page): Promise<readonly string[]> {
  // Evaluated by the driver, not loaded by the page: the page's policy would refuse it.
  await page.evaluate(axe.source);
  const { violations } = await page.evaluate(() => (globalThis as unknown as { axe: typeof axe }).axe.run(document));
  return violations
    .filter((found) => found.impact === "serious" || found.impact === "critical")
    .flatMap((found) => found.nodes.map((node) => `${found.id}: ${node.target.join(" ")}`));
}

/** Elements that are pieces of their own, so that the page opens without them. */

/** Loads what shows, makes and compares trials. */
export const loadTrials = (): Promise<void> =>
  define("spanwise-trials", async () => (await import("./trials/trial-bar.ts")).TrialBar);

/** Loads what finds cells. */
export const loadFind = (): Promise<void> => define("spanwise-find", async () => (await import("./find.ts")).Find);

async function define(name: string, load: () => Promise<CustomElementConstructor>): Promise<void> {
  if (customElements.get(name)) return;
  const element = await load();
  if (!customElements.get(name)) customElements.define(name, element);
}

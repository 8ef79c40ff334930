/** Loads what shows, makes and compares trials: a piece of its own, so that the page opens without it. */
export async function loadTrials(): Promise<void> {
  if (customElements.get("spanwise-trials")) return;
  const { TrialBar } = await import("./trials/trial-bar.ts");
  if (!customElements.get("spanwise-trials")) customElements.define("spanwise-trials", TrialBar);
}

/** The app in the browser: the library's functions and the notebooks that ship, handed to the views. */
import { functionsAtFirst } from "./library/at-first.ts";
import { startApp } from "./views/index.ts";
import workerAddress from "./worker.ts?worker&url";
import "./views/views.css";

const notebooks = import.meta.glob<string>("../notebooks/*.json", { query: "?raw", import: "default" });

/** Where the page's policy asks for it, only the worker's own address is vouched for. */
interface PolicyMaker {
  createPolicy(name: string, rules: { createScriptURL: () => string }): { createScriptURL(url: string): URL };
}
const address = new URL(workerAddress, import.meta.url).href;
const { trustedTypes } = self as { readonly trustedTypes?: PolicyMaker };
const policy = trustedTypes?.createPolicy("spanwise-worker", { createScriptURL: () => address });

startApp(document.body, {
  functions: functionsAtFirst,
  loadFunctions: async () => (await import("./library/index.ts")).functions,
  shipped: { texts: notebooks, first: "../notebooks/plover.json" },
  startWorker: () => new Worker(policy?.createScriptURL(address) ?? address, { type: "module", name: "computing" }),
});

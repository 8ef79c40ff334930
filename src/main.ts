/** The app in the browser: the library's functions and the notebooks that ship, handed to the views. */
import { functions } from "./library/index.ts";
import { startApp } from "./views/index.ts";
import "./views/views.css";

const notebooks = import.meta.glob<string>("../notebooks/*.json", { query: "?raw", import: "default" });

/** The notebook that a person sees first. */
const demo = "../notebooks/plover.json";

startApp(document.body, {
  functions,
  first: async () => {
    const load = notebooks[demo];
    if (!load) throw new Error(`got no notebook ${demo}, expected it beside the others`);
    return load();
  },
});

/** The app in the browser: the library's functions and the notebooks that ship, handed to the views. */
import { functions } from "./library/index.ts";
import { startApp } from "./views/index.ts";
import "./views/views.css";

const notebooks = import.meta.glob<string>("../notebooks/*.json", { query: "?raw", import: "default" });

startApp(document.body, { functions, shipped: { texts: notebooks, first: "../notebooks/plover.json" } });

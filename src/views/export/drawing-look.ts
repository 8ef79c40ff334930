/** The style sheets that a drawing outside the page carries itself. */
import drawing from "../drawings/drawing.css?raw";
import type { Look } from "../drawings/standalone.ts";
import theme from "../theme.css?raw";

export const drawingLook: Look = { theme, drawing };

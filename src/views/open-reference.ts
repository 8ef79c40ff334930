import type { FunctionTable } from "../library/index.ts";

/**
 * Opens the reference of all functions over everything else, at one of them where a name is told. It is a piece of its
 * own, so that the page opens without it.
 */
export async function openReference(functions: FunctionTable, name: string | null = null): Promise<void> {
  const { ReferenceDialog } = await import("./reference/reference-dialog.ts");
  if (!customElements.get("spanwise-reference")) customElements.define("spanwise-reference", ReferenceDialog);
  if (document.querySelector("spanwise-reference")) return;
  const known = name !== null && functions.has(name) ? name : null;
  (document.querySelector("spanwise-app") ?? document.body).append(new ReferenceDialog(functions, known));
}

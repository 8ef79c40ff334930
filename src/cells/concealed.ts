/** What would give away a value that a question hides, and so is hidden with it. */
import { placeholders } from "./path.ts";
import type { Program, Step } from "./step.ts";
import type { TypedTree } from "./typed-tree.ts";

/**
 * The cells that show nothing of their value while `hidden` cells are asked about, each with the hidden cell that it would
 * give away, by id: the hidden cells themselves; cells whose formula hands such a value on, whole or in part, or computes
 * from it anything that can be read off and reckoned back, so anything but a record; checks that compare it; charts that
 * draw it and studies of it; drawings of it, or of the very thing that it is a part of.
 */
export function concealedCells(program: Program, hidden: ReadonlySet<string>): ReadonlyMap<string, string> {
  const concealed = new Map<string, string>();
  if (hidden.size === 0) return concealed;
  for (const id of hidden) concealed.set(id, id);
  const partOf = new Map<string, string>();
  for (const id of hidden) {
    const step = program.byId.get(id);
    const root = step?.cell.kind === "derived" && step.tree ? rootOf(step.tree) : null;
    if (root !== null) partOf.set(root, id);
  }
  for (const step of program.steps) {
    if (concealed.has(step.id)) continue;
    const given = givenAway(step, program, concealed, partOf);
    if (given !== undefined) concealed.set(step.id, given);
  }
  return concealed;
}

/** Of a note: which of its braces would give a hidden value away. */
export function concealedBraces(
  text: string,
  program: Program,
  concealed: ReadonlyMap<string, string>,
): readonly boolean[] {
  const paths = new Set(
    [...concealed.keys()].flatMap((id) => {
      const cell = program.byId.get(id)?.cell;
      return cell?.kind === "derived" ? [bare(cell.formula)] : [];
    }),
  );
  return placeholders(text).map((path) => {
    const root = /^\s*(\w+)/.exec(path)?.[1] ?? "";
    return concealed.has(program.byName.get(root)?.id ?? "") || paths.has(bare(path));
  });
}

function givenAway(
  { cell, inputs, tree, shape }: Step,
  program: Program,
  concealed: ReadonlyMap<string, string>,
  partOf: ReadonlyMap<string, string>,
): string | undefined {
  const first = (ids: readonly string[]): string | undefined =>
    ids.map((id) => concealed.get(id)).find((id) => id !== undefined);
  switch (cell.kind) {
    case "check":
    case "chart":
    case "study":
      return first(inputs);
    case "derived":
      return shape?.kind === "record" ? handedOn(tree, program, concealed) : first(inputs);
    case "drawing":
    case "sheet":
      return handedOn(tree, program, concealed) ?? partOf.get((tree && rootOf(tree)) ?? "");
    default:
      return undefined;
  }
}

/** The hidden cell that a formula gives away by handing on a cell. */
function handedOn(
  tree: TypedTree | null,
  program: Program,
  concealed: ReadonlyMap<string, string>,
): string | undefined {
  const root = tree && rootOf(tree);
  return root === null ? undefined : concealed.get(program.byName.get(root)?.id ?? "");
}

/** The cell that a formula hands on, whole, a field or an element of it; null where it computes anything. */
function rootOf(tree: TypedTree): string | null {
  let node = tree;
  while (node.type === "field" || node.type === "element") node = node.of;
  return node.type === "input" ? node.name : null;
}

const bare = (formula: string): string => formula.replaceAll(/\s/g, "");

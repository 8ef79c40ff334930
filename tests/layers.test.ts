import { dirname } from "node:path";
import { describe, expect, test } from "vitest";
import { filesUnder, type Import, parse, sourceFiles } from "./source-imports.ts";

const files = sourceFiles();
const imports = files.flatMap((file) => file.imports);

/** What each room may import of ours, besides itself. The first pattern that fits a file counts. */
const arrows: readonly { from: RegExp; room: RegExp; may: RegExp; mayAsType?: RegExp }[] = [
  { from: /^library\//, room: /^library\//, may: /^$/ },
  { from: /^cells\//, room: /^cells\//, may: /^library\/(units|quantity)\.ts$/, mayAsType: /^library\/spec\.ts$/ },
  { from: /^views\/.*[./]example[\w-]*\.ts$/, room: /^views\//, may: /^(library|cells)\/index\.ts$/ },
  {
    from: /^views\//,
    room: /^views\//,
    may: /^(library\/at-first|cells\/index)\.ts$/,
    mayAsType: /^library\/index\.ts$/,
  },
  { from: /^tools\//, room: /^tools\//, may: /^$/ },
  { from: /^worker\.ts$/, room: /^$/, may: /^(library\/index|cells\/crew\/hand)\.ts$/ },
  {
    from: /^(main|evaluate|manual)\.ts$/,
    room: /^$/,
    may: /^((library|cells|views)\/index\.ts|library\/at-first\.ts|worker\.ts|views\/([\w-]+\.css|(format|figure-words)\.ts|sheets\/sheet-file\.ts|reference\/manual-page\.ts)|\.\.\/notebooks\/.*)$/,
  },
];

/** Packages that only some files may import. */
const keptPackages: readonly { packages: RegExp; what: string; only: RegExp; who: string }[] = [
  {
    packages: /^@observablehq\/runtime$/,
    what: "the reactive engine",
    only: /^cells\/graph\.ts$/,
    who: "cells/graph.ts",
  },
  {
    packages: /^(d3(-.*)?|lit(\/.*)?|codemirror|@codemirror\/.*)$/,
    what: "d3, Lit and the editor",
    only: /^views\//,
    who: "views",
  },
  {
    packages: /^ml-matrix$/,
    what: "the package of matrices",
    only: /^library\/numerics\/small-matrix\.ts$/,
    who: "library/numerics/small-matrix.ts",
  },
  {
    packages: /^maxrects-packer$/,
    what: "the packer of sheets",
    only: /^(library\/build\/nested-sheets|views\/sheets\/pages)\.ts$/,
    who: "library/build/nested-sheets.ts and views/sheets/pages.ts",
  },
  {
    packages: /^(pdfkit(\/.*)?|@tarikjabiri\/dxf)$/,
    what: "the writers of PDF and DXF",
    only: /^views\/sheets\/(sheet-pdf|cutter-dxf|pdfkit\.d)\.ts$/,
    who: "views/sheets/sheet-pdf.ts and cutter-dxf.ts",
  },
  { packages: /^idb$/, what: "the storage of the browser", only: /^views\/keeping\/shelf\.ts$/, who: "the shelf" },
  { packages: /^node:/, what: "Node itself", only: /^(tools\/.*|evaluate\.ts)$/, who: "tools and evaluate.ts" },
  {
    packages: /^(vite|vitest|playwright-core)(\/.*)?$/,
    what: "the bundler and the browser's driver",
    only: /^tools\//,
    who: "tools",
  },
];

describe("arrows", () => {
  test("every source file stands in a room that has its arrows set down", () => {
    const homeless = files.filter((file) => !arrows.some((arrow) => arrow.from.test(file.path)));
    expect(homeless.map((file) => file.path)).toEqual([]);
  });

  test("a room imports only what its arrows allow, types included", () => {
    expect(imports.filter((each) => each.own && !isAllowed(each)).map(tell)).toEqual([]);
  });

  for (const { packages, what, only, who } of keptPackages) {
    test(`${what}: imported by ${who} only`, () => {
      const strays = imports.filter((each) => packages.test(each.to) && !only.test(each.from));
      expect(strays.map(tell)).toEqual([]);
    });
  }

  test("no file imports itself through others, not even for a type", () => {
    expect(findCycle(new Map(files.map((file) => [file.path, file.imports.map((each) => each.to)])))).toBeUndefined();
  });
});

describe("what loads with the page", () => {
  const atFirst = new Set(["main.ts"]);
  for (const path of atFirst) {
    const loaded = imports.filter(({ from, typeOnly, later }) => from === path && !typeOnly && !later);
    // The worker is named here, and loads by itself.
    for (const { to } of loaded) if (to !== "worker.ts") atFirst.add(to);
  }

  test("is the app, and the functions of a glider at rest", () => {
    for (const path of ["views/app.ts", "cells/graph.ts", "library/shape/wing.ts"]) expect(atFirst).toContain(path);
  });

  test("is nothing that can follow: what flies, matrices, the reader of prose, the editor, why, and the reference", () => {
    const follows =
      /^(library\/(index\.ts|motion\/|glide\/|build\/)|ml-matrix|maxrects-packer|mdast-.*|codemirror|@codemirror\/|views\/(why|reference)\/)/;
    expect([...atFirst].filter((path) => follows.test(path))).toEqual([]);
  });
});

describe("files", () => {
  test("no file has more than 400 lines", () => {
    expect(files.filter((file) => file.lines > 400).map((file) => `${file.path}: ${file.lines} lines`)).toEqual([]);
  });

  test("a test named X.test.ts, or X.something.test.ts, tests the file or folder X of the same place in src", () => {
    const places = new Set(files.flatMap(({ path }) => [stem(path), ...foldersOf(path)]));
    expect(mirrored.filter((path) => !places.has(stem(path)))).toEqual([]);
  });

  test("every file of library and cells that runs is tested, or is used by a file of its room that is", () => {
    const named = new Set(mirrored.map(stem));
    // A listed function is tested by the examples of its spec; the list itself uses its files without testing them.
    const listed = new Set(
      imports.filter(({ from }) => /^library\/(index|at-first)\.ts$/.test(from)).map(({ to }) => to),
    );
    const isTested = (path: string) => named.has(stem(path)) || listed.has(path);
    const users = (path: string) =>
      imports
        .filter(({ from, to }) => to === path && roomOf(from) === roomOf(path) && !/(index|at-first)\.ts$/.test(from))
        .map(({ from }) => from);
    const runs = files.filter((file) => file.runs && /^(library|cells)$/.test(roomOf(file.path)));
    const untested = runs.filter(({ path }) => ![path, ...users(path)].some(isTested));
    expect(untested.map((file) => file.path)).toEqual([]);
  });
});

describe("the reading of imports", () => {
  test("finds them in every way that TypeScript writes them", () => {
    const text = `import a from "./a.ts"; import type { B } from "../cells/b.ts"; import { type C } from "./c.ts";
      import d, { type D } from "./d.ts"; export * from "./e.ts"; export type { F } from "./f.ts"; import "./g.css";
      import url from "./worker.ts?worker&url"; type H = import("./h.ts").H; const i = () => import("./i.ts");`;
    const found = parse("views/x.ts", text).imports.map(({ to, typeOnly }) => `${to}${typeOnly ? " type" : ""}`);
    expect(found).toEqual([
      "views/a.ts",
      "cells/b.ts type",
      "views/c.ts type",
      "views/d.ts",
      "views/e.ts",
      "views/f.ts type",
      "views/g.css",
      "views/worker.ts",
      "views/h.ts type",
      "views/i.ts",
    ]);
  });

  test("tells a file of types from one that runs", () => {
    const types = `import { a } from "./a.ts"; export type { B } from "./b.ts"; export interface C { readonly c: typeof a }`;
    expect(parse("x.ts", types).runs).toBe(false);
    expect(parse("x.ts", `${types} export const d = 1;`).runs).toBe(true);
    expect(parse("x.ts", `export { d } from "./d.ts";`).runs).toBe(true);
  });

  test("finds a cycle and names its members in order", () => {
    const graph = new Map([
      ["a", ["b"]],
      ["b", ["c", "d"]],
      ["c", []],
      ["d", ["b"]],
    ]);
    expect(findCycle(graph)).toEqual(["b", "d", "b"]);
    graph.set("d", ["c"]);
    expect(findCycle(graph)).toBeUndefined();
  });
});

/** Tests that have a counterpart in src; the folders left out, and the two tests of the whole, test several rooms at once. */
const mirrored = filesUnder("tests").filter(
  (path) => path.endsWith(".test.ts") && !/^(browser|notebooks)\/|^(layers|notebooks)\.test\.ts$/.test(path),
);

function roomOf(path: string): string {
  return path.split("/")[0] ?? "";
}

/** The path up to the first dot of the file's name. */
function stem(path: string): string {
  return path.replace(/\.[^/]*$/, "");
}

function isAllowed({ from, to, typeOnly }: Import): boolean {
  const arrow = arrows.find((each) => each.from.test(from));
  if (arrow === undefined) return false;
  return arrow.room.test(to) || arrow.may.test(to) || (typeOnly && arrow.mayAsType?.test(to) === true);
}

function tell({ from, to, typeOnly }: Import): string {
  return `${from} imports ${typeOnly ? "a type of " : ""}${to}`;
}

function foldersOf(path: string): readonly string[] {
  const folder = dirname(path);
  return folder === "." ? [] : [folder, ...foldersOf(folder)];
}

/** The first cycle that a walk in depth meets, its first member repeated at the end. */
function findCycle(graph: ReadonlyMap<string, readonly string[]>): readonly string[] | undefined {
  const done = new Set<string>();
  const walk = (at: string, way: readonly string[]): readonly string[] | undefined => {
    if (way.includes(at)) return [...way.slice(way.indexOf(at)), at];
    if (done.has(at)) return undefined;
    for (const next of graph.get(at) ?? []) {
      const cycle = walk(next, [...way, at]);
      if (cycle !== undefined) return cycle;
    }
    done.add(at);
    return undefined;
  };
  for (const start of graph.keys()) {
    const cycle = walk(start, []);
    if (cycle !== undefined) return cycle;
  }
  return undefined;
}

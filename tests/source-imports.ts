import { readdirSync, readFileSync } from "node:fs";
import { dirname, extname, join, relative } from "node:path";
import { parseSync } from "vite";
import { root } from "../src/tools/place.js";

/** One import of a source file. */
export interface Import {
  /** The importing file, relative to src. */
  readonly from: string;
  /** A file of the project relative to src (`../notebooks/…` stands outside it), or the name of a package, or `node:…`. */
  readonly to: string;
  /** Whether `to` is a file of the project. */
  readonly own: boolean;
  /** Whether only types are imported, so that nothing is left of it when the program runs. */
  readonly typeOnly: boolean;
  /** Whether it is loaded only when the program comes to it. */
  readonly later: boolean;
}

/** A source file as the tests on its place and imports see it. */
export interface SourceFile {
  /** Relative to src, with `/`. */
  readonly path: string;
  readonly lines: number;
  readonly imports: readonly Import[];
  /** Whether anything is left of it when the program runs: not for a file of types alone. */
  readonly runs: boolean;
}

/** All files under a folder of the project, relative to it, with `/`, in order. */
export function filesUnder(folder: string): readonly string[] {
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(join(root, folder), join(entry.parentPath, entry.name)).replaceAll("\\", "/"))
    .sort();
}

/** Every program, style sheet and grammar under src. */
export function sourceFiles(): readonly SourceFile[] {
  return filesUnder("src")
    .filter((path) => /\.(ts|js|css|grammar)$/.test(path))
    .map((path) => {
      const text = readFileSync(join(root, "src", path), "utf8");
      const { imports, runs } = /\.(ts|js)$/.test(path)
        ? parse(path, text)
        : { imports: addresses(path, text), runs: true };
      return { path, lines: text.trimEnd().split("\n").length, imports, runs };
    });
}

/**
 * What a program text imports, in any of the ways of TypeScript, and whether anything of it runs.
 * @throws when the text does not parse
 */
export function parse(path: string, text: string): { readonly imports: readonly Import[]; readonly runs: boolean } {
  const { program, errors } = parseSync(path, text);
  if (errors[0] !== undefined) throw new Error(`${path}: ${errors[0].message}`);
  const imports: Import[] = [];
  walk(program, (node) => {
    const source = node.source as { readonly value?: unknown } | null | undefined;
    if (typeof source?.value !== "string") return;
    imports.push(importOf(path, source.value, isTypeOnly(node), node.type === "ImportExpression"));
  });
  const statements = path.endsWith(".d.ts") ? [] : program.body;
  return { imports, runs: statements.some((statement) => !isTypes(statement as unknown as Node)) };
}

/** What a grammar (`@external tokens x from "./y"`) or a style sheet (`@import "./y"`) takes from another file. */
function addresses(path: string, text: string): readonly Import[] {
  const found = text.matchAll(/^\s*@(?:external|import)\b[^"\n]*"([^"\n]+)"/gm);
  return [...found].map(([, address = ""]) => importOf(path, address, false));
}

/** A node of the syntax tree; its other keys depend on its type. */
interface Node {
  readonly type: string;
  readonly [key: string]: unknown;
}

function walk(node: unknown, visit: (node: Node) => void): void {
  if (Array.isArray(node)) for (const each of node) walk(each, visit);
  else if (typeof node === "object" && node !== null) {
    if ("type" in node) visit(node as Node);
    for (const each of Object.values(node)) walk(each, visit);
  }
}

/** The file an address names; the bundler's queries (`?worker&url`) name the same file, a grammar may leave out `.ts`. */
function importOf(from: string, address: string, typeOnly: boolean, later = false): Import {
  const own = address.startsWith(".");
  if (!own) return { from, to: address, own, typeOnly, later };
  const file = join(dirname(from), address.replace(/\?.*$/, "")).replaceAll("\\", "/");
  return { from, to: extname(file) === "" ? `${file}.ts` : file, own, typeOnly, later };
}

function isTypeOnly(node: Node): boolean {
  if (node.type === "TSImportType" || node.importKind === "type" || node.exportKind === "type") return true;
  const names = (node.specifiers ?? []) as readonly { readonly importKind?: string; readonly exportKind?: string }[];
  return names.length > 0 && names.every((name) => name.importKind === "type" || name.exportKind === "type");
}

function isTypes(statement: Node): boolean {
  if (statement.type === "ImportDeclaration") return true;
  if (statement.type === "ExportNamedDeclaration") {
    return statement.exportKind === "type" || (statement.declaration === null && isTypeOnly(statement));
  }
  return ["TSInterfaceDeclaration", "TSTypeAliasDeclaration", "TSModuleDeclaration"].includes(statement.type);
}

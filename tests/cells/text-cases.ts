import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { root } from "../../src/tools/place.js";

/** One test of a text file: `# title`, the input, `==>`, what has to come out. */
interface TextCase {
  readonly title: string;
  readonly input: string;
  readonly output: string;
}

/** Runs every case of every text file of a folder; `run` gets the input, and what is expected, and gives what came out. */
export function testTexts(folder: string, run: (input: string, expected: string) => string): void {
  const path = join(root, folder);
  const files = readdirSync(path).filter((name) => name.endsWith(".txt"));
  describe.each(files)("%s", (file) => {
    test.each(readCases(readFileSync(join(path, file), "utf8")))("$title", ({ input, output }) => {
      expect(run(input, output)).toBe(output);
    });
  });
}

function readCases(text: string): TextCase[] {
  return text
    .split(/^# /m)
    .slice(1)
    .map((part) => {
      const [head = "", output] = part.split(/^==>\n/m);
      const [title = "", ...input] = head.trimEnd().split("\n");
      if (output === undefined) throw new Error(`got the case “${title}” without ==>, expected what has to come out`);
      return { title, input: input.join("\n"), output: output.trimEnd() };
    });
}

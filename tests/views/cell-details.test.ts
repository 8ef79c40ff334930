import { describe, expect, test } from "vitest";
import { type Cell, Crew, type Kind, type Notebook, Session } from "../../src/cells/index.ts";
import { cellSchemas } from "../../src/cells/notebook-schema.ts";
import { functions } from "../../src/library/index.ts";
import { detailsOf } from "../../src/views/cell-details.ts";
import { type Desk, newDesk } from "../../src/views/desk.ts";
import type { Detail } from "../../src/views/details.ts";
import { Drafts } from "../../src/views/keeping/drafts.ts";
import { FakePort } from "../cells/crew/fake-port.ts";

const cells: readonly Cell[] = [
  { id: "g", kind: "given", name: "tip_break", formula: "9 deg", unit: "deg", range: ["0 deg", "20 deg"] },
  { id: "i", kind: "given", name: "strip", formula: "3/32 in", unit: "in" },
  {
    id: "t",
    kind: "table",
    name: "panels",
    columns: [
      { name: "length", unit: "mm" },
      { name: "root_chord", unit: "mm" },
      { name: "tip_chord", unit: "mm" },
      { name: "sweep", unit: "mm" },
      { name: "break", unit: "deg" },
      { name: "washout", unit: "deg" },
      { name: "thickness", unit: "mm" },
    ],
    rows: [["200", "70", "66", "0", "tip_break", "0", "3"]],
  },
  { id: "d", kind: "derived", name: "main_wing", formula: "wing(panels)" },
  { id: "e", kind: "derived", name: "bird", formula: "glider(main_wing)" },
  { id: "f", kind: "derived", name: "eda", formula: "equivalent_dihedral(main_wing)", unit: "deg" },
  { id: "k", kind: "derived", name: "strips", formula: "2 * strip", unit: "in" },
  { id: "c", kind: "check", name: "enough", formula: "eda > 8 deg" },
  { id: "n", kind: "note", text: "" },
  { id: "w", kind: "drawing", view: "front", of: "main_wing" },
  { id: "h", kind: "chart", view: "trade_off", sweep: "tip_break", x: "eda", y: ["eda"] },
  { id: "v", kind: "derived", name: "polar", formula: "sink_polar(bird)" },
  { id: "y", kind: "derived", name: "wave", formula: "modes(bird)" },
  { id: "p", kind: "chart", view: "sink_polar", of: "polar" },
  { id: "s", kind: "sheet", of: "blanks" },
  { id: "z", kind: "decision", question: "V?", chosen: "no", why: "so" },
  { id: "q", kind: "question", about: "eda", prompt: "?", answer: null, because: "" },
];
const start: Notebook = { title: "", cells, trials: [] };

function deskOf(notebook: Notebook): Desk {
  const session = new Session(functions);
  session.open(notebook);
  return newDesk(session, new Crew(new FakePort(functions), functions), new Drafts());
}
const cellOf = ({ session }: Desk, id: string): Cell => session.notebook.cells.find((each) => each.id === id) as Cell;
const detailsIn = (desk: Desk, id: string): Detail[] => detailsOf(desk, cellOf(desk, id));

/** What is entered where it stands: names in the margin, formulas on the line, reasons, prose, entries, answers. */
const inPlace: Readonly<Partial<Record<Kind, readonly string[]>>> = {
  given: ["name", "formula", "reason"],
  derived: ["name", "formula", "reason"],
  table: ["name", "columns", "rows", "reason"],
  check: ["name", "formula", "reason"],
  note: ["text"],
  question: ["answer", "because"],
  // By printing or saving it.
  sheet: ["printed"],
};
/** A text that fits the key. */
const fitting: Readonly<Record<string, string>> = { unit: "in", "shop fractions": "16" };

describe("all that a cell says can be changed on the screen", () => {
  test.each(Object.keys(inPlaceOrDetails()) as Kind[])("of a %s", (kind) => {
    const wanted = Object.keys(cellSchemas[kind].properties).filter((key) => key !== "id" && key !== "kind");
    const reached = new Set(inPlace[kind] ?? []);
    for (const { id } of cells.filter((cell) => cell.kind === kind)) {
      detailsIn(deskOf(start), id).forEach((_, index) => {
        const desk = deskOf(start);
        const detail = detailsIn(desk, id)[index];
        detail?.set(fitting[detail.label] ?? detail.choices?.at(-1)?.[0] ?? "something");
        // With a second curve there is one more to choose.
        const [before, after] = [cells.find((cell) => cell.id === id), cellOf(desk, id)] as unknown as Record<
          string,
          unknown
        >[];
        for (const key of wanted) if (JSON.stringify(before?.[key]) !== JSON.stringify(after?.[key])) reached.add(key);
      });
    }
    expect(wanted.filter((key) => !reached.has(key) && !onlyOneChoice(kind, key))).toEqual([]);
  });

  test("each by one step that undo takes back, however many letters were typed", () => {
    for (const { id } of cells) {
      detailsIn(deskOf(start), id).forEach((_, index) => {
        const desk = deskOf(start);
        const label = detailsIn(desk, id)[index]?.label ?? "";
        if (detailsIn(desk, id)[index]?.choices) return;
        for (const text of ["s", "so", "som", "some"]) detailsIn(desk, id)[index]?.set(text);
        expect(desk.session.canUndo, `${id} ${label}`).toBe(true);
        desk.session.undo();
        expect(desk.session.notebook, `${id} ${label}`).toEqual(start);
        expect(desk.session.canUndo, `${id} ${label}`).toBe(false);
      });
    }
  });
});

test("a drawing is offered what is a wing or glider, and its parts; a question any value and its fields", () => {
  const desk = deskOf(start);
  const offers = (id: string, label: string) =>
    detailsIn(desk, id).find((detail) => detail.label === label)?.offers ?? [];
  expect(offers("w", "what it shows")).toEqual(expect.arrayContaining(["main_wing", "bird", "bird.wing"]));
  expect(offers("w", "what it shows")).not.toContain("eda");
  expect(offers("q", "about")).toEqual(expect.arrayContaining(["eda", "main_wing", "main_wing.span"]));
});

test("a chart of a result is offered those that fit its view, and fields of others that do", () => {
  const desk = deskOf(start);
  const offers = () => detailsIn(desk, "p").find((detail) => detail.label === "what it shows")?.offers;
  expect(offers()).toEqual(["polar"]);
  detailsIn(desk, "p")[0]?.set("modes");
  expect(offers()).toEqual(["wave", "wave.longitudinal", "wave.lateral"]);
});

test("a chart that draws fields of results has a curve for each, and offers what they have", () => {
  const desk = deskOf(start);
  const named = (label: string) => detailsIn(desk, "h").find((detail) => detail.label === label);
  named("a curve for each")?.set("polar");
  expect(cellOf(desk, "h")).toMatchObject({ curves: ["polar"], x: "best_glide_ratio", y: ["best_glide_speed"] });
  named("along the axis")?.set("least_sink");
  detailsIn(desk, "h")
    .filter(({ label }) => label === "another")[1]
    ?.set("polar");
  expect(cellOf(desk, "h")).toMatchObject({ curves: ["polar", "polar"], x: "least_sink" });
  expect(desk.session.result("h")?.ok ?? true).toBe(true);
  for (const _ of [1, 2]) named("a curve for each")?.set("");
  expect(cellOf(desk, "h")).toEqual({
    id: "h",
    kind: "chart",
    view: "trade_off",
    sweep: "tip_break",
    x: "tip_break",
    y: ["tip_break"],
  });
});

test("a chart that is given another view shows what fits there, and says nothing that does not", () => {
  const desk = deskOf(start);
  detailsIn(desk, "h")[0]?.set("modes");
  expect(cellOf(desk, "h")).toEqual({ id: "h", kind: "chart", view: "modes", of: "wave" });
  detailsIn(desk, "h")[0]?.set("trade_off");
  const back = { id: "h", kind: "chart", view: "trade_off", sweep: "tip_break", x: "tip_break", y: ["eda"] };
  expect(cellOf(desk, "h")).toEqual(back);
});

function inPlaceOrDetails() {
  const { study: _, ...rest } = cellSchemas;
  return rest;
}

/** There is one given to sweep here. */
function onlyOneChoice(kind: Kind, key: string): boolean {
  return kind === "chart" && key === "sweep";
}

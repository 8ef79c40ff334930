import type { Cell, Notebook } from "../../src/cells/cell.ts";

/** Cells of one section. */
const sectionSize = 20;

/**
 * A notebook of so many cells, of all kinds but questions (which hide their cells), mixed about as in a design: sections
 * of 20, each from its own givens and from the section before, the first with a wing, its drawing and its chart.
 */
export function manyCells(count: number): Notebook {
  const cells: Cell[] = wing();
  for (let section = 1; cells.length < count; section++) cells.push(...sectionOf(section));
  return { title: `${count} cells`, cells: cells.slice(0, count), trials: [] };
}

function wing(): Cell[] {
  const range = ["0 deg", "20 deg", "0.5 deg"] as const;
  return [
    { id: "w0", kind: "note", text: "# A large notebook\n\nA wing, {bent.span} wide, then sections of loads." },
    { id: "w1", kind: "given", name: "tip_break", formula: "11 deg", unit: "deg", range, reason: "rolls out early" },
    {
      id: "w2",
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
      rows: [
        ["110", "70", "66", "0", "5", "0", "3"],
        ["90", "66", "44", "8", "tip_break", "1", "2.5"],
      ],
    },
    { id: "w3", kind: "derived", name: "bent", formula: "wing(panels)" },
    { id: "w4", kind: "derived", name: "eda", formula: "equivalent_dihedral(bent)", unit: "deg" },
    { id: "w5", kind: "derived", name: "loss", formula: "tilt_loss(bent)", unit: "%" },
    { id: "w6", kind: "drawing", view: "front", of: "bent" },
    { id: "w7", kind: "chart", view: "trade_off", sweep: "tip_break", x: "loss", y: ["eda"] },
    { id: "w8", kind: "check", name: "enough", formula: "eda > 9 deg", reason: "common practice" },
    { id: "w9", kind: "derived", name: "load_0", formula: "bent.area * 25 Pa", unit: "N" },
  ];
}

/** One section: a note, givens, formulas that build on each other, a table, checks and a decision. */
function sectionOf(section: number): Cell[] {
  const id = (place: number): string => `s${section}_${place}`;
  const [load, before] = [`load_${section}`, `load_${section - 1}`];
  const [depth, width, stress] = [`depth_${section}`, `width_${section}`, `stress_${section}`];
  const text = `## Section ${section}\n\nThe strip is {${width}} wide and carries {${load}}, at {${stress}}.`;
  const cells: Cell[] = [
    { id: id(0), kind: "note", text },
    {
      ...{ id: id(1), kind: "given", name: width, formula: `${20 + (section % 7)} mm`, unit: "mm" },
      ...{ range: ["10 mm", "40 mm", "1 mm"], reason: "cut from one sheet" },
    },
    { id: id(2), kind: "given", name: depth, formula: "3 mm", unit: "mm", range: ["1 mm", "6 mm"], reason: "in stock" },
    { id: id(3), kind: "derived", name: `area_${section}`, formula: `${width} * ${depth}`, unit: "mm^2" },
    {
      ...{ id: id(4), kind: "table", name: `parts_${section}` },
      columns: [{ name: "part", text: true }, { name: "length", unit: "mm" }, { name: "share" }],
      rows: [
        ["inner strip", "110", "0.6"],
        ["outer strip", `2 * ${width}`, "0.4"],
      ],
    },
    {
      ...{ id: id(5), kind: "derived", name: `run_${section}`, formula: `sum(parts_${section}.length)`, unit: "mm" },
      reason: "all strips, end to end",
    },
    { id: id(6), kind: "derived", name: load, formula: `0.9 * ${before} + 0.1 N`, unit: "N" },
    { id: id(7), kind: "derived", name: stress, formula: `${load} / area_${section}`, unit: "kPa" },
    { id: id(8), kind: "check", name: `holds_${section}`, formula: `${stress} < 50 MPa`, reason: "common practice" },
    {
      ...{ id: id(9), kind: "decision", question: "Which strip?", chosen: "spruce", why: "stiff for its weight" },
      ...{ alternatives: [{ option: "balsa", why_not: "too soft" }], revisit: "after the first flights" },
    },
  ];
  for (let place = cells.length; place < sectionSize; place++) {
    const formula = `${place} * ${depth}^3 * ${width} / 12`;
    cells.push({ id: id(place), kind: "derived", name: `bend_${section}_${place}`, formula, unit: "mm^4" });
  }
  return cells;
}

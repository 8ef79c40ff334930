/** A notebook of a wing of straight panels, 120 mm and 80 mm long and 60 mm broad, with a sheet of what is named. */
export const blanksNotebook = (of = "blanks", more: object = {}): string =>
  JSON.stringify({
    format: "spanwise-notebook",
    version: 1,
    title: "A straight one",
    cells: [
      { id: "a1", kind: "given", name: "tip_length", formula: "80 mm", unit: "mm", range: ["40 mm", "120 mm"] },
      {
        id: "a2",
        kind: "table",
        name: "panels",
        columns: ["length", "root_chord", "tip_chord", "sweep", "break", "washout", "thickness"].map((name) => ({
          name,
          unit: name === "break" || name === "washout" ? "deg" : "mm",
        })),
        rows: [
          ["120", "60", "60", "0", "3", "0", "2"],
          ["tip_length", "60", "60", "0", "8", "0", "2"],
        ],
      },
      { id: "a3", kind: "derived", name: "main_wing", formula: "wing(panels)" },
      { id: "a4", kind: "derived", name: "blanks", formula: "wing_blanks(main_wing)" },
      { id: "a5", kind: "sheet", of, title: "Blanks", lies: "across", ...more },
    ],
  });

import { findTrim } from "../glide/find-trim.ts";
import { type GlidingValues, glidingOf, glidingParameters } from "../glide/gliding.ts";
import { glidingAssumptions, glidingErrors, glidingSources, noTrimError, trimOr } from "../glide/gliding-words.ts";
import { sampleGlider } from "../glide/sample-gliders.ts";
import { trimOf } from "../glide/trim-record.ts";
import { gather } from "../mass/gather.ts";
import { numberText } from "../number-text.ts";
import { define, number, type Refuse, record, table, text, type ValueOf } from "../spec.ts";

const trimUnitsRecord = record(
  "trim_units",
  "what a shim and a bit of clay do to the glide",
  {
    changes: table("the glide as it is, and after each change by itself", {
      change: text("what is done"),
      turned: number("deg", "by how much it turns the tailplane nose-up"),
      shift: number("mm", "by how much it moves the balance point aft"),
      speed: number("m/s", "speed it then settles at; 0 where it settles at none"),
      sink: number("m/s", "height lost each second"),
      glide_ratio: number("1", "way for each metre of height"),
      effect: text("what is seen"),
    }),
    per_shim: number("deg", "decalage that the shim gives or takes"),
    shim_for_degree: number("mm", "shim under the tailplane that makes a degree"),
    shift: number("mm", "how far the clay moves the balance point, forward being below 0"),
  },
  ({ per_shim, shift }) =>
    `the shim turns ${numberText(per_shim, "deg")}, the clay moves the balance by ${numberText(shift, "mm")}`,
);
export type TrimUnits = ValueOf<typeof trimUnitsRecord>;

/** `trim_units(glider, shape, …)`: the trim in what a workshop has at hand. */
export const trimUnits = define({
  name: "trim_units",
  summary: "What a shim under the tailplane and a bit of clay in the nose do to speed, sink and glide.",
  topic: "build",
  parameters: {
    ...glidingParameters,
    shim: number("mm", "thickness of the shim", { above: 0, max: 0.01, default: 0.0004 }),
    clay: number("g", "mass of the clay", { above: 0, default: 0.001 }),
    clay_x: number("mm", "where the clay goes, aft of the wing root's leading edge; left out, the nose of the stick", {
      optional: true,
    }),
  },
  result: trimUnitsRecord,
  formula:
    "turned = atan(shim / the tailplane's root chord); the trim is found anew after each change, all else as it is",
  errors: [
    ...glidingErrors,
    noTrimError,
    "The glider has no tailplane to shim.",
    "Neither clay_x nor a stick says where the clay goes.",
  ],
  assumptions: [
    "The shim lies under one edge of the tailplane's root and turns it about the other.",
    "One change at a time. Two changes together do not just add up.",
    ...glidingAssumptions,
  ],
  sources: [{ text: "Wedge under a chord; moments about the balance point", mark: "derived" }, ...glidingSources],
  examples: [
    {
      summary: "0.4 mm under a tailplane of 46 mm, 1 g in the nose of a glider of 24 g",
      arguments: { glider: sampleGlider },
      result: {
        per_shim: Math.atan(0.4 / 46),
        shim_for_degree: 0.046 * Math.tan(Math.PI / 180),
        shift: (-0.001 * (0.027 + 0.09)) / 0.025,
      },
    },
  ],
  isSlow: true,
  compute: ({ shim, clay, clay_x, ...given }, refuse) => {
    const { tailplane, stick, balance } = given.glider;
    if (!tailplane) return refuse("glider", "It has no tailplane to shim. Give glider(…) one.");
    if (!balance) return refuse("glider", "Its balance is not known. Give glider(…) a balance.");
    const at = clay_x ?? stick?.front_x;
    if (at === undefined)
      return refuse("clay_x", "It has no stick whose nose would take the clay. Say where it goes: clay_x.");
    const turned = Math.atan(shim / tailplane.root_chord);
    const nosed = gather([balance, { mass: clay, x: at, y: 0, z: balance.z }]);
    const shift = nosed.x - balance.x;
    const gliding = glidingOf(given, refuse);
    const before = trimOf(gliding, trimOr(findTrim(gliding), gliding, refuse));
    const mm = numberText(shim, "mm");
    const rows = [
      { change: "as it is", turned: 0, shift: 0, trim: before },
      { change: `${mm} under the tailplane's leading edge`, turned, shift: 0, trim: settle(given, turned, refuse) },
      { change: `${mm} under its trailing edge`, turned: -turned, shift: 0, trim: settle(given, -turned, refuse) },
      {
        change: `${numberText(clay, "g")} of clay at x ${numberText(at, "mm")}`,
        turned: 0,
        shift,
        trim: settle({ ...given, glider: { ...given.glider, balance: nosed } }, 0, refuse),
      },
    ];
    return {
      changes: {
        change: rows.map(({ change }) => change),
        turned: rows.map((row) => row.turned),
        shift: rows.map((row) => row.shift),
        speed: rows.map(({ trim }) => trim?.speed ?? 0),
        sink: rows.map(({ trim }) => trim?.sink ?? 0),
        glide_ratio: rows.map(({ trim }) => trim?.glide_ratio ?? 0),
        effect: rows.map(({ trim }, index) => (index === 0 ? "settles" : effectOf(before.speed, trim?.speed))),
      },
      per_shim: turned,
      shim_for_degree: tailplane.root_chord * Math.tan(Math.PI / 180),
      shift,
    };
  },
});

/** The glide that comes of a change, or null where none does. */
function settle(given: GlidingValues, tail: number, refuse: Refuse) {
  const gliding = glidingOf(given, refuse);
  const search = findTrim(gliding, tail);
  return search.found === "trim" ? trimOf(gliding, search.flight) : null;
}

function effectOf(before: number, after: number | undefined): string {
  if (after === undefined) return "settles no more: it stalls or dives";
  const share = after / before - 1;
  if (Math.abs(share) < 0.002) return "hardly changes";
  return `glides ${numberText(Math.abs(share), "%")} ${share > 0 ? "faster" : "slower"}`;
}

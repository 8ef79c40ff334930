import { highestReynolds, lowestReynolds } from "../air/section.ts";
import { sectionAssumptions, sectionSources } from "../air/section-sources.ts";
import { numberText } from "../number-text.ts";
import { degrees } from "../numerics/degrees.ts";
import type { Refuse, Source } from "../spec.ts";
import { type TrimSearch, tailFor } from "./find-trim.ts";
import type { Gliding } from "./gliding.ts";
import type { SteadyFlight } from "./steady-flight.ts";

/** What holds of every function of a flying glider. */
export const glidingAssumptions: readonly string[] = [
  "Lift, induced drag and moments are those of a vortex lattice of the bent wing, tailplane and fin; sections are applied strip by strip at their own lift and Reynolds number: drag, stall, and a fifth of camber's moment lost.",
  "The stick has friction along the wind at its middle, other_area stands at the balance point. Neither lifts.",
  "A section that stalls loses its lift; what its vortices induce elsewhere is left as it was.",
  "Angles of attack from −8 to 16 deg of the fuselage are looked at.",
  ...sectionAssumptions,
];

export const glidingSources: readonly Source[] = [
  { text: "Balance of lift, drag, weight and pitching moment in steady flight", mark: "derived" },
  {
    text: "J. Katz, A. Plotkin, Low-Speed Aerodynamics, 2nd ed. 2001, chapter 12: vortex lattice",
    mark: "from memory",
  },
  ...sectionSources,
];

export const glidingErrors: readonly string[] = [
  "The glider has no balance, or two of its surfaces lie upon each other.",
  "The shape is none of the list, or an arc has no column camber.",
  "The measured polar cannot be read.",
];

export const noTrimError =
  "There is no trim: the nose goes down at every angle, up until the stall, or the balance point lies behind the neutral point; or it would fly at a Reynolds number far from all that is known.";

/** The trim that was looked for; refuses where there is none and says how far the balance point or the tail must go. */
export function trimOr(search: TrimSearch, glider: Gliding, refuse: Refuse): SteadyFlight {
  if (search.found === "trim") return withinReach(search.flight, glider, refuse);
  const { wanted } = search;
  refuseFarTail(glider, 0, refuse);
  if (search.found === "tumbles") {
    const behind = momentPerLift(glider, wanted.angle - 0.05);
    return refuse(
      "glider",
      `It does not trim: nothing holds its nose, as the balance point lies ${inMillimetres(behind)} behind the neutral point. ` +
        `Move the balance point forward by more than that.`,
    );
  }
  const isDiving = search.found === "dives";
  const shift = Math.abs(wanted.loads.moment / wanted.loads.lift);
  const change = Math.abs(tailFor(glider, wanted.angle, wanted.bank) - wanted.tail);
  const what = isDiving ? "its nose goes down at every angle that glides" : "its nose goes up until it stalls";
  const where = isDiving ? "back" : "forward";
  const remedies: string[] = [];
  // Moved back past the neutral point it would hold no trim at all.
  if (!isDiving || shift < -0.8 * momentPerLift(glider, wanted.angle)) {
    remedies.push(`move the balance point ${where} by about ${inMillimetres(shift)}`);
  }
  if (glider.glider.tailplane) {
    remedies.push(`give it ${numberText(change, "deg")} ${isDiving ? "more" : "less"} decalage`);
  }
  const remedy = remedies.length > 0 ? remedies.join(", or ") : "give it a tailplane";
  return refuse("glider", `It does not trim: ${what}. ${remedy.charAt(0).toUpperCase()}${remedy.slice(1)}.`);
}

/**
 * A flight with the tailplane turned for it, where that is one that the model knows: refuses where no sensible turn of the
 * tailplane balances it, and Reynolds numbers that no such section was ever flown at (a mass in a wrong unit, mostly).
 */
export function withinReach(flight: SteadyFlight, glider: Gliding, refuse: Refuse): SteadyFlight {
  refuseFarTail(glider, flight.tail, refuse);
  const { mass, air, glider: of } = glider;
  const reynolds = (flight.speed * of.wing.mac) / air.kinematic_viscosity;
  if (reynolds < lowestReynolds || reynolds > highestReynolds) {
    refuse(
      "glider",
      `With ${numberText(mass, "g")} it would fly at ${numberText(flight.speed, "m/s")}, at a Reynolds number of ${Math.round(reynolds)}; ` +
        `the sections are known from ${lowestReynolds} to ${highestReynolds}. Check its mass and the size of its wing.`,
    );
  }
  return flight;
}

/** Beyond this a tailplane is stalled, whatever the wing does. */
const farthestTail = degrees(15);

function refuseFarTail({ glider: { tailplane, seat_angle } }: Gliding, tail: number, refuse: Refuse): void {
  if (!tailplane) return;
  const [built, wanted] = [seat_angle - tailplane.incidence, seat_angle - tailplane.incidence - tail];
  const off = Math.abs(built) > farthestTail ? built : Math.abs(wanted) > 2 * farthestTail ? wanted : 0;
  if (off === 0) return;
  const standing = off === built ? "Its tailplane stands" : "To balance, its tailplane would have to stand";
  refuse(
    "glider",
    `${standing} ${numberText(Math.abs(off), "deg")} off the wing's seat and is stalled there. ` +
      (off === built
        ? "Set its incidence within a few degrees of seat_angle."
        : "Move the balance point towards 2/5 of the mean chord."),
  );
}

/** How far the neutral point lies ahead of the balance point: change of the moment with lift, m. */
export function momentPerLift(glider: Gliding, angle: number): number {
  const step = 0.005;
  const at = (side: number) => glider.loads(angle + side * step, 5, 0);
  const [more, less] = [at(1), at(-1)];
  return (more.moment - less.moment) / (more.lift - less.lift);
}

const inMillimetres = (length: number) => `${Math.max(1, Math.round(Math.abs(length) * 1000))} mm`;

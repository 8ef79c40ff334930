import { highestReynolds, lowestReynolds } from "../air/section.ts";
import { sectionAssumptions, sectionSources } from "../air/section-sources.ts";
import { numberText } from "../number-text.ts";
import { degrees } from "../numerics/degrees.ts";
import type { Glider } from "../shape/glider-record.ts";
import type { Refuse, Source } from "../spec.ts";
import { farthestTurn, type TrimSearch, tailFor } from "./find-trim.ts";
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
  const what = isDiving ? "its nose goes down at every angle that glides" : "its nose goes up until it stalls";
  const remedies = remediesOf(glider, wanted, isDiving);
  const remedy =
    remedies.length > 0
      ? remedies.join(", or ")
      : glider.glider.tailplane
        ? "move the balance point towards 2/5 of the mean chord, and look at sweep and washout of the wing"
        : "give it a tailplane";
  return refuse("glider", `It does not trim: ${what}. ${remedy.charAt(0).toUpperCase()}${remedy.slice(1)}.`);
}

/** What would bring the flight of least sink into balance, each with its amount; none that no glider could be built with. */
function remediesOf(glider: Gliding, wanted: SteadyFlight, isDiving: boolean): string[] {
  const shift = Math.abs(wanted.loads.moment / wanted.loads.lift);
  const remedies: string[] = [];
  // Moved back past the neutral point it would hold no trim at all.
  if (!isDiving || shift < -0.8 * momentPerLift(glider, wanted.angle)) {
    remedies.push(`move the balance point ${isDiving ? "back" : "forward"} by about ${inMillimetres(shift)}`);
  }
  const change = Math.abs(tailFor(glider, wanted.angle, wanted.bank) - wanted.tail);
  if (glider.glider.tailplane && change < farthestTail) {
    remedies.push(`give it ${numberText(change, "deg")} ${isDiving ? "more" : "less"} decalage`);
  }
  return remedies;
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

/** Refuses a tail that is turned where there is none to turn. */
export function refuseTurnOfNone(
  { tailplane, fin }: Glider,
  { tail_turn, fin_turn = 0 }: { readonly tail_turn: number; readonly fin_turn?: number },
  refuse: Refuse,
): void {
  if (tail_turn !== 0 && !tailplane) refuse("tail_turn", "It has no tailplane to turn. Give glider(…) one.");
  if (fin_turn !== 0 && !fin) refuse("fin_turn", "It has no fin to turn. Give glider(…) one.");
}

/** Beyond this a tailplane is stalled, whatever the wing does. */
const farthestTail = degrees(15);

function refuseFarTail({ glider: { tailplane, seat_angle } }: Gliding, tail: number, refuse: Refuse): void {
  if (!tailplane) return;
  const [built, wanted] = [seat_angle - tailplane.incidence, seat_angle - tailplane.incidence - tail];
  const off = Math.abs(built) > farthestTail ? built : Math.abs(wanted) > 2 * farthestTail ? wanted : 0;
  if (off === 0) return;
  if (off === built) {
    refuse(
      "glider",
      `Its tailplane stands ${numberText(Math.abs(off), "deg")} off the wing's seat and is stalled there. ` +
        "Set its incidence within a few degrees of seat_angle.",
    );
  }
  const standing =
    Math.abs(tail) < farthestTurn
      ? `To balance, its tailplane would have to stand ${numberText(Math.abs(off), "deg")} off the wing's seat and is stalled there.`
      : "However its tailplane is set, it does not balance.";
  refuse("glider", `${standing} Move the balance point towards 2/5 of the mean chord.`);
}

/** How far the neutral point lies ahead of the balance point: change of the moment with lift, m. */
export function momentPerLift(glider: Gliding, angle: number): number {
  const step = 0.005;
  const at = (side: number) => glider.loads(angle + side * step, 5, 0);
  const [more, less] = [at(1), at(-1)];
  return (more.moment - less.moment) / (more.lift - less.lift);
}

const inMillimetres = (length: number) => `${Math.max(1, Math.round(Math.abs(length) * 1000))} mm`;

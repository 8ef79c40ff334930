import { wakeAssumptions, wakeSources } from "../flow/downwash.ts";
import { slopeOfFlat, slopeOfWing } from "../flow/finite-wing.ts";
import { sectionSlope, sectionSlopeSource } from "../flow/section-slope.ts";
import { downwashPerLift } from "../flow/wake.ts";
import { taperedTailplane } from "../shape/sample-tails.ts";
import { threePanelWing } from "../shape/sample-wings.ts";
import { type Tailplane, tailplaneRecord } from "../shape/tailplane-record.ts";
import { type Wing, wingRecord } from "../shape/wing-record.ts";
import { define, number } from "../spec.ts";
import { type NeutralPoint, neutralPointRecord } from "./neutral-point-record.ts";

/** `neutral_point(wing, tailplane, seat_height, section_slope)`. */
export const neutralPoint = define({
  name: "neutral_point",
  summary: "Where the balance point of a glider would have to be for it to care no more which way its nose points.",
  topic: "stability",
  parameters: {
    wing: wingRecord,
    tailplane: tailplaneRecord,
    seat_height: number("mm", "height of the wing root's lower face, counted as the tailplane's z is", { default: 0 }),
    section_slope: sectionSlope,
  },
  result: neutralPointRecord,
  formula:
    "h_n = ¼ + V·r / (1 + r·tail area/wing area) of the mean aerodynamic chord, with the tail volume V about the wing's quarter chord and r = tail_slope/wing_slope · (1 − downwash)",
  errors: ["The tailplane does not lie behind the wing."],
  assumptions: [
    "Wing and tailplane lift at a quarter of their mean aerodynamic chords; the stick, the fin and the wing's stalled part do not count. A nose far ahead of the wing brings the point forward by a few per cent of the chord.",
    "The tailplane meets air as fast as the wing does.",
    "Both lift slopes come from a closed form that is 7 % high; in their ratio this cancels. A flow solution of one wing and tail found 60.2 % where this finds 60.7 %.",
    ...wakeAssumptions,
  ],
  sources: [
    {
      text: "B. Etkin, L. D. Reid, Dynamics of Flight, 3rd ed. 1996, chapter 2: neutral point of wing and tail",
      mark: "from memory",
    },
    ...wakeSources,
    sectionSlopeSource,
  ],
  examples: [
    {
      summary: "a wing of 1 m with a small tailplane 245 mm behind its leading edge",
      arguments: { wing: threePanelWing, tailplane: taperedTailplane, seat_height: 0.012 },
      // Of this wing ∫ c² dy is 0.01192 m³ and the area 0.108 m².
      result: {
        tail_volume: (0.006 * (0.25745 - 0.01192 / 0.108 / 4)) / 0.01192,
        wing_slope: 4.6414632531,
        tail_slope: 3.57409753842,
      },
    },
  ],
  compute: ({ wing, tailplane, seat_height, section_slope }, refuse) => {
    if (!(tailplane.quarter_x > wing.mac_x + wing.mac)) {
      refuse("tailplane", "The tailplane must lie behind the wing. Give it a larger x.");
    }
    return neutralPointOf(wing, tailplane, seat_height, section_slope);
  },
});

/** The neutral point of a wing and the tailplane behind it, both told from the same origin but for the seat's height. */
export function neutralPointOf(wing: Wing, tail: Tailplane, seatHeight: number, slope: number): NeutralPoint {
  const quarter = wing.mac_x + wing.mac / 4;
  const arm = tail.quarter_x - quarter;
  const wing_slope = slopeOfWing(wing, slope);
  const halfChordSweep = (tail.sweep + (tail.tip_chord - tail.root_chord) / 2) / (tail.span / 2);
  const tail_slope = slopeOfFlat(tail.aspect_ratio, halfChordSweep, slope);
  const downwash = wing_slope * downwashPerLift(wing, arm, tail.z - seatHeight);
  // Moments of the two lifts about the wing's quarter chord (Etkin and Reid 1996, chapter 2), exact for two surfaces.
  const tailLift = (tail_slope * (1 - downwash) * tail.area) / wing.area;
  const lift_slope = wing_slope + tailLift;
  const x = quarter + (arm * tailLift) / lift_slope;
  return {
    x,
    share: (x - wing.mac_x) / wing.mac,
    lift_slope,
    wing_slope,
    tail_slope,
    tail_volume: (tail.area * arm) / (wing.area * wing.mac),
    downwash,
  };
}

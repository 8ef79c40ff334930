/** Gliders for the examples of functions that take one. */
import { degrees } from "../numerics/degrees.ts";
import { buildFuselageStick } from "../shape/fuselage-stick.ts";
import { buildGlider } from "../shape/glider.ts";
import type { Glider } from "../shape/glider-record.ts";
import { taperedFin, taperedTailplane } from "../shape/sample-tails.ts";
import { taperedTipWing } from "../shape/sample-wings.ts";

/** 24 g on a wing with raised tips, set at 2.4 deg; its balance point 27 mm behind the wing root's leading edge. */
export const sampleGlider: Glider = buildGlider(
  {
    wing: taperedTipWing,
    tailplane: taperedTailplane,
    fin: taperedFin,
    stick: buildFuselageStick({ front_x: -0.09, rear_x: 0.3, width: 0.006, height: 0.009, z: 0 }),
    balance: { mass: 0.024, x: 0.027, y: 0, z: 0.012, ixx: 6e-4, iyy: 1.5e-4, izz: 7e-4, ixy: 0, ixz: 3e-6, iyz: 0 },
    neutral_x: undefined,
    seat_height: 0.012,
    seat_angle: degrees(2.4),
  },
  (parameter, message) => {
    throw new Error(`got a sample glider with faulty ${parameter}: ${message}`);
  },
);

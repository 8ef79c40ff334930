import { gather } from "../../../src/library/mass/gather.ts";
import { buildFin } from "../../../src/library/shape/fin.ts";
import { buildFuselageStick } from "../../../src/library/shape/fuselage-stick.ts";
import { buildGlider } from "../../../src/library/shape/glider.ts";
import type { Glider } from "../../../src/library/shape/glider-record.ts";
import { buildTailplane } from "../../../src/library/shape/tailplane.ts";
import { refuse } from "../call.ts";
import { ploverFin, ploverSeat, ploverStick, ploverTailplane, ploverWing } from "../plover.ts";

const both = (mass: number, x: number, y: number, z: number) => [
  [mass, x, y, z],
  [mass, x, -y, z],
];
/** The parts of the sheet that describes Plover: g and mm. */
const parts = [
  ...both(2.08, 32.4, 51.9, 16.2),
  ...both(1.07, 31.2, 143.2, 25.8),
  ...both(0.515, 32.1, 209.8, 42.9),
  [0.48, 33.3, 0, 12],
  ...both(0.3, 31.5, 104.9, 17.5),
  ...both(0.26, 31, 183.6, 31.4),
  [2.67, 75.9, 0, 0],
  [0.91, 265.5, 0, 4],
  [0.31, 271.6, 0, 25],
  [1.1, 0, 0, 14],
  [3.38, -80, 0, 0],
];

export const ploverBalance = gather(
  parts.map(([mass = 0, x = 0, y = 0, z = 0]) => ({ mass: mass / 1e3, x: x / 1e3, y: y / 1e3, z: z / 1e3 })),
);

/** Plover as a glider, with some of it changed. */
export const ploverWith = (change: Partial<Parameters<typeof buildGlider>[0]> = {}): Glider =>
  buildGlider(
    {
      wing: ploverWing,
      tailplane: buildTailplane(ploverTailplane),
      fin: buildFin(ploverFin),
      stick: buildFuselageStick({ z: 0, ...ploverStick }),
      balance: ploverBalance,
      neutral_x: undefined,
      seat_height: ploverSeat.z,
      seat_angle: ploverSeat.incidence,
      ...change,
    },
    refuse,
  );

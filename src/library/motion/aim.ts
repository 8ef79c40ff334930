import { findTrim } from "../glide/find-trim.ts";
import { type Gliding, type GlidingValues, glidingOf } from "../glide/gliding.ts";
import { refuseTurnOfNone, trimOr } from "../glide/gliding-words.ts";
import type { Refuse } from "../spec.ts";
import { type FlyingBody, flyingBody, type TailSetting } from "./flying-body.ts";
import { type SteadyCircle, steadyCircle } from "./steady-circle.ts";

/** A glider in motion with the steady glide that it aims at. */
export interface Aimed {
  readonly gliding: Gliding;
  readonly body: FlyingBody;
  readonly circle: SteadyCircle;
  readonly speed: number;
  readonly sink: number;
}

/** Finds the steady glide of a glider with its tail so set; refuses where there is none, and says what to change. */
export function aimOf(given: GlidingValues, setting: TailSetting, refuse: Refuse): Aimed {
  refuseTurnOfNone(given.glider, { tail_turn: setting.tail, fin_turn: setting.rudder }, refuse);
  const gliding = glidingOf(given, refuse);
  refuseWithoutInertia(gliding, refuse);
  const body = flyingBody(gliding, setting);
  const { angle, speed, descent } = trimOr(findTrim(gliding, setting.tail), gliding, refuse);
  const [u, w] = [speed * Math.cos(angle), speed * Math.sin(angle)];
  const circle = steadyCircle(body, { u, v: 0, w, bank: 0, pitch: angle - descent, rate: 0 });
  if (!circle) {
    return refuse(
      "glider",
      "It comes to no steady glide: it turns ever tighter. Make its halves alike, or turn the fin less.",
    );
  }
  const down = circle.u * -Math.sin(circle.pitch) + circle.v * Math.sin(circle.bank) * Math.cos(circle.pitch);
  const sink = down + circle.w * Math.cos(circle.bank) * Math.cos(circle.pitch);
  return { gliding, body, circle, speed: Math.hypot(circle.u, circle.v, circle.w), sink };
}

/**
 * Refuses a balance that is one point: it has no inertia, and what turns it would turn it at once. No glider has a radius
 * of gyration below a hundredth of its span (common practice: a tenth and more).
 */
function refuseWithoutInertia({ balance, glider: { wing } }: Gliding, refuse: Refuse): void {
  const least = balance.mass * (wing.span / 100) ** 2;
  const about = { roll: balance.ixx, pitch: balance.iyy, yaw: balance.izz };
  const missing = Object.entries(about).flatMap(([axis, inertia]) => (inertia >= least ? [] : [axis]));
  if (missing.length === 0) return;
  refuse(
    "glider",
    `Its balance has next to no inertia in ${missing.join(", ")}, as if all mass were one point. ` +
      "Build it by balance(…) from parts with a shape: wing_mass, stick_mass, tailplane_mass, fin_mass.",
  );
}

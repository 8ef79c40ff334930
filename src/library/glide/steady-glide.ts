import { freeFall } from "../units.ts";
import type { Glide } from "./glide-record.ts";

/** What glides: mass, wing area, air density, lift coefficient, and where its drag coefficient comes from. */
export interface Gliding {
  readonly mass: number;
  readonly area: number;
  readonly density: number;
  readonly lift: number;
  readonly profile: number;
  readonly induced: number;
  readonly other: number;
  /** Share by which profile and other drag may differ. */
  readonly spread: number;
}

/**
 * Steady glide without small angles: lift and drag together carry the weight, so V² = 2·m·g/(ρ·S·√(CL² + CD²)), the
 * path falls by atan(CD/CL) and sink is V·CD/√(CL² + CD²) (derived).
 */
export function steadyGlide({ mass, area, density, lift, profile, induced, other, spread }: Gliding): Glide {
  const at = (friction: number) => {
    const drag = (profile + other) * friction + induced;
    const all = Math.hypot(lift, drag);
    const speed = Math.sqrt((2 * mass * freeFall) / (density * area * all));
    return { drag, speed, sink: (speed * drag) / all };
  };
  const { drag, speed, sink } = at(1);
  return {
    speed,
    sink,
    sink_low: at(1 - spread).sink,
    sink_high: at(1 + spread).sink,
    glide_ratio: lift / drag,
    angle: Math.atan2(drag, lift),
    lift_coefficient: lift,
    drag_coefficient: drag,
    profile_drag: profile,
    induced_drag: induced,
    other_drag: other,
  };
}

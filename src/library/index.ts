/** The one list of the functions that formulas can call, and the types that views need of their values. */

import { atmosphere } from "./air/atmosphere.ts";
import { bodyDragArea } from "./air/body-drag-area.ts";
import { bodyForm } from "./air/body-form.ts";
import { geopotentialAltitude } from "./air/geopotential-altitude.ts";
import { laminarFriction } from "./air/laminar-friction.ts";
import { profileDrag } from "./air/profile-drag.ts";
import { reynolds } from "./air/reynolds.ts";
import { sectionDrag } from "./air/section-drag.ts";
import { sectionLift } from "./air/section-lift.ts";
import { sectionPolar } from "./air/section-polar.ts";
import { surfaceForm } from "./air/surface-form.ts";
import { thinSection } from "./air/thin-section.ts";
import { turbulentFriction } from "./air/turbulent-friction.ts";
import { abs } from "./arithmetic/abs.ts";
import { acos } from "./arithmetic/acos.ts";
import { asin } from "./arithmetic/asin.ts";
import { atan } from "./arithmetic/atan.ts";
import { atan2 } from "./arithmetic/atan2.ts";
import { ceil } from "./arithmetic/ceil.ts";
import { cos } from "./arithmetic/cos.ts";
import { count } from "./arithmetic/count.ts";
import { exp } from "./arithmetic/exp.ts";
import { floor } from "./arithmetic/floor.ts";
import { log } from "./arithmetic/log.ts";
import { max } from "./arithmetic/max.ts";
import { mean } from "./arithmetic/mean.ts";
import { min } from "./arithmetic/min.ts";
import { round } from "./arithmetic/round.ts";
import { sin } from "./arithmetic/sin.ts";
import { sqrt } from "./arithmetic/sqrt.ts";
import { sum } from "./arithmetic/sum.ts";
import { tan } from "./arithmetic/tan.ts";
import { equivalentDihedral } from "./dihedral/equivalent-dihedral.ts";
import { exactEquivalentDihedral } from "./dihedral/exact-equivalent-dihedral.ts";
import { flowEquivalentDihedral } from "./dihedral/flow-equivalent-dihedral.ts";
import { sinkCost } from "./dihedral/sink-cost.ts";
import { tiltLoss } from "./dihedral/tilt-loss.ts";
import { downwash } from "./flow/downwash.ts";
import { finiteLiftSlope } from "./flow/finite-lift-slope.ts";
import { flow } from "./flow/flow.ts";
import { inducedDrag } from "./flow/induced-drag.ts";
import { liftSlope } from "./flow/lift-slope.ts";
import { bestDecalage } from "./glide/best-decalage.ts";
import { bestGlide } from "./glide/best-glide.ts";
import { glide } from "./glide/glide.ts";
import { leastSink } from "./glide/least-sink.ts";
import { sinkPolar } from "./glide/sink-polar.ts";
import { trim } from "./glide/trim.ts";
import { trimmedTurn } from "./glide/trimmed-turn.ts";
import { turn } from "./glide/turn.ts";
import { adhesive } from "./mass/adhesive.ts";
import { balance } from "./mass/balance.ts";
import { ballast } from "./mass/ballast.ts";
import { balsa } from "./mass/balsa.ts";
import { cloth } from "./mass/cloth.ts";
import { combine } from "./mass/combine.ts";
import { finMass } from "./mass/fin-mass.ts";
import { jointMass } from "./mass/joint-mass.ts";
import { laminate } from "./mass/laminate.ts";
import { material } from "./mass/material.ts";
import { panelMasses } from "./mass/panel-masses.ts";
import { pointMass } from "./mass/point-mass.ts";
import { sheetDensity } from "./mass/sheet-density.ts";
import { stickMass } from "./mass/stick-mass.ts";
import { stripMass } from "./mass/strip-mass.ts";
import { tailplaneMass } from "./mass/tailplane-mass.ts";
import { wingMass } from "./mass/wing-mass.ts";
import { circle } from "./motion/circle.ts";
import { modes } from "./motion/modes.ts";
import { recovery } from "./motion/recovery.ts";
import { release } from "./motion/release.ts";
import { rollingTendency } from "./motion/rolling-tendency.ts";
import { curvedWing } from "./shape/curved-wing.ts";
import { fin } from "./shape/fin.ts";
import { fuselageStick } from "./shape/fuselage-stick.ts";
import { glider } from "./shape/glider.ts";
import { tailplane } from "./shape/tailplane.ts";
import { wing } from "./shape/wing.ts";
import { type FunctionTable, functionTable } from "./spec.ts";
import { finVolume } from "./stability/fin-volume.ts";
import { lateralModes } from "./stability/lateral-modes.ts";
import { lateralRoots } from "./stability/lateral-roots.ts";
import { longitudinalModes } from "./stability/longitudinal-modes.ts";
import { longitudinalRoots } from "./stability/longitudinal-roots.ts";
import { neutralPoint } from "./stability/neutral-point.ts";
import { spiralParameter } from "./stability/spiral-parameter.ts";
import { staticMargin } from "./stability/static-margin.ts";
import { tailVolume } from "./stability/tail-volume.ts";

export { type Fineness, latticeConvergence } from "./flow/convergence.ts";
export type { Derivatives } from "./flow/derivatives-record.ts";
export type { Flow } from "./flow/flow-record.ts";
export type { Glide } from "./glide/glide-record.ts";
export type { Trim } from "./glide/trim-record.ts";
export type { Part } from "./mass/part-record.ts";
export { isDimensionless, siUnit } from "./quantity.ts";
export type { Fin } from "./shape/fin-record.ts";
export type { FuselageStick } from "./shape/fuselage-stick-record.ts";
export type { Glider } from "./shape/glider-record.ts";
export type { Half, Stations } from "./shape/half-record.ts";
export type { Panels } from "./shape/panel-columns.ts";
export type { Tailplane } from "./shape/tailplane-record.ts";
export type { Wing } from "./shape/wing-record.ts";
export type * from "./spec.ts";
export type { Mode } from "./stability/mode.ts";
export type { LateralModes, LongitudinalModes } from "./stability/mode-records.ts";
export type { NeutralPoint } from "./stability/neutral-point-record.ts";
export { isUnitFault, nearest, parseUnit, unitOf, units } from "./units.ts";

/** Every function by name. */
export const functions: FunctionTable = functionTable([
  wing,
  curvedWing,
  tailplane,
  fin,
  fuselageStick,
  glider,
  equivalentDihedral,
  exactEquivalentDihedral,
  flowEquivalentDihedral,
  tiltLoss,
  sinkCost,
  balance,
  combine,
  ballast,
  wingMass,
  panelMasses,
  jointMass,
  stripMass,
  stickMass,
  tailplaneMass,
  finMass,
  pointMass,
  sheetDensity,
  laminate,
  material,
  balsa,
  cloth,
  adhesive,
  tailVolume,
  finVolume,
  spiralParameter,
  neutralPoint,
  staticMargin,
  longitudinalModes,
  lateralModes,
  longitudinalRoots,
  lateralRoots,
  finiteLiftSlope,
  liftSlope,
  inducedDrag,
  downwash,
  flow,
  glide,
  bestGlide,
  leastSink,
  turn,
  trim,
  bestDecalage,
  sinkPolar,
  trimmedTurn,
  modes,
  circle,
  recovery,
  release,
  rollingTendency,
  atmosphere,
  geopotentialAltitude,
  reynolds,
  laminarFriction,
  turbulentFriction,
  surfaceForm,
  bodyForm,
  bodyDragArea,
  thinSection,
  sectionLift,
  sectionDrag,
  sectionPolar,
  profileDrag,
  sum,
  min,
  max,
  mean,
  count,
  abs,
  sqrt,
  sin,
  cos,
  tan,
  asin,
  acos,
  atan,
  atan2,
  round,
  floor,
  ceil,
  exp,
  log,
]);

/**
 * The functions that load with the page, so that a wing can be drawn, weighed and balanced at once, and what the views
 * do with units. All that flies (the lattice, glides, motions) and its matrices weigh as much again: `index.ts` has them.
 */

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
import { sinkCost } from "./dihedral/sink-cost.ts";
import { tiltLoss } from "./dihedral/tilt-loss.ts";
import { downwash } from "./flow/downwash.ts";
import { finiteLiftSlope } from "./flow/finite-lift-slope.ts";
import { inducedDrag } from "./flow/induced-drag.ts";
import { liftSlope } from "./flow/lift-slope.ts";
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
import { curvedWing } from "./shape/curved-wing.ts";
import { fin } from "./shape/fin.ts";
import { fuselageStick } from "./shape/fuselage-stick.ts";
import { glider } from "./shape/glider.ts";
import { tailplane } from "./shape/tailplane.ts";
import { wing } from "./shape/wing.ts";
import { type FunctionTable, functionTable } from "./spec.ts";
import { finVolume } from "./stability/fin-volume.ts";
import { neutralPoint } from "./stability/neutral-point.ts";
import { spiralParameter } from "./stability/spiral-parameter.ts";
import { staticMargin } from "./stability/static-margin.ts";
import { tailVolume } from "./stability/tail-volume.ts";

export { isUnitFault, parseUnit, unitOf, units } from "./units.ts";

/** Of a glider at rest, and in closed form. */
export const gliderFunctions = [
  wing,
  curvedWing,
  tailplane,
  fin,
  fuselageStick,
  glider,
  equivalentDihedral,
  exactEquivalentDihedral,
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
  finiteLiftSlope,
  liftSlope,
  inducedDrag,
  downwash,
];

/** Of air and numbers. */
export const generalFunctions = [
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
];

/** These functions by name. */
export const functionsAtFirst: FunctionTable = functionTable([...gliderFunctions, ...generalFunctions]);

/** The one list of the functions that formulas can call, and the types that views need of their values. */

import { generalFunctions, gliderFunctions } from "./at-first.ts";
import { blankPairs } from "./build/blank-pairs.ts";
import { gustLoadFactor } from "./build/gust-load-factor.ts";
import { jointBevels } from "./build/joint-bevels.ts";
import { jointGap } from "./build/joint-gap.ts";
import { jointStrength } from "./build/joint-strength.ts";
import { jointStrips } from "./build/joint-strips.ts";
import { nestedSheets } from "./build/nested-sheets.ts";
import { obliqueJoint } from "./build/oblique-joint.ts";
import { partsList } from "./build/parts-list.ts";
import { propHeights } from "./build/prop-heights.ts";
import { repaired } from "./build/repaired.ts";
import { sandingProp } from "./build/sanding-prop.ts";
import { sectionTemplates } from "./build/section-templates.ts";
import { skewForWashout } from "./build/skew-for-washout.ts";
import { tailParts } from "./build/tail-parts.ts";
import { tossLoadFactor } from "./build/toss-load-factor.ts";
import { tossResults } from "./build/toss-results.ts";
import { trimUnits } from "./build/trim-units.ts";
import { weighIn } from "./build/weigh-in.ts";
import { wingAsBuilt } from "./build/wing-as-built.ts";
import { wingBlanks } from "./build/wing-blanks.ts";
import { wingJig } from "./build/wing-jig.ts";
import { wingSeat } from "./build/wing-seat.ts";
import { workOrder } from "./build/work-order.ts";
import { flowEquivalentDihedral } from "./dihedral/flow-equivalent-dihedral.ts";
import { flow } from "./flow/flow.ts";
import { bestDecalage } from "./glide/best-decalage.ts";
import { bestGlide } from "./glide/best-glide.ts";
import { glide } from "./glide/glide.ts";
import { leastSink } from "./glide/least-sink.ts";
import { sinkPolar } from "./glide/sink-polar.ts";
import { trim } from "./glide/trim.ts";
import { trimmedTurn } from "./glide/trimmed-turn.ts";
import { turn } from "./glide/turn.ts";
import { circle } from "./motion/circle.ts";
import { modes } from "./motion/modes.ts";
import { recovery } from "./motion/recovery.ts";
import { release } from "./motion/release.ts";
import { rollingTendency } from "./motion/rolling-tendency.ts";
import { type FunctionTable, functionTable } from "./spec.ts";
import { lateralModes } from "./stability/lateral-modes.ts";
import { lateralRoots } from "./stability/lateral-roots.ts";
import { longitudinalModes } from "./stability/longitudinal-modes.ts";
import { longitudinalRoots } from "./stability/longitudinal-roots.ts";

export type { Pattern } from "./build/pattern-record.ts";
export { type Fineness, latticeConvergence } from "./flow/convergence.ts";
export type { Derivatives } from "./flow/derivatives-record.ts";
export type { Flow } from "./flow/flow-record.ts";
export type { Glide } from "./glide/glide-record.ts";
export type { SinkPolar } from "./glide/sink-polar.ts";
export type { Trim } from "./glide/trim-record.ts";
export type { Part } from "./mass/part-record.ts";
export type { Recovery } from "./motion/recovery-record.ts";
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

/** Every function by name: those that load with the page, and those that follow. */
export const functions: FunctionTable = functionTable([
  ...gliderFunctions,
  flowEquivalentDihedral,
  longitudinalModes,
  lateralModes,
  longitudinalRoots,
  lateralRoots,
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
  jointBevels,
  sandingProp,
  obliqueJoint,
  skewForWashout,
  jointGap,
  wingJig,
  propHeights,
  wingBlanks,
  nestedSheets,
  blankPairs,
  jointStrips,
  jointStrength,
  tossLoadFactor,
  gustLoadFactor,
  sectionTemplates,
  tailParts,
  wingSeat,
  trimUnits,
  weighIn,
  partsList,
  workOrder,
  wingAsBuilt,
  repaired,
  tossResults,
  ...generalFunctions,
]);

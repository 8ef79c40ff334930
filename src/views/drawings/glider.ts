/** A glider as far as its drawings need it: SI numbers, x aft from the wing root's leading edge, y right, z up. */
import { furtherClass } from "./head.ts";
import type { HalfInFront, WingInFront } from "./wing-outline.ts";

/** One half of a wing; see the half record of the library. */
export interface HalfOnPaper extends HalfInFront {
  readonly length: readonly number[];
  readonly root_chord: readonly number[];
  readonly tip_chord: readonly number[];
  readonly twist: readonly number[];
  readonly skew: readonly number[];
  readonly stations: { readonly x: readonly number[]; readonly y: readonly number[]; readonly z: readonly number[] };
}

/** A wing; see the wing record of the library. */
export interface WingOnPaper extends WingInFront {
  readonly mac: number;
  readonly mac_x: number;
  readonly mac_y: number;
  readonly mirrored: boolean;
  readonly right: HalfOnPaper;
  readonly left: HalfOnPaper;
}

/** A tailplane; see the tailplane record of the library. */
export interface TailplaneOnPaper {
  readonly span: number;
  readonly root_chord: number;
  readonly thickness: number;
  readonly incidence: number;
  readonly mac_y: number;
  readonly quarter_x: number;
  readonly x: number;
  readonly z: number;
  readonly stations: {
    readonly x: readonly number[];
    readonly y: readonly number[];
    readonly chord: readonly number[];
  };
}

/** A fin; see the fin record of the library. */
export interface FinOnPaper {
  readonly height: number;
  readonly root_chord: number;
  readonly thickness: number;
  readonly stations: {
    readonly x: readonly number[];
    readonly z: readonly number[];
    readonly chord: readonly number[];
  };
}

/** A stick; see the fuselage_stick record of the library. */
export interface StickOnPaper {
  readonly front_x: number;
  readonly rear_x: number;
  readonly length: number;
  readonly width: number;
  readonly height: number;
  readonly end_width: number;
  readonly end_height: number;
  readonly z: number;
}

/** A glider; see the glider record of the library. What is not there is not drawn. */
export interface GliderOnPaper {
  readonly wing: WingOnPaper;
  readonly tailplane?: TailplaneOnPaper | undefined;
  readonly fin?: FinOnPaper | undefined;
  readonly stick?: StickOnPaper | undefined;
  readonly balance?: { readonly x: number; readonly y: number; readonly z: number } | undefined;
  readonly neutral_x?: number | undefined;
  readonly seat_height: number;
  readonly seat_angle: number;
  readonly decalage?: number | undefined;
  readonly static_margin?: number | undefined;
  readonly tail_arm?: number | undefined;
}

/** What a drawing of a glider is drawn from. */
export interface GliderDrawingData {
  readonly glider: GliderOnPaper;
  /** Drawn as a thin line, under its name: "baseline", "as flown". */
  readonly baseline?: { readonly glider: GliderOnPaper; readonly name: string } | undefined;
  /** Other designs, such as trials: dashed lines, each under its name. */
  readonly further?: readonly { readonly glider: GliderOnPaper; readonly name: string }[] | undefined;
}

/** The glider, then its baseline, then the others, each with the class of its thin line. */
export const glidersDrawn = ({ glider, baseline, further = [] }: GliderDrawingData) => ({
  gliders: [glider, ...(baseline ? [baseline.glider] : []), ...further.map((each) => each.glider)],
  classes: [...(baseline ? ["ghost"] : []), ...further.map((_, index) => furtherClass(index))],
});

/** A wing alone, level on the datum. */
export const wingAlone = (wing: WingOnPaper): GliderOnPaper => ({ wing, seat_height: 0, seat_angle: 0 });

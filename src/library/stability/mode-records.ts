import { numberText } from "../number-text.ts";
import { type Root, rootsOf } from "../numerics/small-matrix.ts";
import { boolean, list, number, type Refuse, record, text, type ValueOf } from "../spec.ts";
import { modeOf, modeRecord, modeText } from "./mode.ts";
import { nameLateral, nameLongitudinal } from "./name-modes.ts";

/** The roots themselves, for a chart of them. */
const rootLists = {
  root_name: list(text("name of the mode"), "name of the mode of each root"),
  root_rate: list(number("1/s", "rate of growth"), "real part of each root: how fast it grows"),
  root_turning: list(number("rad/s", "angular speed"), "imaginary part of each root: how fast it swings"),
};

export const longitudinalModesRecord = record(
  "longitudinal_modes",
  "modes of the motion in the plane of symmetry",
  {
    short_period: { ...modeRecord, summary: "quick pitching about the balance point" },
    phugoid: { ...modeRecord, summary: "slow exchange of speed and height" },
    usual: boolean("whether they are the two of the textbook"),
    verdict: text("what it comes to"),
    ...rootLists,
  },
  (modes) => modes.verdict,
);
export type LongitudinalModes = ValueOf<typeof longitudinalModesRecord>;

export const lateralModesRecord = record(
  "lateral_modes",
  "modes of roll, yaw and sideslip",
  {
    roll: { ...modeRecord, summary: "how fast rolling dies away" },
    spiral: { ...modeRecord, summary: "how a bank goes away by itself, or tightens" },
    dutch_roll: { ...modeRecord, summary: "swinging of yaw and roll" },
    joined: boolean("whether roll and spiral have become one slow oscillation, which both then tell"),
    verdict: text("what it comes to"),
    ...rootLists,
  },
  (modes) => modes.verdict,
);
export type LateralModes = ValueOf<typeof lateralModesRecord>;

/** The modes of a matrix, row by row, in u, w or angle of attack, q and pitch. */
export function longitudinalModesOf(matrix: readonly number[], refuse: Refuse): LongitudinalModes {
  const { shortPeriod, phugoid, usual } = nameLongitudinal(roots(matrix, refuse));
  const [quick, slow] = [modeOf(shortPeriod), modeOf(phugoid)];
  const growing = [...shortPeriod, ...phugoid].find((root) => root.imaginary === 0 && root.real > 0);
  const verdict =
    growing !== undefined
      ? `Pitches away from its trim, doubling in ${numberText(Math.LN2 / growing.real, "s")}: move the balance point forward`
      : slow.rate > 0
        ? `The phugoid grows, doubling in ${numberText(Math.LN2 / slow.rate, "s")}: more drag or less lift calms it`
        : quick.rate > 0
          ? "The short period grows: give it a larger or longer tail"
          : usual
            ? `Holds its trim; the phugoid ${modeText(slow)}`
            : "Holds its trim, but barely: the balance point is close to the neutral point";
  return {
    short_period: quick,
    phugoid: slow,
    usual,
    verdict,
    ...listed([
      ["short period", shortPeriod],
      ["phugoid", phugoid],
    ]),
  };
}

/** The modes of a matrix, row by row, in sideslip, p, r and bank. */
export function lateralModesOf(matrix: readonly number[], refuse: Refuse): LateralModes {
  const named = nameLateral(roots(matrix, refuse));
  const [roll, spiral, dutchRoll] = [modeOf(named.roll), modeOf(named.spiral), modeOf(named.dutchRoll)];
  const straightAway = named.dutchRoll.some((root) => root.imaginary === 0 && root.real > 0);
  const doubling = (rate: number) => numberText(Math.LN2 / rate, "s");
  const verdict = straightAway
    ? `Swaps ends, doubling in ${doubling(dutchRoll.rate)}: give it a larger fin`
    : dutchRoll.rate > 0
      ? `Swings ever wider, doubling in ${doubling(dutchRoll.rate)}: more fin or less dihedral calms it`
      : named.joined
        ? `Roll and spiral have become one slow oscillation that ${spiral.rate < 0 ? "dies away" : "grows"}: less dihedral or more fin parts them`
        : spiral.rate > 0
          ? `Spirals in, doubling a bank in ${doubling(spiral.rate)}: more dihedral or less fin rights it`
          : spiral.half_time !== undefined
            ? `Rights itself, halving a bank in ${numberText(spiral.half_time, "s")}`
            : "Keeps whatever bank it has";
  return {
    roll,
    spiral,
    dutch_roll: dutchRoll,
    joined: named.joined,
    verdict,
    ...listed(
      named.joined
        ? [
            ["roll and spiral", named.roll],
            ["Dutch roll", named.dutchRoll],
          ]
        : [
            ["roll", named.roll],
            ["spiral", named.spiral],
            ["Dutch roll", named.dutchRoll],
          ],
    ),
  };
}

function roots(matrix: readonly number[], refuse: Refuse): readonly Root[] {
  if (matrix.length !== 16) {
    refuse("matrix", `The length of the list is ${matrix.length}. Give 16 numbers: four rows of four, row by row.`);
  }
  const found = matrix.every(Number.isFinite) ? rootsOf(matrix) : null;
  if (!found?.every(({ real, imaginary }) => Number.isFinite(real) && Number.isFinite(imaginary))) {
    return refuse(null, "These numbers are far beyond those of any glider, and no motion follows. Check their units.");
  }
  return found;
}

function listed(named: readonly (readonly [name: string, roots: readonly Root[]])[]) {
  const all = named.flatMap(([name, of]) => of.map((root) => ({ name, root })));
  return {
    root_name: all.map(({ name }) => name),
    root_rate: all.map(({ root }) => root.real + 0),
    root_turning: all.map(({ root }) => root.imaginary + 0),
  };
}

import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { congruential32 } from "pure-rand/generator/congruential32";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";

/** A stream of random numbers that a seed repeats. */
export interface Draws {
  /** From 0 up to, without, 1. */
  next(): number;
  /** Passes over so many. */
  skip(count: number): void;
}

/** The stream of a seed; a seed has many, which do not overlap (2^64 apart), counted from 0. */
export function drawsOf(seed: number, stream = 0): Draws {
  // Seeds side by side would begin with numbers that go together, so they are scattered first.
  const generator = xoroshiro128plus(congruential32(seed).next());
  for (let jump = 0; jump <= stream; jump++) generator.jump();
  return {
    next: () => uniformFloat64(generator),
    skip(count) {
      for (let each = 0; each < count; each++) uniformFloat64(generator);
    },
  };
}

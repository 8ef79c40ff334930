/** What the Lezer plugin makes of formula.grammar when it is imported. */
declare module "*.grammar" {
  import type { LRParser } from "@lezer/lr";
  export const parser: LRParser;
}

declare module "*.grammar.terms" {
  export const Numeral: number;
  export const Unit: number;
  export const ShopFraction: number;
  export const MisplacedFraction: number;
}

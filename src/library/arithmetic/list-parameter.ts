import { anyNumber, list } from "../spec.ts";

/** The list that `sum`, `min` and their like take: numbers of any one dimension. */
export const values = list(anyNumber("one of the numbers"), "the numbers: a list, or one after the other");

/** What such a function says of an empty list. */
export const emptyList = "The list is empty. Give at least one number.";

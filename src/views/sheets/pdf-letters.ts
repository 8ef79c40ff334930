/**
 * Words in the letters that the fonts of every reader of PDF have, which is the set of western Europe: other letters lose
 * their accents or bars, signs are spelled, and what has no such letter becomes "?".
 */
export function inPdfLetters(words: string): string {
  return words.replaceAll(unknown, (letter) => spelled.get(letter) ?? plain(letter));
}

/** All that is not in the encoding of these fonts (Windows code page 1252). */
const unknown = /[^\u0020-\u007e\u00a0-\u00ff–—‘’‚“”„†‡•…‰‹›€™ƒŒœŠšŽžŸ]/gu;

/** Signs, and letters whose bar or stroke is no accent that could be taken off. */
const spelled: ReadonlyMap<string, string> = new Map(
  [
    ...["−-", "→->", "←<-", "≤<=", "≥>=", "′'", '″"', "≈~"],
    ...["łl", "ŁL", "đd", "ĐD", "ħh", "ĦH", "ŧt", "ŦT", "ıi", "ĸk", "ŋn", "ŊN"],
  ].map((pair): [string, string] => [pair.slice(0, 1), pair.slice(1)]),
);

function plain(letter: string): string {
  const base = letter.normalize("NFKD").replaceAll(/\p{Mark}/gu, "");
  return /^[\u0020-\u007e]+$/.test(base) ? base : "?";
}

/** Every sentence that the cells say to a person: what is wrong, where, and the remedy. */

const maybe = (nearest: string | null): string => (nearest ? ` Did you mean ${nearest}?` : "");
const then = (remedy: string | null): string => (remedy ? ` ${remedy}` : "");
const list = (words: readonly string[]): string =>
  words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} or ${words.at(-1)}`;

/** A name as a sentence begins with it: root_chord → Root chord. */
const spoken = (name: string): string => capital(name.replaceAll("_", " "));

/** A loop member by member; a very long one is cut in the middle. */
const wayAround = (members: readonly string[]): string => {
  const shown =
    members.length > 12 ? [...members.slice(0, 10), `${members.length - 11} more`, ...members.slice(-1)] : members;
  return [...shown, members[0]].join(" needs ");
};

export const messages = {
  // Reading a formula
  tooLong: (length: number, limit: number) =>
    `This formula has ${length} characters; ${limit} is the most. Split it into several cells.`,
  tooDeep: (limit: number) =>
    `More than ${limit} brackets, signs or branches stand within each other. Split the formula into several cells.`,
  emptyFormula: "A formula is needed here, such as 12 mm or span / 2.",
  numberTooLarge: "This number is too large to compute with.",
  unknownUnit: (word: string, nearest: string | null, calculation: string | null) =>
    `Unknown unit “${word}”.${maybe(nearest)}${calculation ? ` ${calculation}` : ""}`,
  divideByCell: (division: string) => `To divide by a cell, put blanks around the sign: ${division}.`,
  multiplyByCell: (product: string) => `To multiply by a cell, write ${product}.`,
  unitPower: (remedy: string) => `A unit's power is a whole number. Write ${remedy} to raise the whole value.`,
  scaleAlone: "°C and °F name points on a scale and take no part in arithmetic. Write the value in K.",
  misplacedFraction: (written: string, decimal: string, division: string | null) =>
    `${division ? `“${written}” can be read in two ways. Write ${decimal} or ${division}` : `Write ${decimal} in place of “${written}”`}` +
    "; shop fractions such as 3/32 in stand before in and ft only, and in brackets after / and ^.",
  fractionOverZero: (written: string) => `“${written}” divides by zero. Write another number below the line.`,
  fractionWithoutUnit: (written: string) =>
    `“${written}” needs its unit right after it, in or ft; as plain numbers write ${written.replace(/\s+/, " + ")}.`,
  openText: 'This text is not closed. End it with a ".',
  fieldMissing: "After a point stands the name of a field, or a digit: main_wing.span, 0.5.",
  valueMissingAtEnd: "The formula ends where a value is needed.",
  valueMissingBefore: (word: string) => `A value is missing before “${word}”.`,
  unclosed: (bracket: string) => `This ${bracket} is never closed. Add a ${bracket === "(" ? ")" : "]"}.`,
  strayBracket: (bracket: string) => `This ${bracket} closes nothing. Take it out, or open it before.`,
  otherBracket: (open: string, closing: string) =>
    `This ${closing} does not close the ${open} before it. Write ${open === "(" ? ")" : "]"}.`,
  strayComma: "A comma parts arguments, and elements of a list: [1, 2]. A decimal number is written with a point: 3.5.",
  leadingEquals: "A formula begins with its first value. Take the = away.",
  writeInstead: (sign: string, ours: string) => `Write ${ours} in place of “${sign}”.`,
  smallLetters: (word: string) => `Write “${word}” in small letters: ${word.toLowerCase()}.`,
  ifIncomplete: "An if needs both of its branches: if … then … else ….",
  ifElsewhere:
    "An if stands at the start of a formula, an argument or a list element. Put this one in brackets: (if … then … else …).",
  strayWord: (word: string) => `“${word}” belongs to if … then … else …; the if is missing.`,
  signMissing: (word: string) => `A sign such as * or + is missing before “${word}”.`,
  strangeCharacter: (character: string) => `“${character}” has no meaning in a formula.`,
  unexpected: (word: string) => `“${word}” is not expected here.`,
  comparisonChain: (remedy: string) => `Comparisons do not chain. Write ${remedy}.`,
  positionalAfterNamed: "Arguments without a name come first. Name this one too, or move it forward.",

  // Names
  noParameter: (name: string) =>
    `${name}() lacks a parameter between its brackets. Name one, or take the brackets away.`,
  noName: "Every cell of this kind needs a name, such as tip_break.",
  notAName: (name: string) => `“${name}” cannot be a name: a name is a letter, then letters, digits and _.`,
  reserved: (name: string, as: string) =>
    `“${name}” is ${as} and cannot be a name. Choose another, such as my_${name}.`,
  onlyDerivedTakesParameters: "Only a derived cell can have parameters. Remove the brackets from its name.",
  duplicateName: (name: string) => `Two cells are named ${name}. Rename one of them.`,
  nameTaken: (name: string) => `Another cell is named ${name} already. Choose another name.`,
  nameOfParameter: (name: string, owner: string) =>
    `${name} is a parameter of ${owner}, which would then mean another thing. Choose another name.`,
  columnTaken: (column: string) => `Another column is named ${column} already. Choose another name.`,
  duplicateParameter: (name: string) => `The parameter ${name} stands twice. Rename one of them.`,
  unknownName: (name: string, nearest: string | null) => `There is no cell named ${name}.${maybe(nearest)}`,
  unitAlone: (unit: string) => `${unit} is a unit and stands after a number: write 1 ${unit}.`,
  functionWithoutCall: (name: string, parameters: readonly string[]) =>
    `${name} is a function. Call it with its arguments: ${name}(${parameters.join(", ")}).`,
  notAFunction: (name: string) => `${name} is a cell, not a function. To multiply write ${name} * (…).`,
  unknownFunction: (name: string, nearest: string | null) => `There is no function named ${name}.${maybe(nearest)}`,
  namesInGiven: (name: string) =>
    `A given stands on its own and cannot use ${name}. Make it derived, in its menu, or enter a value.`,

  // Waiting and loops
  waits: (root: string) => `Waits for ${root}.`,
  loop: (members: readonly string[]) =>
    members.length === 1
      ? `${members[0]} needs itself. Take its own name out of its formula.`
      : `These cells need each other in a loop: ${wayAround(members)}. Break it at one of them.`,

  // Shapes and dimensions
  dimensionsDiffer: (sign: string, left: string, right: string, remedy: string | null) =>
    `${sign === "+" ? "Adding" : sign === "-" ? "Subtracting" : "Comparing"} needs two values of one dimension; these are ${left} and ${right}.${then(remedy)}`,
  branchesDiffer: (left: string, right: string, remedy: string | null) =>
    `Both branches must be of one kind; these are ${left} and ${right}.${then(remedy)}`,
  itemsDiffer: (left: string, right: string, remedy: string | null) =>
    `All elements of a list must be of one kind; these are ${left} and ${right}.${then(remedy)}`,
  needsNumber: (what: string, got: string) => `${what} needs a number, or a list of numbers; this is ${got}.`,
  needsBoolean: (what: string, got: string) => `${what} needs a condition such as span > 300 mm; this is ${got}.`,
  checkNeedsBoolean: (got: string) => `A check is a condition such as span > 300 mm; this is ${got}.`,
  compareLists: "Lists cannot be compared as a whole. Compare one element, or min(…) or max(…) of the list.",
  compareKinds: (left: string, right: string) => `${left} and ${right} cannot be compared.`,
  compareOrder: (got: string) => `Only numbers can be larger or smaller; this is ${got}. Use = or !=.`,
  exponentWithoutDimension: (got: string) => `An exponent is a number without a unit; this is ${got}.`,
  exponentLiteral: (base: string) =>
    `${capital(base)} can only be raised to a power that is written as a number, such as ^2 or ^0.5, so that the unit of the result is known.`,
  exponentTooLarge: (limit: number) =>
    `The unit of this has a power beyond ${limit}. Take the unit off before: x / 1 mm is a number.`,
  listPower: "The exponent of a list is a single number.",
  listOfSingle: (got: string) => `A list holds single values; this is ${got}.`,
  emptyList: "A list needs at least one element.",
  listTooLong: (limit: number) => `A list holds at most ${limit} elements.`,
  listLengths: (left: number, right: number) =>
    `Lists are taken element by element and need the same length; these have ${left} and ${right}.`,
  noFields: (got: string) => `Only records have fields; this is ${got}.`,
  unknownField: (field: string, nearest: string | null, all: readonly string[]) =>
    `There is no field ${field}.${nearest ? maybe(nearest) : ` ${all.length === 1 ? "The only field is" : "The fields are"} ${list(all.slice(0, 30)).replace(" or ", " and ")}.`}`,
  fieldLeftOut: (field: string, record: string, absent?: string) =>
    absent
      ? `There is no ${field} here: it is left out ${absent}.`
      : `There is no ${field} here: this is ${record} made without it. Add it, or what it follows from, where it is made.`,
  notAList: (got: string) => `Only lists have elements; this is ${got}.`,
  indexNumber: (got: string) => `An element is counted by a number from 1 on; this is ${got}.`,
  indexRange: (index: number, length: number) =>
    length === 0
      ? `This list is empty, it has no element ${index}.`
      : `There is no element ${index}: the list has ${length}, counted from 1 to ${length}.`,
  unitDisagrees: (unit: string, wanted: string, got: string, remedy: string | null) =>
    `The unit ${unit} is for ${wanted}, but this is ${got}.${then(remedy ?? "Change the value or the unit.")}`,
  unitOnlyNumbers: (unit: string, got: string) =>
    `The unit ${unit} is for a number, but this is ${got}. Remove the unit.`,
  unitFault: (unit: string, word: string, nearest: string | null) =>
    `The unit “${unit}” of this cell is not known${word === unit ? "" : `: “${word}”`}.${maybe(nearest)}`,
  fractionUnit: "Shop fractions are for values shown in inches. Set the unit to in.",
  sayUnit: (remedy: string) => `Write ${remedy}?`,
  notFinite: "The result of this is not a finite number: something is divided by zero, or is too large.",

  noSuchPower:
    "A negative number has no power with a fraction. Raise its size, abs(…), or take a whole number as exponent.",

  // Calls
  tooManyArguments: (name: string, most: number) =>
    `${name} takes ${most === 0 ? "no arguments" : most === 1 ? "one argument" : `at most ${most} arguments`}.`,
  missingArgument: (name: string, parameter: string, summary: string) =>
    `${name} needs ${parameter}${summary ? ` (${summary})` : ""}.`,
  unknownArgument: (name: string, argument: string, nearest: string | null, all: readonly string[]) =>
    `${name} has no argument ${argument}.${nearest ? maybe(nearest) : all.length ? ` It takes ${list(all).replace(" or ", " and ")}.` : ""}`,
  argumentTwice: (argument: string) => `${argument} is given twice.`,
  argumentShape: (parameter: string, wanted: string, got: string, remedy: string | null) =>
    `${spoken(parameter)} must be ${wanted}; this is ${got}.${then(remedy)}`,
  missingColumn: (parameter: string, column: string, summary: string) =>
    `${spoken(parameter)} needs a column ${column}${summary ? ` (${summary})` : ""}.`,
  belowRange: (what: string, limit: string, got: string, strict: boolean) =>
    `${spoken(what)} must be ${strict ? "more than" : "at least"} ${limit}; it is ${got}.`,
  aboveRange: (what: string, limit: string, got: string, strict: boolean) =>
    `${spoken(what)} must be ${strict ? "less than" : "at most"} ${limit}; it is ${got}.`,
  elementOf: (parameter: string, index: number) => `element ${index} of ${parameter}`,
  entryOf: (column: string, row: number) => `${column} in row ${row}`,
  functionFailed: (name: string, reason: string) => `${name} could not be computed: ${reason}.`,
  tooManyCalls: (limit: number) =>
    `This calls function cells more than ${limit} times. Compute parts of it in cells of their own.`,
  within: (name: string, message: string) =>
    message.startsWith("In ") ? `In ${name}, ${message.slice(3)}` : `In ${name}: ${message}`,
  tooDeepCalls:
    "With the function cells that this one calls, too much stands within each other. Compute parts in cells of their own.",

  // Setting a value from outside
  onlyGivens: (name: string) => `${name} is computed. Only givens and table entries can be set.`,
  nameAnEntry: (name: string, column: string) =>
    `${name} is a table. Name one entry of it, such as ${name}[1].${column}.`,
  notATable: (name: string) => `${name} is not a table and has no entries.`,
  noRow: (name: string, row: number, rows: number) => `${name} has no row ${row}: it has ${rows}, counted from 1.`,
  noColumn: (name: string, column: string, nearest: string | null, all: readonly string[]) =>
    `${name} has no column ${column}.${nearest ? maybe(nearest) : ` It has ${list(all).replace(" or ", " and ")}.`}`,

  // Trials
  inTrial: (trial: string, target: string, message: string) => `Trial “${trial}” sets ${target}: ${message}`,
  noTrial: (name: string, nearest: string | null, all: readonly string[]) =>
    `There is no trial “${name}”.${nearest ? ` Did you mean “${nearest}”?` : all.length ? ` There are ${list(all.map((each) => `“${each}”`)).replace(" or ", " and ")}.` : " The notebook has none."}`,

  trialWithoutName: "A trial needs a name.",
  trialNameTaken: (name: string) => `Another trial is called “${name}”. Choose another name.`,

  // Tables, ranges, paths
  emptyEntry: (row: number, column: string) =>
    `Row ${row}, column ${column}, is empty. Enter a value, or remove the row.`,
  inColumn: (column: string, message: string) => `Column ${column}: ${message}`,
  inEntry: (row: number, column: string, message: string) => `Row ${row}, column ${column}: ${message}`,
  entryShape: (got: string) => `An entry is a single number; this is ${got}.`,
  duplicateColumn: (column: string) => `Two columns are named ${column}. Rename one of them.`,
  tooManyRows: (rows: number, limit: number) => `This table has ${rows} rows; ${limit} is the most.`,
  inRange: (which: string, message: string) => `The range's ${which}: ${message}`,
  rangeOrder: (from: string, to: string) =>
    `The range runs from ${from} to ${to}, so it is empty. Let the second be larger.`,
  rangeWithoutNumber: "Only a given that is a single number has a range. Take the range away.",
  singleNumber: "This has to be a single number.",
  rangeStep: "The range's step must be more than zero.",
  plusMinusWithoutNumber: "Only a single number is off by ±. Take the ± away.",
  plusMinusSize: "It must be more than zero.",
  inPlusMinus: (message: string) => `The ±: ${message}`,
  notAPath: (text: string) =>
    `“${text}” is not a name. Between braces stands a name with fields or elements, such as {main_wing.span}.`,
  sweepNeedsGiven: (name: string) => `${name} is not a given. A chart sweeps a given that has a range.`,
  sweepNeedsRange: (name: string) => `The given ${name} has no range to sweep over. Give it one, from and to.`,
  studyNumber: (name: string, got: string) => `A study tells numbers; ${name} is ${got}.`,
  studyNeedsCheck: (name: string) => `${name} is not a check. Here stand names of checks.`,
  studyWithoutValue: (name: string) => `${name} is a study and has no value. Name what it studies.`,
  chartNumber: (name: string, got: string) => `A chart draws numbers; ${name} is ${got}.`,
} as const;

/** The sentence's first letter in upper case. */
export function capital(sentence: string): string {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}

import fc from "fast-check";

/** What a formula of these is, in the notebook of `setting`. */
export type Kind = "length" | "angle" | "number" | "condition" | "lengths" | "text";

/** The cells that the random formulas name. */
export const setting = `given span [mm] = 420 mm
given tip [deg] = 11 deg
zero = 0
two = 2
cants = [5 deg, 9 deg, 12 deg]
wood = "balsa"
ok = span > 300 mm
main = wing(panels)
twice(x) = 2 * x
ratio(x, y) = x / y
table panels | length mm | root_chord mm | tip_chord mm | sweep mm | break deg | washout deg | thickness mm
| 110 | 70 | 66 | 0 | 5 | 0 | 3
| 90 | 66 | 44 | 8 | tip | 1 | 2.5`;

const count = fc.oneof(fc.integer({ min: 0, max: 12 }), fc.double({ min: -1e3, max: 1e3, noNaN: true })).map(String);
const small = fc.integer({ min: -1, max: 4 }).map(String);

/** Random formulas that mostly check, of one kind each; now and then a part of another kind stands in. */
export const typedFormula = fc.letrec<Record<Kind | `any ${Kind}`, string>>((tie) => {
  const [length, angle, number] = [tie("any length"), tie("any angle"), tie("any number")];
  const [condition, lengths, text] = [tie("any condition"), tie("any lengths"), tie("any text")];
  const of = (depth: number, plain: fc.Arbitrary<string>, ...others: fc.Arbitrary<string>[]) =>
    fc.oneof({ maxDepth: depth, depthSize: "small" }, plain, ...others);
  const join = (...parts: (string | fc.Arbitrary<string>)[]) =>
    fc
      .tuple(...parts.map((part) => (typeof part === "string" ? fc.constant(part) : part)))
      .map((each) => each.join(""));
  const either = (kind: fc.Arbitrary<string>) => join("(if ", condition, " then ", kind, " else ", kind, ")");
  const sum = (kind: fc.Arbitrary<string>) => join("(", kind, fc.constantFrom(" + ", " - "), kind, ")");
  const strayed = (kind: Kind) =>
    fc.oneof(
      { weight: 40, arbitrary: tie(kind) },
      { weight: 1, arbitrary: fc.oneof(tie("length"), tie("angle"), tie("number"), tie("lengths"), tie("text")) },
    );
  return {
    length: of(
      5,
      fc.oneof(
        join(count, fc.constantFrom(" mm", " m", " in", " ft")),
        fc.constantFrom("span", "main.span", "panels.length[2]", "3/32 in"),
      ),
      sum(length),
      join(number, " * ", length),
      join("(", angle, " * ", length, ")"),
      join(length, " / (", number, ")"),
      join("min(", length, ", ", length, ")"),
      join("round(", length, ", ", length, ")"),
      join("sqrt(", length, " * ", length, ")"),
      join("twice(", length, ")"),
      join("sum(", lengths, ")"),
      join(lengths, "[", small, "]"),
      either(length),
      join("-", length),
    ),
    angle: of(
      5,
      fc.oneof(join(count, fc.constantFrom(" deg", "°", " rad")), fc.constantFrom("tip", "cants[1]", "main.cants[2]")),
      sum(angle),
      join("asin(", number, ")"),
      join("atan2(", length, ", ", length, ")"),
      join("(", number, " * 1 deg)"),
      join("cants[", number, "]"),
      join("twice(", angle, ")"),
      either(angle),
    ),
    number: of(
      5,
      fc.oneof(count, fc.constantFrom("two", "zero", "pi", "25%", "1 / 3")),
      sum(number),
      join("(", number, fc.constantFrom(" * ", " / "), number, ")"),
      join("(", number, ")^", small),
      join("(", number, ")^(", number, ")"),
      join("(", length, " / ", length, ")"),
      join("ratio(", angle, ", y: ", angle, ")"),
      join("sin(", angle, ")"),
      join("exp(", number, ")"),
      join("log(", number, ")"),
      join("count(", lengths, ")"),
      either(number),
    ),
    condition: of(
      4,
      fc.constantFrom("ok", "true", "not ok", 'wood = "balsa"'),
      join("(", length, fc.constantFrom(" < ", " >= ", " = ", " != "), length, ")"),
      join("(", number, fc.constantFrom(" <= ", " > ", " = "), number, ")"),
      join("(", condition, fc.constantFrom(" and ", " or "), condition, ")"),
      join("(", text, " = ", text, ")"),
    ),
    lengths: of(
      4,
      fc.oneof(fc.constantFrom("panels.length", "panels.root_chord"), join("[", length, ", ", length, "]")),
      join("(", lengths, fc.constantFrom(" + ", " - "), fc.oneof(lengths, length), ")"),
      join("(", number, " * ", lengths, ")"),
      join("abs(", lengths, ")"),
      join("-", lengths),
      either(lengths),
    ),
    text: of(3, fc.constantFrom("wood", '"spruce"', '"balsa"'), either(text)),
    "any length": strayed("length"),
    "any angle": strayed("angle"),
    "any number": strayed("number"),
    "any condition": strayed("condition"),
    "any lengths": strayed("lengths"),
    "any text": strayed("text"),
  };
});

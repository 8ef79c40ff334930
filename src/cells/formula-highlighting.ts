import { styleTags, tags } from "@lezer/highlight";

/** What each node of a formula is, in the editor's and the page's highlighting. */
export const formulaHighlighting = styleTags({
  Numeral: tags.number,
  ShopFraction: tags.number,
  MisplacedFraction: tags.invalid,
  Unit: tags.unit,
  Text: tags.string,
  "Boolean!": tags.bool,
  "Call/Name": tags.function(tags.variableName),
  Name: tags.variableName,
  // The mark ! covers what stands within: words of the language (panels.if), the signs themselves.
  "FieldName!": tags.propertyName,
  "ArgumentName!": tags.labelName,
  "if then else and or not": tags.keyword,
  "PowerSign! ProductSign! SumSign! ComparisonSign!": tags.operator,
});

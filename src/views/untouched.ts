import { noChange } from "lit";
import { Directive, directive, type PropertyPart } from "lit/directive.js";

/** Marks a field in which something was typed that has not taken effect yet. */
export const markTyped = (field: HTMLElement, isTyped: boolean): void => {
  if (isTyped) field.dataset.typed = "";
  else delete field.dataset.typed;
};

/** Writes a value into a field, but not over what is being typed there: what is shown around it may be drawn meanwhile. */
export const untouched = directive(
  class extends Directive {
    override render(value: string): unknown {
      return value;
    }

    override update(part: PropertyPart, [value]: [string]): unknown {
      const field = part.element as HTMLInputElement;
      return "typed" in field.dataset || field.value === value ? noChange : value;
    }
  },
);

/** True of the shape of a table: a record of lists that is no kind of record of the library. */
export const isTable = (shape: { readonly kind: string; readonly type?: string | null }): boolean =>
  shape.kind === "record" && shape.type === null;

import { readNotebook } from "../../cells/index.ts";

/** The notebooks that come with the app, by the names of their files. */
export interface Shipped {
  readonly texts: Readonly<Record<string, () => Promise<string>>>;
  /** The one that a person sees first. */
  readonly demo: string;
}

/** The text of one of them; null where none has this name. */
export async function shippedText({ texts }: Shipped, name: string): Promise<string | null> {
  return Object.hasOwn(texts, name) ? ((await texts[name]?.()) ?? null) : null;
}

/** Name and title of each, by title. */
export async function shippedTitles({ texts }: Shipped): Promise<readonly (readonly [name: string, title: string])[]> {
  const all = Object.entries(texts).map(async ([name, text]) => [name, readNotebook(await text()).title] as const);
  return (await Promise.all(all)).sort(([, a], [, b]) => a.localeCompare(b, "en"));
}

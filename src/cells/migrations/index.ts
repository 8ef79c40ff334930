/**
 * Older notebook files brought up to date. Each step stands in a file of its own beside this one, `from-1.ts` and so on,
 * with a kept example of the old version in its test, and is added to the end of the list.
 */

/** A notebook file as its JSON has it: an object of any content. */
export type FileObject = Readonly<Record<string, unknown>>;

/**
 * Takes the whole file as one version has it and gives it as the next version has it, `version` itself aside. Pure: its
 * argument stays as it is. What it is given was not checked, so it passes on what it does not understand, or throws an
 * error whose message completes "it cannot be brought up to date: …".
 */
export type Migration = (file: FileObject) => FileObject;

/** The first step makes version 2 of version 1, and so on. */
export const migrations: readonly Migration[] = [];

/** The version that the steps end at: the one that is written. */
export const versionAfter = (steps: readonly Migration[]): number => steps.length + 1;

/**
 * Takes a file of a version from 1 to the current one through the steps that it still needs.
 * @throws what a step throws, and for a version without steps
 */
export function migrate(file: FileObject, version: number, steps: readonly Migration[] = migrations): FileObject {
  const current = versionAfter(steps);
  if (!Number.isInteger(version) || version < 1 || version > current) {
    throw new Error(`got version ${version}, expected a whole number from 1 to ${current}`);
  }
  return steps.slice(version - 1).reduce((old, step, index) => ({ ...step(old), version: version + index + 1 }), file);
}

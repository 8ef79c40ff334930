import { readdirSync, statSync } from "node:fs";
import { join } from "node:path";

/**
 * Says whether something made has to be made again.
 * @param {number | undefined} made when it was made, in milliseconds; undefined when it is not there
 * @param {number | undefined} changed when what it is made from last changed; undefined when there is nothing to make it from
 * @returns {boolean} equal times count as fresh
 */
export function isStale(made, changed) {
  return made === undefined || (changed !== undefined && changed > made);
}

/**
 * When a file was last written.
 * @param {string} path
 * @returns {number | undefined} milliseconds; undefined when there is no such file
 */
export function writtenAt(path) {
  return statSync(path, { throwIfNoEntry: false })?.mtimeMs;
}

/**
 * The latest change to any of some files and folders. Folders count themselves too, so that a deleted file is noticed.
 * @param {readonly string[]} paths those that do not exist are passed over
 * @returns {number | undefined} milliseconds; undefined when none of them exists
 */
export function lastChange(paths) {
  let latest;
  for (const path of paths) {
    const stat = statSync(path, { throwIfNoEntry: false });
    if (stat === undefined) continue;
    const inside = stat.isDirectory() ? lastChange(readdirSync(path).map((name) => join(path, name))) : undefined;
    latest = Math.max(latest ?? 0, stat.mtimeMs, inside ?? 0);
  }
  return latest;
}

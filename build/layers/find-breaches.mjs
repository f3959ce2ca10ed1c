import { posix } from 'node:path';
import { findCycles } from './find-cycles.mjs';
import { importsOf } from './imports-of.mjs';
import { packageDoors, storeys, typesOnly } from './table.mjs';

/** @typedef {import('./table.mjs').Storey} Storey */
/** @typedef {import('./imports-of.mjs').Import} Import */

/**
 * Every import that goes against the table, each as a sentence that names the remedy.
 * @param {ReadonlyMap<string, string>} files path from the project's root, with forward slashes, to text
 * @returns {string[]}
 */
export function findBreaches(files) {
  /** @type {string[]} */
  const breaches = [];
  /** @type {Map<string, string[]>} */
  const graph = new Map();
  for (const [path, text] of files) {
    const storey = storeyOf(path);
    if (storey === undefined) {
      breaches.push(`${path} belongs to no storey; move it, or add its folder to build/layers/table.mjs`);
      continue;
    }
    /** @type {string[]} */
    const targets = [];
    for (const entry of importsOf(path, text)) {
      const specifier = entry.specifier.replace(/\?.*$/, '');
      if (!specifier.startsWith('.')) {
        breaches.push(...packageBreach(path, specifier, entry));
        continue;
      }
      const target = posix.join(posix.dirname(path), specifier);
      if (target.startsWith('../'))
        breaches.push(`${path}:${entry.line} may not import ${target}: it lies outside the project`);
      else if (!/\.\w+$/.test(target))
        breaches.push(`${path}:${entry.line} must import ${specifier} with its extension`);
      else breaches.push(...pathBreach(path, storey, target, entry));
      if (files.has(target)) targets.push(target);
    }
    graph.set(path, targets);
  }
  for (const circle of findCycles(graph)) {
    breaches.push(`${circle.join(' -> ')} is a circle; move what they share into a file of its own`);
  }
  return breaches;
}

/** @param {string} path @returns {Storey | undefined} */
function storeyOf(path) {
  return storeys.find(({ at }) => path === at || path.startsWith(`${at}/`));
}

/**
 * @param {string} path
 * @param {Storey} storey
 * @param {string} target
 * @param {Import} entry
 * @returns {string[]}
 */
function pathBreach(path, storey, target, entry) {
  const other = storeyOf(target);
  if (other === storey) return [];
  const isOpenFile = storey.alsoFiles?.includes(target) === true;
  if (isOpenFile && typesOnly.includes(target) && !entry.isTypeOnly) {
    return [`${path}:${entry.line} may import only types from ${target}; write "import type"`];
  }
  if (isOpenFile || (other !== undefined && storey.uses.includes(other.name))) return [];
  const allowed = [...storey.uses, ...(storey.alsoFiles ?? [])].join(', ') || 'nothing but itself';
  return [`${path}:${entry.line} may not import ${target}; ${storey.name} may use: ${allowed}`];
}

/**
 * @param {string} path
 * @param {string} specifier
 * @param {Import} entry
 * @returns {string[]}
 */
function packageBreach(path, specifier, entry) {
  const rule = packageDoors.find(({ name }) => specifier === name || specifier.startsWith(`${name}/`));
  if (rule === undefined || rule.doors.some((door) => path.startsWith(door))) return [];
  return [`${path}:${entry.line} may not import ${rule.name}; only ${rule.doors.join(', ')} may`];
}

import type { Problem } from '../case/problem.ts';
import { boundsPhrase } from './bounds-phrase.ts';
import { trueMinus } from './true-minus.ts';
import { unitLabel } from './unit-label.ts';

/** What is wrong, in one sentence: which thing, what was given, what is allowed. Every kind has its sentence; there is no default. */
export function problemSentence(problem: Problem): string {
  switch (problem.kind) {
    case 'not text':
      return `The file is not a case: its text cannot be read as JSON (${problem.detail}).`;
    case 'too large':
      return `The file holds ${String(problem.bytes)} characters; a case has at most ${String(problem.most)}.`;
    case 'too deep':
      return `The file is nested more than ${String(problem.most)} levels deep; a case is not.`;
    case 'not a case':
      return `The file does not say that it is a case: "format" is ${problem.given}, and must be "tonne".`;
    case 'newer version':
      return `The file has format version ${problem.given}; this program reads up to ${String(problem.known)}. It was left as it is.`;
    case 'unknown key':
      return `${place(problem.path)} is not something a case can hold.`;
    case 'missing':
      return `${place(problem.path)} is missing.`;
    case 'wrong form':
      return `${place(problem.path)}: ${problem.given} was given; allowed is ${problem.allowed}.`;
    case 'said twice':
      return `${place(problem.path)}: "${problem.given}" stands there twice; each name may stand once.`;
    case 'unknown reference':
      return `${place(problem.path)}: there is no ${problem.what} "${problem.given}"; ${problem.known.length === 0 ? 'there are none' : `there are ${listed(problem.known)}`}.`;
    case 'unknown input':
      return `There is no input "${problem.id}" in this case${problem.near.length === 0 ? '' : `; near to it are ${listed(problem.near)}`}.`;
    case 'worked out':
      return `"${problem.id}" is worked out in this case, from price tiers or from strength, and takes no figure, range or spread of its own.`;
    case 'not a number':
      return `${problem.id}: "${problem.given}" is not a number; write one such as 12.5, with a unit if you like.`;
    case 'which ton':
      return `${problem.id}: "${problem.given}" does not say which ton. Write t (metric), st (short, 907 kg) or lt (long, 1016 kg), and whether bone-dry, air-dry or as received: bdt, adt, t-ar, bdst, adst, st-ar.`;
    case 'wrong unit':
      return `${problem.label} (${problem.id}): "${problem.given}" is another kind of unit; it is given in ${unitName(problem.wanted)}.${unitHint(problem.given, problem.wanted)}`;
    case 'outside':
      return `${problem.label} (${problem.id}): ${trueMinus(problem.given)}${after(problem.unit)} was given; allowed is ${boundsPhrase(problem.allowed, unitLabel(problem.unit))}.`;
    case 'no source':
      return `${problem.label} (${problem.id}) is a carbon factor: a figure that replaces the default must name its source.`;
    case 'wrong boundary':
      return `${problem.label} (${problem.id}) takes in ${problem.wanted}; the figure given takes in ${problem.given} and cannot stand for it.`;
    case 'wrong allocation':
      return `${problem.label} (${problem.id}): a footprint here is made by the ${problem.wanted} rule; the figure given is made by ${problem.given} and cannot stand in it.`;
    case 'no outlet open':
      return `${problem.stream}: in ${problem.year} no destination of the plan is open to take it; let one take residues in that year.`;
    case 'no figure':
      return `${problem.label} (${problem.id}) has no figure; give one in ${unitName(problem.unit)}.`;
  }
}

function place(path: string): string {
  return path === '' ? 'The file' : `"${path}"`;
}

function listed(names: readonly string[]): string {
  const shown = names.slice(0, 12).map((name) => `"${name}"`);
  const more = names.length - shown.length;
  return more > 0 ? `${shown.join(', ')} and ${String(more)} more` : shown.join(', ');
}

/** The unit as people read it, and as it is written in a file where that differs. */
function unitName(unit: string): string {
  const label = unitLabel(unit);
  if (label === '') return 'a plain number';
  return label === unit ? unit : `${label} (written ${unit})`;
}

const tonSymbols: Readonly<Record<string, string>> = {
  bdt: 'bdst and bdlt',
  adt: 'adst and adlt',
  't-ar': 'st-ar and lt-ar',
  'wet-t': 'wet-st and wet-lt',
  gt: 'gst and glt',
};

/** How what was probably meant can be written. */
function unitHint(given: string, wanted: string): string {
  if (/\bGJ\b/u.test(wanted) && /\b[kM]Wh\b(?!-heat)/u.test(given))
    return ' Heat that is counted in MWh or kWh is written MWh-heat (3.6 GJ) or kWh-heat.';
  const tons = Object.entries(tonSymbols).find(([tonne]) => wanted.endsWith(`/${tonne}`) || wanted === tonne)?.[1];
  if (tons !== undefined && /\b(short|long) tons?\b|\b[sl]t\b/iu.test(given))
    return ` Short and long tons of that kind are written ${tons}.`;
  return '';
}

function after(unit: string): string {
  const label = unitLabel(unit);
  return label === '' ? '' : ` ${label}`;
}

import type { Tape } from '../../src/kernel/tape/tape.ts';
import { type StepWords, fixedIn, stepText } from './step-text.ts';

/** What a person would type into cells, with semicolons between the arguments of a function. */
const words: StepWords = {
  add: ([a, b]) => `${a}+${b}`,
  subtract: ([a, b]) => `${a}-${b}`,
  multiply: ([a, b]) => `${a}*${b}`,
  divide: ([a, b]) => `${a}/${b}`,
  addThree: ([a, b, c]) => `${a}+${b}+${c}`,
  addFour: ([a, b, c, d]) => `${a}+${b}+${c}+${d}`,
  power: ([a, b]) => `${a}^${b}`,
  lesser: ([a, b]) => `MIN(${a};${b})`,
  greater: ([a, b]) => `MAX(${a};${b})`,
  whenAbove: ([a, b, c, d]) => `IF(${a}>${b};${c};${d})`,
  within: ([a, b, c]) => `IF(AND(${a}>=${b};${a}<=${c});${a};NA())`,
};

/** The formula of the cell that holds a step, without its equals sign; `cellOf` names the cell of a slot. */
export function cellText(tape: Tape, slot: number, cellOf: (slot: number) => string): string {
  return stepText(tape, slot - tape.firstStep, words, (read) => {
    const fixed = fixedIn(tape, read);
    return fixed === undefined ? cellOf(read) : numberText(fixed);
  });
}

// Limits that do not bind are infinite, and those that must not be reached stand next to them: a spreadsheet has no such numbers.
const largest = 1e300;
const smallest = 1e-300;

function numberText(value: number): string {
  const size = value === 0 ? 0 : Math.min(largest, Math.max(smallest, Math.abs(value)));
  return value < 0 ? `(-${size})` : String(size);
}

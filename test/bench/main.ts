import { type BenchCase, benchCases } from './bench-case.ts';
import { machineWords } from './machine-words.ts';
import type { Measured } from './measured.ts';
import { measureOneValue } from './one-value.ts';
import { measureOfficeTable } from './office-table.ts';
import { ownTimes } from './own-times.ts';
import { peakMiB, toldPeak } from './peak-memory.ts';
import { howToRead, printedCase, printedMachine, printedOwnTimes, printedPeak } from './printed.ts';
import { measureSpreadsheet } from './spreadsheet.ts';
import { measureTable } from './table.ts';
import { measureTornado } from './tornado.ts';
import { measureTrials } from './trials.ts';

// Speeds of the engine. They are reported and never asserted: machines differ, and ratios within one run tell more. The program ends well
// whatever the speeds are.
if (!toldPeak()) report(process.argv.includes('--json'));

function report(asJson: boolean): void {
  const say = (text: string): void => {
    if (!asJson) console.log(`${text}\n`);
  };
  const machine = machineWords();
  say(printedMachine(machine));
  say(howToRead);
  const cases = benchCases().map((bench, place) => {
    // One case is enough for a program that takes seconds for a table.
    const measures = place === 0 ? [...measuresOf(bench), ...officeTable(bench, say)] : measuresOf(bench);
    const measured = { name: bench.name, steps: bench.tape.codes.length, inputs: bench.reaching.length, measures };
    say(printedCase(measured));
    return { bench, measured };
  });
  const peak = peakMiB();
  say(printedPeak(peak));
  const [demonstration] = cases;
  if (demonstration === undefined) return;
  const own = ownTimes(demonstration.bench);
  say(printedOwnTimes(own, demonstration.measured.measures));
  if (!asJson) return;
  const ratios = ratiosOf(demonstration.measured.measures);
  const others = cases.map(({ measured }) => ({ ...measured, ratios: ratiosOf(measured.measures) }));
  console.log(JSON.stringify({ ratios, peakMiB: peak, machine, cases: others, ownTimes: own }, null, 2));
}

function measuresOf(bench: BenchCase): readonly Measured[] {
  return [
    ...measureOneValue(bench),
    ...measureTable(bench),
    ...measureTornado(bench),
    ...measureTrials(bench),
    measureSpreadsheet(bench),
  ];
}

function officeTable(bench: BenchCase, say: (text: string) => void): readonly Measured[] {
  const measured = measureOfficeTable(bench);
  if (measured === null) say('LibreOffice is not installed: the table is not held against its data table.');
  return measured === null ? [] : [measured];
}

function ratiosOf(measures: readonly Measured[]): Record<string, number> {
  return Object.fromEntries(measures.map(({ key, ratio }) => [key, ratio]));
}

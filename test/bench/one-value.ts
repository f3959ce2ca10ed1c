import { DecimalReading } from '../../src/kernel/evaluate/decimal.ts';
import { runTape } from '../../src/kernel/tape/run.ts';
import { slopesOf } from '../../src/kernel/tape/slopes.ts';
import { freshSlots } from '../../src/kernel/tape/tape.ts';
import { type BenchCase, resultId } from './bench-case.ts';
import { fastest } from './fastest.ts';
import { interleaved } from './interleaved.ts';
import { type Measured, timesAsFast, timesAsLong } from './measured.ts';

/** One value, a value with all its slopes, and one value in decimals of 34 digits. */
export function measureOneValue({ open, tape, result, reaching, straight }: BenchCase): readonly Measured[] {
  const { graph } = open.model;
  const values = freshSlots(tape);
  const slopes = new Float64Array(tape.inputIds.length);
  const reference = fastest(straight, (run) => {
    const own = freshSlots(tape);
    return () => run(own);
  });
  const node = graph.positions.get(resultId) ?? 0;
  const { one, withSlopes, decimal, ...forms } = interleaved({
    ...reference.calls,
    one: () => runTape(tape, values),
    withSlopes: () => slopesOf(tape, values, result.slot, slopes),
    decimal: () => new DecimalReading(graph).at(node),
  });
  const line = reference.time(forms);
  return [
    timesAsLong('one', 'one value', one, line),
    timesAsLong('slopes', `a value with its slopes by ${tape.inputIds.length} inputs`, withSlopes, line),
    timesAsFast(
      'slopesAgainstReevaluation',
      `the same, against ${reaching.length} values anew`,
      withSlopes,
      one * reaching.length,
    ),
    timesAsLong('decimal', 'one value in decimals of 34 digits (decimal.js)', decimal, line),
  ];
}

import { freshSlots } from '../../src/kernel/tape/tape.ts';
import { inputRange } from '../../src/study/input-range.ts';
import { ResultTape } from '../../src/study/result-tape.ts';
import { sensitivity } from '../../src/study/sensitivity.ts';
import { type BenchCase, placeOf, resultId, uncompiled } from './bench-case.ts';
import { fastest } from './fastest.ts';
import { interleaved } from './interleaved.ts';
import { type Measured, timesAsLong } from './measured.ts';

/** The result at both ends of every input that reaches it, and the whole study of sensitivity. */
export function measureTornado({ open, tape, result, reaching, straight }: BenchCase): readonly Measured[] {
  const ranges = reaching.flatMap((input) => {
    const range = inputRange(input, 'usual range');
    return range === null ? [] : [{ id: input.id, ends: [range.low, range.high], ...placeOf(tape, input.id) }];
  });
  const bothEnds = (asked: ResultTape): number => {
    let sum = 0;
    for (const { id, ends } of ranges) for (const end of ends) sum += asked.at(id, end);
    return sum;
  };
  const reference = fastest(straight, (run) => {
    const values = freshSlots(tape);
    return () => {
      let sum = 0;
      for (const { place, factor, ends } of ranges) {
        for (const end of ends) {
          values[place] = end * factor;
          sum += run(values);
        }
        values[place] = tape.inputValues[place] ?? NaN;
      }
      return sum;
    };
  });
  for (const [form, call] of Object.entries(reference.calls)) {
    if (!Object.is(call(), bothEnds(result))) throw new Error(`The tornado ${form} is another`);
  }
  const { tornado, withCompilation, study, ...forms } = interleaved({
    ...reference.calls,
    tornado: () => bothEnds(result),
    withCompilation: () => bothEnds(new ResultTape(uncompiled(open), resultId)),
    study: () => sensitivity(open, resultId),
  });
  const line = reference.time(forms);
  return [
    timesAsLong('tornado', `a tornado of ${ranges.length} inputs`, tornado, line),
    timesAsLong('tornadoWithCompilation', 'the same, its tape compiled first', withCompilation, line),
    timesAsLong('sensitivity', 'the whole study of sensitivity', study, line),
  ];
}

import type { PriceMonths } from '../../case/price-months.ts';
import { compileTape } from '../../kernel/tape/compile.ts';
import { runTape } from '../../kernel/tape/run.ts';
import { freshSlots, inputPlace, resultSlot } from '../../kernel/tape/tape.ts';
import type { OpenCase } from '../open-case.ts';

/** A result in one month: both prices in the entry units of their inputs. `value` is NaN where it cannot be worked out. */
export interface MonthResult {
  readonly month: string;
  readonly pulp: number;
  readonly recovered: number;
  readonly value: number;
}

/** A result at the prices of every month, all other figures as in force; and in how many months it is below, above and at nothing. */
export interface MonthResults {
  readonly result: string;
  readonly pulp: string;
  readonly recovered: string;
  readonly months: readonly MonthResult[];
  readonly below: number;
  readonly above: number;
  readonly even: number;
  readonly unknown: number;
}

/** The months must be good ones: inputs that the case has, and prices that can be. */
export function monthResults(open: OpenCase, result: string, { pulp, recovered, points }: PriceMonths): MonthResults {
  const tape = compileTape(open.model.graph, [result]);
  const slot = resultSlot(tape, result);
  const places = [inputPlace(tape, pulp), inputPlace(tape, recovered)] as const;
  const values = freshSlots(tape);
  const at = (pulpPrice: number, recoveredPrice: number): number => {
    values[places[0]] = pulpPrice * tape.inputFactors[places[0]]!;
    values[places[1]] = recoveredPrice * tape.inputFactors[places[1]]!;
    runTape(tape, values);
    return values[slot]!;
  };
  const months = points.map((point): MonthResult => {
    const prices = { pulp: Number(point.pulp), recovered: Number(point.recovered) };
    return { month: point.month, ...prices, value: at(prices.pulp, prices.recovered) };
  });
  const count = (test: (value: number) => boolean): number => months.filter(({ value }) => test(value)).length;
  return {
    result,
    pulp,
    recovered,
    months,
    below: count((value) => value < 0),
    above: count((value) => value > 0),
    even: count((value) => value === 0),
    unknown: count(Number.isNaN),
  };
}

import { type Quantity, constant } from '../kernel/expression/quantity.ts';
import { plainFigure } from './figure.ts';
import type { Plant } from './plant.ts';
import { type Sheet, notNegative } from './sheet.ts';
import type { LineSpec } from './statement-writer.ts';

/**
 * The capital of a route spread over its life by an annuity, at the real rate, for everything else stands at constant prices. The capital
 * of the routes of an investment plan stands there: the inputs are kept, and no line is written.
 */
export function capitalLine(sheet: Sheet, { route }: Plant): readonly LineSpec[] {
  const where = route.label;
  const capexId = `${route.id}.capital`;
  const outlay = sheet.input({
    id: capexId,
    label: 'Capital of the line',
    where,
    unit: 'EUR',
    figure: plainFigure('0', '0', '0', 'EUR', 'none', 'none entered'),
    allowed: notNegative,
  });
  const life = sheet.input({
    id: `${route.id}.capitalLife`,
    label: 'Life of the capital',
    where,
    unit: 'a',
    figure: plainFigure('15', '10', '25', 'a'),
    allowed: { above: '0', most: '100' },
  });
  const plan = sheet.case.investment;
  if (plan !== undefined && (plan.from === route.id || plan.to === route.id)) return [];
  const factor = sheet.define(
    `${route.id}.capitalFactor`,
    'Yearly charge per unit of capital',
    '1/a',
    recoveryFactor(ratesOf(sheet).real, life),
    {
      where,
      note: 'Capital recovery factor at the real rate: r/(1 - (1 + r)^-n), and 1/n where r is nothing.',
    },
  );
  return [
    {
      account: 'capital',
      key: 'capital',
      label: 'Capital charge',
      amount: outlay.times(factor),
      behaviour: 'per year',
      driverId: capexId,
    },
  ];
}

/** The rate of return asked, inflation, and the real rate by Fisher: (1 + nominal)/(1 + inflation) - 1. */
export function ratesOf(sheet: Sheet): {
  readonly nominal: Quantity;
  readonly inflation: Quantity;
  readonly real: Quantity;
} {
  const nominal = sheet.input({
    id: 'capital.rate',
    label: 'Rate of return asked, nominal',
    unit: '1',
    figure: plainFigure('8', '5', '12', '%'),
    allowed: { least: '0', most: '100' },
  });
  const inflation = sheet.input({
    id: 'capital.inflation',
    label: 'General inflation',
    unit: '1',
    figure: plainFigure('2', '1', '4', '%'),
    allowed: { least: '-10', most: '100' },
  });
  const one = constant('1');
  return { nominal, inflation, real: nominal.plus(one).dividedBy(inflation.plus(one)).minus(one) };
}

/** Yearly payment per unit of capital over n years at rate r; both ends of the rate are served, r = 0 as 1/n. Unit 1/a. */
export function recoveryFactor(rate: Quantity, life: Quantity): Quantity {
  const years = life.times(constant('1', '1/a'));
  const discount = rate.plus(constant('1')).toThePower(constant('0').minus(years));
  const annuity = rate.dividedBy(discount.complement());
  const even = constant('1').dividedBy(years);
  const each = rate.times(rate).whenAbove(constant('0'), annuity, even);
  return each.times(constant('1', '1/a'));
}

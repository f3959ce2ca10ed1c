import { expect, it } from 'vitest';
import { evaluated } from '../support/evaluation.ts';
import { smallCase } from '../support/small-case.ts';

it('takes no quotient for fibre: a screen is set by the reject rate of its fibre', () => {
  const screened = (figures: Record<string, string>) => () =>
    evaluated(
      smallCase({
        materials: [{ id: 'paper', origin: 'post-consumer' }],
        stages: [{ id: 'screen', like: 'fine' }],
        figures,
      }),
    );

  expect(screened({ 'mill.line.screen.rejectRate': '18 %' })).not.toThrow();
  expect(screened({ 'mill.line.screen.quotient.fibre': '0.9 1' })).toThrow(/quotient\.fibre/u);
});

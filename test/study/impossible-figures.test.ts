import { describe, expect, it } from 'vitest';
import { changeInput, problemSentence, spreadOf } from '../../src/index.ts';
import { demonstration, problemsOf, valueOf } from '../examples/demonstration.ts';
import { five } from './five-stages.ts';

describe('figures that cannot be', () => {
  it.each([
    { figure: 'a reject rate of 100 %', id: 'mill.line.coarse.rejectRate', typed: '100 %', said: /below 100 %/u },
    {
      figure: 'a quotient over 1',
      id: 'mill.line.coarse.quotient.lights',
      typed: '1.01',
      said: /allowed is below 1\b/u,
    },
    { figure: 'a quotient of 1', id: 'mill.line.coarse.quotient.lights', typed: '1', said: /allowed is below 1\b/u },
    { figure: 'a consistency of 0', id: 'mill.line.coarse.consistency', typed: '0 %', said: /more than 0 %/u },
    { figure: 'a removal of 120 %', id: 'mill.line.pulp.removal.lights', typed: '120 %', said: /0 to 100 %/u },
  ])('are refused in a sentence: $figure', ({ id, typed, said }) => {
    const [problem, ...more] = problemsOf(changeInput(five, id, typed));

    expect(more).toEqual([]);
    expect(problemSentence(problem)).toMatch(said);
    expect(problemSentence(problem)).toContain(id);
  });

  it.each([
    {
      figure: 'shares of 164 %',
      from: demonstration(),
      figures: { 'recovered.mixed.share': '70', 'recovered.bskp.share': '50' },
      said: /^Share of the dry fresh stock \(Recovered middle ply, .*cannot be worked out: it takes .* they already take 164 %\.$/u,
    },
    {
      figure: 'a reject thicker than pure solids',
      from: five,
      figures: { 'mill.line.coarse.thickening': '40' },
      said: /^Reject consistency \(.*stage 1\) cannot be worked out: it comes to 1\.4; possible is at most 1\./u,
    },
    {
      figure: 'more water rejected than fed',
      from: five,
      figures: { 'mill.line.coarse.thickening': '0.1' },
      said: /^Volume rejected \(.*stage 1\) cannot be worked out: it comes to 1\.5; possible is below 1\./u,
    },
    {
      figure: 'a composition of more than 100 %',
      from: five,
      figures: { 'material.paper.ash': '95' },
      said: /^Fibre \(Paper\) cannot be worked out: it comes to −/u,
    },
  ])('are told about in a sentence where they contradict one another, never as NaN: $figure', (row) => {
    const open = Object.entries(row.figures).reduce(
      (before, [id, typed]) => valueOf(changeInput(before, id, typed)),
      row.from,
    );
    const sentences = spreadOf(open).warnings.map(({ sentence }) => sentence);

    expect(sentences.filter((sentence) => row.said.test(sentence))).toHaveLength(1);
    expect(sentences.join(' ')).not.toContain('NaN');
  });
});

import { describe, expect, it } from 'vitest';
import { sameProductQuestions } from '../../../src/case/same-product.ts';
import { type OpenCase, editStructure, openCase, caseText, sameProduct } from '../../../src/index.ts';
import { conditionPhrase } from '../../../src/wording/condition-phrase.ts';
import { sameProductHeading } from '../../../src/wording/same-product-phrase.ts';
import { problemsOf, valueOf } from '../../examples/demonstration.ts';
import { after, open } from '../edited.ts';

type Reply = 'yes' | 'no' | 'not yet';
const pair = { base: 'virgin', with: 'recovered' };
const answered = (replies: readonly (Reply | null)[], from: OpenCase = open): OpenCase =>
  replies.reduce<OpenCase>((before, reply, place) => {
    const question = sameProductQuestions[place]!;
    const answer = reply === null ? null : { reply };
    return after({ kind: 'answer same product', ...pair, question, answer }, before);
  }, from);
const headline = (from: OpenCase): string => conditionPhrase({ capital: 'counted', sameProduct: sameProduct(from) });
const heading = (from: OpenCase): string => sameProductHeading(sameProduct(from));

describe('whether two routes make the same product', () => {
  it('is not confirmed while nobody has answered: five of five are open', () => {
    expect(sameProduct(open)).toMatchObject({ open: 5, stand: 'not confirmed' });
    expect(headline(open)).toBe('If both make the same product (not confirmed)');
    expect(heading(open)).toBe('Not confirmed: five of five are open.');
  });

  it('stays not confirmed while two of five are open, and says so', () => {
    const from = answered(['yes', 'yes', 'yes', 'not yet', null]);

    expect(headline(from)).toBe('If both make the same product (not confirmed)');
    expect(heading(from)).toBe('Not confirmed: two of five are open.');
  });

  it('is a condition no more once all five are answered yes', () => {
    const from = answered(['yes', 'yes', 'yes', 'yes', 'yes']);

    expect(headline(from)).toBe('');
    expect(heading(from)).toBe('Confirmed: all five are answered yes.');
    expect(conditionPhrase({ capital: 'in the plan', sameProduct: sameProduct(from) })).toBe(
      'Before the capital of the plan',
    );
  });

  it('names the question that was answered no, however many are yes', () => {
    const from = answered(['yes', 'yes', 'yes', 'no', 'yes']);

    expect(headline(from)).toBe('If both make the same product (answered no: surface and print)');
    expect(heading(from)).toBe('Not the same: one answered no.');
    expect(headline(answered(['no', null, null, 'no']))).toBe(
      'If both make the same product (answered no: food contact; surface and print)',
    );
  });

  it('is kept with a note, by whom and when, in the text of the case', () => {
    const answer = { reply: 'yes', note: 'Inner ply stays virgin', by: 'R. Invented', on: '2026-11-03' } as const;
    const from = after({ kind: 'answer same product', ...pair, question: 'food contact', answer });
    const again = valueOf(openCase(caseText(from)));

    expect(again.content.sameProduct).toEqual([{ ...pair, answers: [{ question: 'food contact', ...answer }] }]);
  });

  it('is one answer for a pair, whichever of the two stands first', () => {
    const from = answered(['yes']);
    const turned = after({ kind: 'compare routes', base: 'recovered', with: 'virgin' }, from);

    expect(sameProduct(turned).questions[0]?.reply).toBe('yes');
    const denied = {
      kind: 'answer same product',
      base: 'recovered',
      with: 'virgin',
      question: 'food contact',
    } as const;
    expect(after({ ...denied, answer: { reply: 'no' } }, turned).content.sameProduct).toHaveLength(1);
  });

  it('is asked anew of another pair, and forgotten with a route that is removed', () => {
    const three = after({ kind: 'duplicate route', route: 'recovered' }, answered(['yes', 'yes', 'yes', 'yes', 'yes']));

    expect(sameProduct(three, { base: 'virgin', with: 'recovered-2' }).open).toBe(5);
    const without = after({ kind: 'remove route', route: 'recovered' }, three);
    expect(without.content).not.toHaveProperty('sameProduct');
  });

  it('leaves no trace once the only answer is taken back', () => {
    expect(caseText(answered([null], answered(['yes'])))).toBe(caseText(open));
  });

  it('changes no figure', () => {
    const id = 'difference.total';
    expect(answered(['no', 'no', 'no', 'no', 'no']).values.exact(id)).toBe(open.values.exact(id));
  });

  it('cannot be said of a route that is not there, of a route and itself, or of a day that never was', () => {
    const say = (base: string, other: string, on = '2026-11-03') =>
      problemsOf(
        editStructure(open, {
          kind: 'answer same product',
          base,
          with: other,
          question: 'surface',
          answer: { reply: 'yes', on },
        }),
      );

    expect(say('virgin', 'nowhere')).toMatchObject([{ kind: 'unknown reference', path: 'sameProduct.0.with' }]);
    expect(say('virgin', 'virgin')).toMatchObject([{ kind: 'wrong form', path: 'sameProduct.0.with' }]);
    expect(say('virgin', 'recovered', '2026-02-29')).toMatchObject([
      { kind: 'wrong form', path: 'sameProduct.0.answers.0.on', allowed: 'a day of the calendar such as 2027-12-31' },
    ]);
  });
});

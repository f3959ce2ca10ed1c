import { describe, expect, test } from 'vitest';
import { writeCase } from '../../../src/case/write-case.ts';
import { type OpenCase, openCase } from '../../../src/study/open-case.ts';
import { editStructure } from '../../../src/study/edit-structure.ts';
import { footprint } from '../../../src/study/footprint.ts';
import { wasteCodePhrase } from '../../../src/wording/waste-code-phrase.ts';
import { problemSentence } from '../../../src/wording/problem-sentence.ts';
import { demonstration, valueOf } from '../../examples/demonstration.ts';
import { smallCase } from '../../support/small-case.ts';

const codesOf = (open: OpenCase, route: string): Readonly<Record<string, string | undefined>> =>
  Object.fromEntries(
    (footprint(open).routes.find(({ id }) => id === route)?.streams ?? []).map((each) => [
      each.stream,
      each.wasteCode?.code,
    ]),
  );
const codedAs = (stream: string, code: string | null) => ({ kind: 'set waste code', stream, code }) as const;

// European List of Waste: Commission Decision 2000/532/EC as amended by 2014/955/EU, Annex, chapters 03 03 and 10 01; from memory.
describe('the waste code of a stream', () => {
  test('of a recovered line is that of rejects from pulping waste paper, and sludges have their own', () => {
    expect(codesOf(demonstration(), 'recovered')).toEqual({
      rope: '03 03 07',
      junk: '03 03 07',
      coarse: '03 03 07',
      fine: '03 03 07',
      cleaner: '03 03 07',
      primary: '03 03 10',
      broke: '03 03 10',
      biological: '03 03 11',
      ash: undefined,
    });
  });

  test('of cleaner rejects of bought pulp is that of fibre rejects, for no waste paper is pulped', () => {
    expect(codesOf(demonstration(), 'virgin')).toMatchObject({ cleaner: '03 03 10', biological: '03 03 11' });
  });

  test('of what flotation and washing take out is that of deinking sludges', () => {
    const stages = [
      { id: 'float', like: 'flot1' },
      { id: 'wash', like: 'washer' },
    ];
    const open = valueOf(openCase(writeCase(smallCase({ stages }))));

    expect(codesOf(open, 'mill')).toMatchObject({ deinking: '03 03 05', wash: '03 03 05' });
  });

  test('is told with what it stands for and who decides', () => {
    const [rope, ash] = ['rope', 'ash'].map(
      (stream) =>
        footprint(demonstration())
          .routes.find(({ id }) => id === 'recovered')
          ?.streams.find((each) => each.stream === stream)?.wasteCode ?? null,
    );

    expect(wasteCodePhrase(rope ?? null)).toBe(
      'Waste code 03 03 07, the usual one: mechanically separated rejects from pulping of waste paper and cardboard.',
    );
    expect(wasteCodePhrase(ash ?? null)).toBe('No waste code is usual: to be classified by test.');
  });

  test('can be another for a case, and the usual one again', () => {
    const given = valueOf(editStructure(demonstration(), codedAs('ash', '10 01 15')));

    expect(codesOf(given, 'recovered')).toMatchObject({ ash: '10 01 15', rope: '03 03 07' });
    expect(writeCase(given.content)).toContain('"code": "10 01 15"');
    const back = valueOf(editStructure(given, codedAs('ash', null)));
    expect(writeCase(back.content)).toBe(writeCase(demonstration().content));
  });

  test.each([
    [
      codedAs('ash', '100115'),
      '"wasteCodes.0.code": "100115" was given; allowed is six digits such as "03 03 10", with * behind where the waste is hazardous.',
    ],
    [codedAs('soot', '10 01 15'), /there is no residue stream "soot"/u],
  ])('is refused where it has another form or no such stream', (edit, sentence) => {
    const refused = editStructure(demonstration(), edit);

    expect(refused.ok ? '' : refused.problems.map(problemSentence).join()).toMatch(sentence);
  });
});

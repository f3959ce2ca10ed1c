import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readCase } from '../../src/case/read-case.ts';
import { writeCase } from '../../src/case/write-case.ts';
import { changeInput, openCase } from '../../src/study/open-case.ts';
import { sampleText } from './sample-case.ts';

const numeral = fc
  .tuple(
    fc.constantFrom('', '-', '+', '\u2212'),
    fc.stringMatching(/^\d{1,45}$/),
    fc.constantFrom('', '.5', '.000000000000000000000000000000000001'),
    fc.constantFrom('', 'e3', 'E-7', 'e30', 'e-30', 'e39', 'e99', 'e-99', 'e400'),
  )
  .map((parts) => parts.join(''));
const unit = fc.constantFrom('', ' EUR/t', ' €/t', ' EUR/st', ' EUR/kg', ' EUR/ton');

describe('a figure that was typed', () => {
  it('can be saved and read again, whenever it was accepted', () => {
    const opened = openCase(sampleText);
    if (!opened.ok) throw new Error('The sample does not open');
    let accepted = 0;
    fc.assert(
      fc.property(fc.tuple(numeral, unit), ([digits, written]) => {
        const changed = changeInput(opened.value, 'yard.priceDifference', `${digits}${written}`);
        if (!changed.ok) return;
        accepted += 1;
        const { content } = changed.value;

        expect(readCase(writeCase(content))).toEqual({ ok: true, value: content });
      }),
      { numRuns: 60 },
    );
    expect(accepted).toBeGreaterThan(5);
  });
});

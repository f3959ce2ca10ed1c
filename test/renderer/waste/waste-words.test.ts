import { describe, expect, it } from 'vitest';
import { NumberStyle } from '../../../renderer/numbers/number-style.ts';
import { shortNotice } from '../../../renderer/screens/waste/attribution.ts';
import { tableHtml, tabText } from '../../../renderer/screens/waste/cells.ts';
import { claimWarnings, closeCall, headline } from '../../../renderer/screens/waste/headline.ts';
import { stepsPath } from '../../../renderer/screens/waste/methane-layout.ts';
import { carbonScale } from '../../../renderer/screens/waste/scales.ts';
import { ways } from '../../../renderer/screens/waste/ways.ts';
import { gridAttribution } from '../../../src/index.ts';
import { demonstrationSpread } from '../open-demonstration.ts';
import { demonstrationFacing } from './facing.ts';

const facing = demonstrationFacing();
const numbers = new NumberStyle('en', 'EUR');
const perTonne = carbonScale('tonne', 96_000);

describe('the sentence that answers first', () => {
  it('says who carries more, and by how much', () => {
    const { before, figure, after } = headline(facing, perTonne, 'a tonne', false, numbers);
    expect([before, figure, after]).toEqual(['Recovered carries', '217\u00a0kg', 'a tonne less.']);

    const turned = headline({ base: facing.with, with: facing.base }, perTonne, 'a tonne', false, numbers);
    expect([turned.before, turned.after]).toEqual(['Virgin carries', 'a tonne more.']);
  });

  it('calls nobody better where the factors leave more open than the routes differ by', () => {
    const { warnings } = demonstrationSpread();

    expect(closeCall(warnings)).toContain('Neither can be called better.');
    expect(headline(facing, perTonne, 'a tonne', true, numbers).before).toBe('Too close to call: recovered carries');
    expect(claimWarnings(warnings).length).toBeGreaterThan(0);
    expect(claimWarnings(warnings)).not.toContain(closeCall(warnings));
  });

  it('takes the names of the routes where both are of one kind', () => {
    const alike = headline({ base: facing.with, with: facing.with }, perTonne, 'a tonne', false, numbers);

    expect(alike.before).toBe('Recovered middle ply carries');
  });
});

describe('where a stream goes', () => {
  const stream = (name: string) => facing.with.streams.find((each) => each.stream === name);

  it.each([
    { name: 'fine', words: 'burned' },
    { name: 'rope', words: 'landfill 80, sold 20' },
    { name: 'coarse', words: 'burned 40, boiler 60' },
  ])('is said of $name as "$words"', ({ name, words }) => {
    const found = stream(name);
    if (found === undefined) throw new Error(`No ${name}`);

    expect(ways(found)).toBe(words);
  });
});

describe('a table as cells', () => {
  const cells = [
    ['cause', 'kg'],
    ['Fibre <made>\n& more', 1.5],
    ['=1+1', -2],
    ['not yet', Number.NaN],
  ];

  it('keeps figures as figures, in the mark of the person, and words as words', () => {
    expect(tabText(cells, ',')).toBe("cause\tkg\nFibre <made> & more\t1,5\n'=1+1\t-2\nnot yet\t");
  });

  it('is a table of the web as well', () => {
    expect(tableHtml(cells.slice(0, 2), '.')).toBe(
      '<table><tr><th>cause</th><th>kg</th></tr><tr><td>Fibre &lt;made&gt; &amp; more</td><td>1.5</td></tr></table>',
    );
  });
});

it('names whom the grid figures are owed to, and their licence, in one line', () => {
  expect(shortNotice(gridAttribution)).toBe(
    'Grid: Ember, yearly electricity data, by way of CO2.js of the Green Web Foundation. Licence: CC BY-SA 4.0.',
  );
});

it('draws each year as high as its share of the largest', () => {
  expect(stepsPath([2, 1], 2, 100, 40)).toBe('M0 40V0.0H50.0V20.0H100.0V40Z');
  expect(stepsPath([0, 0], 0, 100, 40)).toBe('');
});

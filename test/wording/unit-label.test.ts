import { describe, expect, it } from 'vitest';
import { unitLabel } from '../../src/wording/unit-label.ts';
import { entryFactor } from '../../src/kernel/units/entry-unit.ts';
import { parseUnit } from '../../src/kernel/units/unit.ts';
import { withTradeSymbols, worths } from '../../src/paper/trade-units.ts';
import { demonstration } from '../examples/demonstration.ts';

describe('a unit', () => {
  it.each([
    ['1', ''],
    ['%', '%'],
    ['EUR/kWh', '€/kWh'],
    ['GBP/t', '£/t'],
    ['USD/t', 'USD/t'],
    ['EUR/t-ar', '€/t as received'],
    ['EUR/wet-t', '€/wet t'],
    ['m3/t', 'm³/t'],
    ['1/a', 'per year'],
    ['t/a', 't/year'],
    ['kgCO2e/t', 'kg CO2e/t'],
    ['tCO2/bdt', 't CO2/bdt'],
    ['EUR/t/a', '€/t/year'],
    ['m^2', 'm^2'],
    ['C', '°C'],
  ])('%s is shown as "%s"', (unit, label) => {
    expect(unitLabel(unit)).toBe(label);
  });

  it('can be typed as it is shown, for every input of the demonstration case', () => {
    for (const { id, entryUnit } of demonstration().model.graph.inputs) {
      const shown = unitLabel(entryUnit);
      if (shown === '') continue;
      const typed = parseUnit(withTradeSymbols(shown));
      expect(entryFactor(typed, parseUnit(entryUnit), worths), `${id}: ${shown}`).toBe('1');
    }
  });
});

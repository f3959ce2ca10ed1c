import { Decimal } from '../../kernel/evaluate/decimal-settings.ts';
import { Failure } from '../../kernel/evaluate/failure.ts';
import type { ModelCells } from '../model/model-cells.ts';
import type { CheckRow } from './check-row.ts';

/** A sum of quantities with signs. */
interface Term {
  readonly id: string;
  readonly sign: 1 | -1;
}

/** The laws that the figures keep whatever they are: mass, the machine, water, costs, the difference and carbon. */
export function modelChecks(cells: ModelCells, sheet: string): readonly CheckRow[] {
  const { content, model } = cells.open;
  const row = (
    label: string,
    where: string,
    terms: readonly Term[],
    measured: readonly string[],
  ): readonly CheckRow[] => {
    const offBy = sumOf(cells, sheet, terms);
    const measure = sizeOf(cells, sheet, measured);
    return offBy === null || measure === null ? [] : [{ label, where, offBy, measure }];
  };
  const plus = (...ids: readonly string[]): readonly Term[] => ids.map((id) => ({ id, sign: 1 }));
  const minus = (...ids: readonly string[]): readonly Term[] => ids.map((id) => ({ id, sign: -1 }));
  const routes = model.routes.flatMap(({ plant, statement, causes }): readonly CheckRow[] => {
    const { id, label, lines } = plant.route;
    const machine = (name: string): string => `${id}.machine.${name}`;
    const comesIn = ['stock', 'wetEndAdditives', 'surfaceAdditives', 'brokeMass'].map(machine);
    const goesOut = ['brokeRejects', 'gross', 'wetEndLossMass'].map(machine);
    const ofTonne = statement.lines.map((line) => line.perTonneId);
    const ofYear = statement.lines.map((line) => line.perYearId);
    const ofCauses = causes.map((cause) => cause.quantityId);
    return [
      ...lines.flatMap((line) =>
        row('Mass closes', `${label}, ${line.label}`, plus(`${id}.${line.id}.closure`), [`${id}.${line.id}.feed`]),
      ),
      ...row('Machine balance closes', label, [...plus(...comesIn), ...minus(...goesOut)], [machine('gross')]),
      ...row('Water closes', label, plus(`${id}.water.closure`), [`${id}.water.elsewhere`]),
      ...row('Costs per tonne add up', label, [...plus(statement.totalId), ...minus(...ofTonne)], ofTonne),
      ...row('Costs per year add up', label, [...plus(statement.totalPerYearId), ...minus(...ofYear)], ofYear),
      ...row('Carbon adds up', label, [...plus(`${id}.footprint.total`), ...minus(...ofCauses)], ofCauses),
    ];
  });
  const { totalId, totalPerYearId, rows, baseId, withId } = model.difference;
  const pair = content.routes.filter(({ id }) => id === baseId || id === withId).map(({ label }) => label);
  const ofTonne = rows.map((each) => each.perTonneId);
  const ofYear = rows.map((each) => each.perYearId);
  return [
    ...routes,
    ...row('Bridge per tonne adds up', pair.join(', '), [...plus(totalId), ...minus(...ofTonne)], ofTonne),
    ...row('Bridge per year adds up', pair.join(', '), [...plus(totalPerYearId), ...minus(...ofYear)], ofYear),
  ];
}

type Worked = CheckRow['offBy'];

/** Null where the case has not all of the quantities. */
function sumOf(cells: ModelCells, sheet: string, terms: readonly Term[]): Worked | null {
  const formulas = terms.flatMap(({ id, sign }) => {
    const link = cells.link(id, sheet);
    return link === null ? [] : [`${sign < 0 ? '-' : '+'}${link.formula}`];
  });
  if (formulas.length < terms.length || formulas.length === 0) return null;
  const sum = terms.reduce((before: Decimal | null, { id, sign }) => {
    const value = cells.open.values.of(id);
    return before === null || value instanceof Failure ? null : before.plus(value.times(sign));
  }, new Decimal(0));
  return { formula: formulas.join('').replace(/^\+/u, ''), result: sum?.toNumber() ?? NaN };
}

function sizeOf(cells: ModelCells, sheet: string, ids: readonly string[]): Worked | null {
  const linked = ids.flatMap((id) => cells.link(id, sheet) ?? []);
  if (linked.length < ids.length || linked.length === 0) return null;
  return {
    formula: linked.map((each) => `ABS(${each.formula})`).join('+'),
    result: ids.reduce((sum, id) => sum + Math.abs(cells.open.values.number(id)), 0),
  };
}

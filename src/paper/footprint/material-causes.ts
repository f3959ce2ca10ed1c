import type { Material } from '../../case/case.ts';
import { type Quantity, constant, total } from '../../kernel/expression/quantity.ts';
import type { AdditiveUse } from '../additives.ts';
import { type CarbonFigure, carbonFactor, carbonFactors } from '../carbon-factors.ts';
import { chemicalEntries } from '../catalogue.ts';
import type { ChemicalUse } from '../chemicals.ts';
import { plainFigure } from '../figure.ts';
import type { Plant } from '../plant.ts';
import { type Sheet, notNegative } from '../sheet.ts';
import type { Cause } from './cause.ts';
import { asFactor, factorInput } from './factor-input.ts';

/** Pulp from cradle to gate, recovered paper from its collection (cut-off rule), freight, chemicals and additives. All scope 3. */
export function materialCauses(
  sheet: Sheet,
  plant: Plant,
  chemicals: readonly ChemicalUse[],
  additives: readonly AdditiveUse[],
): readonly Cause[] {
  const { route } = plant;
  const bought = sheet.case.materials.filter((material) =>
    plant.lines.some((line) => line.grades.some((grade) => grade.material === material.id)),
  );
  const of = (materials: readonly Material[]): Quantity =>
    total(
      materials.map((material) => fibreCarbon(sheet, plant, material)),
      'kgCO2e/t',
    );
  const virgin = bought.filter((material) => material.origin === 'virgin');
  const recovered = bought.filter((material) => material.origin !== 'virgin');
  const freight = bought.map((material) => freightCarbon(sheet, plant, material));
  const substances = [
    ...chemicals.map((use) => chemicalCarbon(sheet, use)),
    ...additives.map((use) => additiveCarbon(sheet, use)),
  ];
  const factorsOf = (materials: readonly Material[], what: string): readonly string[] =>
    materials.map((material) => `material.${material.id}.${what}`);
  return [
    {
      id: 'pulp',
      label: 'Pulp, before the mill',
      scope: 'scope 3',
      amount: of(virgin),
      factorIds: factorsOf(virgin, 'carbon'),
      note: 'Bought pulp from cradle to its mill\u2019s gate; its mill\u2019s energy is in this figure and in no other.',
    },
    {
      id: 'collection',
      label: 'Paper, collected and sorted',
      scope: 'scope 3',
      amount: of(recovered),
      factorIds: factorsOf(recovered, 'carbon'),
      note: 'Recovered paper starts at its collection.',
    },
    {
      id: 'freight',
      label: 'Freight in',
      scope: 'scope 3',
      amount: total(freight, 'kgCO2e/t'),
      factorIds: [...new Set(bought.map((material) => `carbon.freight.${material.transport ?? 'road'}`))],
      note: 'Tonnes as received times distance times the factor of the means of transport.',
    },
    {
      id: 'substances',
      label: 'Chemicals and fillers',
      scope: 'scope 3',
      amount: total(substances, 'kgCO2e/t'),
      factorIds: [
        ...chemicals.map((use) => `chemical.${use.id}.carbon`),
        ...additives.map((use) => `additive.${use.id}.carbon`),
      ],
      note: `Every chemical and additive of ${route.label} times its carbon.`,
    },
  ];
}

/** A pulp that the program's list does not hold is taken for softwood kraft until somebody says better. */
function pulpFactor(material: Material): CarbonFigure {
  return carbonFactors.get(`pulp.${material.like ?? ''}`) ?? carbonFactor('pulp.bskp');
}

/** Virgin pulp is reckoned per air-dry tonne, recovered paper per tonne as received. */
function fibreCarbon(sheet: Sheet, { route }: Plant, material: Material): Quantity {
  const id = `material.${material.id}.carbon`;
  const received = sheet.graph.later(`${route.id}.received.${material.id}`, 't-ar/t');
  if (material.origin !== 'virgin') {
    const figure =
      material.origin === 'own broke'
        ? { ...carbonFactor('collection'), value: '0', low: '0' }
        : carbonFactor('collection');
    return received.times(factorInput(sheet, id, 'Collected and sorted', figure, material.label));
  }
  const bought = sheet.graph.later(`${route.id}.bought.${material.id}`, 'bdt/t');
  const factor = factorInput(sheet, id, 'Cradle to gate', pulpFactor(material), material.label);
  return bought.dividedBy(constant('0.9', 'bdt/adt')).times(factor);
}

function freightCarbon(sheet: Sheet, { route }: Plant, material: Material): Quantity {
  const mode = material.transport ?? 'road';
  const usual =
    material.origin === 'virgin' ? plainFigure('600', '100', '1500', 'km') : plainFigure('100', '30', '300', 'km');
  const distance = sheet.input({
    id: `material.${material.id}.distance`,
    label: 'Distance to the mill',
    where: material.label,
    unit: 'km',
    figure: usual,
    allowed: notNegative,
  });
  const factor = factorInput(sheet, `carbon.freight.${mode}`, `Freight by ${mode}`, carbonFactor(`freight.${mode}`));
  const received = sheet.graph.later(`${route.id}.received.${material.id}`, 't-ar/t');
  return received.times(distance).times(constant('1', 't-km/km/t-ar')).times(factor);
}

function chemicalCarbon(sheet: Sheet, use: ChemicalUse): Quantity {
  const figure = chemicalEntries.get(use.id)?.carbon ?? plainFigure('1.5', '0.5', '3', 'kgCO2e/kg');
  const factor = sheet.input({
    id: `chemical.${use.id}.carbon`,
    label: `${use.label}, cradle to gate`,
    unit: 'kgCO2e/kg',
    figure: asFactor(figure, 'cradle to gate'),
    allowed: notNegative,
  });
  return use.amount.times(factor);
}

function additiveCarbon(sheet: Sheet, use: AdditiveUse): Quantity {
  const figure = carbonFactor(use.kind === 'mineral' ? 'additive.filler' : 'additive.starch');
  const factor = factorInput(sheet, `additive.${use.id}.carbon`, `${use.label}, cradle to gate`, figure);
  return use.amount.times(constant('1000', 'kg/bdt')).times(factor);
}

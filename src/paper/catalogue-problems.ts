import type { Case } from '../case/case.ts';
import type { Problem } from '../case/problem.ts';
import { carbonFactors, gridRegions } from './carbon-factors.ts';
import { basisOf } from './footprint/basis.ts';
import { chemicalEntries, machineEntries, materialEntries, residueEntries, stageEntries } from './catalogue.ts';

/** Names in a case that the program's lists of materials, machines, stages and chemicals do not hold. */
export function catalogueProblems(content: Case): readonly Problem[] {
  const chemicals = [...chemicalEntries.keys(), ...content.chemicals.map((chemical) => chemical.id)];
  const streams = [...residueEntries.keys()];
  const problems: Problem[] = [
    ...unknown('product.machine', content.product.machine, 'machine', [...machineEntries.keys()]),
  ];
  content.materials.forEach(({ like }, m) => {
    if (like !== undefined)
      problems.push(...unknown(`materials.${String(m)}.like`, like, 'material', [...materialEntries.keys()]));
  });
  const { fuel, grid, climate } = basisOf(content.basis);
  problems.push(
    ...unknown('basis.fuel', fuel, 'fuel', namesUnder('fuel', 'use')),
    ...unknown('basis.climate', climate, 'climate', namesUnder('landfill.k')),
    ...unknown(
      'basis.grid',
      grid,
      'grid region',
      gridRegions().map(({ key }) => key),
    ),
  );
  content.chemicals.forEach(({ endsIn }, c) => {
    if (endsIn !== undefined)
      problems.push(...unknown(`chemicals.${String(c)}.endsIn`, endsIn, 'residue stream', streams));
  });
  content.residues?.forEach(({ stream }, s) =>
    problems.push(...unknown(`residues.${String(s)}.stream`, stream, 'residue stream', streams)),
  );
  content.wasteCodes?.forEach(({ stream }, s) =>
    problems.push(...unknown(`wasteCodes.${String(s)}.stream`, stream, 'residue stream', streams)),
  );
  content.routes.forEach((route, r) => {
    const at = `routes.${String(r)}`;
    if (route.machine !== undefined)
      problems.push(...unknown(`${at}.machine`, route.machine, 'machine', [...machineEntries.keys()]));
    route.machineChemicals.forEach((chemical, c) =>
      problems.push(...unknown(`${at}.machineChemicals.${String(c)}`, chemical, 'chemical', chemicals)),
    );
    route.lines.forEach((line, l) => {
      line.stages.forEach((stage, s) =>
        problems.push(
          ...unknown(`${at}.lines.${String(l)}.stages.${String(s)}.like`, stage.like, 'stage', [
            ...stageEntries.keys(),
          ]),
        ),
      );
    });
  });
  return problems;
}

function unknown(path: string, given: string, what: string, known: readonly string[]): readonly Problem[] {
  return known.includes(given) ? [] : [{ kind: 'unknown reference', path, given, what, known }];
}

/** Names in the keys of carbon factors: "fuel.lpg.use" holds "lpg" between "fuel" and "use". */
export function namesUnder(prefix: string, suffix = ''): readonly string[] {
  const end = suffix === '' ? '' : `.${suffix}`;
  return [...carbonFactors.keys()]
    .filter((key) => key.startsWith(`${prefix}.`) && key.endsWith(end))
    .map((key) => key.slice(prefix.length + 1, key.length - end.length));
}

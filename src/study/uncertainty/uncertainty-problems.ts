import type { Problem } from '../../case/problem.ts';
import type { Correlation, GivenDistribution, Uncertainty } from '../../case/what-if.ts';
import { keepsBounds } from '../../kernel/evaluate/keeps-bounds.ts';
import { type InputDeclaration, inForce } from '../../kernel/graph/input-declaration.ts';
import { soldOutId } from '../../paper/machine-effect/effect-ids.ts';
import { outside, unknownInput } from '../input-problems.ts';

type Inputs = ReadonlyMap<string, InputDeclaration>;

/** What is wrong with how uncertain inputs are drawn, by its place in the file. */
export function uncertaintyProblems(uncertainty: Uncertainty | undefined, inputs: Inputs): readonly Problem[] {
  if (uncertainty === undefined) return [];
  return [
    ...Object.entries(uncertainty.inputs).flatMap(([id, given]) => distributionProblems(id, given, inputs)),
    ...correlationProblems(uncertainty),
  ];
}

function distributionProblems(id: string, given: GivenDistribution, inputs: Inputs): readonly Problem[] {
  const input = inputs.get(id);
  if (input === undefined) return [unknownInput(id, inputs)];
  const path = `uncertainty.inputs.${id}`;
  if (id === soldOutId && given.law !== 'fixed')
    return [
      wrong(path, given.law, 'no distribution: what limits the machine is a switch, and is compared in scenarios'),
    ];
  const { low, mode, high, values = [] } = given;
  const written = [low, mode, high, ...values.map(({ value }) => value)].filter((text) => text !== undefined);
  return [
    ...lawProblems(path, given, inForce(input)),
    ...written.flatMap((text) => outside(input, text)),
    ...(given.persistence !== undefined && !keepsBounds(given.persistence, { least: '0', most: '1' })
      ? [wrong(`${path}.persistence`, given.persistence, 'a number from 0 to 1')]
      : []),
  ];
}

function lawProblems(path: string, given: GivenDistribution, figure: string | null): readonly Problem[] {
  const { law, low, high, deviation, values } = given;
  // A mode that is left out is the figure in force, and stretches the ends if it lies beyond them: no price may be refused for that.
  const middle = law === 'normal' || law === 'lognormal' ? (given.mean ?? figure) : (given.mode ?? figure);
  const missing = (key: string): readonly Problem[] => [{ kind: 'missing', path: `${path}.${key}` }];
  const disorder = low !== undefined && high !== undefined && Number(low) >= Number(high);
  const ends = disorder ? [wrong(path, `${low} to ${high}`, 'a low end below the high end')] : [];
  switch (law) {
    case 'fixed':
      return [];
    case 'uniform':
      return [...(low === undefined ? missing('low') : []), ...(high === undefined ? missing('high') : []), ...ends];
    case 'triangular':
    case 'PERT':
      if (low === undefined || high === undefined)
        return [...(low === undefined ? missing('low') : []), ...(high === undefined ? missing('high') : [])];
      if (middle === null) return missing('mode');
      return given.mode !== undefined && (Number(middle) < Number(low) || Number(middle) > Number(high))
        ? [...ends, wrong(`${path}.mode`, middle, `a most likely figure from ${low} to ${high}`)]
        : ends;
    case 'normal':
    case 'lognormal':
      if (deviation === undefined) return missing('deviation');
      if (middle === null) return missing('mean');
      return [
        ...ends,
        ...(Number(deviation) <= 0 ? [wrong(`${path}.deviation`, deviation, 'a number above 0')] : []),
        ...(given.mean === undefined ? [] : meanProblems(path, given, given.mean)),
      ];
    case 'discrete': {
      if (values === undefined) return missing('values');
      const weights = values.map(({ weight }) => Number(weight));
      const sum = weights.reduce((total, weight) => total + weight, 0);
      return weights.some((weight) => weight < 0) || sum <= 0
        ? [wrong(`${path}.values`, weights.join(', '), 'weights of 0 or more, one of them above 0')]
        : [];
    }
  }
}

/** A mean that is left out is the figure in force, and stretches the ends if it lies beyond them. */
function meanProblems(path: string, { law, low, high }: GivenDistribution, mean: string): readonly Problem[] {
  if (law === 'lognormal' && Number(mean) <= 0) return [wrong(`${path}.mean`, mean, 'a number above 0')];
  const [least, most] = [Number(low ?? -Infinity), Number(high ?? Infinity)];
  return Number(mean) < least || Number(mean) > most
    ? [wrong(`${path}.mean`, mean, `a mean from ${low ?? 'any number'} to ${high ?? 'any number'}`)]
    : [];
}

function correlationProblems({ inputs, correlations = [] }: Uncertainty): readonly Problem[] {
  const met = new Set<string>();
  return correlations.flatMap(({ one, other, value }: Correlation, place): readonly Problem[] => {
    const path = `uncertainty.correlations.${String(place)}`;
    const known = Object.keys(inputs);
    const strange = [one, other].filter((id) => !known.includes(id));
    const pair = [one, other].sort().join(' ');
    const twice = met.has(pair);
    met.add(pair);
    return [
      ...strange.map((given): Problem => ({ kind: 'unknown reference', path, given, what: 'uncertain input', known })),
      ...(one === other ? [wrong(`${path}.other`, other, 'another input')] : []),
      ...(twice ? [{ kind: 'said twice', path, given: pair } as const] : []),
      ...(keepsBounds(value, { least: '-1', most: '1' })
        ? []
        : [wrong(`${path}.value`, value, 'a number from -1 to 1')]),
    ];
  });
}

function wrong(path: string, given: string, allowed: string): Problem {
  return { kind: 'wrong form', path, given, allowed };
}

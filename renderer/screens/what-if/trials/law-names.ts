import type { DistributionLaw } from '../../../../src/index.ts';

/** Laws as they are called, the simplest first. */
const names: Readonly<Record<DistributionLaw, string>> = {
  fixed: 'fixed',
  uniform: 'uniform',
  triangular: 'triangular',
  PERT: 'PERT',
  normal: 'normal',
  lognormal: 'lognormal',
  discrete: 'discrete',
};

export const lawChoices = Object.entries(names).map(([value, label]) => ({ value, label }));

export function lawNamed(name: string): DistributionLaw | null {
  return Object.hasOwn(names, name) ? (name as DistributionLaw) : null;
}

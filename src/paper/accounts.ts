import type { Behaviour, Nature } from '../case/case.ts';

/** The accounts of a statement, in the order in which they are shown, and the group of the ledger each belongs to. */
export const accounts = [
  { id: 'fibre', label: 'Fibre', group: 'fibre' },
  { id: 'freight', label: 'Inbound freight and handling', group: 'fibre' },
  { id: 'electricity', label: 'Electricity', group: 'energy' },
  { id: 'heat', label: 'Heat', group: 'energy' },
  { id: 'chemicals', label: 'Chemicals', group: 'chemicals' },
  { id: 'additives', label: 'Fillers, starch and coating', group: 'chemicals' },
  { id: 'water', label: 'Water and effluent', group: 'water and residue' },
  { id: 'residues', label: 'Residues', group: 'water and residue' },
  { id: 'credits', label: 'Credits', group: 'water and residue' },
  { id: 'carbon', label: 'Carbon', group: 'carbon' },
  { id: 'labour', label: 'Preparation labour', group: 'people and plant' },
  { id: 'maintenance', label: 'Maintenance', group: 'people and plant' },
  { id: 'machineFixed', label: 'Machine fixed cost', group: 'people and plant' },
  { id: 'productPrice', label: 'Product price difference', group: 'people and plant' },
  { id: 'charges', label: 'Other charges', group: 'people and plant' },
  { id: 'capital', label: 'Capital charge', group: 'people and plant' },
  { id: 'machineEffect', label: 'Machine effect', group: 'machine effect' },
] as const;

export type AccountId = (typeof accounts)[number]['id'];
export type GroupId = (typeof accounts)[number]['group'];

export const groups: readonly { readonly id: GroupId; readonly label: string }[] = [
  { id: 'fibre', label: 'Fibre' },
  { id: 'energy', label: 'Energy' },
  { id: 'chemicals', label: 'Chemicals and fillers' },
  { id: 'water and residue', label: 'Water and residue' },
  { id: 'carbon', label: 'Carbon' },
  { id: 'people and plant', label: 'People and plant' },
  { id: 'machine effect', label: 'Machine effect' },
];

/** One line of a route's statement. Its figures are quantities of the graph. */
export interface CostLine {
  readonly account: AccountId;
  /** Within the account; lines of two routes with the same key face each other. */
  readonly key: string;
  readonly label: string;
  readonly perTonneId: string;
  readonly perYearId: string;
  /** The input or quantity that sets the line, if one does. */
  readonly driverId: string | null;
  readonly behaviour: Behaviour;
  /** Whether the money stops when the route is given up. */
  readonly avoidable: boolean;
  readonly nature: Nature;
}

/** The statement of one route: its lines, and the ids of the sums over them. */
export interface Statement {
  readonly routeId: string;
  readonly lines: readonly CostLine[];
  readonly totalId: string;
  readonly totalPerYearId: string;
  readonly withoutPolicyId: string;
}

export const accountIdOf = (routeId: string, account: AccountId): string => `${routeId}.cost.${account}`;
export const accountPerYearIdOf = (routeId: string, account: AccountId): string => `${routeId}.costPerYear.${account}`;
export const groupIdOf = (routeId: string, group: GroupId): string =>
  `${routeId}.cost.group.${group.replaceAll(' ', '-')}`;
export const groupPerYearIdOf = (routeId: string, group: GroupId): string =>
  `${routeId}.costPerYear.group.${group.replaceAll(' ', '-')}`;

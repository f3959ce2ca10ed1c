import type { Case } from '../../case/case.ts';
import type { AccountId, CostLine } from '../accounts.ts';

/** Prices that rise together, faster or slower than money in general. */
export const priceGroups = [
  { id: 'pulp', label: 'Pulp' },
  { id: 'recovered', label: 'Recovered paper' },
  { id: 'freight', label: 'Inbound freight' },
  { id: 'power', label: 'Power' },
  { id: 'heat', label: 'Fuel and heat' },
  { id: 'chemicals', label: 'Chemicals and additives' },
  { id: 'water', label: 'Water and effluent' },
  { id: 'waste', label: 'Haulage and gate fees' },
  { id: 'landfillTax', label: 'Landfill tax' },
  { id: 'sales', label: 'Residues sold' },
  { id: 'carbon', label: 'Carbon' },
  { id: 'wages', label: 'Wages' },
  { id: 'maintenance', label: 'Maintenance' },
  { id: 'product', label: 'Product price difference' },
  { id: 'machine', label: 'Machine effect' },
  { id: 'other', label: 'Other charges' },
] as const;

export type PriceGroup = (typeof priceGroups)[number]['id'];

const ofAccount: Readonly<Record<Exclude<AccountId, 'fibre'>, PriceGroup>> = {
  freight: 'freight',
  electricity: 'power',
  heat: 'heat',
  chemicals: 'chemicals',
  additives: 'chemicals',
  water: 'water',
  residues: 'waste',
  credits: 'sales',
  carbon: 'carbon',
  labour: 'wages',
  maintenance: 'maintenance',
  machineFixed: 'maintenance',
  productPrice: 'product',
  charges: 'other',
  capital: 'other',
  machineEffect: 'machine',
};

// Lines that follow another price than the rest of their account.
const ofLine: ReadonlyMap<string, PriceGroup> = new Map([
  ['water.treatment', 'power'],
  ['residues.landfillTax', 'landfillTax'],
  ['credits.energy', 'heat'],
  ['credits.ownMillHeat', 'heat'],
  ['credits.ownMillPower', 'power'],
  ['credits.certificates', 'other'],
]);

/** The group whose price a line of the statement follows. The key of a fibre line is its material. */
export function priceGroupOf(
  { account, key }: Pick<CostLine, 'account' | 'key'>,
  materials: Case['materials'],
): PriceGroup {
  if (account === 'fibre') return materials.find(({ id }) => id === key)?.origin === 'virgin' ? 'pulp' : 'recovered';
  return ofLine.get(`${account}.${key}`) ?? ofAccount[account];
}

/** Strengths that say how heavy a sheet must be, each by its index: strength over grammage, or over its cube for bending. */
export const strengthProperties = [
  { id: 'tensile', label: 'Tensile index', unit: 'N*m/g' },
  { id: 'burst', label: 'Burst index', unit: 'kPa*m^2/g' },
  { id: 'compression', label: 'Compression index', unit: 'kN*m/kg' },
  { id: 'bending', label: 'Bending stiffness index', unit: 'N*m^7/kg^3' },
] as const;

export type StrengthProperty = (typeof strengthProperties)[number];

export const strengthIndexIdOf = (routeId: string, property: StrengthProperty['id']): string =>
  `${routeId}.quality.${property}`;
export const strengthFactorIdOf = (routeId: string, property: StrengthProperty['id']): string =>
  `${routeId}.quality.${property}.factor`;
/** Tonnes for the same service that strength asks for: the largest factor of the properties that are known. */
export const proposedServiceIdOf = (routeId: string): string => `${routeId}.quality.serviceFactor`;
/** What somebody gives of a property: the index at which the reference tonne serves, and what starch and refining add. */
export const referenceIndexIdOf = (property: StrengthProperty['id']): string => `product.strength.${property}`;
export const gainIdOf = (property: StrengthProperty['id'], of: 'perStarch' | 'perRefining'): string =>
  `product.strength.${property}.${of}`;

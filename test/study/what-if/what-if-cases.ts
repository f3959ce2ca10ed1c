import type { GivenInput } from '../../../src/case/case.ts';
import type { WhatIf } from '../../../src/case/what-if.ts';
import { type OpenCase, type Outcome, type Scenario, openCase } from '../../../src/index.ts';
import { writeCase } from '../../../src/case/write-case.ts';
import { demonstration } from '../../examples/demonstration.ts';

const { scenarios: _scenarios, limits: _limits, uncertainty: _uncertainty, ...bare } = demonstration().content;

/** The demonstration with these what-ifs and no others, through the text of a file. */
export function demonstrationWith(asked: WhatIf): Outcome<OpenCase> {
  return openCase(writeCase({ ...bare, ...asked }));
}

export function figure(value: string, unit: string): GivenInput {
  return { value, unit, status: 'invented', source: 'Invented for a test' };
}

export function scenario(id: string, inputs: Readonly<Record<string, GivenInput>>): Scenario {
  return { id, label: `Scenario ${id}`, inputs };
}

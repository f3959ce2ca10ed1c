import type { Line, Route } from '../../src/case/case.ts';
import { type Edit, type OpenCase, editStructure, openCase } from '../../src/index.ts';
import { demonstration, demonstrationText, valueOf } from '../examples/demonstration.ts';

/** The demonstration case, and what is looked at in it after an edit. */
export const open = demonstration();

export const after = (edit: Edit, from: OpenCase = open): OpenCase => valueOf(editStructure(from, edit));

export const route = (from: OpenCase, id: string): Route => from.content.routes.find((each) => each.id === id)!;

export const line = (from: OpenCase, routeId: string, id: string): Line =>
  route(from, routeId).lines.find((each) => each.id === id)!;

export const figuresUnder = (from: OpenCase, prefix: string): readonly string[] =>
  Object.keys(from.content.inputs).filter((id) => id.startsWith(`${prefix}.`));

/** The demonstration with a figure of its own for the coarse screens. */
export const withFigure = valueOf(
  openCase(
    demonstrationText.replace(
      '\n  "inputs": {\n',
      '\n  "inputs": {\n    "recovered.mixed.coarse.rejectRate": {"value":"18","unit":"%"},\n',
    ),
  ),
);

export const mixed = { route: 'recovered', line: 'mixed' } as const;
export const coarse = { ...mixed, stage: 'coarse' } as const;

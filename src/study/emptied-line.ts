import { type Component, components } from '../paper/components.ts';
import type { StageResult } from '../paper/stages/stage.ts';
import type { OpenCase } from './open-case.ts';

/** The label of the stage after which no solids of a line are left; nothing where the figure is no line yield, or something is left. */
export function stageThatEmpties({ model, values }: OpenCase, figureId: string): string | undefined {
  const line = model.routes.flatMap(({ plant }) => plant.lines).find(({ id }) => figureId === `${id}.yield`);
  // What no stage changes stands as a fixed number in the flow and has no name.
  const isNothing = ({ id, accepts }: StageResult, component: Component): boolean => {
    const { operation } = accepts[component];
    const left = operation.op === 'constant' ? Number(operation.digits) : values.number(`${id}.accepts.${component}`);
    return left === 0;
  };
  const solids = components.filter((component) => component !== 'dissolved');
  return line?.stages.find((stage) => solids.every((component) => isNothing(stage, component)))?.label;
}

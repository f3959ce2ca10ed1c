import type { Case, Stage } from '../case.ts';
import type { StageOptions } from './edit.ts';
import { withInputsCopied, withoutInputsOf } from './given-inputs.ts';
import { freshId, idsOf, inserted, moved } from './lists.ts';
import { lineOf, onLine } from './parts.ts';

/** Which stage of which line. */
export interface StageAddress {
  readonly route: string;
  readonly line: string;
  readonly stage: string;
}

export function addStage(content: Case, { route, line }: Omit<StageAddress, 'stage'>, like: string, at: number): Case {
  return onLine(content, route, line, (found) => {
    const id = freshId(like.split('/').at(-1) ?? like, idsOf(found.stages));
    return { ...found, stages: inserted(found.stages, at, { id, like }) };
  });
}

/** The last stage of a line stays: a line without one is no line. */
export function removeStage(content: Case, { route, line, stage }: StageAddress): Case {
  if ((lineOf(content, route, line)?.stages.length ?? 0) < 2) return content;
  const left = onLine(content, route, line, (found) => ({
    ...found,
    stages: found.stages.filter((each) => each.id !== stage),
  }));
  return { ...left, inputs: withoutInputsOf(content.inputs, `${route}.${line}.${stage}`) };
}

export function duplicateStage(content: Case, { route, line, stage }: StageAddress): Case {
  const stages = lineOf(content, route, line)?.stages ?? [];
  const at = stages.findIndex((each) => each.id === stage);
  const original = stages[at];
  if (original === undefined) return content;
  const id = freshId(stage, idsOf(stages));
  const longer = onLine(content, route, line, (found) => ({
    ...found,
    stages: inserted(found.stages, at + 1, { ...original, id }),
  }));
  const inputs = withInputsCopied(content.inputs, `${route}.${line}.${stage}`, `${route}.${line}.${id}`);
  return { ...longer, inputs };
}

export function moveStage(content: Case, { route, line, stage }: StageAddress, to: number): Case {
  return onLine(content, route, line, (found) => ({ ...found, stages: moved(found.stages, stage, to) }));
}

export function setUpStage(content: Case, { route, line, stage }: StageAddress, options: StageOptions): Case {
  return onLine(content, route, line, (found) => ({
    ...found,
    stages: found.stages.map((each) => (each.id === stage ? withOptions(each, options) : each)),
  }));
}

function withOptions(stage: Stage, options: StageOptions): Stage {
  const changed = new Map<string, unknown>([...Object.entries(stage), ...Object.entries(options)]);
  for (const [key, value] of changed) if (value === null) changed.delete(key);
  return { ...Object.fromEntries(changed), id: stage.id, like: options.like ?? stage.like };
}

import { problemSentence, spreadOf } from '../index.ts';
import { type Console, Refusal } from './console.ts';
import { type SetOptions, openWithSets } from './open-with-sets.ts';
import { typedDay } from './today.ts';

export interface CheckOptions extends SetOptions {
  readonly today?: string;
}

/** Says what is wrong with a case and what to look at. Warnings stop nothing; a broken law does. */
export function check(console: Console, file: string, options: CheckOptions): void {
  const open = openWithSets(file, options);
  const spread = spreadOf(open, typedDay('--today', options.today ?? console.today));
  const broken =
    open.gaps.length > 0
      ? []
      : spread.checks.filter((law) => !law.kept).map((law) => `Not so: ${law.label.toLowerCase()}.`);
  for (const law of spread.checks) console.say(`${law.kept ? 'yes' : 'no '}  ${law.label}\n`);
  const told = spread.warnings.filter(
    (warning) => !open.gaps.some((gap) => gap.kind === 'no figure' && gap.id === warning.about),
  );
  console.say(
    told.length === 0
      ? 'Nothing to look at.\n'
      : `To look at:\n${told.map((warning) => `  ${warning.sentence}\n`).join('')}`,
  );
  const problems = [...open.gaps.map(problemSentence), ...broken];
  if (problems.length > 0) throw new Refusal(problems);
}

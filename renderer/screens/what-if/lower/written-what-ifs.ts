import type { Limit, Scenario } from '../../../../src/index.ts';

interface Written {
  readonly scenarios: readonly Scenario[];
  readonly limits: readonly Limit[];
}

/**
 * Scenarios and limits as the case has them now, from its canonical text. Answers of the engine lag behind an edit; a name that is
 * changed right after a figure was typed must not bring the old figure back.
 */
export function writtenWhatIfs(text: string): Written {
  const { scenarios = [], limits = [] } = JSON.parse(text) as Partial<Written>;
  return { scenarios, limits };
}

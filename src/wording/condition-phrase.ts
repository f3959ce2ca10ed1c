import type { CapitalStand } from '../study/before-new-plant.ts';

/** With what a headline begins: on what condition it holds. */
export function conditionPhrase(capital: CapitalStand): string {
  switch (capital) {
    case 'counted':
      return 'If';
    case 'in the plan':
      return 'Before the capital of the plan, if';
    case 'before new plant':
      return 'Before any new plant, if';
  }
}

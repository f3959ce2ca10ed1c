import type { ComponentMass, InputView, StageBalance } from '../../../src/index.ts';
import type { Component } from './component-words.ts';

/** What a stage turns into something else: nothing leaves by it. */
export interface Turn {
  readonly from: Component;
  readonly to: Component;
  /** Dry kg in 1,000 kg fed to the line. */
  readonly mass: number;
  /** The input that sets it. */
  readonly input: string;
}

/** All turns of a stage happen at once, to what enters it. */
export function turnsOf(
  stage: Pick<StageBalance, 'id'>,
  enters: readonly ComponentMass[],
  inputs: Readonly<Record<string, InputView>>,
): readonly Turn[] {
  const prefix = `${stage.id}.turns.`;
  return Object.values(inputs).flatMap((input): Turn[] => {
    if (!input.id.startsWith(prefix)) return [];
    const [from, to] = input.id.slice(prefix.length).split('-') as [Component, Component];
    const fraction = Number(input.value) * (input.unit === '%' ? 0.01 : 1);
    const mass = fraction * massOf(enters, from);
    return mass > 0 ? [{ from, to, mass, input: input.id }] : [];
  });
}

export function massOf(masses: readonly ComponentMass[], component: Component): number {
  return masses.find((each) => each.component === component)?.mass ?? 0;
}

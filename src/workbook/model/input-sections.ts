import type { Case } from '../../case/case.ts';
import type { InputDeclaration } from '../../kernel/graph/input-declaration.ts';
import { quantityHome } from './quantity-home.ts';

/** Inputs that belong together, under one heading. */
export interface InputSection {
  readonly title: string;
  readonly inputs: readonly InputDeclaration[];
}

/** The inputs by what they belong to; within it in the order in which the model asks for them. */
export function inputSections(content: Case, inputs: readonly InputDeclaration[]): readonly InputSection[] {
  const sections = new Map<string, InputDeclaration[]>();
  for (const input of inputs) {
    const { sheet, block } = quantityHome(content, input.id);
    const title = sheet === 'Common' ? block : sheet === 'Plan' ? 'Investment plan' : sheet;
    const section = sections.get(title) ?? [];
    section.push(input);
    sections.set(title, section);
  }
  const isShared = (title: string): boolean => ['Product', 'Price'].includes(title) || title.startsWith('Material');
  const ordered = [...sections].sort(([a], [b]) => Number(isShared(b)) - Number(isShared(a)));
  return ordered.map(([title, held]) => ({ title, inputs: held }));
}

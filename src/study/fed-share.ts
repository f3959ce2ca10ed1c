import type { Component } from '../paper/components.ts';
import type { LineResult } from '../paper/line.ts';
import type { OpenCase } from './open-case.ts';

/** Share of a component in what is fed to a line: its grades by their shares. */
export function fedShare({ values }: OpenCase, line: LineResult, component: Component): number {
  return line.grades.reduce((sum, { material }) => {
    const share = `${line.id}.grade.${material}.share`;
    const part = `material.${material}.${component}`;
    return sum + (values.has(share) ? values.number(share) : 1) * (values.has(part) ? values.number(part) : 0);
  }, 0);
}

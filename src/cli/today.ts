import { dayText, isCalendarDay } from '../case/day.ts';
import { WrongUse } from './console.ts';

/** The day of a moment where this machine stands. */
export function dayOf(moment: Date): string {
  return dayText(moment.getFullYear(), moment.getMonth() + 1, moment.getDate());
}

/** A day as typed with an option; one that is none is a wrong use of the command. */
export function typedDay(option: string, typed: string): string {
  if (/^\d{4}-\d{2}-\d{2}$/u.test(typed) && isCalendarDay(typed)) return typed;
  throw new WrongUse(`${option} takes a day such as 2026-11-25; "${typed}" was given.`);
}

import { shifted } from '../../../src/index.ts';

const millions = 6;
const decimals = 2;

/** Money as the slots of a plan hold it: millions, with two decimals or as many more as were given; nothing stays nothing. */
export function inMillions(digits: string): string {
  if (digits === '') return '';
  const moved = shifted(digits, -millions);
  if (/e/iu.test(moved)) return moved;
  const [whole = '', part = ''] = moved.split('.');
  return `${whole}.${part.padEnd(decimals, '0')}`;
}

/**
 * What was typed in such a slot, in money: a bare figure or one that says millions is so many millions; a figure with any other unit is
 * what it says. Figures are plain digits by then.
 */
export function fromMillions(typed: string): string {
  const { digits, unit = '' } = /^(?<digits>-?[\d.]+)\s*(?<unit>.*)$/u.exec(typed)?.groups ?? {};
  if (digits === undefined) return typed;
  const said = /^(?:m|mn|mio|millions?)(?![\p{L}\d])\.?\s*(?<rest>.*)$/iu.exec(unit.trim())?.groups;
  if (unit.trim() !== '' && said === undefined) return typed;
  return `${shifted(digits, millions)} ${said?.['rest'] ?? ''}`.trim();
}

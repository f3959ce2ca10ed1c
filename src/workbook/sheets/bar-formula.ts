/** Blocks of the longest bar. */
const longest = 40;

/** A bar as long as the size of a cell against the largest size in a range, made of letters so that every spreadsheet draws it. */
export function barFormula(cell: string, range: string): string {
  const largest = `MAX(MAX(${range}),-MIN(${range}))`;
  return `IF(${largest}=0,"",REPT("█",ROUND(ABS(${cell})/${largest}*${String(longest)},0)))`;
}

/** What the formula comes to. */
export function barText(value: number, all: readonly number[]): string {
  const largest = Math.max(...all.map(Math.abs));
  return largest === 0 ? '' : '█'.repeat(Math.round((Math.abs(value) / largest) * longest));
}

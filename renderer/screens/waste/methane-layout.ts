/** A stepped outline of a figure for each year, on a ground line at `height`. */
export function stepsPath(byYear: readonly number[], largest: number, width: number, height: number): string {
  if (byYear.length === 0 || largest <= 0) return '';
  const step = width / byYear.length;
  const at = (value: number): string => (height - (value / largest) * height).toFixed(1);
  const tops = byYear.map((value, year) => `V${at(value)}H${((year + 1) * step).toFixed(1)}`);
  return `M0 ${String(height)}${tops.join('')}V${String(height)}Z`;
}

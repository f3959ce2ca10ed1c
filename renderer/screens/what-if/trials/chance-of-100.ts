/** A share of the trials in whole numbers of a hundred; nothing that was drawn from trials is certain, so the ends are said in words. */
export function chanceOf100(share: number): string {
  if (Number.isNaN(share)) return 'not yet';
  const of100 = Math.round(share * 100);
  if (of100 >= 100) return 'more than 99 of 100';
  return of100 <= 0 ? 'fewer than 1 of 100' : `${String(of100)} of 100`;
}

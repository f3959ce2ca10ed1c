/** The outcomes as bars, as a curve of the share of trials up to each, or in figures. */
export type PictureKind = 'bars' | 'curve' | 'figures';

export const trialViews = [
  { value: 'picture', label: 'Outcomes' },
  { value: 'drivers', label: 'Drivers' },
  { value: 'settling', label: 'Settling' },
  { value: 'drawn', label: 'What is drawn' },
] as const;

export const pictureKinds: readonly { readonly value: PictureKind; readonly label: string }[] = [
  { value: 'bars', label: 'Bars' },
  { value: 'curve', label: 'Curve' },
  { value: 'figures', label: 'Figures' },
];

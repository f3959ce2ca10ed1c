import rows from '../defaults/en-643.json' with { type: 'json' };

/** A grade of EN 643: its trade name, what it tolerates, and the paper of the program's list that comes nearest to it. */
export interface PaperGrade {
  readonly code: string;
  readonly group: string;
  readonly name: string;
  /** Greatest share of non-paper, per cent by weight. */
  readonly nonPaper: string;
  /** Greatest share of all unwanted material, per cent by weight. */
  readonly unwanted: string;
  readonly like: string;
  /** Where the tolerances were read. The standard itself is not free; these are pages that quote it. */
  readonly source: string;
  readonly status: string;
  readonly contents?: string;
}

// Groups of the standard: slides on the 2002 edition, "EN 643: the first step towards assessing the quality of PfR", sambuz.com, slides 7-9.
const groups: Readonly<Record<string, string>> = {
  '1': 'ordinary',
  '2': 'medium',
  '3': 'high',
  '4': 'kraft',
  '5': 'special',
};

/** Grades by their code, in its order. */
export const paperGrades: ReadonlyMap<string, PaperGrade> = new Map(
  Object.entries(rows).map(([code, row]) => [code, { code, group: groups[code.charAt(0)] ?? 'special', ...row }]),
);

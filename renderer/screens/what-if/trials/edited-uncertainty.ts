import type { Correlation, GivenDistribution, Uncertainty } from '../../../../src/index.ts';

type Values = NonNullable<GivenDistribution['values']>;

/** What a case says of its uncertainty, and what an edit makes of it. Edits leave it as it is and return another. */
export class EditedUncertainty {
  readonly content: Uncertainty;

  constructor(content: Uncertainty) {
    this.content = content;
  }

  /** As it stands in the text of an open case; null where nobody has said anything. */
  static of(caseText: string): EditedUncertainty | null {
    if (caseText === '') return null;
    const { uncertainty } = JSON.parse(caseText) as { readonly uncertainty?: Uncertainty };
    return uncertainty === undefined ? null : new EditedUncertainty(uncertainty);
  }

  get inputs(): readonly (readonly [string, GivenDistribution])[] {
    return Object.entries(this.content.inputs);
  }

  get correlations(): readonly Correlation[] {
    return this.content.correlations ?? [];
  }

  with(change: Partial<Pick<Uncertainty, 'trials' | 'seed' | 'years'>>): EditedUncertainty {
    return new EditedUncertainty({ ...this.content, ...change });
  }

  withInput(id: string, given: GivenDistribution): EditedUncertainty {
    return new EditedUncertainty({ ...this.content, inputs: { ...this.content.inputs, [id]: given } });
  }

  /** Changes the list of values of a discrete input. */
  withValues(id: string, change: (values: Values) => Values): EditedUncertainty {
    const given = this.content.inputs[id];
    return given === undefined ? this : this.withInput(id, { ...given, values: change(given.values ?? []) });
  }

  /** Its correlations go with it. */
  withoutInput(id: string): EditedUncertainty {
    const inputs = Object.fromEntries(this.inputs.filter(([each]) => each !== id));
    const kept = this.correlations.filter(({ one, other }) => one !== id && other !== id);
    return new EditedUncertainty({ ...this.content, inputs }).#withAll(kept);
  }

  isCorrelated(one: string, other: string): boolean {
    return this.correlations.some(samePair(one, other));
  }

  /** Correlates a pair, or gives it another value where it is correlated already. */
  withCorrelation(one: string, other: string, value: string): EditedUncertainty {
    const isSame = samePair(one, other);
    return this.#withAll(
      this.isCorrelated(one, other)
        ? this.correlations.map((each) => (isSame(each) ? { ...each, value } : each))
        : [...this.correlations, { one, other, value }],
    );
  }

  withoutCorrelation(one: string, other: string): EditedUncertainty {
    const isSame = samePair(one, other);
    return this.#withAll(this.correlations.filter((each) => !isSame(each)));
  }

  #withAll(correlations: readonly Correlation[]): EditedUncertainty {
    const { correlations: _before, ...rest } = this.content;
    return new EditedUncertainty(correlations.length === 0 ? rest : { ...rest, correlations });
  }
}

function samePair(first: string, second: string): (correlation: Correlation) => boolean {
  return ({ one, other }) => (one === first && other === second) || (one === second && other === first);
}

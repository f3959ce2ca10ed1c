import type { ForeignRequest } from '../driver.ts';

/** What happened during one run, and whether the tests expected it. */
export class Ledger {
  readonly requests: string[] = [];
  readonly #foreignRequests: ForeignRequest[] = [];
  readonly #policyViolations: string[] = [];
  readonly #faults: string[] = [];

  addForeignRequest(request: ForeignRequest): void {
    this.#foreignRequests.push(request);
  }

  addPolicyViolation(violation: string): void {
    this.#policyViolations.push(violation);
  }

  /** Something that no test may expect. */
  addFault(sentence: string): void {
    this.#faults.push(sentence);
  }

  takeForeignRequests(): readonly ForeignRequest[] {
    return this.#foreignRequests.splice(0);
  }

  takePolicyViolations(): readonly string[] {
    return this.#policyViolations.splice(0);
  }

  /** Throws with everything that was left unexpected. */
  settle(): void {
    const left = [
      ...this.#faults,
      ...this.#foreignRequests.map(
        ({ url, stoppedBy }) => `The page tried to reach ${url} (stopped by: ${stoppedBy}).`,
      ),
      ...this.#policyViolations.map((violation) => `The page broke its policy: ${violation}.`),
    ];
    if (left.length > 0) throw new Error(`The run was not clean:\n${left.join('\n')}`);
  }
}

/** Whether the system refused with one of these names of errors ("EBUSY"). */
export function hasCode(failure: unknown, ...codes: readonly string[]): boolean {
  return failure instanceof Error && 'code' in failure && codes.includes(String(failure.code));
}

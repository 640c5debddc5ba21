/** Answers as values: what a test needs must be there, and says why where it is not. */

type Refused =
  | { readonly ok: false; readonly problems: readonly { readonly message: string }[] }
  | { readonly ok: false; readonly reason: string };

/** Fails with what the answer says is wrong. */
export function mustBeOk<T extends { readonly ok: true } | Refused>(
  answer: T,
): asserts answer is Extract<T, { readonly ok: true }> {
  if (answer.ok) return;
  throw new Error('reason' in answer ? answer.reason : answer.problems.map(({ message }) => message).join(' '));
}

/** A value that must be there. */
export function valueOf<T>(answer: { readonly ok: true; readonly value: T } | Refused): T {
  mustBeOk(answer);
  return answer.value;
}

/** Taking host answers apart in tests. */

import type { HostAnswer } from '../../../electron/contract/host.ts';

/** The value of a good answer; fails the test with the refusal's message otherwise. */
export function valueOf<T>(answer: HostAnswer<T>): T {
  if (!answer.ok) throw new Error(`${answer.failure}: ${answer.message}`);
  return answer.value;
}

export function failureOf(answer: HostAnswer<unknown>): string {
  return answer.ok ? 'none' : answer.failure;
}

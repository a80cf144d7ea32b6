import type { Difference, Quantity } from '../quantities/types.ts';
import type { Window } from '../quantities/window.ts';

/** Whether a figure is inside a window; `open`: the window has no end. */
export function insideOf<T extends Quantity | Difference>(
  { low, high }: Window,
  value: T,
  by: (a: T, b: Quantity) => -1 | 0 | 1 | null,
): 'yes' | 'no' | 'open' | 'other kind' {
  if (low === null && high === null) return 'open';
  const [over, under] = [low === null ? 1 : by(value, low), high === null ? -1 : by(value, high)];
  if (over === null || under === null) return 'other kind';
  return over === -1 || under === 1 ? 'no' : 'yes';
}

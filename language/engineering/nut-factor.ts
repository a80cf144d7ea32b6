/**
 * Nut factor K that is taken of a steel thread: 0.2 dry (Shigley, Mechanical Engineering Design, where friction is
 * 0.15), 0.15 oiled (common practice, no source). The middle of what is met, not the least: one bolt and the next
 * differ by a quarter or more, and figures in use are chosen by the middle. By the least they would all be too high.
 */
export function nutFactor(oiled: boolean): number {
  return oiled ? 0.15 : 0.2;
}

/** How closely a drawing is set. Each step gives up a little; the first that fits is taken. */
export interface Density {
  /** Millimeters between a row and the next. */
  readonly gap: number;
  /** Of the heights of shapes. */
  readonly scale: number;
  readonly titleLines: number;
  /** Lines for each detail under a title; 0: none. */
  readonly detailLines: number;
  /** Lines for each text at the left. */
  readonly sideLines: number;
}

export const densities: readonly Density[] = [
  { gap: 5, scale: 1, titleLines: 2, detailLines: 3, sideLines: 5 },
  { gap: 3.4, scale: 0.9, titleLines: 2, detailLines: 3, sideLines: 5 },
  { gap: 2.4, scale: 0.75, titleLines: 2, detailLines: 3, sideLines: 5 },
  { gap: 1.7, scale: 0.6, titleLines: 2, detailLines: 3, sideLines: 3 },
  { gap: 1.3, scale: 0.5, titleLines: 2, detailLines: 3, sideLines: 3 },
  { gap: 0.9, scale: 0.42, titleLines: 2, detailLines: 3, sideLines: 3 },
  { gap: 1.3, scale: 0.5, titleLines: 2, detailLines: 2, sideLines: 2 },
  { gap: 1.3, scale: 0.5, titleLines: 2, detailLines: 1, sideLines: 2 },
  { gap: 1.3, scale: 0.5, titleLines: 1, detailLines: 1, sideLines: 2 },
  { gap: 1.2, scale: 0.45, titleLines: 1, detailLines: 1, sideLines: 1 },
  { gap: 1.2, scale: 0.4, titleLines: 1, detailLines: 0, sideLines: 1 },
];

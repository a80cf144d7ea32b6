export const rowFormats = ['text', 'csv', 'ndjson'] as const;
export type RowFormat = (typeof rowFormats)[number];

export { buildLabels, type LabelKind, type LabelSheet, labelKinds } from './labels.ts';

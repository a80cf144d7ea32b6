export { buildLabels, type Label, type LabelKind, type LabelSheet, labelKinds } from './labels.ts';

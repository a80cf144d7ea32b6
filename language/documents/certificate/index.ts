export { type CertificateOptions, certificateOf, missingOf } from './certificate.ts';
export type { Doubt } from './doubts.ts';
export type { Missing } from './judge.ts';
export { placeWords } from './tables.ts';

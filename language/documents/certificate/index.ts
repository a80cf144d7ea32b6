export { type CertificateOptions, certificateOf, missingOf } from './certificate.ts';
export type { Missing } from './judge.ts';
export { placeWords } from './tables.ts';

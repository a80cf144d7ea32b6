export { type CertificateOptions, certificateOf, missingOf } from './certificate.ts';
export type { Missing } from './judged.ts';
export { placeWords } from './tables.ts';

export { buildCertificate, type CertificateOptions, findMissing } from './certificate.ts';
export type { Missing } from './judged.ts';
export { placeWords } from './tables.ts';

export type { Missing } from '../../judgment/judged.ts';
export { buildCertificate, type CertificateOptions, findMissing } from './certificate.ts';
export { placeWords } from './tables.ts';

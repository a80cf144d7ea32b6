export { type Verb, verbs } from '../verbs/index.ts';

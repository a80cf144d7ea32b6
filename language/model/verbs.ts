export { type Verb, verbs } from '../syntax/verbs/index.ts';

/** The request `handtight/origin`: what a printed sheet was made of, by the code on it. */
import { contentHash } from '../host/files/content-hash.ts';
import type { Library } from './document-store.ts';
import { subjectAt } from './print-target.ts';
import type { OriginAnswer, OriginQuestion } from './requests.ts';

/** Finds the job, or without one the procedure, in the workspace; `same` while the text still gives the printed hash. */
export function originOf(
  library: Library,
  { procedure, job, hash }: OriginQuestion,
  clientUri: (uri: string) => string,
): OriginAnswer {
  const symbols = library
    .checks()
    .flatMap(({ result, files }) => [...result.symbols].filter(([file]) => files.has(file)));
  const [kind, name] = job === '' ? ['procedure', procedure] : ['job', job];
  for (const [file, declared] of symbols) {
    const symbol = declared.find((one) => one.kind === kind && one.name === name);
    if (symbol === undefined) continue;
    const position = symbol.nameRange.start;
    const found = subjectAt(library, file, position);
    const same =
      found.kind === 'subject' &&
      found.subject.procedure.name === procedure &&
      hash !== '' &&
      contentHash(found.subject, library.checked(file)).startsWith(hash);
    return { kind: 'found', uri: clientUri(file), position, same };
  }
  return {
    kind: 'none',
    reason: `No ${kind} of this workspace is called ${name}. Open the folder that the sheet was printed from, and scan or click again.`,
  };
}

import type { Position, Source } from '../model/source.ts';
import type { Declared } from './declared.ts';
import { namedAt } from './named-at.ts';
import type { Snapshot } from './snapshot.ts';

/**
 * What the name at a place belongs to: a part to its family, a station to its shop, a spec to its procedure; a procedure to
 * the family that it is for, and a job to its procedure.
 */
export function typeDefinitionsAt({ result }: Snapshot, file: string, position: Position): Source[] {
  return (namedAt(result, file, position)?.targets ?? []).flatMap(({ declared }): Source[] => {
    if (declared === null) return [];
    const { symbol, within, uri } = declared;
    const isInside = symbol.range !== within.range;
    return isInside ? [{ file: uri, range: within.nameRange }] : typeOf(declared, result);
  });
}

function typeOf({ symbol: { kind, name } }: Declared, result: Snapshot['result']): Source[] {
  if (kind === 'procedure') {
    const family = result.procedureOf(name)?.procedure.family;
    return family === undefined ? [] : [family.source];
  }
  if (kind === 'job') {
    const procedure = result.jobOf(name)?.procedure;
    return procedure === undefined ? [] : [procedure.source];
  }
  return [];
}

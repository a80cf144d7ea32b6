/** Whether the units of a job were here before, beside their serials. */
import type { WrittenSerial } from '../../language/ide/serials.ts';
import type { KnownVisit } from '../host/host.ts';
import type { Session } from './feature.ts';

export interface KnownSerial extends WrittenSerial {
  readonly visit: KnownVisit;
}

/** Those that were here for another job. */
export async function knownSerials(session: Session, uri: string, serials: readonly WrittenSerial[]) {
  const folder = session.store.folderOf(uri);
  const visits = folder === null ? null : session.visits(folder);
  if (visits === null || serials.length === 0) return [];
  const known = await visits.of(serials.map(({ serial }) => serial));
  return serials.flatMap((one): KnownSerial[] => {
    const visit = known.get(one.serial);
    return visit === undefined || visit.job === one.job ? [] : [{ ...one, visit }];
  });
}

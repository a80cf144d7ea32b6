/** A file whose name says that others need it. */
const isShared = /shop|family|families|sequence|common|shared|\.issued\.rebuild$|handtight\.json$/iu;

/** A folder with more files holds procedures or jobs, numbered or by name. */
const fewFiles = 40;

const folderOf = (uri: string) => uri.slice(0, uri.lastIndexOf('/'));

/**
 * The order in which files are read when a workspace is opened: first what is beside the open files and near the top, and those
 * where the shop, the families and the sequences are likely to be, so that the open files can be checked before the thousands
 * beside them are read.
 */
export function readingOrder(uris: readonly string[], open: readonly string[] = []): string[] {
  const near = new Set(open.map(folderOf));
  const depthOf = (uri: string) => uri.split('/').length;
  const sizes = new Map<string, number>();
  for (const uri of uris) sizes.set(folderOf(uri), (sizes.get(folderOf(uri)) ?? 0) + 1);
  const rank = (uri: string) => {
    const isFew = sizes.get(folderOf(uri))! <= fewFiles;
    if (isShared.test(uri.slice(uri.lastIndexOf('/')))) return near.has(folderOf(uri)) ? 0 : 1;
    return isFew ? 2 : 3;
  };
  const ranked = [0, 1, 2, 3].map((): string[] => []);
  for (const uri of uris) ranked[rank(uri)]!.push(uri);
  // There may be a family in each of a thousand folders; what all share is above them.
  ranked[1]!.sort((one, other) => depthOf(one) - depthOf(other));
  return ranked.flat();
}

/** A file whose name says that others need it. */
const isShared = /shop|family|families|sequence|common|shared|\.issued\.rebuild$|handtight\.json$/iu;

/** A folder with more files holds procedures or jobs, numbered or by name. */
const fewFiles = 40;

/**
 * The order in which files are read when a workspace is opened: first those where the shop, the families and the sequences
 * are likely to be, so that the open file can be checked before the thousands beside it are read.
 */
export function readingOrder(uris: readonly string[]): string[] {
  const folderOf = (uri: string) => uri.slice(0, uri.lastIndexOf('/'));
  const sizes = new Map<string, number>();
  for (const uri of uris) sizes.set(folderOf(uri), (sizes.get(folderOf(uri)) ?? 0) + 1);
  const rank = (uri: string) =>
    isShared.test(uri.slice(uri.lastIndexOf('/'))) ? 0 : sizes.get(folderOf(uri))! <= fewFiles ? 1 : 2;
  const ranked = [0, 1, 2].map((): string[] => []);
  for (const uri of uris) ranked[rank(uri)]!.push(uri);
  return ranked.flat();
}

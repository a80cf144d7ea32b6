/** Where the time goes: V8's profiles of a run, by function and by folder. */
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import inspector from 'node:inspector/promises';
import { SourceMap } from 'node:module';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { root } from '../../library.ts';

/** What of V8's format is read. */
interface Profile {
  readonly nodes: readonly {
    readonly id: number;
    readonly callFrame: {
      readonly functionName: string;
      readonly url: string;
      readonly lineNumber: number;
      readonly columnNumber: number;
    };
  }[];
  readonly samples?: readonly number[];
  /** µs before each sample. */
  readonly timeDeltas?: readonly number[];
}

/** Profiles this process while it works, and writes the profile into a folder. */
export async function profiled<T>(folder: string, work: () => Promise<T>): Promise<T> {
  const session = new inspector.Session();
  session.connect();
  await session.post('Profiler.enable');
  await session.post('Profiler.start');
  try {
    return await work();
  } finally {
    const { profile } = await session.post('Profiler.stop');
    writeFileSync(join(folder, `bench-${process.pid}.cpuprofile`), JSON.stringify(profile));
    session.disconnect();
  }
}

export interface Shares {
  readonly functions: readonly Share[];
  readonly folders: readonly Share[];
  /** ms that were sampled, without the time in which nothing ran. */
  readonly total: number;
}

export interface Share {
  readonly name: string;
  /** ms in the function itself. */
  readonly self: number;
}

/** Sums up all profiles of a folder, whatever process they are of. */
export function sharesOf(folder: string): Shares {
  const functions = new Map<string, number>();
  const folders = new Map<string, number>();
  const add = (sums: Map<string, number>, name: string, time: number) => sums.set(name, (sums.get(name) ?? 0) + time);
  let total = 0;
  for (const file of readdirSync(folder).filter((name) => name.endsWith('.cpuprofile'))) {
    const { nodes, samples = [], timeDeltas = [] } = JSON.parse(readFileSync(join(folder, file), 'utf8')) as Profile;
    const self = new Map<number, number>();
    for (const [index, id] of samples.entries()) self.set(id, (self.get(id) ?? 0) + timeDeltas[index]! / 1000);
    for (const { id, callFrame } of nodes) {
      const time = self.get(id);
      if (time === undefined || callFrame.functionName === '(idle)') continue;
      const place = placeOf(callFrame);
      add(functions, `${callFrame.functionName || '(anonymous)'}  ${place}`.trim(), time);
      add(folders, folderOf(place, callFrame.functionName), time);
      total += time;
    }
  }
  const sorted = (sums: Map<string, number>) =>
    [...sums].map(([name, self]) => ({ name, self })).sort((one, other) => other.self - one.self);
  return { functions: sorted(functions), folders: sorted(folders), total };
}

const maps = new Map<string, SourceMap | null>();

/** File and line of the source, from the root; for what is bundled, as the source map says. */
function placeOf({ url, lineNumber, columnNumber }: Profile['nodes'][number]['callFrame']): string {
  if (url === '' || url.startsWith('node:')) return url;
  const path = url.startsWith('file:') ? fileURLToPath(url) : url;
  const map = maps.get(path) ?? sourceMapOf(path);
  maps.set(path, map);
  const entry = map?.findEntry(lineNumber, columnNumber);
  if (entry !== undefined && 'originalSource' in entry && typeof entry.originalSource === 'string')
    return `${entry.originalSource.replace(/^(?:\.\.\/)+/u, '')}:${entry.originalLine + 1}`;
  return `${relative(root, path)}:${lineNumber + 1}`;
}

function sourceMapOf(path: string): SourceMap | null {
  const file = `${path}.map`;
  return existsSync(file) ? new SourceMap(JSON.parse(readFileSync(file, 'utf8'))) : null;
}

/** A folder of ours, a package, a module of Node, or what V8 itself does. */
function folderOf(place: string, functionName: string): string {
  const name = /(?:^|\/)node_modules\/((?:@[^/]+\/)?[^/]+)(?!.*\/node_modules\/)/u.exec(place)?.[1];
  if (name !== undefined) return `package ${name}`;
  if (place === '') return functionName.startsWith('(') ? functionName : '(native)';
  if (place.startsWith('node:')) return 'Node';
  return place.replace(/\/[^/]*$/u, '/');
}

/** The first lines of what took the longest. */
export function profileInWords({ functions, folders, total }: Shares, most = 25): string {
  const lines = (shares: readonly Share[]) =>
    shares
      .slice(0, most)
      .map(
        ({ name, self }) =>
          `${((100 * self) / total).toFixed(1).padStart(6)} %  ${self.toFixed(0).padStart(8)} ms  ${name}`,
      )
      .join('\n');
  return `by folder, ${total.toFixed(0)} ms in all:\n${lines(folders)}\n\nby function, time in itself:\n${lines(functions)}`;
}

import type { Source } from '../model/source.ts';
import { uriOfId } from '../semantics/declaration-id.ts';

/** Line of its file on which a declaration begins, by id. */
export type LineOf = (id: string) => number;

/** A source that is relative to its declaration, in its file. */
function located({ file: id, range: { start, end } }: Source, lineOf: LineOf): Source {
  const line = lineOf(id);
  return {
    file: uriOfId(id),
    range: {
      start: { line: start.line + line, character: start.character },
      end: { line: end.line + line, character: end.character },
    },
  };
}

/** Models as they were located, and where their declarations began then: valid while those begin there. */
const known = new WeakMap<object, { readonly lines: ReadonlyMap<string, number>; readonly model: object }>();

/** A model with its sources in their files. The same object for the same model while nothing moves. */
export function locatedModel<T extends object>(model: T, lineOf: LineOf): T {
  const before = known.get(model);
  if (before !== undefined && [...before.lines].every(([id, line]) => lineOf(id) === line)) return before.model as T;
  const lines = new Map<string, number>();
  const copy = copied(model, (id) => {
    const line = lineOf(id);
    lines.set(id, line);
    return line;
  });
  known.set(model, { lines, model: copy });
  return copy;
}

/** Parts of a model that are located by themselves, so that an edit in one leaves the copies of the others. */
const parts: ReadonlySet<string> = new Set(['family', 'shop', 'stages', 'repairs']);

/** What is the same object in a model, or in a part that is located by itself, is the same in its copy. */
function copied<T extends object>(model: T, lineOf: LineOf): T {
  const copies = new Map<object, unknown>();
  const copy = (value: unknown, key?: string): unknown => {
    if (typeof value !== 'object' || value === null) return value;
    const done = copies.get(value);
    if (done !== undefined) return done;
    const made = isSource(value)
      ? located(value, lineOf)
      : Array.isArray(value)
        ? key === 'files'
          ? [...new Set(value.map(uriOfId))]
          : value.map((one) => copy(one, key))
        : key !== undefined && parts.has(key)
          ? locatedModel(value, lineOf)
          : Object.fromEntries(Object.entries(value).map(([name, one]) => [name, copy(one, name)]));
    copies.set(value, made);
    return made;
  };
  return copy(model) as T;
}

function isSource(value: object): value is Source {
  return 'file' in value && 'range' in value;
}

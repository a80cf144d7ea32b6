import type { Family } from '../model/family.ts';
import type { ObjectKind } from '../model/procedure.ts';
import type { Source } from '../model/source.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { partsNamed } from './family.ts';
import { firstNamed } from './first-named.ts';

/** Something in a family that a step can act on. */
export interface FamilyThing {
  /** Its id among those of its kind. */
  readonly id: string;
  readonly source: Source;
  /** Which copy of a part it is, by number; null: there is only one, or they are distinguished by side. */
  readonly position: number | null;
  readonly locatedBy: string | null;
  /** It is an assembly, and this the part that carries it. */
  readonly assembly?: { readonly name: string; readonly others: readonly string[] };
}

const known = new WeakMap<Family, Map<string, readonly FamilyThing[]>>();

/** What a path names among the things of a kind: all copies of a part. Looked up for each step, it is kept by family. */
export function thingsNamed(
  family: Family,
  kind: ObjectKind,
  { head, tail }: Pick<ast.Path, 'head' | 'tail'>,
): readonly FamilyThing[] {
  let names = known.get(family);
  if (names === undefined) {
    names = new Map();
    known.set(family, names);
  }
  const key = `${kind} ${head}${tail === undefined ? '' : `.${tail}`}`;
  let things = names.get(key);
  if (things === undefined) {
    const locatedBy = (name: string) => firstNamed(family.parts, name)?.locatedBy ?? null;
    things =
      assemblyThings(family, kind, head, tail) ??
      found(family, kind, head, tail).map(({ name, source, ...more }) => ({
        id: 'id' in more ? more.id : name,
        source,
        position: 'position' in more && more.side === null ? more.position : null,
        locatedBy: locatedBy(name),
      }));
    names.set(key, things);
  }
  return things;
}

/** What an assembly is to a step: the part that carries it, or the ports of all parts in it. Null: none is called so. */
function assemblyThings(
  { parts, ports, assemblies }: Family,
  kind: ObjectKind,
  head: string,
  tail: string | undefined,
): FamilyThing[] | null {
  const assembly = tail === undefined ? assemblies.find(({ name }) => name === head) : undefined;
  if (assembly === undefined || partsNamed(parts, head).length > 0) return null;
  const { source } = assembly;
  const [carrier, ...others] = assembly.parts;
  const bare = { source, position: null, locatedBy: null };
  if (kind === 'part') return [{ ...bare, id: carrier!, assembly: { name: head, others } }];
  if (kind !== 'port') return null;
  return ports.flatMap((port) => (assembly.parts.includes(port.part) ? [{ ...bare, id: port.name }] : []));
}

function found({ parts, faces, ports, adjusters }: Family, kind: ObjectKind, head: string, tail: string | undefined) {
  switch (kind) {
    case 'part':
      return tail === undefined ? partsNamed(parts, head) : [];
    case 'face': {
      const on = tail === undefined ? [] : partsNamed(parts, head).map(({ name }) => name);
      return faces.filter(({ name, part }) => name === tail && on.includes(part));
    }
    case 'port':
      return ports.filter(({ name, base, part }) =>
        tail === undefined ? name === head || base === head : name === tail && part === head,
      );
    case 'adjuster': {
      const turned = tail === undefined ? partsNamed(parts, head) : [];
      return turned.flatMap(({ name, position, side }) => {
        const adjuster = firstNamed(adjusters, name);
        return adjuster === undefined ? [] : [{ ...adjuster, position, side }];
      });
    }
  }
}

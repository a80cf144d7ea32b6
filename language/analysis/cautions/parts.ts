import type { Family, Part } from '../../model/family.ts';
import type { StepObject } from '../../model/procedure.ts';

/** The part that an object is, or belongs to. */
export function partsOfObject(family: Family, object: StepObject): Part[] {
  const owner = ownerOf(family, object);
  return owner === null ? [] : family.parts.filter((part) => part.name === owner);
}

function ownerOf(family: Family, object: StepObject): string | null {
  switch (object.kind) {
    case 'part':
      return object.name;
    case 'adjuster':
      return family.adjusters.find(({ name }) => name === object.name)?.part ?? object.name;
    case 'face':
      return family.faces.find(({ id }) => id === object.name)?.part ?? null;
    case 'port':
      return family.ports.find(({ name }) => name === object.name)?.part ?? null;
  }
}

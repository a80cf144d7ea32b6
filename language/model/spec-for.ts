import type { Procedure, Spec, SpecValue } from './procedure.ts';

/** What a spec says for one part number: the number's own values over the procedure's. Null: no such spec. */
export function specFor(
  procedure: Procedure,
  name: string,
  number: string | null,
): (SpecValue & { readonly spec: Spec }) | null {
  const spec = procedure.specs.find((other) => other.name === name);
  if (spec === undefined) return null;
  const own = procedure.numbers.find((other) => other.name === number)?.values.find((value) => value.spec === name);
  if (own === undefined) return { ...spec, spec };
  return {
    spec,
    rebuilt: own.notRequired ? null : (own.rebuilt ?? spec.rebuilt),
    rateFrom: own.notRequired || own.rebuilt !== null ? own.rateFrom : spec.rateFrom,
    inService: own.notRequired ? null : (own.inService ?? spec.inService),
    whenNew: own.notRequired ? null : (own.whenNew ?? spec.whenNew),
    whenNewPart: own.whenNew === null ? spec.whenNewPart : own.whenNewPart,
    settling: own.notRequired ? null : (own.settling ?? spec.settling),
    isUnread: own.rebuilt === null && own.isUnread,
    notRequired: own.notRequired,
    acceptance: own.acceptance ?? spec.acceptance,
    sourceText: own.sourceText ?? spec.sourceText,
  };
}

import type { Family } from '../model/family.ts';
import type { PartNumber, Spec, SpecValue } from '../model/procedure.ts';
import type { DecisionRule } from '../model/shop.ts';
import { formatQuantity, kindAdmits, kindOf, kindOfLimit, kindOfUnit } from '../quantities/index.ts';
import type { Figure, Kind } from '../quantities/types.ts';
import { say, term } from '../say/say.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { lowerAllow } from './allows.ts';
import type { Context } from './context.ts';
import { lowerAmount, lowerLimit, lowerMeasure, lowerQuantity } from './limits.ts';
import { unquoted } from './lower-steps.ts';
import { lowerRate, lowerRateFrom, type RateOf } from './rate-from.ts';
import { decisionRule, named } from './shop.ts';
import { unreadLine } from './unread.ts';

/** The source that a procedure or a part number gives to all figures that have none of their own: its last word counts. */
export function figuresFrom(context: Context, items: readonly { readonly $type: string }[]): string | null {
  const given = items.filter((item): item is ast.FiguresFrom => item.$type === 'FiguresFrom');
  for (const again of given.slice(1))
    context.syntax(
      'written-twice',
      say`“figures from” is written twice here, and a figure cannot come from both. Delete one, and write “source "…"” at the figures that are from elsewhere.`,
      context.source(again),
    );
  return given[0]?.text ?? null;
}

/** @param unlessStated where its figure is from if it does not say so */
export function lowerSpec(context: Context, node: ast.Spec, family: Family, unlessStated: string | null): Spec {
  const kind = node.kind === undefined ? null : kindOf(node.kind);
  const per = perOf(context, node);
  const value = specValueOf(context, node.value, family, { name: node.name, kind, per: null });
  const isHalf = node.value?.per !== undefined && per === null;
  return {
    ...named(context, node),
    ...value,
    ...(isHalf ? { rebuilt: null, isUnread: true } : {}),
    sourceText: sourceOf(value, unlessStated),
    kind,
    per,
    allow: (node.value?.more ?? []).flatMap((more) =>
      more.$type === 'SpecAllow' ? [lowerAllow(context, more.allow)] : [],
    ),
  };
}

/** A spec that leaves its value to the part numbers has no figure that comes from somewhere. */
function sourceOf(value: SpecValue, unlessStated: string | null): string | null {
  const { rebuilt, inService, whenNew, notRequired, sourceText } = value;
  const says = rebuilt !== null || inService !== null || whenNew !== null || notRequired;
  return sourceText ?? (says ? unlessStated : null);
}

/** `3 bar per 0.001 in`: the second quantity. */
function perOf(context: Context, { value, name }: ast.Spec): Figure | null {
  if (value?.per === undefined) return null;
  return lowerMeasure(context, value, 'per', value.per, {
    what: say`The second quantity of rate ${name}`,
    why: say`no shim change has such an effect, and none could be calculated`,
    like: 'rate 3 bar per 0.001 in',
    kind: null,
  });
}

function specValueOf(context: Context, node: ast.SpecValue | undefined, family: Family, of: RateOf): SpecValue {
  const rateFrom = node?.rateFrom === undefined ? null : lowerRateFrom(context, node.rateFrom);
  const rebuilt =
    node?.rateFrom === undefined
      ? node?.per === undefined && of.per === null
        ? lowerLimit(context, node?.rebuilt)
        : lowerAmount(context, node?.rebuilt, say`The rate of ${of.name}`)
      : lowerRate(context, node.rateFrom, rateFrom, of);
  const kind = of.kind ?? (rebuilt === null ? null : kindOfLimit(rebuilt));
  let inService: SpecValue['inService'] = null;
  let whenNew: SpecValue['whenNew'] = null;
  let whenNewPart: string | null = null;
  let settling: Figure | null = null;
  let sourceText: string | null = null;
  let acceptance: DecisionRule | null = null;
  for (const more of node?.more ?? []) {
    if (more.$type === 'InService') inService = lowerLimit(context, more.limit);
    else if (more.$type === 'WhenNew') {
      whenNew = lowerLimit(context, more.limit);
      if (more.part !== undefined)
        whenNewPart = context.find(more.part, 'part', family.parts, context.source(more, 'part'))?.name ?? null;
    } else if (more.$type === 'SpecSource') sourceText = more.text;
    else if (more.$type === 'SpecAcceptance') acceptance = decisionRule(more.rule);
    else if (more.$type === 'SpecSettling') settling = settlingOf(context, more, of.name, kind);
  }
  return {
    rebuilt,
    rateFrom,
    inService,
    whenNew,
    whenNewPart,
    settling,
    isUnread: node?.rebuilt !== undefined && rebuilt === null,
    notRequired: node?.notRequired ?? false,
    acceptance,
    sourceText,
  };
}

/** What a new spring will lose: of the kind of its spec, and no gain. Null where it has no meaning (reported). */
function settlingOf(context: Context, node: ast.SpecSettling, name: string, kind: Kind | null): Figure | null {
  const amount = lowerQuantity(context, node, 'amount', node.amount);
  if (amount === null) return null;
  if (node.sign !== undefined && Number(amount.number) !== 0) {
    context.syntax(
      'impossible-figure',
      say`A new spring loses pressure as it settles, and ${node.sign}${formatQuantity(amount)} says that it gains: the unit would be set too low. Write the loss: settling ${formatQuantity(amount)}.`,
      context.source(node),
    );
    return null;
  }
  if (kind !== null && !kindAdmits(kind, amount.unit)) {
    context.syntax(
      'unit-of-another-kind',
      say`Spec ${name} is a ${term(kind)}, and ${formatQuantity(amount)} is a ${term(kindOfUnit(amount.unit))}: nobody can set a unit higher by that. Write what a new spring loses of this ${term(kind)}.`,
      context.source(node, 'amount'),
    );
    return null;
  }
  return amount;
}

export function lowerPartNumber(
  context: Context,
  node: ast.PartNumber,
  specs: readonly Spec[],
  family: Family,
  unlessStated: string | null,
): PartNumber {
  const ownSource = figuresFrom(context, node.lines) ?? unlessStated;
  const values = node.lines.flatMap((line) => {
    if (line.$type === 'FiguresFrom') return [];
    if (line.$type === 'Unread') {
      unreadLine(
        context,
        line,
        specs.map((spec) => spec.name),
      );
      return [];
    }
    return line.values.flatMap((value) => {
      const spec = context.find(value.spec.name, 'spec', specs, context.source(value.spec));
      if (spec === null) return [];
      const kind = spec.kind ?? (spec.rebuilt === null ? null : kindOfLimit(spec.rebuilt));
      const said = specValueOf(context, value.value, family, { name: spec.name, kind, per: spec.per });
      return [
        {
          ...said,
          sourceText: sourceOf(said, ownSource),
          spec: spec.name,
          name: spec.name,
          source: context.source(value),
        },
      ];
    });
  });
  const name = unquoted(node.name);
  return {
    name,
    title: node.title ?? name,
    source: context.source(node, 'name'),
    values: context.unique(values, 'value of spec'),
    allow: node.allows.map((allow) => lowerAllow(context, allow)),
  };
}

import type { Plan } from './plan.ts';
import type { Procedure } from './procedure.ts';
import { readingAt } from './reading-id.ts';
import type { Named } from './source.ts';
import { readingOf } from './steps.ts';

/** The author's words for a thing; where there are none, its name with blanks. */
export function titleOf({ name, title }: { readonly name: string; readonly title: string }): string {
  return title === name ? name.replace(/[-_]+/gu, ' ') : title;
}

/** The first letter as a sentence begins. */
export function capital(text: string): string {
  const [first = ''] = [...text];
  return first.toUpperCase() + text.slice(first.length);
}

/** What a name in a job is called: a test, a spec, or a part that was looked at; with the point and the place that it is of. */
export function nameWords(procedure: Procedure, id: string): string {
  const { specs, family } = procedure;
  const { test: name, point, place } = readingAt(id);
  const known = specs.find((one) => one.name === name) ?? family.parts.find((one) => one.name === name);
  return [
    capital(titleOf(recordOf(procedure, name) ?? known ?? operandOf(procedure, name) ?? { name, title: name })),
    ...(point === null ? [] : [pointWords(procedure, name, point)]),
    ...(place === null ? [] : [placeWords(procedure, name, place)]),
  ].join(', ');
}

/** A part of what is worked out of two. */
function operandOf(procedure: Procedure, name: string): Named | undefined {
  return plansOf(procedure)
    .flatMap(({ workedOut }) => (workedOut === null ? [] : [workedOut.first, workedOut.second]))
    .find((one) => one.name === name);
}

/** What is written down in words under a name, by its own title. */
export function recordOf({ stages, repairs }: Procedure, name: string): { name: string; title: string } | undefined {
  const steps = [...stages, ...repairs].flatMap((block) => block.steps);
  const found = steps.find((step) => step.verb === 'record' && step.reading === name && step.title !== null);
  return found?.verb === 'record' ? { name, title: found.title ?? name } : undefined;
}

function plansOf({ stages }: Procedure, test: string | null = null): Plan[] {
  return stages.flatMap(({ steps }) =>
    steps.flatMap((step) =>
      (step.verb !== 'test' && step.verb !== 'record') ||
      step.plan === null ||
      (test !== null && readingOf(step) !== test)
        ? []
        : [step.plan],
    ),
  );
}

/** `full load`. */
export function pointWords(procedure: Procedure, test: string, point: string): string {
  const known = plansOf(procedure, test).flatMap(({ points }) => points.find(({ name }) => name === point) ?? []);
  return titleOf(known[0] ?? { name: point, title: point });
}

/** `cylinder 3`, `compressor wheel`. */
export function placeWords(procedure: Procedure, test: string, place: string): string {
  const name = plansOf(procedure, test).find(({ places }) => places !== null)?.places;
  const places = procedure.family.places.find((one) => one.name === name);
  const known = places?.places.find((one) => one.name === place);
  // A number says nothing by itself.
  return known === undefined || /^\d/u.test(known.title)
    ? `${places === undefined ? '' : titleOf(places)} ${place}`.trim()
    : titleOf(known);
}

export function partWords({ family }: Procedure, name: string): string {
  return titleOf(family.parts.find((one) => one.name === name) ?? { name, title: name });
}

import type { Procedure } from './procedure.ts';

/** The author's words for a thing; where there are none, its name with blanks. */
export function titleOf({ name, title }: { readonly name: string; readonly title: string }): string {
  return title === name ? name.replace(/[-_]+/gu, ' ') : title;
}

/** The first letter as a sentence begins. */
export function capital(text: string): string {
  const [first = ''] = [...text];
  return first.toUpperCase() + text.slice(first.length);
}

/** What a name in a job is called: a test, a spec, or a part that was looked at. */
export function nameWords({ specs, family }: Procedure, name: string): string {
  const known = specs.find((one) => one.name === name) ?? family.parts.find((one) => one.name === name);
  return capital(titleOf(known ?? { name, title: name }));
}

export function partWords({ family }: Procedure, name: string): string {
  return titleOf(family.parts.find((one) => one.name === name) ?? { name, title: name });
}

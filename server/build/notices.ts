/** The notices of what is packed with the programs: each package with its version and the text of its license. */
import { readdirSync, readFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import type { Metafile } from 'esbuild';

/** One package that is in what is built, or beside it. */
export interface Package {
  readonly name: string;
  readonly version: string;
  /** As its manifest says: an SPDX expression. */
  readonly license: string;
  /** Folder, from the root of the project. */
  readonly folder: string;
  /** License and notice files, as they are written. */
  readonly texts: readonly string[];
}

/** Folders of the packages that went into a bundle, each once, in the order of their names. */
export function bundled(metafiles: readonly Metafile[]): string[] {
  const inputs = metafiles.flatMap(({ outputs }) =>
    Object.values(outputs).flatMap((output) => Object.keys(output.inputs)),
  );
  const folders = inputs.flatMap((input) => /^(?:.*\/)?node_modules\/(?:@[^/]+\/)?[^/]+(?=\/)/u.exec(input)?.[0] ?? []);
  return [...new Set(folders)].sort();
}

/** Packages that are beside the programs, and not in them: the typesetter, with its native part, and the fonts. */
export function beside(root: string): string[] {
  const typesetter = 'node_modules/@myriaddreamin';
  return [
    ...readdirSync(join(root, typesetter)).map((name) => `${typesetter}/${name}`),
    'node_modules/@expo-google-fonts/atkinson-hyperlegible-next',
    'node_modules/dejavu-fonts-ttf',
  ];
}

/** A package's description of itself. Throws if it names no license: then it must not be packed. */
export function packageIn(root: string, folder: string): Package {
  const manifest = JSON.parse(readFileSync(join(root, folder, 'package.json'), 'utf8')) as Record<string, unknown>;
  const license = manifest.license;
  if (typeof license !== 'string') throw new Error(`${folder} does not say under which license it is.`);
  return {
    name: String(manifest.name),
    version: String(manifest.version),
    license,
    folder,
    texts: licenseTexts(join(root, folder)),
  };
}

function licenseTexts(folder: string): string[] {
  const files = readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isFile() && /^(?:licen[cs]e|copying|notice|ofl)(?![a-z])/iu.test(entry.name))
    .map(({ name }) => name)
    .sort();
  if (files.length > 0)
    return files.map((name) => readFileSync(join(folder, name), 'utf8').replaceAll('\r\n', '\n').trim());
  // The native part of a package leaves the text to that: `compiler` to `compiler-linux-x64-gnu`.
  const whole = readdirSync(dirname(folder)).find((name) => basename(folder).startsWith(`${name}-`));
  return whole === undefined ? [] : licenseTexts(join(dirname(folder), whole));
}

/** The whole file. */
export function noticesOf(packages: readonly Package[]): string {
  const head =
    'Handtight is under the license in LICENSE. It is packed with the following software and fonts, each under its own\nlicense, whose text follows.';
  const list = packages.map(({ name, version, license }) => `- ${name} ${version} (${license})`).join('\n');
  const rule = '-'.repeat(80);
  // Those with the very same text share it: a library of many small packages would repeat it a hundred times.
  const byText = new Map<string, string[]>();
  for (const { name, version, license, texts } of packages) {
    const text = texts.join('\n\n');
    byText.set(text, [...(byText.get(text) ?? []), `${name} ${version} (${license})`]);
  }
  const bodies = [...byText].map(([text, names]) => `${rule}\n${names.join('\n')}\n\n${text}`);
  return `${[head, list, ...bodies].join('\n\n')}\n`;
}

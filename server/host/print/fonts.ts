import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { FontFace } from '../../../language/documents/renderers/html.ts';

const require = createRequire(import.meta.url);

/** Text is set in the first; the second lends the signs that the first does not have. */
const text = '@expo-google-fonts/atkinson-hyperlegible-next';
const files = {
  regular: `${text}/400Regular/AtkinsonHyperlegibleNext_400Regular.ttf`,
  bold: `${text}/700Bold/AtkinsonHyperlegibleNext_700Bold.ttf`,
  signs: 'dejavu-fonts-ttf/ttf/DejaVuSans.ttf',
  boldSigns: 'dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf',
} as const;

type FontFile = keyof typeof files;

const read = new Map<FontFile, Buffer>();

/** A font from the package that ships it, read once. */
function font(name: FontFile): Buffer {
  const known = read.get(name) ?? readFileSync(require.resolve(files[name]));
  read.set(name, known);
  return known;
}

/** All fonts that a PDF may use. None comes from the machine. */
export function pdfFonts(): Buffer[] {
  return (Object.keys(files) as FontFile[]).map(font);
}

/** The text font as data URLs, for an HTML sheet that carries its own. */
export function htmlFonts(): FontFace[] {
  const url = (name: FontFile) => `data:font/ttf;base64,${font(name).toString('base64')}`;
  return [
    { weight: 400, dataUrl: url('regular') },
    { weight: 700, dataUrl: url('bold') },
  ];
}

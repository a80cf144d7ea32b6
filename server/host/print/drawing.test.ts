/** Drawings as the typesetter takes them: their text stays text, and no author's words break them. */
import { createRequire } from 'node:module';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../../language/documents/drawing/drawing.ts';
import { buildExploded, buildStrip, renderSvg } from '../../../language/documents/drawing/index.ts';
import { randomFamilies, written } from '../../../tests/drawing/families.ts';
import { pdfFonts } from './fonts.ts';

const require = createRequire(import.meta.url);
const typst =
  require('@myriaddreamin/typst-ts-node-compiler') as typeof import('@myriaddreamin/typst-ts-node-compiler');
const compiler = typst.NodeCompiler.create({ fontArgs: [{ fontBlobs: pdfFonts() }] });

/** Problems of a page with the drawing, and how high it came out in millimeters. */
function set(drawing: Drawing): string[] {
  const content = `#set document(title: "x")\n#set page(width: 200mm, height: auto)\n#image(bytes(${JSON.stringify(renderSvg(drawing)).replace(/\\u([0-9a-f]{4})/gu, '\\u{$1}')}), format: "svg", alt: "x")`;
  const made = compiler.compile({ mainFileContent: content });
  if (made.result === null)
    return (compiler.fetchDiagnostics(made.takeDiagnostics()!) as { message: string }[]).map(({ message }) => message);
  return [];
}

const { resolved, procedures } = written();

describe('drawings', () => {
  it('of the library are set', () => {
    for (const family of resolved.families) expect(set(buildExploded(family)), family.name).toEqual([]);
    for (const { procedure } of procedures) expect(set(buildStrip(procedure)), procedure.name).toEqual([]);
  });
  it('are attributes only, with every sign of an author’s escaped', () => {
    fc.assert(
      fc.property(randomFamilies(12), (family) => {
        const svg = renderSvg(buildExploded(family));
        expect(set(buildExploded(family))).toEqual([]);
        expect(svg).not.toMatch(/<style|<script|foreignObject|url\(|NaN|undefined|Infinity/u);
        // Nothing but elements and text: what is left when they are taken away has no sign of markup.
        const left = svg.replace(/<\/?(?:svg|g|path|text|tspan)(?: [a-zA-Z-]+="[^"<>]*")*\/?>/gu, '');
        expect(left).not.toMatch(/[<>"]|&(?!amp;|lt;|gt;|quot;|#39;)/u);
      }),
      { numRuns: 100, seed: 12, endOnFailure: true },
    );
  });
});

/** One sheet, kept as JSON, to a PDF in a process of its own: what the bench `print` holds beside a browser that prints its HTML. */
import { readFileSync, writeFileSync } from 'node:fs';
import type { Sheet } from '../../../language/documents/traveler/index.ts';
import { pdfOf } from '../../../server/host/print/pdf.ts';

const [from, to] = process.argv.slice(2);
const sheet = JSON.parse(readFileSync(from!, 'utf8')) as Sheet;
writeFileSync(to!, pdfOf([sheet]).bytes);

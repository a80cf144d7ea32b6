import { execFileSync } from 'node:child_process';
import {
  chmodSync,
  existsSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, describe, expect, test } from 'vitest';
import type { Sheet } from '../../../language/documents/model.ts';
import type { SheetOptions } from '../../../language/documents/print-context.ts';
import { renderHtml } from '../../../language/documents/renderers/html.ts';
import { renderText } from '../../../language/documents/texts.ts';
import { buildSheet } from '../../../language/documents/traveler/sheet.ts';
import { wordsIn } from '../../../language/i18n/index.ts';
import { printable } from '../../../language/i18n/printable.ts';
import { jobOf, procedure } from '../../../tests/fixtures/injector.ts';
import { fileName, printSheet } from './index.ts';
import { pdfOf } from './pdf.ts';
import { WriteError, writeWhole } from './write.ts';

const folder = mkdtempSync(join(tmpdir(), 'handtight-print-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const blank: SheetOptions = {
  job: null,
  number: null,
  paper: 'a4',
  draft: false,
  diagnostics: [],
  hash: 'ab'.repeat(32),
};
const warned: SheetOptions = {
  ...blank,
  diagnostics: [
    {
      rule: 'x',
      severity: 'warning',
      message: 'A warning that is printed.',
      source: procedure.source,
      step: '7.3',
    },
  ],
};
const forUnits = (count: number, more: Partial<SheetOptions> = {}) =>
  buildSheet(procedure, { ...warned, job: jobOf(count), ...more });

/** An author who writes what breaks programs. */
const hostile =
  'Say "hi" & <script>alert(1)</script> #panic() $x$ `raw` \\ \\u{41} */ // _a_ *b* [c] @d ~ = µ ⌀8 → ☐ ½ Größe';
const longWord = 'Unterwasserschneidbrennerhalterungsschraubendreher'.repeat(4);
const attacked = buildSheet(
  {
    ...procedure,
    title: hostile,
    approvedBy: null,
    writtenBy: hostile,
    family: {
      ...procedure.family,
      title: longWord,
      parts: procedure.family.parts.map((part) => ({
        ...part,
        title: `${part.title} ${longWord} ${hostile}`,
      })),
    },
    stages: procedure.stages.map((stage) => ({
      ...stage,
      title: hostile,
      steps: stage.steps.map((step) => ({
        ...step,
        note: hostile,
        hazards: [
          {
            word: 'DANGER' as const,
            text: `${hostile} ${longWord}`,
            source: step.source,
          },
        ],
      })),
    })),
  },
  { ...warned, job: { ...jobOf(13), customer: hostile, title: longWord } },
);

function tool(name: string): boolean {
  try {
    execFileSync(name, ['-v'], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
}
const hasText = tool('pdftotext');
if (!hasText)
  console.warn('pdftotext is not installed: the words of the PDF are not compared. apt-get install poppler-utils');

/** What two texts have in common when lines are broken differently. */
const bones = (text: string) => printable(text).replace(/[\s\u00a0\u200b\u00ad]+/gu, '');

function pdfText(sheet: Sheet): string {
  const file = join(folder, `${Math.random()}.pdf`);
  writeFileSync(file, pdfOf([sheet]).bytes);
  return execFileSync('pdftotext', ['-raw', '-enc', 'UTF-8', file, '-'], {
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'ignore'],
    maxBuffer: 64e6,
  });
}

/** What is at the foot of a page with work under pressure. */
function pressedText({ pressed }: Sheet): string {
  return pressed === null ? '' : `⚠ ${pressed.alert.label} ${pressed.alert.text} ${pressed.firstAid}`;
}

/** The text without the head of every page but the first, and without the feet. */
function flow(sheet: Sheet, text: string): string {
  const pages = text.split('\f').filter((page) => page.trim() !== '');
  return pages
    .map((page, index) => {
      const whole = bones(page)
        .replace(bones(sheet.foot), '')
        .replace(bones(pressedText(sheet)), '');
      const number = `Page${index + 1}of${pages.length}`;
      return index === 0 ? whole : whole.slice(whole.indexOf(number) + number.length);
    })
    .join('');
}

function htmlText(html: string): string {
  const names: Record<string, string> = {
    amp: '&',
    lt: '<',
    gt: '>',
    quot: '"',
    '#39': "'",
  };
  return html
    .replace(/^[\s\S]*?<body>/u, '')
    .replace(/<tfoot>[\s\S]*?<\/tfoot>/u, '')
    .replace(/<[^>]*>/gu, ' ')
    .replace(/&(amp|lt|gt|quot|#39);/gu, (_, name: string) => names[name]!);
}

/** The first of these that is not found after the one before it. */
function firstLost(texts: readonly string[], within: string): string | null {
  const whole = bones(within);
  let at = 0;
  for (const text of texts) {
    const wanted = bones(text);
    const found = whole.indexOf(wanted, at);
    if (found < 0) return text;
    at = found + wanted.length;
  }
  return null;
}

const sheets: [string, Sheet][] = [
  ['one unit', forUnits(1)],
  ['a set of six, mixed', forUnits(6)],
  ['twelve units', forUnits(12)],
  ['thirteen units on Letter', forUnits(13, { paper: 'letter' })],
  ['blank', buildSheet(procedure, blank)],
  ['one number, draft', buildSheet({ ...procedure, approvedBy: null }, { ...blank, number: 'A-220', draft: true })],
  ['hostile words', attacked],
];

describe.each(sheets)('every word, in order: %s', (_, sheet) => {
  test('in the HTML', () => {
    expect(firstLost(renderText(sheet), htmlText(renderHtml(sheet)))).toBeNull();
  });
  test.skipIf(!hasText)('in the PDF', () => {
    const text = pdfText(sheet);
    expect(firstLost(renderText(sheet), flow(sheet, text))).toBeNull();
    expect(bones(text)).toContain(bones(sheet.foot));
    if (sheet.pressed !== null) expect(bones(text)).toContain(bones(sheet.pressed.firstAid));
  });
});

describe('any words that an author may write', () => {
  const [stage] = procedure.stages;
  const written = (title: string, note: string) =>
    buildSheet(
      {
        ...procedure,
        title,
        repairs: [],
        specs: [],
        numbers: [],
        stages: [{ ...stage!, title: note, steps: [{ ...stage!.steps[0]!, text: title, note }] }],
      },
      blank,
    );
  const anything = fc.string({ unit: 'binary', maxLength: 60 });

  test('are in the HTML as text, and nowhere as markup', () => {
    fc.assert(
      fc.property(anything, anything, (title, note) => {
        const sheet = written(title, note);
        expect(firstLost(renderText(sheet), htmlText(renderHtml(sheet)))).toBeNull();
      }),
      { numRuns: 200 },
    );
  });
  test('can be set as a PDF', () => {
    fc.assert(
      fc.property(anything, anything, (title, note) => {
        expect(pdfOf([written(title, note)]).pages).toBeGreaterThan(0);
      }),
      { numRuns: 30 },
    );
  });
});

describe('the PDF', () => {
  test('is tagged to PDF/UA-1, with title and language', () => {
    const { bytes, accessible, missing } = pdfOf([forUnits(6)]);
    expect([accessible, missing]).toEqual([true, []]);
    const text = bytes.toString('latin1');
    for (const mark of ['/StructTreeRoot', 'pdfuaid:part', '/Lang', '/DisplayDocTitle true', '/FontFile2'])
      expect(text).toContain(mark);
  });
  test('is the same bytes for the same sheet, and has no date', () => {
    const [first, second] = [pdfOf([forUnits(6)]).bytes, pdfOf([forUnits(6)]).bytes];
    expect(first.equals(second)).toBe(true);
    expect(first.toString('latin1')).not.toMatch(/CreationDate|ModDate|xmp:CreateDate/u);
  });
  test('is the same bytes from a fresh program', () => {
    const script = `import { buildSheet } from './language/documents/traveler/sheet.ts'; import { pdfOf } from './server/host/print/pdf.ts'; import { jobOf, procedure } from './tests/fixtures/injector.ts'; import { createHash } from 'node:crypto';
      process.stdout.write(createHash('sha256').update(pdfOf([buildSheet(procedure, { job: jobOf(6), number: null, paper: 'a4', draft: false, diagnostics: [], hash: '00' })]).bytes).digest('hex'));`;
    const run = () =>
      execFileSync(process.execPath, ['--input-type=module', '--experimental-strip-types', '-e', script], {
        encoding: 'utf8',
        cwd: join(import.meta.dirname, '../../..'),
        stdio: ['ignore', 'pipe', 'ignore'],
      });
    const hash = run();
    expect(hash).toMatch(/^[0-9a-f]{64}$/u);
    expect(run()).toBe(hash);
  });
  test('sets signs that the text font lacks, and names those that no font has', () => {
    expect(pdfOf([attacked])).toMatchObject({ accessible: true, missing: [] });
    const odd = buildSheet({ ...procedure, title: 'Needle 漢 🛠' }, blank);
    const { accessible, missing, pages } = pdfOf([odd]);
    expect(accessible).toBe(false);
    expect(missing).toContain('漢');
    expect(pages).toBeGreaterThan(3);
  });
  test('A4 and Letter have their own size', () => {
    expect(pdfOf([forUnits(1)]).bytes.toString('latin1')).toMatch(/MediaBox \[0 0 595\.27/u);
    expect(pdfOf([forUnits(1, { paper: 'letter' })]).bytes.toString('latin1')).toMatch(/MediaBox \[0 0 612 792\]/u);
  });
  test.skipIf(!hasText)('nothing is outside the page or in its margin', () => {
    const file = join(folder, 'bounds.pdf');
    writeFileSync(file, pdfOf([attacked]).bytes);
    const boxes = execFileSync('pdftotext', ['-bbox', file, '-'], {
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
      maxBuffer: 64e6,
    });
    // A place to break at the end of a line has no width on paper, but counts for pdftotext.
    const right = Math.max(
      ...[...boxes.matchAll(/xMax="([\d.]+)"[^>]*>[^<]*[^<\u200b]<\/word>/gu)].map(([, x]) => Number(x)),
    );
    const left = Math.min(...[...boxes.matchAll(/xMin="([\d.]+)"/gu)].map(([, x]) => Number(x)));
    expect(right).toBeLessThanOrEqual(595.28 - 26);
    // The inner margin has the holes, and is at the right of an even page.
    expect(left).toBeGreaterThanOrEqual(28);
  });
});

describe.skipIf(!hasText)('the pages', () => {
  const sheet = forUnits(6);
  const text = hasText ? pdfText(sheet) : '';
  const pages = text.split('\f').filter((page) => page.trim() !== '');

  test('first aid is on each page with work under pressure or a warning of injection, and on no other', () => {
    const pressed = sheet.blocks.flatMap((block) => (block.kind === 'step' && block.pressure ? [block.number] : []));
    expect(pressed.length).toBeGreaterThan(5);
    const { text, short } = wordsIn('en').cautions.injection;
    for (const page of pages) {
      // A step begins its line; what is written down for it is in the rows of a try, after the same number.
      const rows = page.split(/^Attempt \d/mu)[0]!.split('\n');
      const works = pressed.some((number) => rows.some((line) => line.startsWith(`${number} `)));
      const here = works || [text, short].some((warning) => bones(page).includes(bones(warning)));
      expect(page.includes('FIRST AID'), page.slice(0, 300)).toBe(here);
    }
  });

  test('each has the whole head, with its own number', () => {
    pages.forEach((page, index) => {
      for (const wanted of ['Rebuild and set', 'Revision B', 'Traveler 2207', `Page ${index + 1} of ${pages.length}`])
        expect(page).toContain(wanted);
    });
  });

  test('a step and its boxes stay on one page', () => {
    const blocks = sheet.blocks.filter((block) => block.kind === 'step');
    for (const { number, fail } of blocks.filter((block) => block.gate && block.fail !== null)) {
      const page = pages.find((one) => one.split('\n').some((line) => line.startsWith(`${number} `)));
      expect(bones(page ?? ''), number).toContain(bones(fail!.ways[0]!.end));
    }
  });

  test('sizes: steps 9.25 pt or more, values 12 pt, nothing under 8.4 pt, boxes 8 mm high', () => {
    const file = join(folder, 'sizes.pdf');
    writeFileSync(file, pdfOf([sheet]).bytes);
    const out = execFileSync('pdftotext', ['-bbox', file, '-'], {
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
      maxBuffer: 64e6,
    });
    const found = [
      ...out.matchAll(/xMin="([\d.]+)" yMin="([\d.]+)" xMax="[\d.]+" yMax="([\d.]+)">(.*?)<\/word>/gu),
    ].map(([, x, top, bottom, word]) => ({
      x: Number(x),
      top: Number(top),
      // The text font is 1.3 of its size from top to bottom.
      size: (Number(bottom) - Number(top)) / 1.3,
      word: word!,
    }));
    const sizesOf = (word: string) => found.filter((one) => one.word === word).map(({ size }) => size);
    expect(
      Math.min(...found.filter(({ word }) => /^[a-z]+$/iu.test(word)).map(({ size }) => size)),
    ).toBeGreaterThanOrEqual(8.4);
    for (const word of ['Torque', 'Slacken', 'Fit']) expect(Math.min(...sizesOf(word))).toBeGreaterThanOrEqual(9.25);
    expect(Math.max(...sizesOf('258'))).toBeGreaterThanOrEqual(12);
    expect(Math.max(...sizesOf('60'))).toBeGreaterThanOrEqual(12);
    // The rows for two looks at a check, one under the other.
    const [first, second] = found.filter(({ word }, at) => word === 'after' && /^R\d/u.test(found[at + 1]?.word ?? ''));
    expect(((second!.top - first!.top) / 72) * 25.4).toBeGreaterThanOrEqual(8);
  });
});

describe('the HTML', () => {
  const html = renderHtml(attacked);
  test('runs nothing and loads nothing', () => {
    expect(html).not.toMatch(/<script|\son\w+=|javascript:/iu);
    expect(html.replace(/http:\/\/www\.w3\.org\/2000\/svg/gu, '')).not.toMatch(/https?:|url\((?!"data:)/u);
    expect(html).toContain('default-src &#39;none&#39;');
  });
  test('steps can be found from the text and back', () => {
    const whole = renderHtml(forUnits(1));
    expect(whole).toMatch(/id="step-6\.5" data-source-line="\d+" data-source-file="injector-17\.rebuild"/u);
  });
  test('has a title, a language, heads for its tables, and captions', () => {
    const whole = renderHtml(forUnits(6));
    expect(whole).toContain('<html lang="en">');
    expect(whole).toContain('<title>Traveler: Rebuild and set, revision B, work order 2207</title>');
    expect(whole).toContain('<caption>Replace every time</caption>');
    expect(whole.match(/<thead>/gu)!.length).toBeGreaterThan(10);
  });
});

describe('files', () => {
  test('both formats, by name, and no part left beside them', async () => {
    const to = join(folder, 'new', 'deep');
    const { files, notes } = printSheet(forUnits(1), {
      formats: ['pdf', 'html'],
      to,
      name: 'job 2207/A',
    });
    expect(files).toEqual([join(to, 'job 2207-A.pdf'), join(to, 'job 2207-A.html')]);
    expect(notes).toEqual([]);
    expect(readdirSync(to).sort()).toEqual(['job 2207-A.html', 'job 2207-A.pdf']);
    expect(readFileSync(files[0]!).subarray(0, 5).toString()).toBe('%PDF-');
  });
  test('a file is replaced whole', () => {
    const file = join(folder, 'replaced.txt');
    writeWhole(file, 'first');
    writeWhole(file, 'second');
    expect(readFileSync(file, 'utf8')).toBe('second');
  });
  test('what a killed write left is removed once no other can be at it', () => {
    const [left, fresh] = ['0', '1'].map((digit) => join(folder, `.${digit}0000000-0000-4000-8000-000000000000.part`));
    writeFileSync(left!, 'half');
    utimesSync(left!, 0, 0);
    writeFileSync(fresh!, 'half');
    writeWhole(join(folder, 'next.txt'), 'whole');
    expect([existsSync(left!), existsSync(fresh!)]).toEqual([false, true]);
    rmSync(fresh!);
  });
  test('a failed write names the file, says what to do, and leaves what was there', () => {
    const inTheWay = join(folder, 'folder.pdf');
    mkdirSync(join(inTheWay, 'x'), { recursive: true });
    expect(() => writeWhole(inTheWay, 'new')).toThrow(WriteError);
    expect(() => writeWhole(inTheWay, 'new')).toThrow(/folder\.pdf: a folder of that name is in the way/u);
    const file = join(folder, 'plain.txt');
    writeFileSync(file, 'kept');
    expect(() => writeWhole(join(file, 'below.pdf'), 'new')).toThrow(/there is a file where a folder is needed/u);
    expect(readFileSync(file, 'utf8')).toBe('kept');
    expect(readdirSync(folder).filter((name) => name.endsWith('.part'))).toEqual([]);
  });
  test.skipIf(!existsSync('/proc/self'))('a place where no folder can be made', () => {
    expect(() => writeWhole('/proc/nowhere/deep/a.pdf', 'x')).toThrow(/a\.pdf: the folder cannot be made there/u);
  });
  test.skipIf(process.getuid?.() === 0 || process.platform === 'win32')('a folder without permission', () => {
    const to = join(folder, 'shut');
    mkdirSync(to);
    chmodSync(to, 0o555);
    expect(() => writeWhole(join(to, 'a.pdf'), 'x')).toThrow(/no permission/u);
  });
  test('a full disk', () => {
    expect(new WriteError('a.pdf', Object.assign(new Error('x'), { code: 'ENOSPC' })).message).toBe(
      'Cannot write a.pdf: the disk is full. Make room, or give another folder with --to.',
    );
  });
  test('a file that has to be this one', () => {
    expect(new WriteError('a.rebuild', Object.assign(new Error('x'), { code: 'EROFS' }), null).message).toBe(
      'Cannot write a.rebuild: the disk is read-only. Copy the files to another one and work there.',
    );
  });
  test('names that a file system refuses', () => {
    expect(fileName('../../etc/passwd')).toBe('-..-etc-passwd');
    expect(fileName('a:b*c?"<>|')).toBe('a-b-c-');
    expect(fileName('CON')).toBe('CON-sheet');
    expect(fileName('...')).toBe('sheet');
    expect(fileName('com¹.x')).toBe('com¹.x-sheet');
    expect(fileName('ends in a dot. ')).toBe('ends in a dot');
  });
  test('names that are too long keep apart, and to the bytes that a file system takes', () => {
    const long = ['a', 'b', 'b-draft'].map((end) => fileName(`job-${'x'.repeat(130)}${end}`));
    expect(new Set(long).size).toBe(3);
    expect(long.map(({ length }) => length)).toEqual([120, 120, 120]);
    expect(long[0]).toMatch(/^job-x+-[0-9a-f]{8}$/u);
    expect(Buffer.byteLength(fileName('針'.repeat(100)))).toBeLessThanOrEqual(200);
    expect(encodeURIComponent(fileName('𝒳'.repeat(100)))).toContain('%');
    for (const name of long) expect(fileName(name)).toBe(name);
  });
  test.skipIf(!existsSync('/dev/full'))('a device is written into and not replaced, and a link is kept', () => {
    const to = join(folder, 'kinds');
    mkdirSync(to);
    writeFileSync(join(to, 'real.pdf'), 'old');
    symlinkSync('real.pdf', join(to, 'link.pdf'));
    writeWhole(join(to, 'link.pdf'), 'new');
    expect(lstatSync(join(to, 'link.pdf')).isSymbolicLink()).toBe(true);
    expect(readFileSync(join(to, 'real.pdf'), 'utf8')).toBe('new');
    writeWhole('/dev/null', 'x');
    expect(lstatSync('/dev/null').isCharacterDevice()).toBe(true);
    expect(() => writeWhole('/dev/full', 'x', '--out')).toThrow(/the disk is full\. .*--out/u);
    expect(readdirSync(to).sort()).toEqual(['link.pdf', 'real.pdf']);
  });
});

/** The questions about closed jobs as a user asks them: as a table, as a page, and beside a serial in the editor. */
import { appendFileSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { parse } from 'parse5';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Hover, InlayHint } from 'vscode-languageserver-protocol/node';
import { writePage } from '../server/cli/page/page.ts';
import { command } from './command.ts';
import { EditorSession } from './editor-session.ts';
import { closeSeason, writeSeason } from './season/closed-season.ts';
import { season } from './season/season.ts';

const folder = mkdtempSync(join(tmpdir(), 'handtight-asking-'));
const own = season(60, 5);
const { files, closed } = closeSeason(own);
const put = (at: string, uri: string, text: string) => {
  mkdirSync(dirname(join(at, uri)), { recursive: true });
  writeFileSync(join(at, uri), text);
};
const isClosed = new Set(closed.flatMap(({ job, record }) => (record === null ? [] : job.name)));
const back = own.jobs.flatMap((job) => job.units.filter(({ cause }) => cause !== null).map((unit) => ({ job, unit })));
const { job: last, unit: known } = back.findLast(({ job }) => isClosed.has(job.name))!;

beforeAll(() => {
  for (const { uri, text } of files) if (!uri.startsWith('jobs/')) put(folder, uri, text);
  writeSeason(join(folder, 'records'), closed);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const page = (name: string) => readFileSync(join(folder, name), 'utf8');

/** Names of all elements of a page that a browser makes of it. */
function elements(html: string): string[] {
  const names: string[] = [];
  const walk = (node: { tagName?: string; childNodes?: unknown[] }) => {
    if (node.tagName !== undefined) names.push(node.tagName);
    for (const child of node.childNodes ?? []) walk(child as typeof node);
  };
  walk(parse(html) as never);
  return names;
}

describe('a page', () => {
  it.each([
    ['learn', [], ['figure', 'figcaption', 'circle', 'rect', 'table']],
    ['history', [known.serial], ['polyline', 'circle', 'table']],
    ['affected', ['--tool', 'PG-400', '--from', '2026-11-01', '--to', '2026-11-30'], ['circle', 'table']],
  ])(
    'of %s has pictures and the table that they were drawn from, and needs nothing beside it',
    async (name, more, has) => {
      const { status, stdout, stderr } = await command(folder, name, ...more, '--page', `${name}.html`);
      expect([status, stdout, stderr]).toEqual([0, `written  ${name}.html\n`, '']);
      const html = page(`${name}.html`);
      expect(elements(html)).toEqual(expect.arrayContaining(has));
      expect(html).not.toMatch(/\b(?:src|href)=|@import|url\(/u);
      // Each mark of a picture is inside it.
      for (const [, x, y] of html.matchAll(/c[xy]="([-\d.]+)" cy="([-\d.]+)"/gu)) {
        expect(Number(x)).toBeGreaterThanOrEqual(0);
        expect(Number(x)).toBeLessThanOrEqual(720);
        expect(Number(y)).toBeGreaterThanOrEqual(0);
        expect(Number(y)).toBeLessThanOrEqual(250);
      }
      expect(html).not.toContain('NaN');
    },
  );

  it('shows the figures of the terminal', async () => {
    const { stdout } = await command(folder, 'learn', '--format', 'ndjson');
    const rows = stdout
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line) as { shim_rate: number | null; month: string });
    const html = page('learn.html');
    for (const { month, shim_rate: rate } of rows) {
      expect(html).toContain(`<td>${month}</td>`);
      if (rate !== null) expect(html).toContain(`${month}: ${rate} ±`);
    }
  });

  it('holds no markup of an author’s', () => {
    const file = join(folder, 'x.html');
    writePage(file, { title: '<script>alert(1)</script>', about: '"><img>', blocks: [] });
    expect(elements(readFileSync(file, 'utf8')).filter((name) => name === 'script' || name === 'img')).toEqual([]);
  });
});

it('open says what each job waits for, what it was promised for, and what is late', async () => {
  const at = join(folder, 'house');
  for (const { uri, text } of files) if (!uri.startsWith('jobs/')) put(at, uri, text);
  put(
    at,
    'jobs/1.rebuild',
    `job 1 "One" of rebuild-one-spring at bench-two
  customer "A"   received 2026-10-06
{
  intake {
    promised 2026-10-20
    quote "1,240" on 2026-10-07
  }
  unit 1 number A-250 serial 1 {
    waiting for spring since 2026-10-08
  }
  unit 2 number A-250 serial 2 {
    sent-out "plating" on 2026-10-09 paper "LS-1"
  }
  unit 3 number A-250 serial 3 {
    waiting for nozzle since 2026-10-08
    renewed nozzle
    sent-out "plating" on 2026-10-09 paper "LS-1"
    booked-in on 2026-10-10 paper "WE-1"
  }
}
`,
  );
  const { status, stdout } = await command(at, 'open', '--today', '2026-10-21', '--format', 'ndjson');
  expect(status).toBe(0);
  expect(JSON.parse(stdout)).toMatchObject({
    job: '1',
    promised: '2026-10-20',
    waiting:
      'approval of the quote since 2026-10-07; unit 1: Pressure spring since 2026-10-08; unit 2: sent out, plating since 2026-10-09',
  });
  const text = await command(at, 'open', '--today', '2026-10-21');
  expect(text.stdout).toContain('2026-10-20 late');
  expect((await command(at, 'open', '--today', '2026-10-21', '--page', 'open.html')).status).toBe(0);
  expect(readFileSync(join(at, 'open.html'), 'utf8')).toContain('2026-10-20 late');
});

it('a serial that is known is announced while its job is typed, with what was read then', async () => {
  const texts = Object.fromEntries(
    [...files.filter(({ uri }) => !uri.startsWith('jobs/'))].map(({ uri, text }) => [uri.replaceAll('/', '-'), text]),
  );
  const line = `  unit 1 number A-250 serial ${known.serial}\n`;
  const session = await EditorSession.begin({
    ...texts,
    'new.rebuild': `job 9999 "One" of rebuild-one-spring at bench-two\n{\n${line}  unit 2 number A-250 serial none "ground off"\n}\n`,
  });
  try {
    writeSeason(join(session.folder, 'records'), closed);
    const range = { start: { line: 0, character: 0 }, end: { line: 9, character: 0 } };
    const textDocument = { uri: session.uri('new.rebuild') };
    const hints = await session.connection.sendRequest<InlayHint[]>('textDocument/inlayHint', { textDocument, range });
    const cause = known.cause === null ? '' : `, ${known.cause}`;
    expect(hints.map(({ label }) => label)).toEqual([`here before: job ${last.name}, ${last.done}${cause}`]);
    expect(hints[0]!.position).toEqual({ line: 2, character: line.trimEnd().length });
    const hover = await session.ask<Hover>('textDocument/hover', 'new.rebuild', known.serial);
    expect((hover.contents as { value: string }).value).toContain('- as left opening ');
    expect(existsSync(join(session.folder, 'records'))).toBe(true);
    // A list that is cut off, or a ledger that lacks too much, says nothing, and stops nothing.
    appendFileSync(
      join(session.folder, 'records', 'records.list'),
      `${`${'0'.repeat(64)}  x.record.json\n`.repeat(500)}`,
    );
    const more = await session.connection.sendRequest<InlayHint[]>('textDocument/inlayHint', { textDocument, range });
    expect(more).toEqual([]);
  } finally {
    session.end();
  }
});

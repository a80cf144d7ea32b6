/** Issued revisions: frozen, side by side, and what jobs are judged by. */
import { expect, test } from 'vitest';
import { libraryFiles } from '../../../tests/library.ts';
import { inLanguage } from '../../i18n/translate.ts';
import { renameAt } from '../../ide/rename.ts';
import { english } from '../../say/say.ts';
import type { SourceFile } from '../workspace.ts';
import { Workspace } from '../workspace.ts';
import { blanked } from './content.ts';
import { isDraft } from './draft.ts';
import { readIssued, writeIssued } from './format.ts';
import { hashOf } from './hash.ts';
import { buildIssued } from './issue.ts';

const name = 'rebuild-one-spring';
const library = libraryFiles();
const first = new Workspace().open(library);
const issuedText = writeIssued(
  buildIssued(first.procedureOf(name)!.procedure, { files: library, result: first }, '2026-10-06'),
);
const issued = { uri: 'procedures/one-spring/issued/rebuild-one-spring-C.issued.rebuild', text: issuedText };

/** The library with a text replaced in all its files. */
function changed(from: string | RegExp, to: string | ((found: string) => string)): SourceFile[] {
  return library.map((file) => ({ ...file, text: file.text.replace(from, to as string) }));
}

const inJobs = ({ source }: { readonly source: { readonly file: string } }) => source.file.includes('/jobs/');

/** Units that are not finished have hints. */
const isWrong = ({ severity }: { severity: string }) => severity !== 'hint';

const errors = (files: readonly SourceFile[]) =>
  new Workspace()
    .check(files)
    .diagnostics.filter(({ severity }) => severity === 'error')
    .map(({ rule, source, why }) => `${source.file} ${rule}${why === undefined ? '' : `: ${why}`}`);

test('hashes as SHA-256 does', () => {
  // FIPS 180-4, example of one block.
  expect(hashOf('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
});

test('reads what it has written, with any line ends', () => {
  const read = readIssued(issued.uri, issuedText)!;
  expect(read).toMatchObject({ procedure: name, revision: 'C', issuedOn: '2026-10-06' });
  expect(readIssued(issued.uri, issuedText.replaceAll('\n', '\r\n'))).toMatchObject({ body: read.body });
  expect(writeIssued(read)).toBe(issuedText);
});

test('holds what the procedure needs, and nothing else', () => {
  const declared = [...issuedText.matchAll(/^(shop|family|procedure|sequence) (\S+)/gmu)].map(([line]) => line);
  expect(declared).toEqual([
    'shop bench-two',
    'family one-spring',
    'sequence send-off',
    'sequence take-in',
    `procedure ${name}`,
  ]);
});

test('finds every change of a single character in it', () => {
  for (let at = 0; at < issuedText.length; at += 397) {
    const other = issuedText[at] === 'x' ? 'y' : 'x';
    expect(readIssued(issued.uri, `${issuedText.slice(0, at)}${other}${issuedText.slice(at + 1)}`)).toBeNull();
  }
  expect(errors([...library, { ...issued, text: issuedText.replace('bench-two', 'bench-six') }])).toEqual([
    `${issued.uri} issued-file-changed: a limit could be moved in it after the work was done.`,
  ]);
});

test('changes nothing while source and issue are the same', () => {
  expect(errors([...library, issued])).toEqual([]);
});

test('reports an issued revision that is edited, with what changed', () => {
  const edited = changed('procedure rebuild-one-spring "', 'procedure rebuild-one-spring "New ');
  expect(errors([...edited, issued])).toEqual([
    expect.stringMatching(
      /^procedures\/one-spring\/\S+ issued-and-edited: procedure rebuild-one-spring changed since/u,
    ),
  ]);
});

test('says so in the language of whom it tells', () => {
  const edited = changed('procedure rebuild-one-spring "', 'procedure rebuild-one-spring "New ');
  const messages = (files: readonly SourceFile[]) =>
    new Workspace().check(files).diagnostics.flatMap(({ rule, said }) => {
      if (!rule.startsWith('issued-')) return [];
      return (['en', 'de'] as const).map((language) => inLanguage(said!.message, language));
    });
  expect(messages([...edited, issued])).toEqual([
    'Revision C of rebuild-one-spring is issued, and its text is no longer what was issued.',
    'Revision C von rebuild-one-spring ist ausgegeben, und ihr Text ist nicht mehr der ausgegebene.',
  ]);
  expect(messages([...library, { ...issued, text: issuedText.replace('bench-two', 'bench-six') }])).toEqual([
    'This file of an issued revision is not as it was written, so no job is judged by it.',
    'Diese Datei einer ausgegebenen Revision ist nicht so, wie sie geschrieben wurde; kein Auftrag wird danach beurteilt.',
  ]);
});

test('lets remarks, and the tools of the shop, change', () => {
  const edited = changed(/due \d{4}-\d\d-\d\d/gu, 'due 2031-01-01 // sent in').map((file) => ({
    ...file,
    text: `// A remark.\n${file.text}`,
  }));
  expect(errors([...edited, issued])).toEqual([]);
});

test('judges a job by the revision that it names, whatever the sources say today', () => {
  const next = changed(/(procedure rebuild-one-spring [^{]*?)revision C/u, '$1revision D').map((file) => ({
    ...file,
    text: inJobs({ source: { file: file.uri } }) ? file.text : file.text.replaceAll('chatter', 'rattle'),
  }));
  expect(new Workspace().check(next).diagnostics.filter(inJobs).filter(isWrong)).not.toEqual([]);
  const result = new Workspace().check([...next, issued]);
  expect(result.diagnostics.filter(inJobs).filter(isWrong)).toEqual([]);
  const job = result.jobOf('2198')!;
  expect(job.procedure.revision).toBe('C');
  expect(result.judgedBy('2198')!.revision).toBe('C');
  expect(result.jobs.map((one) => one.name).sort()).toEqual(first.jobs.map((one) => one.name).sort());
  expect(isDraft({ procedure: result.procedureOf(name)!.procedure, job: null }, result)).toBe(true);
  expect(isDraft({ procedure: job.procedure, job }, result)).toBe(false);
});

test('reports a job in work by a revision after which another was issued, as soon as that is there', () => {
  const next = changed(/(procedure rebuild-one-spring [^{]*?)revision C/u, '$1revision D').map((file) => ({
    ...file,
    text: file.text.replace('revision D at bench-two', 'revision C at bench-two'),
  }));
  const workspace = new Workspace();
  const superseded = (files: readonly SourceFile[]) =>
    workspace
      .check(files)
      .diagnostics.flatMap(({ rule, source }) => (rule === 'superseded-revision' ? source.file : []));
  expect(superseded([...next, issued])).toEqual([]);
  const source = { files: next, result: new Workspace().open(next) };
  const text = writeIssued(buildIssued(source.result.procedureOf(name)!.procedure, source, '2026-11-20'));
  const both = [...next, issued, { uri: issued.uri.replace('-C', '-D'), text }];
  expect(superseded(both)).toEqual(['procedures/jobs/job-2207.rebuild']);
  expect(superseded([...next, issued])).toEqual([]);
});

test('judges a job even if its procedure is gone from the sources', () => {
  const gone = library.filter(({ text }) => !text.includes('procedure rebuild-one-spring '));
  expect(new Workspace().open(gone).jobOf('2198')).toBeNull();
  expect(new Workspace().open([...gone, issued]).jobOf('2198')!.procedure.revision).toBe('C');
});

test('a tool is the one of today: one that was bought after the issue can be named', () => {
  const bought = changed(/^ *gauge +PG-400 .*$/mu, (line) => `${line}\n${line.replace('PG-400', 'PG-900')}`).map(
    (file) => ({
      ...file,
      text: file.text.includes('job 2198') ? file.text.replace('on PG-400', 'on PG-900') : file.text,
    }),
  );
  const { jobOf, findingsIn } = new Workspace().open([...bought, issued]);
  const { shop } = jobOf('2198')!.procedure;
  expect(shop.assets.filter((asset) => asset.name.startsWith('PG-')).map((asset) => asset.name)).toContain('PG-900');
  expect(findingsIn(jobOf('2198')!.source.file)).toEqual([]);
});

test('keeps lines where they are', () => {
  const range = { start: { line: 1, character: 1 }, end: { line: 2, character: 1 } };
  expect(blanked('ab\ncd\nef\n', [range])).toBe('ab\nc \n f\n');
});

test('is judged with the severities of the day of the issue', () => {
  const severity = (severities: object, today: object) => {
    const settings = (chosen: object) => ({ uri: 'handtight.json', text: JSON.stringify({ severities: chosen }) });
    const then = new Workspace().open(library, settings(severities));
    const text = writeIssued(
      buildIssued(then.procedureOf(name)!.procedure, { files: library, result: then }, '2026-10-06'),
    );
    const files = changed('opening 253 bar on PG-400', 'opening 2530 bar on PG-400');
    const { diagnostics } = new Workspace().check([...files, { ...issued, text }], settings(today));
    return diagnostics
      .filter(inJobs)
      .filter(isWrong)
      .map((one) => `${one.rule} ${one.severity}`);
  };
  // The unit is signed all the same.
  const signed = 'signed-and-fails warning';
  expect(severity({}, {})).toEqual(['implausible-result error', signed]);
  expect(severity({ 'implausible-result': 'warning' }, {})).toEqual(['implausible-result warning', signed]);
  expect(severity({}, { 'implausible-result': 'off' })).toEqual(['implausible-result error', signed]);
  expect(severity({ 'implausible-result': 'off' }, { 'implausible-result': 'warning' })).toEqual([signed]);
});

test('a name of it is not renamed, and one in the sources leaves it alone', () => {
  const files = [...library, issued];
  const texts = new Map(files.map(({ uri, text }) => [uri, text]));
  const result = new Workspace().open(files);
  const snapshot = { result, findingsIn: () => [], textOf: (uri: string) => texts.get(uri) ?? null };
  const place = (file: string, text: string) => {
    const before = texts.get(file)!.split(text)[0]!.split('\n');
    return { line: before.length - 1, character: before.at(-1)!.length };
  };
  const { file } = result.jobOf('2198')!.source;
  const refused = renameAt(snapshot, file, place(file, 'opening'), 'opened');
  expect(refused.kind === 'refused' && english(refused.reason)).toMatch(
    /^opening is a name of an issued revision, which never changes: /u,
  );
  const source = result.procedureOf(name)!.procedure.source.file;
  const renamed = renameAt(snapshot, source, place(source, 'opening'), 'opened');
  const edits = renamed.kind === 'changes' ? renamed.edits : [];
  expect(edits.length).toBeGreaterThan(5);
  expect(edits.filter((edit) => edit.source.file === issued.uri)).toEqual([]);
});

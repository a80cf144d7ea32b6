/** The server over its streams, the command and the server for assistants, asked in Spanish and in German. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Client } from '@modelcontextprotocol/sdk/client/index.js';
import { InMemoryTransport } from '@modelcontextprotocol/sdk/inMemory.js';
import { afterAll, afterEach, expect, it, test } from 'vitest';
import type { CodeAction, CompletionItem, Hover, SignatureHelp } from 'vscode-languageserver-protocol/node';
import { de } from '../../language/i18n/messages/de/index.ts';
import { es } from '../../language/i18n/messages/es/index.ts';
import { chooseLanguage } from '../../server/cli/messages.ts';
import { buildServer } from '../../server/mcp/serve.ts';
import { command } from '../command.ts';
import { EditorSession } from '../editor-session.ts';
import { procedureText, shopText } from '../holder.ts';

const folder = mkdtempSync(join(tmpdir(), 'handtight-spoken-'));
writeFileSync(join(folder, 'shop.rebuild'), shopText);
writeFileSync(join(folder, 'procedure.rebuild'), procedureText);
let session: EditorSession | null = null;
afterEach(() => {
  session?.end();
  session = null;
  chooseLanguage(null);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test('an editor in German: each kind of answer', async () => {
  const texts = { 'shop.rebuild': shopText, 'procedure.rebuild': procedureText };
  session = await EditorSession.begin(texts, {}, { language: 'de' }, { printCommand: 'print', usesCommand: 'uses' });
  const file = 'procedure.rebuild';
  const hover = async (words: string) =>
    ((await session!.ask<Hover>('textDocument/hover', file, words)).contents as { value: string }).value;
  const verb = await hover('slack');
  expect(verb).toContain('**slacken** TEILE: löst eine Verbindung; öffnet, was sie verschließt.');
  expect(verb).toContain('Schritt 1.2 ändert:\n\n- nut: fest wie angeliefert → gelöst');
  expect(await hover('slacken nu')).toContain('Teil der Baureihe holder');
  expect(await hover('slacken nu')).toMatch(/Hier: eingebaut; .*fest wie angeliefert/u);
  expect(await hover('60 N')).toContain('Drehmoment, auf vier Stellen');
  expect(await hover('clamp body i')).toContain('**in** nach clamp: ');

  const offered = await session.ask<CompletionItem[]>('textDocument/completion', file, 'remove ');
  expect(offered.find(({ label }) => label === 'nozzle')!.detail).toMatch(
    /^Nozzle: unter cap, nut$|^Nozzle: unter nut/u,
  );
  const begun = await session.ask<CompletionItem[]>('textDocument/completion', file, '    unclamp body\n');
  const unclamp = begun.find(({ label }) => label === 'wash');
  if (unclamp !== undefined) {
    const resolved = await session.connection.sendRequest<CompletionItem>('completionItem/resolve', unclamp);
    expect(resolved.documentation).toMatchObject({ value: expect.stringContaining('entfernt Schmutz') });
  }
  const { signatures } = await session.ask<SignatureHelp>('textDocument/signatureHelp', file, 'slacken ');
  expect(signatures[0]).toMatchObject({
    label: expect.stringMatching(/^slacken TEILE held by "…" with WERKZEUG/u),
    documentation: { value: 'löst eine Verbindung; öffnet, was sie verschließt' },
  });
  await expect(session.ask('textDocument/rename', file, 'slacken n', { newName: 'with' })).rejects.toThrow(
    '„with“ verbindet die Wörter eines Schritts und kann kein Name sein.',
  );
  await expect(session.ask('textDocument/rename', file, 'slacken n', { newName: 'body' })).rejects.toThrow(
    'Teil body gibt es schon: Zeile 9 in shop.rebuild. Zwei gleichen Namens lassen sich nicht unterscheiden.',
  );
  const lenses = await session.ask<{ command?: { title: string } }[]>('textDocument/codeLens', file);
  expect(lenses.map((lens) => lens.command?.title)).toEqual(['Drucken']);
  const { position } = session.behind(file, '    slacken nut\n    rem');
  const actions = await session.ask<CodeAction[]>('textDocument/codeAction', file, null, {
    range: { start: position, end: position },
    context: { diagnostics: [], only: ['refactor.rewrite'] },
  });
  expect(actions.map(({ title }) => title)).toContain('Den Arbeitsgang hier teilen');
  const state = await session.connection.sendRequest<{ groups: { items: { name: string; words: string }[] }[] }>(
    'handtight/state',
    { uri: session.uri(file), position },
  );
  const said = state.groups.flatMap(({ items }) => items.map(({ name, words }) => `${name}: ${words}`));
  expect(said).toContain('Arbeitsplatz: strip');
  expect(said.join('\n')).toMatch(/^Nozzle nut: (?:gelöst|ausgebaut)/mu);
  const none = await session.connection.sendRequest('handtight/state', { uri: session.uri('shop.rebuild') });
  expect(none).toEqual({ kind: 'none', reason: 'Den Cursor in einen Schritt einer Anweisung setzen.' });
  const specs = await session.connection.sendRequest<{ html: string }>('handtight/specs', { uri: session.uri(file) });
  expect(specs.html).toContain('Vorgaben');
  expect(specs.html).not.toMatch(/Part number|no step|Nothing missing|Torque/u);
});

const inFolder = (...args: string[]) => command(folder, ...args);

it('the command refuses and helps in the language that is chosen', async () => {
  expect((await inFolder('--messages', 'es', 'bogus')).stderr).toBe(
    "error: no existe la orden 'bogus'\n(con --help se ven las opciones)\n",
  );
  expect((await inFolder('--messages', 'de', 'chek')).stderr).toBe(
    "Fehler: den Befehl 'chek' gibt es nicht\n(Ist check gemeint?)\n(--help zeigt die Optionen)\n",
  );
  expect((await inFolder('--messages=de', 'check', '--format', 'xml')).stderr).toContain(
    "Fehler: 'xml' kann nicht hinter '--format <Format>' stehen. Eines davon angeben: text, json, sarif, github.",
  );
  expect((await inFolder('--messages=de', 'print')).stderr).toContain("Fehler: 'Namen' ist nicht angegeben");
  expect((await inFolder('--messages', 'es', 'replay', 'rebild')).stderr).toBe(
    'handtight: No hay, como procedimiento, nada llamado rebild. ¿Quería decir rebuild?\n',
  );
});

it.each([
  ['es', es],
  ['de', de],
] as const)('the help of every command is in %s, with no English left', async (language, bundle) => {
  const names = (await inFolder('--help')).stdout.match(/(?<=^ {2})[a-z][a-z-]+/gmu)!.filter((name) => name !== 'help');
  expect(names.length).toBeGreaterThan(20);
  const english = new Set(Object.keys(bundle).filter((text) => bundle[text] !== text && text.split(' ').length > 2));
  for (const name of ['', ...names]) {
    const { stdout } = await inFolder('--messages', language, ...(name === '' ? [] : [name]), '--help');
    const shown = stdout.replace(/\s+/gu, ' ');
    expect(
      [...english].filter((text) => shown.includes(` ${text} `)),
      name,
    ).toEqual([]);
    expect(shown, name).not.toMatch(/\b(?:Usage|Options|Arguments|Commands|default|choices|display|folder)\b/u);
  }
});

it('calculations, explanations, replay and tools of the command are in the language', async () => {
  const worked = await inFolder(
    '--messages',
    'es',
    'work-out',
    'torque-for-preload',
    'preload=25000 N',
    'diameter=12 mm',
    'factor=0.2',
  );
  expect(worked.stdout).toMatch(/^Par para una precarga, con el factor de tuerca\n[\s\S]*\npar 60\sN·m\n$/u);
  expect((await inFolder('--messages', 'de', 'explain')).stdout).toMatch(
    /^left-hand-tight +Fehler +Eine Verbindung ist beigedreht, aber nicht angezogen, wenn/mu,
  );
  const { stdout } = await inFolder('--messages', 'de', 'replay', 'rebuild');
  expect(stdout).toContain('Teil nozzle Ablage: abgelegt → lose');
  expect(stdout).toMatch(/Verbindung nut ist: .*fest wie angeliefert.* → gelöst/u);
  expect((await inFolder('--messages', 'es', 'tools')).stdout).toMatch(
    /^vence +herramienta +taller|^vence +herramienta/u,
  );
  expect((await inFolder('--messages', 'de', 'specs', 'rebuild')).stdout).toContain('kein Schritt zieht sie an');
});

it('an assistant is answered in the language that the command is given', async () => {
  chooseLanguage('es');
  const client = new Client({ name: 'test', version: '1' });
  const [near, far] = InMemoryTransport.createLinkedPair();
  await Promise.all([buildServer(folder).connect(far), client.connect(near)]);
  expect(client.getInstructions()).toMatch(/^Handtight comprueba procedimientos/u);
  const { tools } = await client.listTools();
  const english = new Set(Object.keys(es));
  expect(tools.filter(({ description = '', title = '' }) => english.has(description) || english.has(title))).toEqual(
    [],
  );
  const call = async (name: string, args: Record<string, unknown>) =>
    ((await client.callTool({ name, arguments: args })).content as [{ text: string }])[0].text;
  expect(await call('replay', { procedure: 'rebuild', step: '1.2' })).toContain(
    'unión nut está: apretada como llegó → aflojada',
  );
  expect(await call('explain', { rule: 'left-hand-tigt' })).toBe(
    'Ninguna regla se llama left-hand-tigt. ¿Quería decir left-hand-tight?',
  );
  expect(await call('check', {})).toMatch(/ advertencia(?:s)?\.$/u);
  await client.close();
});

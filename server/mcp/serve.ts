/**
 * Handtight for assistants, by the Model Context Protocol over standard input and output: what drafts a procedure is held to
 * the same rules as a person. Nothing is written but by the tool that says so.
 */
import { McpServer } from '@modelcontextprotocol/sdk/server/mcp.js';
import { StdioServerTransport } from '@modelcontextprotocol/sdk/server/stdio.js';
import manifest from '../../package.json' with { type: 'json' };
import { worded } from '../cli/messages.ts';
import { Folder } from './folder.ts';
import { addCalculate } from './tools/calculate.ts';
import { addCheck } from './tools/check.ts';
import { addExplain, addLanguage } from './tools/explain.ts';
import { addFormat } from './tools/format.ts';
import { addHistory, addShims } from './tools/jobs.ts';
import { addReplay } from './tools/replay.ts';

/** What an assistant reads before anything else. */
const instructions = () =>
  [
    worded`Handtight checks machine rebuild procedures (.rebuild files) of a repair shop.`,
    worded`Read the chapters of the \`language\` tool before you draft; check each draft with \`check\` until it is clean.`,
    worded`A specification comes from the maker or the lead. Where you do not have one, leave it blank (\`spec opening pressure source "…"\` is not a place to guess), say so, and let the lead fill it in.`,
    worded`Local codes, the maker’s data and licensed practice come first.`,
  ].join(' ');

/** A server for one folder, with no transport yet. */
export function buildServer(path: string): McpServer {
  const folder = new Folder(path);
  const server = new McpServer({ name: 'handtight', version: manifest.version }, { instructions: instructions() });
  for (const add of [addCheck, addExplain, addLanguage, addReplay, addCalculate, addShims, addHistory, addFormat])
    add(server, folder);
  return server;
}

/** Serves until the input ends. */
export async function serve(path: string): Promise<void> {
  const server = buildServer(path);
  const closed = new Promise<void>((resolve) => {
    server.server.onclose = resolve;
    process.stdin.once('end', () => void server.close());
  });
  await server.connect(new StdioServerTransport());
  await closed;
}

import type { McpServer } from '@modelcontextprotocol/sdk/server/mcp.js';
import type { CallToolResult } from '@modelcontextprotocol/sdk/types.js';
import { worded } from '../cli/messages.ts';
import { UsageError } from '../cli/usage-error.ts';
import { visible } from '../cli/visible.ts';
import type { Folder } from './folder.ts';

/** Adds one tool to a server. */
export type AddTool = (server: McpServer, folder: Folder) => void;

/** Hints of a tool that changes nothing: an assistant may call it without permission. */
export const readOnly = { readOnlyHint: true, idempotentHint: true, openWorldHint: false } as const;

/** Most characters of one answer: more would crowd out what the assistant works on. */
const longest = 60_000;

/** An answer in words. */
export function text(lines: string): CallToolResult {
  const safe = visible(lines);
  const shown =
    safe.length <= longest
      ? safe
      : worded`${safe.slice(0, longest)}\n… and ${safe.length - longest} characters more. Ask about less at a time.`;
  return { content: [{ type: 'text', text: shown }] };
}

/** An answer in words and as data. */
export function data(lines: string, structuredContent: Record<string, unknown>): CallToolResult {
  return { ...text(lines), structuredContent };
}

/** What was asked and cannot be answered goes back to the assistant in words; a defect is thrown on. */
export async function answered(work: () => CallToolResult | Promise<CallToolResult>): Promise<CallToolResult> {
  try {
    return await work();
  } catch (error) {
    if (!(error instanceof UsageError)) throw error;
    return { ...text(error.message), isError: true };
  }
}

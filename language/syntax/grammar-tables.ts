/*
 * The grammar as plain data, written by `npm run generate` into `tables.generated.ts`. rebuild.langium is its only source.
 */

/** A piece of a rule; tokens are named as in the grammar, a keyword by itself. */
export type Element =
  | readonly ['token', string]
  /** One of these tokens. */
  | readonly ['any', ...string[]]
  /** Another rule. */
  | readonly ['call', string]
  | readonly ['sequence', ...Element[]]
  | readonly ['choice', ...Element[]]
  | readonly ['optional', Element]
  | readonly ['many', Element]
  /** Once or more. */
  | readonly ['some', Element]
  /** What it reads is a property of the node. */
  | readonly ['assign', '=' | '+=' | '?=', string, Element]
  /** The node is of this type. */
  | readonly ['type', string];

export interface Rule {
  /** It makes a node, or words; a fragment is a part of the rule that calls it. */
  readonly kind: 'node' | 'words' | 'fragment';
  /** Type of its node. */
  readonly type: string;
  readonly element: Element;
}

/** The properties of a type of node. */
export interface NodeType {
  /** Those that are a list, empty where nothing is written. */
  readonly lists: readonly string[];
  /** Those that are false where nothing is written. */
  readonly flags: readonly string[];
  /** Those without which the node is a fragment of a broken line. */
  readonly needed: readonly string[];
}

export interface GrammarTables {
  /** Rule of a whole file. */
  readonly entry: string;
  readonly terminals: readonly string[];
  readonly keywords: readonly string[];
  readonly rules: Readonly<Record<string, Rule>>;
  readonly types: Readonly<Record<string, NodeType>>;
}

/** The library that reads the command line, in the language of the command: its help and its refusals. */
import { type Argument, Command, type ErrorOptions, Help, type Option } from 'commander';
import { term } from '../../language/say/say.ts';
import { worded, words } from './messages.ts';

/** A command that says in its language what the library says in English. */
export class WordedCommand extends Command {
  override createCommand(name?: string): WordedCommand {
    return new WordedCommand(name);
  }

  override createHelp(): Help {
    return Object.assign(new WordedHelp(), this.configureHelp());
  }

  override error(message: string, options?: ErrorOptions): never {
    return super.error(message.split('\n').map(errorText).join('\n'), options);
  }
}

class WordedHelp extends Help {
  override styleTitle(title: string): string {
    return words(term(title));
  }
  override optionTerm(option: Option): string {
    return withPlaces(super.optionTerm(option));
  }
  override argumentTerm(argument: Argument): string {
    return words(term(`<${argument.name()}>`)).slice(1, -1);
  }
  override subcommandTerm(command: Command): string {
    return withPlaces(super.subcommandTerm(command));
  }
  override commandUsage(command: Command): string {
    return withPlaces(super.commandUsage(command));
  }
  override optionDescription(option: Option): string {
    return withExtra(super.optionDescription(option), option.description);
  }
  override argumentDescription(argument: Argument): string {
    return withExtra(super.argumentDescription(argument), argument.description);
  }
}

/** `<procedure>` and `[paths...]`: what is to be filled in is called as the reader calls it. */
function withPlaces(text: string): string {
  return text.replace(/(?<=[<[])\p{Ll}+/gu, (place) => words(term(`<${place}>`)).slice(1, -1));
}

/** What the library adds behind a description. */
function withExtra(whole: string, description: string): string {
  const extra = whole.slice(description.length);
  return `${description}${extra.replace('choices:', worded`choices:`).replace('default:', worded`default:`)}`;
}

/** What the library says, by its English: what is in the parentheses of the pattern is filled in. */
const errors: readonly (readonly [RegExp, (...found: string[]) => string])[] = [
  [/^error: unknown command '(.*)'$/u, (name) => worded`error: there is no command '${name!}'`],
  [/^error: unknown option '(.*)'$/u, (name) => worded`error: there is no option '${name!}'`],
  [/^\(Did you mean (?:one of )?(.*)\?\)$/u, (names) => worded`(Did you mean ${names!}?)`],
  [/^error: missing required argument '(.*)'$/u, (name) => worded`error: '${placed(name!)}' is not given`],
  [
    /^error: option '(.*)' argument missing$/u,
    (flags) => worded`error: nothing is given behind '${withPlaces(flags!)}'`,
  ],
  [/^error: required option '(.*)' not specified$/u, (flags) => worded`error: '${withPlaces(flags!)}' is not given`],
  [
    /^error: option '(.*)' cannot be used with option '(.*)'$/u,
    (one, other) => worded`error: '${withPlaces(one!)}' and '${withPlaces(other!)}' cannot be given together`,
  ],
  [
    /^error: too many arguments(?: for '(.*)')?\. Expected (\d+) arguments? but got (\d+)\.$/u,
    (_, expected, got) => worded`error: ${got!} arguments are given, and at most ${expected!} can be.`,
  ],
  [
    /^error: option '(.*)' argument '(.*)' is invalid\. (.*)$/u,
    (flags, value, why) => worded`error: '${value!}' cannot be behind '${withPlaces(flags!)}'. ${reason(why!)}`,
  ],
  [
    /^error: command-argument value '(.*)' is invalid for argument '(.*)'\. (.*)$/u,
    (value, name, why) => worded`error: '${value!}' cannot be given as '${placed(name!)}'. ${reason(why!)}`,
  ],
];

function errorText(line: string): string {
  for (const [pattern, say] of errors) {
    const found = pattern.exec(line);
    if (found !== null) return say(...found.slice(1));
  }
  return line;
}

function placed(name: string): string {
  return withPlaces(`<${name}>`).slice(1, -1);
}

/** Why an argument is refused: of a list by the library, else by a reader of ours, which has said it. */
function reason(why: string): string {
  const [, choices] = /^Allowed choices are (.*)\.$/u.exec(why) ?? [];
  return choices === undefined ? why : worded`Give one of: ${choices}.`;
}

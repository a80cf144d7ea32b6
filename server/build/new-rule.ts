/**
 * `npm run new-rule AREA NAME` writes the files of a new rule: its check, its page, its line in the area's list. Without
 * arguments it rewrites the list of rules in README.md from the severity and title of each rule.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const folder = fileURLToPath(new URL('../../language/diagnostics/areas/', import.meta.url));
const [area, code] = process.argv.slice(2);

if (area !== undefined && code !== undefined) scaffold(area, code);
await writeList();

function scaffold(area: string, code: string) {
  const list = `${folder}${area}/index.ts`;
  if (!existsSync(list)) refuse(`There is no area ${area}: look at the folders in language/diagnostics/areas.`);
  if (!/^[a-z]+(-[a-z]+)*$/u.test(code)) refuse('A rule is called by its defect, in lower case with hyphens.');
  const file = `${folder}${area}/${code}`;
  if (existsSync(`${file}.ts`)) refuse(`${area}/${code} is there already.`);
  const name = code.replace(/-(\w)/gu, (_, letter: string) => letter.toUpperCase());
  writeFileSync(
    `${file}.ts`,
    `import type { Rule } from '../../rule.ts';

/** TODO: what it finds, in one sentence. */
export const ${name}: Rule = {
  code: '${code}',
  severity: 'error',
  since: '${nextVersion()}',
  title: 'TODO.',
  eachStep(step, _, report) {
    if (step.note !== 'TODO') return;
    report({ at: step, message: 'TODO: what is wrong.', why: 'why it matters at the bench.', help: 'What to do.' });
  },
};
`,
  );
  const shape = `# ${code}

TODO. *Error.*

## Why it matters at the bench

TODO

## Wrong

\`\`\`rebuild bad
stage build at build {
  clamp body  note "TODO"
//^^^^^ ${code}
}
\`\`\`

## Right

\`\`\`rebuild good
stage build at build {
  clamp body
}
\`\`\`

## Left alone

TODO

---

Examples use the shop and the family shown in [the list of rules](../README.md#the-example-shop-and-family).
`;
  writeFileSync(`${file}.md`, shape);
  const text = readFileSync(list, 'utf8');
  writeFileSync(
    list,
    text
      .replace(
        /(?=import type \{ AnyRule \})|(?<=^import type \{ AnyRule \}.*\n)/mu,
        `import { ${name} } from './${code}.ts';\n`,
      )
      .replace(/,?\s*\];\n$/u, `,\n  ${name},\n];\n`),
  );
  console.log(`Written: language/diagnostics/${area}/${code}.ts, its page ${code}.md, and its line in ${area}.ts.`);
}

/** The tables of README.md: every rule under its area, with severity and title. */
async function writeList() {
  const { rulesByArea } = await import('../../language/diagnostics/index.ts');
  let text = readFileSync(`${folder}README.md`, 'utf8');
  for (const [area, rules] of Object.entries(rulesByArea)) {
    const rows = rules.map(
      (rule) => `| [${rule.code}](${area}/${rule.code}.md) | ${rule.severity} | ${rule.title} |\n`,
    );
    // The first table that has a rule of the area is its own.
    const table = new RegExp(`(\\|---\\|---\\|---\\|\\n)((?:\\|.*\\]\\(${area}/.*\\n)+)`, 'u');
    text = text.replace(table, (_, rule: string) => `${rule}${rows.join('')}`);
  }
  writeFileSync(`${folder}README.md`, text);
}

/** The version that is being worked on: the next after the one that package.json names. */
function nextVersion(): string {
  const { version } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8'));
  const [major, minor] = version.split('.').map(Number);
  return `${major}.${minor + 1}.0`;
}

function refuse(message: string): never {
  console.error(message);
  process.exit(2);
}

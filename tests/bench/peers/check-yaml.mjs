/**
 * The peer of `handtight check`: reads each .yaml file of a folder, validates it by a schema, and reports every slip with its
 * place. Arguments: the folder, and the schema as JSON.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import Ajv from 'ajv';
import { LineCounter, parseDocument } from 'yaml';

const [folder, schema] = process.argv.slice(2);
const validate = new Ajv({ allErrors: true }).compile(JSON.parse(readFileSync(schema, 'utf8')));
let slips = 0;
const report = (file, { line, col }, message) => {
  slips++;
  console.log(`${file}:${line}:${col} ${message}`);
};
for (const file of readdirSync(folder, { recursive: true }).filter((name) => name.endsWith('.yaml'))) {
  const lines = new LineCounter();
  const document = parseDocument(readFileSync(join(folder, file), 'utf8'), { lineCounter: lines });
  for (const { pos, message } of document.errors) report(file, lines.linePos(pos[0]), message);
  if (validate(document.toJS())) continue;
  for (const { instancePath, message } of validate.errors) {
    const node = document.getIn(
      instancePath
        .split('/')
        .slice(1)
        .map((key) => (/^\d+$/.test(key) ? Number(key) : key)),
      true,
    );
    report(file, lines.linePos(node?.range?.[0] ?? 0), message);
  }
}
process.exitCode = slips > 0 ? 1 : 0;

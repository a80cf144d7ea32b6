/** The same sort of text for the peers: stages with steps, as JSON or YAML of any length, and the schema for both. */

const verbs = ['clamp', 'slacken', 'remove', 'wash', 'rinse', 'fit', 'torque', 'test'];

/** Of `yaml` with `ajv`, and of the JSON language server. */
export const schema = {
  $schema: 'http://json-schema.org/draft-07/schema#',
  type: 'object',
  additionalProperties: false,
  required: ['procedure', 'stages'],
  properties: {
    procedure: { type: 'string', pattern: '^[a-z0-9-]+$' },
    stages: {
      type: 'array',
      minItems: 1,
      items: {
        type: 'object',
        additionalProperties: false,
        required: ['name', 'at', 'steps'],
        properties: {
          name: { type: 'string', minLength: 1 },
          at: { enum: ['strip', 'tank', 'build', 'tester'] },
          steps: {
            type: 'array',
            items: {
              type: 'object',
              additionalProperties: false,
              required: ['verb', 'objects'],
              properties: {
                verb: { enum: verbs },
                objects: { type: 'array', minItems: 1, uniqueItems: true, items: { type: 'string' } },
                to: { type: 'string', pattern: '^[0-9]+ N·m' },
                note: { type: 'string', maxLength: 200 },
              },
            },
          },
        },
      },
    },
  },
};

interface Form {
  readonly begin: string;
  readonly stage: (name: string, steps: readonly string[]) => string;
  readonly step: (verb: string) => string;
  readonly end: string;
  /** Fills up to the length. */
  readonly fill: (length: number) => string;
}

const json: Form = {
  begin: '{\n  "procedure": "rebuild",\n  "stages": [\n',
  step: (verb) =>
    `        { "verb": "${verb}", "objects": ["nut", "body"], "to": "60 N·m ±5", "note": "In two passes" }`,
  stage: (name, steps) => `    { "name": "${name}", "at": "build", "steps": [\n${steps.join(',\n')}\n    ] }`,
  end: '\n  ]\n}\n',
  fill: (length) => ' '.repeat(length),
};

const yaml: Form = {
  begin: 'procedure: rebuild\nstages:\n',
  step: (verb) =>
    `      - verb: ${verb}\n        objects: [nut, body]\n        to: 60 N·m ±5\n        note: In two passes\n`,
  stage: (name, steps) => `  - name: ${name}\n    at: build\n    steps:\n${steps.join('')}`,
  end: '',
  fill: (length) => `#${' '.repeat(Math.max(0, length - 2))}\n`.slice(-length),
};

/** A text of a form with so many bytes, and ten steps to a stage. */
function textOf(form: Form, separator: string, bytes: number): string {
  const stages: string[] = [];
  const size = (text: string) => Buffer.byteLength(text);
  let left = bytes - size(form.begin + form.end);
  for (let count = 0; ; count++) {
    const steps = Array.from({ length: 10 }, (_, index) => form.step(verbs[(count + index) % verbs.length]!));
    const stage = form.stage(`stage-${count}`, steps);
    const needed = size(stage) + size(separator);
    if (needed > left && stages.length > 0) break;
    stages.push(stage);
    left -= needed;
  }
  const text = `${form.begin}${stages.join(separator)}${form.end}`;
  return `${text}${form.fill(Math.max(0, bytes - size(text)))}`;
}

export const jsonText = (bytes: number): string => textOf(json, ',\n', bytes);
export const yamlText = (bytes: number): string => textOf(yaml, '', bytes);

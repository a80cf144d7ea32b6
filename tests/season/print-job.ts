/** A job as text again, from what was read of it. */
import { label } from '../../language/drafting/job.ts';
import type { FactResult, Job, Result, Unit } from '../../language/model/job.ts';
import { readingAt } from '../../language/model/reading-id.ts';
import { factForms } from '../../language/semantics/fact-forms.ts';

export function printJob({
  name,
  title,
  procedure,
  revision,
  customer,
  received,
  order,
  intake,
  checks,
  units,
}: Job): string {
  const head = [
    `job ${label(name)} "${title}" of ${procedure.name}`,
    ...(revision === null ? [] : [`revision ${label(revision)}`]),
    ...(order === null ? [] : [`order ${label(order)}`]),
    ...(customer === null ? [] : [`customer "${customer}"`]),
    ...(received === null ? [] : [`received ${received}`]),
  ];
  const ofJob = [...intake, ...checks].map((one) => `    ${printResult(one)}\n`).join('');
  return `${head.join(' ')} {\n  intake {\n${ofJob}  }\n${units.map(printUnit).join('')}}\n`;
}

function printUnit({ place, numberText, serial, noSerial, onHold, note, results }: Unit): string {
  const head = [
    `unit ${place} number ${label(numberText)}`,
    ...(serial === null ? [] : [`serial ${label(serial, true)}`]),
    ...(noSerial === null ? [] : [`serial none "${noSerial}"`]),
    ...(onHold === null ? [] : [`on hold "${onHold}"`]),
  ];
  const lines = [...(note === null ? [] : [`note "${note}"`]), ...results.map(printResult)];
  return `  ${head.join(' ')} {\n${lines.map((line) => `    ${line}\n`).join('')}  }\n`;
}

const quoted = (text: string | null | undefined) => (text == null ? [] : [`"${text}"`]);
const said = (word: string, text: string | null | undefined) => (text == null ? [] : [`${word} "${text}"`]);
const on = (what: string | null | undefined) => (what == null ? [] : [`on ${what}`]);
const withTool = (tool: string | null) => (tool === null ? [] : [`with ${tool}`]);

function printResult(one: Result): string {
  const done = 'done' in one && one.done !== undefined ? [...said('by', one.done.by), ...on(one.done.on)] : [];
  return partsOf(one).concat(done).join(' ');
}

function partsOf(one: Result): string[] {
  switch (one.form) {
    case 'reading':
      return [
        ...named(one.name, one.asFound),
        `${one.value.number} ${one.value.unit}`,
        ...placed(one.name),
        ...withTool(one.tool),
        ...on(one.watched),
        ...quoted(one.text),
      ];
    case 'verdict':
      return [
        ...named(one.name, one.asFound),
        one.passed ? 'pass' : 'fail',
        ...placed(one.name),
        ...on(one.watched),
        ...quoted(one.text),
      ];
    case 'words':
      return [...named(one.name, false), `"${one.text}"`, ...placed(one.name)];
    case 'shim':
      return [`${one.part} ${one.fitted ? 'in' : 'out'} ${one.size.number} ${one.size.unit}`, ...withTool(one.tool)];
    case 'torque':
      return [`torque ${one.part} ${one.value.number} ${one.value.unit}`, ...withTool(one.tool)];
    case 'renewed':
      return [`renewed ${one.part}`, ...said('number', one.number), ...said('batch', one.batch)];
    case 'remark':
      return [...(one.asFound ? ['as found'] : []), `"${one.text}"`];
    case 'done':
      return [`done by "${one.by}"`, ...on(one.on)];
    case 'fact':
      return factParts(one);
  }
}

function named(id: string, asFound: boolean): string[] {
  const { test, point } = readingAt(id);
  return [...(asFound ? ['as found'] : []), test, ...(point === null ? [] : [point])];
}

function placed(id: string): string[] {
  const { place } = readingAt(id);
  return place === null ? [] : [`at ${place}`];
}

function factParts({ word, name, text, label: of, by, on: day }: FactResult): string[] {
  const { names, goesOn, labels } = factForms[word];
  const date = goesOn?.brings === 'on' ? [] : word === 'promised' && day !== null ? [day] : on(day);
  const tied =
    goesOn === undefined
      ? []
      : goesOn.brings === 'on'
        ? [`${goesOn.word} ${day}`]
        : of === null
          ? []
          : [labels === undefined ? `${goesOn.word} "${of}"` : `${goesOn.word} ${of}`];
  const what = name === null ? [] : names === 'parts' ? [`for ${name}`] : [name];
  return [word, ...what, ...quoted(text), ...said('by', by), ...date, ...tied];
}

import type { FuzzCase } from '../case.ts';
import type { Random } from '../random.ts';
import { someWorkspace } from '../seeds.ts';

/** Words that become code where somebody forgot to escape: HTML, SVG, Typst, terminals, CI, templates, JSON. */
const hostileStrings = [
  '<script>alert(1)</script>',
  '</style><script>alert(1)</script>',
  '<img src=x onerror=alert(1)>',
  '<svg onload=alert(1)>',
  "' onmouseover='alert(1)",
  '&lt;script&gt; &#x22; &quot;',
  '<!-- --> <![CDATA[ ]]>',
  'javascript:alert(1)',
  '#eval("1") #import "x.typ"',
  '$x$ *b* _i_ `raw` @ref <label> = head',
  '#set page(width: 1pt)',
  '\\u{0}\\n\\" \\',
  '::error file=x,line=1::made up',
  '::set-output name=a::b',
  '\u001b[31mred\u001b[0m \u001b]8;;http://x\u0007',
  '\u202etxet\u202c \u2066x\u2069',
  '{body} {count, plural, one {1}} {',
  "'{' it''s '}",
  '<%= 7 %> {{7*7}} #{7*7}',
  '%s %d %n %25',
  '../../etc/passwd',
  'C:\\con\\nul',
  '__proto__',
  'constructor',
  ' ',
  '',
  'ﷺﷺﷺﷺ',
  'a'.repeat(300),
  'é'.repeat(80),
  '😀'.repeat(40),
  '1,2\u00a03',
  '](command:x) **b** [a](javascript:1)',
];

/** Names that every object has already. */
const inherited = [
  'toString',
  'constructor',
  'valueOf',
  'hasOwnProperty',
  'isPrototypeOf',
  'prototype',
  'length',
  'name',
  'then',
  'toJSON',
];

/** A sound text whose strings are hostile and whose names are words of the object prototype. */
export function hostile(random: Random): FuzzCase {
  const share = random.pick([0.05, 0.3, 1]);
  const start = someWorkspace(random);
  const names = [
    ...new Set(
      start.flatMap(({ text }) =>
        [
          ...text.matchAll(
            /^ *(?:part|station|stage|spec|fluid|repair|sequence|family|shop|procedure|gauge|wrench|tool|port|number) ([A-Za-z][\w-]*)/gmu,
          ),
        ].map(([, name]) => name!),
      ),
    ),
  ];
  const renamed = new Map(
    random.chance(0.5)
      ? []
      : inherited.flatMap((word) => (names.length === 0 ? [] : [[random.pick(names), word] as const])),
  );
  const files = start.map(({ uri, text }) => ({
    uri,
    text: text
      .replace(/"[^"\n]*"/gu, (old) =>
        random.chance(share) ? `"${random.pick(hostileStrings).replaceAll('"', '“')}"` : old,
      )
      .replace(/(?<![\w"-])[A-Za-z][\w-]*(?![\w"-])/gu, (old) =>
        random.chance(0.003) ? random.pick(inherited) : (renamed.get(old) ?? old),
      ),
  }));
  return { kind: 'hostile', versions: [files] };
}
